'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { SubmitButton } from '@/app/_shared/ui';
import { holdAction } from '../hold-action';

interface Props {
  readonly toolId: string;
  readonly reason: string;
  readonly stamp: EntryStamp;
}

/** Sets one tool of a doubtful lot aside, in one press. */
export function HoldForm({ toolId, reason, stamp }: Props) {
  return (
    <EntryForm action={holdAction} stamp={stamp} label={`Set ${toolId} aside`} className="stack-tight">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="reason" value={reason} />
      <SubmitButton tone="quiet">Set it aside</SubmitButton>
    </EntryForm>
  );
}
