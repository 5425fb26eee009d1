'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { countInAction } from '../actions';
import styles from './setup.module.css';

export interface CountRow {
  readonly partId: string;
  readonly partName: string;
  /** How many the record holds already. */
  readonly known: number;
  readonly calibrated: boolean;
  readonly hasEdge: boolean;
  readonly fluid: boolean;
}

/**
 * One row a part: how many, and what the record needs to know of them. Folded away once something is in the record; what
 * was counted in stands below the fold, since the IDs in it are to be marked.
 */
export function CountForm({
  rows,
  today,
  stamp,
  openAtFirst,
}: {
  readonly rows: readonly CountRow[];
  readonly today: string;
  readonly stamp: EntryStamp;
  readonly openAtFirst: boolean;
}) {
  return (
    <EntryForm action={countInAction} stamp={stamp} label="Opening counts">
      {(state) => (
        <>
          <input type="hidden" name="onDay" value={today} />
          <details open={openAtFirst || state.status !== 'fresh'}>
            <summary>Count what is on the shelf</summary>
            <div className="stack">
              <p>Each thing counted is given a short ID to mark it with. Left empty: none counted.</p>
              <div className={styles.rows}>
                {rows.map((row) => (
                  <div key={row.partId} className={styles.row}>
                    <input type="hidden" name="countPartId" value={row.partId} />
                    <p>
                      <strong>{row.partName}</strong>
                      {row.known > 0 ? (
                        <span className="quiet"> {row.known} in the record already</span>
                      ) : null}
                    </p>
                    <NumberField name={`count-${row.partId}`} label="How many" unit="pieces" />
                    {row.hasEdge ? (
                      <Select
                        name={`opening-${row.partId}`}
                        label="Cut with before"
                        options={[
                          { value: 'new', label: 'new, never' },
                          { value: 'unknown', label: 'nobody knows' },
                        ]}
                        defaultValue="new"
                      />
                    ) : null}
                    {row.calibrated ? (
                      <Field name={`due-${row.partId}`} label="Calibration due" type="date" />
                    ) : null}
                    {row.fluid ? (
                      <NumberField
                        name={`level-${row.partId}`}
                        label="In each bottle"
                        entry="decimal"
                        unit="mL"
                      />
                    ) : null}
                  </div>
                ))}
              </div>
              <div>
                <SubmitButton pendingText="Counting in…">Count them in</SubmitButton>
              </div>
            </div>
          </details>
        </>
      )}
    </EntryForm>
  );
}
