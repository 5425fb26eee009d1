'use client';

import { useState } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { useScanner } from '@/app/_shared/form/use-scanner';
import { Button, SubmitButton, ToolId } from '@/app/_shared/ui';
import styles from '@/app/crib/_parts/crib.module.css';
import { ScanField } from '@/app/crib/_parts/scan-field';
import { StopScreen } from '@/app/crib/_parts/stop-screen';
import { countStockAction } from '@/app/crib/actions';
import { type CountedTool, stockVariances } from '@/lib/kit/stock-variances';
import type { CountScope, Drawer } from '@/lib/shop/stock-count';
import { tidyToolId, toolKey } from '@/lib/shop/tool-id';
import { DifferenceFields } from './difference-fields';

export interface CountTool extends CountedTool {
  readonly label: string;
  readonly stands: string;
}

interface CountSheetProps {
  readonly scope: CountScope;
  readonly drawer: Drawer;
  readonly tools: readonly CountTool[];
  readonly stamp: EntryStamp;
}

/** The sheet of a stock-take: ticked by scanning, then the differences one by one, then one entry. */
export function CountSheet({ scope, drawer, tools, stamp }: CountSheetProps) {
  const [scanned, setScanned] = useState<readonly string[]>([]);
  const [unknown, setUnknown] = useState<string | null>(null);
  const [finished, setFinished] = useState(false);
  const take = (typed: string) => {
    const tool = tools.find(({ id }) => toolKey(id) === toolKey(typed));
    if (tool === undefined) setUnknown(tidyToolId(typed));
    else setScanned((before) => (before.includes(tool.id) ? before : [...before, tool.id]));
  };
  const scanner = useScanner(take, unknown !== null);
  const result = stockVariances(tools, scope, scanned, drawer);
  const counted = new Set([...result.expectedIds, ...result.unexpectedIds]);
  const elsewhere = result.scannedIds.filter((id) => !counted.has(id));
  const byId = new Map(tools.map((tool) => [tool.id, tool]));
  const open = result.missingIds.flatMap((id) => byId.get(id) ?? []);
  return (
    <EntryForm action={countStockAction} stamp={stamp} label="Stock-take">
      <input type="hidden" name="scope" value={scope} />
      <input type="hidden" name="connectionId" value={drawer.connectionId ?? ''} />
      <input type="hidden" name="edgeKind" value={drawer.edgeKind ?? ''} />
      {scanned.map((id) => (
        <input key={id} type="hidden" name="scanned" value={id} />
      ))}
      <ScanField label="Scan what lies here" scanner={scanner} />
      <p role="status">
        <b className="num">
          {result.foundIds.length} of {result.expectedIds.length}
        </b>{' '}
        found{scanned.length === 0 ? '' : `; last ${scanned.at(-1)}`}
        {result.unexpectedIds.length === 0 ? '' : `; not expected here: ${result.unexpectedIds.join(', ')}`}
        {elsewhere.length === 0 ? '' : `; not part of this count: ${elsewhere.join(', ')}`}
      </p>
      {finished ? (
        <Differences
          missing={open}
          unexpected={result.unexpectedIds.flatMap((id) => byId.get(id) ?? [])}
          onBack={() => setFinished(false)}
        />
      ) : (
        <>
          <ul className={styles.kits}>
            {open.map((tool) => (
              <li key={tool.id}>
                <span>
                  <ToolId id={tool.id} /> <span className="quiet">{tool.label}</span>
                </span>
              </li>
            ))}
          </ul>
          <div>
            <Button onClick={() => setFinished(true)}>All scanned: show the differences</Button>
          </div>
        </>
      )}
      {unknown === null ? null : (
        <StopScreen
          headline="NOT IN THE RECORD"
          sentence={`${unknown} is no tool of this shop's record. Put it aside, and receive it if it belongs here.`}
          onSeen={() => setUnknown(null)}
        />
      )}
    </EntryForm>
  );
}

function Differences({
  missing,
  unexpected,
  onBack,
}: {
  readonly missing: readonly CountTool[];
  readonly unexpected: readonly CountTool[];
  readonly onBack: () => void;
}) {
  const none = missing.length + unexpected.length === 0;
  return (
    <div>
      {none ? <p>No difference: the shelf and the record agree.</p> : null}
      {missing.map((tool) => (
        <DifferenceFields key={tool.id} tool={tool} kind="missing" />
      ))}
      {unexpected.map((tool) => (
        <DifferenceFields key={tool.id} tool={tool} kind="unexpected" />
      ))}
      <div className="cluster">
        <SubmitButton>Enter the count</SubmitButton>
        <Button onClick={onBack}>Scan on</Button>
      </div>
    </div>
  );
}
