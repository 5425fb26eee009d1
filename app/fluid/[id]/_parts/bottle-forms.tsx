'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { DISPOSAL_LABEL, DISPOSALS } from '@/lib/shop/fluid-entry';
import {
  countDropsAction,
  disposeAction,
  extendAction,
  openBottleAction,
  readLevelAction,
} from '../../actions';

interface About {
  readonly toolId: string;
  readonly stamp: EntryStamp;
  readonly today: string;
}

/** Opens a bottle, once: its opened life begins, and the day is written on it. */
export function OpenForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={openBottleAction} stamp={stamp} label="Open">
      <input type="hidden" name="toolId" value={toolId} />
      <Field
        id="opened-on"
        name="onDay"
        label="Opened on"
        type="date"
        required
        hint="Write the same day on the bottle"
        defaultValue={today}
      />
      <div>
        <SubmitButton>Mark as opened</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** How much is left: what the shop's own use is learnt from. */
export function LevelForm({ toolId, stamp, today, levelMl }: About & { readonly levelMl: number | null }) {
  return (
    <EntryForm action={readLevelAction} stamp={stamp} label="Level">
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
        <SubmitButton>Write the level down</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** The ten-second count: so many drops into a small measure. */
export function DropsForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={countDropsAction} stamp={stamp} label="Count drops">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="onDay" value={today} />
      <p className="quiet">
        Count 100 drops into a small measure, held as you hold it at the bench, and read the mL.
      </p>
      <div className="columns">
        <NumberField name="drops" label="Drops" unit="drops" required defaultValue="100" />
        <NumberField
          name="volumeMl"
          label="Volume"
          entry="decimal"
          unit="mL"
          required
          hint="Oils: 100 drops are 1.5 to 3 mL"
        />
      </div>
      <div>
        <SubmitButton tone="quiet">Write the count down</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** A longer life after an inspection: a lead or quality decides, with the reason. */
export function ExtendForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={extendAction} stamp={stamp} label="Extend its life">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="onDay" value={today} />
      <div className="columns">
        <Field
          name="inspection"
          label="Inspected, and found"
          required
          maxLength={300}
          hint="Clear, no water, no separation, no smell; a trial thread cut clean"
        />
        <Field name="untilDay" label="Good until" type="date" required />
        <Field id="extend-reason" name="reason" label="Why" required maxLength={300} />
      </div>
      <p className="quiet">
        Decided by a lead or by quality. For oxygen work the day on the label still counts.
      </p>
      <div>
        <SubmitButton tone="quiet">Extend it</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** The end of a bottle. */
export function DisposeForm({ toolId, stamp, today, levelMl }: About & { readonly levelMl: number | null }) {
  return (
    <EntryForm action={disposeAction} stamp={stamp} label="Dispose of it">
      <input type="hidden" name="toolId" value={toolId} />
      <div className="columns">
        <Select
          name="how"
          label="Where it goes"
          options={DISPOSALS.map((how) => ({ value: how, label: DISPOSAL_LABEL[how] }))}
          defaultValue="waste-carrier"
        />
        <Field name="transferNote" label="Transfer note" hint="Its number; keep the note" maxLength={80} />
        <NumberField
          id="dispose-volume"
          name="volumeMl"
          label="What was left"
          entry="decimal"
          unit="mL"
          required
          defaultValue={levelMl === null ? '' : String(levelMl)}
        />
        <Field id="disposed-on" name="onDay" label="On" type="date" required defaultValue={today} />
      </div>
      <div>
        <SubmitButton tone="quiet">Dispose of it</SubmitButton>
      </div>
    </EntryForm>
  );
}
