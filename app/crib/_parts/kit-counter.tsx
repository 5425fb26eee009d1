'use client';

import { useCallback, useRef, useState, useTransition } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { useScanner } from '@/app/_shared/form/use-scanner';
import { Choice, Field, Panel, SubmitButton, ToolId } from '@/app/_shared/ui';
import type { Role } from '@/lib/shop/vocabulary';
import { issueKitAction, type ScanAnswer, scanIntoKit } from '../actions';
import styles from './crib.module.css';
import type { KitCounterRow } from './kit-rows';
import { ScanField } from './scan-field';
import { StopScreen } from './stop-screen';

interface KitCounterProps {
  readonly lineId: string;
  readonly rows: readonly KitCounterRow[];
  readonly people: readonly { id: string; name: string; role: string }[];
  readonly stamp: EntryStamp;
}

type Goes = Extract<ScanAnswer, { goes: true }>;

/** The counter: every row of the set ticked by its scan; what must not go stops the kit across the whole screen. */
export function KitCounter({ lineId, rows, people, stamp }: KitCounterProps) {
  const [scanned, setScanned] = useState<readonly Goes[]>([]);
  const [ticked, setTicked] = useState<readonly Role[]>([]);
  const [stop, setStop] = useState<Extract<ScanAnswer, { goes: false }> | null>(null);
  const [busy, startScan] = useTransition();
  const known = useRef<readonly Goes[]>([]);

  const take = useCallback(
    (typed: string) =>
      startScan(async () => {
        const answer = await scanIntoKit(
          lineId,
          known.current.map(({ toolId }) => toolId),
          typed,
        );
        if (!answer.goes) return setStop(answer);
        // Of one kind only one goes: the last one scanned.
        known.current = [...known.current.filter(({ role }) => role !== answer.role), answer];
        setScanned(known.current);
      }),
    [lineId],
  );
  const scanner = useScanner(take, stop !== null);
  const wanted = rows.filter(({ isOut }) => !isOut);
  const isInHand = ({ role }: KitCounterRow) =>
    ticked.includes(role) || scanned.some((scan) => scan.role === role);
  const inHand = wanted.filter(isInHand).length;
  const seen = () => {
    setStop(null);
    scanner.box.current?.focus();
  };

  return (
    <EntryForm action={issueKitAction} stamp={stamp} label="Issue the kit">
      <input type="hidden" name="jobLineId" value={lineId} />
      <input type="hidden" name="needed" value={wanted.length} />
      <div className="columns-lead">
        <Panel
          title="The kit"
          aside={
            <span className="num" role="status">
              {inHand} of {wanted.length} in hand
            </span>
          }
        >
          <ScanField label="Scan each item into the kit" scanner={scanner} busy={busy} />
          <ul className={styles.rows}>
            {rows.map((row) => (
              <KitRowItem
                key={row.role}
                row={row}
                scan={scanned.find(({ role }) => role === row.role)}
                inHand={isInHand(row)}
                onTick={(isTicked) => {
                  const others = (roles: readonly Role[]) => roles.filter((role) => role !== row.role);
                  setTicked((before) => [...others(before), ...(isTicked ? [row.role] : [])]);
                  if (isTicked) return;
                  known.current = known.current.filter(({ role }) => role !== row.role);
                  setScanned(known.current);
                }}
              />
            ))}
          </ul>
        </Panel>
        <Panel title="Out to">
          <WhoAndWhere people={people} complete={inHand >= wanted.length} />
        </Panel>
      </div>
      {stop === null ? null : <StopScreen headline={stop.headline} sentence={stop.sentence} onSeen={seen} />}
    </EntryForm>
  );
}

/** One need of the set. The box can be ticked by hand where there is no scanner; a scan ticks it with what was scanned. */
function KitRowItem({
  row,
  scan,
  inHand,
  onTick,
}: {
  readonly row: KitCounterRow;
  readonly scan: Goes | undefined;
  readonly inHand: boolean;
  readonly onTick: (isTicked: boolean) => void;
}) {
  const toolId = scan?.toolId ?? row.toolId;
  const other = scan !== undefined && row.toolId !== null && scan.toolId !== row.toolId;
  const mind = scan?.mind ?? row.mind;
  const [covers, ...more] = toolId === null ? [] : (row.says[toolId] ?? []);
  return (
    <li className={styles.row} data-state={row.isOut ? 'out' : scan ? 'scanned' : toolId ? 'open' : 'none'}>
      {toolId === null || row.isOut ? (
        <span aria-hidden="true" className={styles.noBox} />
      ) : (
        <input
          // Anew with its scan: a box that stands already does not take a new default. The default is what a refusal gives back.
          key={`${toolId} ${scan === undefined ? 'open' : 'scanned'}`}
          type="checkbox"
          name="toolId"
          value={toolId}
          defaultChecked={inHand}
          onChange={(event) => onTick(event.target.checked)}
          aria-label={`${row.label} ${toolId} is in hand`}
        />
      )}
      <div>
        <p className={styles.rowRole}>{row.label}</p>
        <p className={styles.rowTool}>{toolId === null ? 'none to give' : <ToolId id={toolId} />}</p>
      </div>
      <div className={styles.rowWhy}>
        {covers === undefined ? null : <p className={styles.covers}>{covers}</p>}
        {more.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {other ? <p>scanned instead of {row.toolId}</p> : <p>{row.why}</p>}
        {mind === null ? null : <p className={styles.mind}>{mind}</p>}
        {row.others.length > 0 && scan === undefined ? (
          <p className="fine">also: {row.others.slice(0, 4).join(', ')}</p>
        ) : null}
      </div>
    </li>
  );
}

function WhoAndWhere({
  people,
  complete,
}: {
  readonly people: KitCounterProps['people'];
  readonly complete: boolean;
}) {
  return (
    <div className="stack">
      <Choice
        name="toPersonId"
        legend="Who"
        required
        options={people.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <Field name="bench" label="Bench" optional maxLength={24} />
      {complete ? null : (
        <>
          <label className="check">
            <input type="checkbox" name="incomplete" value="yes" />
            <span>It goes out without what is not in hand</span>
          </label>
          <Field name="reason" label="Note" optional maxLength={300} />
        </>
      )}
      <div>
        <SubmitButton pendingText="Issuing…">Issue the kit</SubmitButton>
      </div>
    </div>
  );
}
