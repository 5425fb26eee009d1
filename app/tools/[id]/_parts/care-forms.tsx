'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, SubmitButton } from '@/app/_shared/ui';
import { openFluidAction, readFluidLevelAction } from '../actions';

interface About {
  readonly toolId: string;
  readonly stamp: EntryStamp;
  readonly today: string;
}

/** Opens a bottle, once: its opened life begins. */
export function OpenFluidForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={openFluidAction} stamp={stamp} label="Open">
      <input type="hidden" name="toolId" value={toolId} />
      <Field id="opened-on" name="onDay" label="Opened on" type="date" required defaultValue={today} />
      <div>
        <SubmitButton>Mark as opened</SubmitButton>
      </div>
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
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="onDay" value={today} />
      <NumberField
        name="levelMl"
        label="Left in the bottle"
        entry="decimal"
        unit="mL"
        required
        defaultValue={levelMl === null ? '' : String(levelMl)}
      />
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}
