'use client';

import type { ReactNode } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { typedOr } from '@/app/_shared/form/form-state';
import { SubmitButton } from '@/app/_shared/ui';
import { draftOrdersAction } from '../actions';
import styles from './orders.module.css';

/** One part to be ordered, in words: made by the page, shown here. */
export interface DraftRow {
  readonly partId: string;
  readonly name: string;
  readonly quantity: number;
  readonly unit: string;
  readonly what: ReactNode;
  readonly cost: string;
  readonly from: string;
  readonly byWhen: string;
  readonly inTime: string;
  readonly why: string;
  readonly lines: ReactNode;
  readonly ifNot: string;
}

interface DraftFormProps {
  readonly rows: readonly DraftRow[];
  readonly stamp: EntryStamp;
  readonly horizonQuery: string;
}

/** Ticks, quantities and one button: space ticks, tab goes on, enter drafts. */
export function DraftForm({ rows, stamp, horizonQuery }: DraftFormProps) {
  return (
    <EntryForm action={draftOrdersAction} stamp={stamp} label="Orders to place">
      {(state) => (
        <>
          <input type="hidden" name="weeks" value={horizonQuery} />
          <ul className={styles.proposals}>
            {rows.map((row) => (
              <li key={row.partId} className={styles.proposal}>
                <label className="check">
                  <input type="checkbox" name="pick" value={row.partId} defaultChecked />
                  <span className="vh">Order {row.name}</span>
                </label>
                <div className={styles.what}>{row.what}</div>
                <div className={styles.quantity}>
                  <label htmlFor={`quantity-${row.partId}`} className="fine">
                    How many
                  </label>
                  <input
                    id={`quantity-${row.partId}`}
                    name={`quantity:${row.partId}`}
                    inputMode="numeric"
                    autoComplete="off"
                    className={styles.count}
                    defaultValue={typedOr(state, `quantity:${row.partId}`, String(row.quantity))}
                  />
                  <span className="fine">{row.unit}</span>
                </div>
                <div className={styles.when}>
                  <span className="fine">Order by</span>
                  <b>{row.byWhen}</b>
                  <span className="fine">{row.inTime}</span>
                </div>
                <div className={styles.cost}>
                  <span className="num">{row.cost}</span>
                  <span className="fine">{row.from}</span>
                </div>
                <div className={styles.because}>
                  <p>{row.why}</p>
                  {row.lines}
                  <p className="quiet">If not: {row.ifNot}</p>
                </div>
              </li>
            ))}
          </ul>
          <div>
            <SubmitButton pendingText="Drafting…">Draft what is ticked</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
