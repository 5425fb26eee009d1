'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Choice, Field, SubmitButton, TextArea } from '@/app/_shared/ui';
import { FAULT_DIRECTIONS, type FaultDirection } from '@/lib/shop/recall';
import { openRecallAction } from '../actions';

interface OpenFormProps {
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly gaugeId: string;
  /** The entry that showed it, with its day; null: it is found by hand. */
  readonly finding: { readonly entryId: string; readonly onDay: string } | null;
  readonly today: string;
  /** What each direction means for the ends, in a sentence. */
  readonly meanings: Readonly<Record<FaultDirection, string>>;
}

const DIRECTION_WORDS: Record<FaultDirection, string> = {
  large: 'too large',
  small: 'too small',
  unknown: 'not known',
};

/** Opens a recall: which way the gauge is out, and what was found. The list is made by the record, not by hand. */
export function OpenForm({ stamp, gaugeId, finding, today, meanings }: OpenFormProps) {
  return (
    <EntryForm action={openRecallAction} stamp={stamp} label="Open a recall">
      {(state) => (
        <>
          <input type="hidden" name="gaugeId" value={gaugeId} />
          <input type="hidden" name="foundEntryId" value={finding?.entryId ?? ''} />
          <Choice
            name="direction"
            legend="Which way is it out"
            required
            defaultValue={typedOr(state, 'direction', '')}
            error={fieldError(state, 'direction')}
            options={FAULT_DIRECTIONS.map((direction) => ({
              value: direction,
              label: DIRECTION_WORDS[direction],
              note: meanings[direction],
            }))}
          />
          <TextArea
            name="found"
            label="What was found"
            hint="As found, in figures where there are any"
            required
            maxLength={300}
            defaultValue={typedOr(state, 'found', '')}
            error={fieldError(state, 'found')}
          />
          {finding === null ? (
            <Field
              name="foundOnDay"
              label="Found on"
              type="date"
              max={today}
              defaultValue={typedOr(state, 'foundOnDay', today)}
              error={fieldError(state, 'foundOnDay')}
            />
          ) : (
            <input type="hidden" name="foundOnDay" value={finding.onDay} />
          )}
          <div>
            <SubmitButton pendingText="Setting it aside…">Set {gaugeId} aside and list its ends</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
