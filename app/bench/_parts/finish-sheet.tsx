'use client';

import { useState } from 'react';
import { Button, ToolId } from '@/app/_shared/ui';
import type { BenchEdge } from '@/lib/bench/bench-snapshot';
import type { BenchTally } from '@/lib/bench/bench-tally';
import styles from './bench.module.css';

interface FinishSheetProps {
  readonly tallies: readonly BenchTally[];
  readonly asked: readonly { readonly edge: BenchEdge; readonly endsToCut: number }[];
  readonly onBack: () => void;
  readonly onFinish: (tallies: readonly BenchTally[]) => void;
}

/** The counts, filled in: what was pressed, or, where nothing was, what the line still asked for. */
export function FinishSheet({ tallies, asked, onBack, onFinish }: FinishSheetProps) {
  const [rows, setRows] = useState<readonly BenchTally[]>(() =>
    tallies.length > 0 ? tallies : asked.map(({ edge, endsToCut }) => prefilled(edge, endsToCut)),
  );
  const change = (toolId: string, by: number) =>
    setRows((before) => before.map((row) => (row.toolId === toolId ? changed(row, by) : row)));
  const total = rows.reduce((sum, { ends }) => sum + ends, 0);
  return (
    <section className={styles.sheet} aria-label="Finish">
      <h2>Is this what was cut?</h2>
      {rows.map((row) => (
        <div key={row.toolId} className={styles.finishRow}>
          <p>
            <ToolId id={row.toolId} />
            <br />
            <b className="num">{row.goodEnds}</b> good {row.operation}
            {row.goodEnds === 1 ? '' : 's'}
            {row.ends > row.goodEnds ? `, ${row.ends - row.goodEnds} rejected` : ''}
          </p>
          <button type="button" aria-label={`−1 on ${row.toolId}`} onClick={() => change(row.toolId, -1)}>
            −1
          </button>
          <button type="button" aria-label={`+1 on ${row.toolId}`} onClick={() => change(row.toolId, 1)}>
            +1
          </button>
        </div>
      ))}
      <div className={styles.foot}>
        <Button tone="primary" disabled={total === 0} onClick={() => onFinish(rows)}>
          Log it
        </Button>
        <Button onClick={onBack}>Back</Button>
      </div>
    </section>
  );
}

function prefilled({ toolId, operation }: BenchEdge, ends: number): BenchTally {
  return { toolId, operation, ends, goodEnds: ends, rejects: [] };
}

function changed(row: BenchTally, by: number): BenchTally {
  const goodEnds = Math.max(0, row.goodEnds + by);
  return { ...row, goodEnds, ends: row.ends + (goodEnds - row.goodEnds) };
}
