'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, NumberField, SubmitButton } from '@/app/_shared/ui';
import { openFluidAction, readFluidLevelAction } from '../actions';

interface About {
  readonly toolId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly today: string;
}

/** Opens a bottle, once: its opened life begins. */
export function OpenFluidForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={openFluidAction} stamp={stamp} label="Open">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <Field
            id="opened-on"
            name="onDay"
            label="Opened on"
            type="date"
            required
            defaultValue={typedOr(state, 'onDay', today)}
          />
          <div>
            <SubmitButton>Mark as opened</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** Writes down how much is left in a bottle. */
export function FluidLevelForm({
  toolId,
  stamp,
  today,
  levelMl,
}: About & { readonly levelMl: number | null }) {
  return (
    <EntryForm action={readFluidLevelAction} stamp={stamp} label="Level">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="onDay" value={today} />
          <NumberField
            name="levelMl"
            label="Left in the bottle"
            entry="decimal"
            unit="mL"
            required
            defaultValue={typedOr(state, 'levelMl', levelMl === null ? '' : String(levelMl))}
            error={fieldError(state, 'levelMl')}
          />
          <div>
            <SubmitButton tone="quiet">Write it down</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
