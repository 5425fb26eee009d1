'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, SubmitButton, TextArea } from '@/app/_shared/ui';
import { FAULT_DIRECTIONS, type FaultDirection } from '@/lib/shop/recall';
import { openRecallAction } from '../actions';
import type { Doubt } from './doubt-of';

interface OpenFormProps {
  readonly stamp: EntryStamp;
  readonly gaugeId: string;
  /** The entry that showed it, with its day; null: it is found by hand. */
  readonly finding: { readonly entryId: string; readonly onDay: string } | null;
  /** Its master was found out, and casts the doubt. */
  readonly doubt: Pick<Doubt, 'masterRecallId' | 'found' | 'direction'> | undefined;
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
export function OpenForm({ stamp, gaugeId, finding, doubt, today, meanings }: OpenFormProps) {
  return (
    <EntryForm action={openRecallAction} stamp={stamp} label="Open a recall">
      <input type="hidden" name="gaugeId" value={gaugeId} />
      <input type="hidden" name="foundEntryId" value={finding?.entryId ?? ''} />
      <input type="hidden" name="masterRecallId" value={doubt?.masterRecallId ?? ''} />
      <Choice
        name="direction"
        legend={doubt === undefined ? 'Which way is it out' : 'Which way may it be out'}
        required
        defaultValue={doubt?.direction ?? ''}
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
        defaultValue={doubt?.found ?? ''}
      />
      {finding === null && doubt === undefined ? (
        <Field name="foundOnDay" label="Found on" type="date" max={today} defaultValue={today} />
      ) : (
        <input type="hidden" name="foundOnDay" value={finding?.onDay ?? today} />
      )}
      <div>
        <SubmitButton pendingText="Setting it aside…">Set {gaugeId} aside and list its ends</SubmitButton>
      </div>
    </EntryForm>
  );
}
