'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { HAND_OPTIONS } from '@/app/_shared/form/option-lists';
import { Field, NumberField, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import type { Part } from '@/lib/shop/part';
import type { Role } from '@/lib/shop/vocabulary';
import { setPartAction } from '../actions';
import { FluidPart } from './fluid-part';
import { OfferFields } from './offer-fields';
import { Ticks } from './ticks';

interface PartFormProps {
  readonly part: Part | null;
  readonly role: Role;
  readonly stamp: EntryStamp;
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
}

const HANDS = [{ value: '', label: 'has no hand' }, ...HAND_OPTIONS];

/** What can be bought, and what it fits. */
export function PartForm({ part, role, stamp, connections, materials }: PartFormProps) {
  const kind = part?.role ?? role;
  return (
    <EntryForm action={setPartAction} stamp={stamp} label="Part">
      <input type="hidden" name="id" value={part?.id ?? ''} />
      <input type="hidden" name="role" value={kind} />
      <div className="columns">
        <Field
          name="name"
          label="Name in the shop"
          required
          maxLength={100}
          defaultValue={part?.name ?? ''}
          answers="part.name"
        />
        <Field
          name="designation"
          label="Designation, for orders"
          hint="As 9/16-18 UNF-LH die, adjustable split"
          maxLength={100}
          defaultValue={part?.designation ?? ''}
          answers="part.designation"
        />
        <Select name="hand" label="Hand" options={HANDS} defaultValue={part?.hand ?? ''} />
      </div>
      <Ticks legend="Serves" name="fits" options={connections} ticked={part?.fitsConnectionIds ?? []} />
      <Buying part={part} />
      <OfferFields part={part} />
      {kind === 'blade' ? (
        <div className="columns">
          <NumberField
            name="regrindLimit"
            label="Regrinds at most"
            unit="times"
            defaultValue={String(part?.regrindLimit ?? 2)}
            answers="part.regrindLimit"
          />
          <label className="check">
            <input type="checkbox" name="matchedPair" defaultChecked={part?.matchedPair ?? false} /> A matched
            pair, kept as one tool
          </label>
        </div>
      ) : null}
      {kind === 'die' ? (
        <label className="check">
          <input type="checkbox" name="adjustable" defaultChecked={part?.adjustable ?? true} /> Adjustable: a
          split die
        </label>
      ) : null}
      {kind === 'fluid' ? <FluidPart part={part} materials={materials} /> : null}
      <div>
        <SubmitButton>{part === null ? 'Add the part' : 'Change the part'}</SubmitButton>
      </div>
    </EntryForm>
  );
}

function Buying({ part }: Pick<PartFormProps, 'part'>) {
  const price = part?.priceMinor ?? null;
  const lead = part?.leadTimeDays ?? null;
  return (
    <div className="columns">
      <Field name="supplier" label="Supplier" optional maxLength={80} defaultValue={part?.supplier ?? ''} />
      <NumberField
        name="price"
        label="Price"
        entry="decimal"
        unit="each"
        optional
        defaultValue={price === null ? '' : String(price / 100)}
        answers="part.priceMinor"
      />
      <NumberField
        name="leadTimeDays"
        label="Lead time"
        unit="days"
        optional
        defaultValue={lead === null ? '' : String(lead)}
        answers="part.leadTimeDays"
      />
    </div>
  );
}
