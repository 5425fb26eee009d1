'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { HAND_OPTIONS, LENGTH_UNIT_OPTIONS } from '@/app/_shared/form/option-lists';
import { Choice, Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { setConnectionAction } from '../actions';

/** A row of the size table as it is typed. */
export interface ConnectionDraft {
  readonly isNew: boolean;
  readonly size: string;
  readonly service: string;
  readonly tpi: string;
  readonly hand: string;
  readonly threadClass: string;
  readonly threadLength: string;
  readonly nose: string;
  readonly unit: 'in' | 'mm';
  readonly coneAngleDeg: string;
  readonly notGoTurnsMax: string;
  readonly confirmed: boolean;
  readonly inUse: boolean;
}

/** The figures of one size and service, out of the fitting maker's manual. */
export function ConnectionForm({
  draft,
  stamp,
}: {
  readonly draft: ConnectionDraft;
  readonly stamp: EntryStamp;
}) {
  return (
    <EntryForm action={setConnectionAction} stamp={stamp} label="Row of the size table">
      <input type="hidden" name="isNew" value={draft.isNew ? 'yes' : 'no'} />
      {draft.isNew ? (
        <div className="columns">
          <Field
            name="size"
            label="Tube size, inches"
            hint="A fraction such as 9/16"
            required
            maxLength={24}
            defaultValue={draft.size}
          />
          <Choice
            name="service"
            legend="Service"
            defaultValue={draft.service}
            options={[
              { value: 'medium', label: 'medium pressure' },
              { value: 'high', label: 'high pressure' },
            ]}
          />
        </div>
      ) : (
        <>
          <input type="hidden" name="size" value={draft.size} />
          <input type="hidden" name="service" value={draft.service} />
        </>
      )}
      <div className="columns">
        <NumberField
          name="tpi"
          label="Threads per inch"
          entry="decimal"
          unit="TPI"
          required
          defaultValue={draft.tpi}
        />
        <Select name="hand" label="Hand" defaultValue={draft.hand} options={HAND_OPTIONS} />
        <Field name="threadClass" label="Thread class" maxLength={8} defaultValue={draft.threadClass} />
        <Select
          name="unit"
          label="Lengths here are in"
          defaultValue={draft.unit}
          options={LENGTH_UNIT_OPTIONS}
        />
        <NumberField
          name="threadLength"
          label="Thread length"
          entry="fraction"
          required
          defaultValue={draft.threadLength}
        />
        <NumberField
          name="nose"
          label="Nose diameter (small end of the cone)"
          entry="fraction"
          required
          defaultValue={draft.nose}
          answers="noseMm"
        />
        <NumberField
          name="coneAngleDeg"
          label="Cone, included angle"
          entry="decimal"
          unit="°"
          required
          defaultValue={draft.coneAngleDeg}
        />
        <NumberField
          name="notGoTurnsMax"
          label="NOT GO may run on at most"
          entry="decimal"
          unit="turns"
          hint="Left empty: no rule, so nobody may assume one"
          defaultValue={draft.notGoTurnsMax}
        />
      </div>
      <label className="check">
        <input type="checkbox" name="confirmed" defaultChecked={draft.confirmed} /> Checked against the
        fitting maker’s manual
      </label>
      <label className="check">
        <input type="checkbox" name="inUse" defaultChecked={draft.inUse} /> In use in this shop
      </label>
      <div>
        <SubmitButton>{draft.isNew ? 'Into the table' : 'Change the row'}</SubmitButton>
      </div>
    </EntryForm>
  );
}
