'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { NumberField, SubmitButton } from '@/app/_shared/ui';
import { setReadingSettingsAction } from '../reading-action';
import type { ReadingRow } from './reading-rows';
import styles from './wear.module.css';

/** How what is seen of an edge counts as a share of its life, figure by figure. */
export function ReadingForm({
  rows,
  stamp,
}: {
  readonly rows: readonly ReadingRow[];
  readonly stamp: EntryStamp;
}) {
  return (
    <EntryForm action={setReadingSettingsAction} stamp={stamp} label="How readings count">
      <div className={styles.rows}>
        {rows.map(({ words, source, fields }) => (
          <div key={words} className={styles.row}>
            <p>
              {words} <span className="fine">({source})</span>
            </p>
            {fields.map(({ name, label, unit, value }) => (
              <NumberField
                key={name}
                name={name}
                id={`reading-${name}`}
                label={label}
                entry="decimal"
                unit={unit}
                defaultValue={String(value)}
                answers={`settings.${name}`}
              />
            ))}
          </div>
        ))}
      </div>
      <div>
        <SubmitButton>Save how readings count</SubmitButton>
      </div>
    </EntryForm>
  );
}
