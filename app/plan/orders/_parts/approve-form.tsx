'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { typedOr } from '@/app/_shared/form/form-state';
import { SubmitButton } from '@/app/_shared/ui';
import { approveOrdersAction } from '../actions';
import styles from './orders.module.css';

interface ApproveRow {
  readonly id: string;
  readonly quantity: number;
  readonly text: string;
  readonly detail: string;
}

/** Drafts with their quantities, to be approved together by a lead. */
export function ApproveForm({
  rows,
  stamp,
}: {
  readonly rows: readonly ApproveRow[];
  readonly stamp: EntryStamp;
}) {
  return (
    <EntryForm action={approveOrdersAction} stamp={stamp} label="Drafts to approve">
      {(state) => (
        <>
          <ul className={styles.drafts}>
            {rows.map(({ id, quantity, text, detail }) => (
              <li key={id} className={styles.draft}>
                <label className="check">
                  <input type="checkbox" name="pick" value={id} defaultChecked />
                  <span className="id">{id}</span>
                </label>
                <input
                  name={`quantity:${id}`}
                  aria-label={`Quantity of ${id}`}
                  inputMode="numeric"
                  autoComplete="off"
                  className={styles.count}
                  defaultValue={typedOr(state, `quantity:${id}`, String(quantity))}
                />
                <span>× {text}</span>
                <span className="fine">{detail}</span>
              </li>
            ))}
          </ul>
          <div className="cluster">
            <SubmitButton pendingText="Approving…">Approve what is ticked</SubmitButton>
            <span className="fine">A lead approves; everybody can draft.</span>
          </div>
        </>
      )}
    </EntryForm>
  );
}
