'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { SubmitButton, TextArea } from '@/app/_shared/ui';
import { closeRecallAction, reviewRecallAction } from '../actions';

interface RecallFormProps {
  readonly stamp: EntryStamp;
  readonly recallId: string;
}

/** Closes a recall whose ends are all decided about. */
export function CloseForm({ stamp, recallId }: RecallFormProps) {
  return (
    <EntryForm action={closeRecallAction} stamp={stamp} label="Close the recall">
      <input type="hidden" name="recallId" value={recallId} />
      <TextArea
        name="conclusion"
        label="What was concluded"
        hint="The cause, and what is done so that it does not come again"
        required
        rows={2}
        maxLength={300}
      />
      <div>
        <SubmitButton>Close the recall</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** Looks whether more ends fall in the window by now: evidence may have been taken back. */
export function ReviewForm({ stamp, recallId }: RecallFormProps) {
  return (
    <EntryForm
      action={reviewRecallAction}
      stamp={stamp}
      label="Look at the window again"
      className="stack-tight"
    >
      <input type="hidden" name="recallId" value={recallId} />
      <div>
        <SubmitButton tone="quiet">Look at the window again</SubmitButton>
      </div>
    </EntryForm>
  );
}
