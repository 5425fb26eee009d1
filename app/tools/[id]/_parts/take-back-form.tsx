'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { correctCutAction, takeBackAction } from '../actions';

interface About {
  /** The tool on whose page the form stands: where one is afterwards. */
  readonly toolId: string;
  readonly entryId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
}

/** Mends a row logged on the wrong tool: taken back here, logged again on the right one. */
export function CorrectCutForm({ toolId, entryId, stamp }: About) {
  return (
    <EntryForm action={correctCutAction} stamp={stamp} label="Mend this entry" className="stack-tight">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="targetId" value={entryId} />
          <Field
            id={`right-${entryId}`}
            name="rightToolId"
            label="It was really cut with"
            hint="Tool ID. Left empty: nothing was cut at all."
            maxLength={40}
            defaultValue={typedOr(state, 'rightToolId', '')}
            error={fieldError(state, 'rightToolId') ?? fieldError(state, 'toolId')}
          />
          <Field
            id={`why-${entryId}`}
            name="reason"
            label="Why"
            optional
            maxLength={300}
            defaultValue={typedOr(state, 'reason', '')}
          />
          <div>
            <SubmitButton tone="quiet">Mend it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** Takes an entry back, with the reason. */
export function TakeBackForm({ toolId, entryId, stamp }: About) {
  return (
    <EntryForm action={takeBackAction} stamp={stamp} label="Take this entry back" className="stack-tight">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="targetId" value={entryId} />
          <Field
            id={`why-${entryId}`}
            name="reason"
            label="Why"
            required
            maxLength={300}
            defaultValue={typedOr(state, 'reason', '')}
            error={fieldError(state, 'reason')}
          />
          <div>
            <SubmitButton tone="quiet">Take it back</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
