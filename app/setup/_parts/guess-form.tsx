'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { NumberField, SubmitButton } from '@/app/_shared/ui';
import { setGuessesAction } from '../actions';
import styles from './setup.module.css';

export interface GuessRow {
  readonly partId: string;
  readonly partName: string;
  readonly noun: string;
  readonly connectionId: string;
  readonly connectionName: string;
  readonly materialName: string;
  readonly ends: string;
  readonly giveOrTake: string;
}

/** "A 9⁄16 die is good for about 70 threads, give or take a factor of two." One row a part. */
export function GuessForm({
  rows,
  stamp,
}: {
  readonly rows: readonly GuessRow[];
  readonly stamp: EntryStamp;
}) {
  return (
    <EntryForm action={setGuessesAction} stamp={stamp} label="First guesses">
      <div className={styles.rows}>
        {rows.map((row) => (
          <div key={row.partId} className={styles.row}>
            <input type="hidden" name="guessPartId" value={row.partId} />
            <input type="hidden" name={`connection-${row.partId}`} value={row.connectionId} />
            <p>
              A new <strong>{row.partName}</strong> is good for about … {row.noun} of {row.connectionName} in{' '}
              {row.materialName}
            </p>
            <NumberField
              name={`ends-${row.partId}`}
              label={`About how many ${row.noun}`}
              unit="ends"
              defaultValue={row.ends}
            />
            <NumberField
              name={`giveOrTake-${row.partId}`}
              label="Give or take a factor of"
              entry="decimal"
              unit="×"
              defaultValue={row.giveOrTake}
            />
          </div>
        ))}
      </div>
      <p className="fine">Four in five times the typical life should lie within that factor, up or down.</p>
      <div>
        <SubmitButton>Save the guesses</SubmitButton>
      </div>
    </EntryForm>
  );
}
