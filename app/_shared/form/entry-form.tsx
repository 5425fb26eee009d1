'use client';

/**
 * <EntryForm action={logCutAction} stamp={newStamp()}>…fields… <SubmitButton>Log</SubmitButton></EntryForm>
 *
 * A form that makes one entry of the ledger. It carries the entry's ID, made on the device, so that sending it twice
 * counts once, and the device's clock. Shows the refusal or what was done, with an Undo for ten seconds where the entry can be
 * taken back. Works without script: then the ID from the page is used. The fields in it (ui/field.tsx, ui/choice.tsx) keep what
 * was typed and show their own errors; children given as `(state) => …` see the last sending themselves.
 */
import { type ReactNode, useActionState, useEffect, useRef } from 'react';
import { FormMessage } from '../ui/message';
import { SubmitButton } from '../ui/submit-button';
import { newDeviceId } from './device-id';
import type { EntryStamp } from './entry-stamp';
import { type FormState, FRESH } from './form-state';
import { LastSending } from './given-back';
import { UndoButton } from './undo-button';

interface EntryFormProps {
  readonly action: (state: FormState, form: FormData) => Promise<FormState>;
  readonly stamp: EntryStamp;
  readonly children: ReactNode | ((state: FormState, pending: boolean) => ReactNode);
  readonly className?: string;
  readonly label?: string;
}

export function EntryForm({ action, stamp, children, className = 'stack', label }: EntryFormProps) {
  const [state, send, pending] = useActionState(action, FRESH);
  const idField = useRef<HTMLInputElement>(null);
  const clockField = useRef<HTMLInputElement>(null);

  // After an entry was made, or the page came anew from the server, the next sending is a new entry; after a refusal, or a
  // sending whose answer was lost, it is still the same one.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a fresh stamp is the sign that the page came anew
  useEffect(() => {
    if (state.status !== 'refused' && idField.current) idField.current.value = newDeviceId();
  }, [state, stamp.entryId]);

  const readClock = () => {
    if (clockField.current) clockField.current.value = String(Date.now());
  };

  return (
    <form action={send} onSubmit={readClock} className={className} aria-label={label}>
      <input ref={idField} type="hidden" name="entryId" defaultValue={stamp.entryId} />
      <input ref={clockField} type="hidden" name="deviceAtMs" defaultValue={stamp.deviceAtMs} />
      <input type="hidden" name="shop" defaultValue={stamp.shop} />
      <LastSending value={state}>
        {typeof children === 'function' ? children(state, pending) : children}
      </LastSending>
      {state.status === 'refused' ? <FormMessage tone="refusal">{state.sentence}</FormMessage> : null}
      {state.status === 'refused' && state.mend ? (
        <div>
          <SubmitButton name="mend" value={JSON.stringify(state.mend.values)}>
            {state.mend.label}
          </SubmitButton>
        </div>
      ) : null}
      {state.status === 'done' ? (
        <FormMessage tone="done">
          {state.sentence}
          {state.undoEntryId ? <UndoButton key={state.undoEntryId} entryId={state.undoEntryId} /> : null}
        </FormMessage>
      ) : null}
    </form>
  );
}
