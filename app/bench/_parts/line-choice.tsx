'use client';

import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { count } from '@/app/_shared/format';
import { SizeText } from '@/app/_shared/ui';
import type { BenchLine } from '@/lib/bench/bench-snapshot';
import type { Bench } from '../_offline/use-bench';
import styles from './bench.module.css';

interface LineChoiceProps {
  readonly bench: Bench;
  readonly personName: string | null;
  readonly onChoose: (lineId: string) => void;
}

/** The work that tools are out for, one's own first: one press opens it. */
export function LineChoice({ bench, personName, onChoose }: LineChoiceProps) {
  const lines = bench.state?.snapshot?.lines ?? [];
  const isMine = ({ edges }: BenchLine) => edges.some(({ holderName }) => holderName === personName);
  const ordered = [...lines].sort((a, b) => rank(a, isMine(a)) - rank(b, isMine(b)));
  if (ordered.length === 0)
    return (
      <p role="status">
        {bench.last?.reached === false
          ? 'This device has nothing kept yet. Open the bench once where there is network.'
          : bench.state?.snapshot === undefined
            ? 'Fetching the work of the next days…'
            : 'No line of the plan starts in the next days. What is out on loan is logged on its own page.'}
      </p>
    );
  return (
    <ul className={styles.choice}>
      {ordered.map((line) => (
        <li key={line.id}>
          <button type="button" onClick={() => onChoose(line.id)}>
            <ConnectionEnd connection={line.connection} pxPerIn={46} decorative />
            <span className={styles.choiceWords}>
              <b>
                <SizeText
                  odIn={line.connection.odNum / line.connection.odDen}
                  service={line.connection.service}
                  unit
                />
              </b>
              <span>
                {count(line.ends, 'end')}, {line.materialName}
              </span>
              <span className="quiet">
                {line.id}
                {isMine(line) ? ', with you' : line.edges.length === 0 ? ', no kit out yet' : ''}
              </span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function rank(line: BenchLine, mine: boolean): number {
  return mine ? 0 : line.edges.length > 0 ? 1 : 2;
}
