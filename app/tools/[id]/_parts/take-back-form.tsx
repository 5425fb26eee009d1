'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { correctCutAction, takeBackAction } from '../actions';

interface About {
  /** The tool on whose page the form stands: where one is afterwards. */
  readonly toolId: string;
  readonly entryId: string;
  /** What was entered, and when: tells the form from its neighbours for who cannot see the row. */
  readonly about: string;
  readonly stamp: EntryStamp;
}

/** Mends a row logged on the wrong tool: taken back here, logged again on the right one. */
export function CorrectCutForm({ toolId, entryId, about, stamp }: About) {
  return (
    <EntryForm action={correctCutAction} stamp={stamp} label={`Mend: ${about}`} className="stack-tight">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="targetId" value={entryId} />
      <Field
        id={`right-${entryId}`}
        name="rightToolId"
        label="It was really cut with"
        hint="Tool ID. Left empty: nothing was cut at all."
        maxLength={40}
        answers="toolId"
      />
      <Field id={`why-${entryId}`} name="reason" label="Why" optional maxLength={300} />
      <div>
        <SubmitButton tone="quiet">Mend it</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** Takes an entry back, with the reason. */
export function TakeBackForm({ toolId, entryId, about, stamp }: About) {
  return (
    <EntryForm action={takeBackAction} stamp={stamp} label={`Take back: ${about}`} className="stack-tight">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="targetId" value={entryId} />
      <Field id={`why-${entryId}`} name="reason" label="Why" required maxLength={300} />
      <div>
        <SubmitButton tone="quiet">Take it back</SubmitButton>
      </div>
    </EntryForm>
  );
}
