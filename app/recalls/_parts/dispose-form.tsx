'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { typedOr } from '@/app/_shared/form/form-state';
import { Choice, Field, SubmitButton, TextArea } from '@/app/_shared/ui';
import { DISPOSITION_LABEL, DISPOSITIONS } from '@/lib/shop/recall';
import { disposeSuspectsAction } from '../actions';
import styles from './recall.module.css';

interface DisposeFormProps {
  readonly stamp: EntryStamp;
  readonly recallId: string;
  /** Looks with ends still to be decided. */
  readonly open: readonly {
    readonly acceptanceId: string;
    readonly ends: number;
    readonly words: string;
    readonly note: string;
  }[];
}

/** Which ends, what was done with them, and on what grounds. Several looks can be decided at once. */
export function DisposeForm({ stamp, recallId, open }: DisposeFormProps) {
  return (
    <EntryForm action={disposeSuspectsAction} stamp={stamp} label="Decide about ends">
      {(state) => (
        <>
          <input type="hidden" name="recallId" value={recallId} />
          <fieldset className={styles.items}>
            <legend>Which ends</legend>
            {open.map(({ acceptanceId, ends, words, note }) => (
              <div key={acceptanceId} className={styles.item}>
                <label className="check">
                  <input type="checkbox" name="acceptanceId" value={acceptanceId} />
                  <span>
                    {words} <span className="fine">{note}</span>
                  </span>
                </label>
                <label className={styles.count}>
                  <span className="vh">Ends of {words}</span>
                  <input
                    name={`ends-${acceptanceId}`}
                    inputMode="numeric"
                    autoComplete="off"
                    defaultValue={typedOr(state, `ends-${acceptanceId}`, String(ends))}
                  />
                  <span className="fine">of {ends}</span>
                </label>
              </div>
            ))}
          </fieldset>
          <Choice
            name="how"
            legend="What was done"
            required
            options={DISPOSITIONS.map((how) => ({ value: how, label: DISPOSITION_LABEL[how] }))}
          />
          <div className="columns">
            <Field
              name="gaugeId"
              label="With which other gauge"
              hint="Where they were gauged again"
              optional
              maxLength={40}
              autoComplete="off"
            />
            <TextArea
              name="evidence"
              label="On what grounds"
              hint="Which check, who granted it, who was told and how"
              rows={2}
              maxLength={300}
            />
          </div>
          <div>
            <SubmitButton>Write it down</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
