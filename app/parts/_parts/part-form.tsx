'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { type FormState, fieldError, typedOr } from '@/app/_shared/form/form-state';
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
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
}

const HANDS = [
  { value: '', label: 'has no hand' },
  { value: 'LH', label: 'LH, left hand' },
  { value: 'RH', label: 'RH, right hand' },
];

/** What can be bought, and what it fits. */
export function PartForm({ part, role, stamp, connections, materials }: PartFormProps) {
  const kind = part?.role ?? role;
  return (
    <EntryForm action={setPartAction} stamp={stamp} label="Part">
      {(state) => (
        <>
          <input type="hidden" name="id" value={part?.id ?? ''} />
          <input type="hidden" name="role" value={kind} />
          <div className="columns">
            <Field
              name="name"
              label="Name in the shop"
              required
              maxLength={100}
              defaultValue={typedOr(state, 'name', part?.name ?? '')}
              error={fieldError(state, 'name') ?? fieldError(state, 'part.name')}
            />
            <Field
              name="designation"
              label="Designation, for orders"
              hint="As 9/16-18 UNF-LH die, adjustable split"
              maxLength={100}
              defaultValue={typedOr(state, 'designation', part?.designation ?? '')}
              error={fieldError(state, 'part.designation')}
            />
            <Select
              name="hand"
              label="Hand"
              options={HANDS}
              defaultValue={typedOr(state, 'hand', part?.hand ?? '')}
            />
          </div>
          <Ticks legend="Serves" name="fits" options={connections} ticked={part?.fitsConnectionIds ?? []} />
          <Buying state={state} part={part} />
          <OfferFields state={state} part={part} />
          {kind === 'blade' ? (
            <div className="columns">
              <NumberField
                name="regrindLimit"
                label="Regrinds at most"
                unit="times"
                defaultValue={typedOr(state, 'regrindLimit', String(part?.regrindLimit ?? 2))}
                error={fieldError(state, 'part.regrindLimit')}
              />
              <label className="check">
                <input type="checkbox" name="matchedPair" defaultChecked={part?.matchedPair ?? false} /> A
                matched pair, kept as one tool
              </label>
            </div>
          ) : null}
          {kind === 'die' ? (
            <label className="check">
              <input type="checkbox" name="adjustable" defaultChecked={part?.adjustable ?? true} />{' '}
              Adjustable: a split die
            </label>
          ) : null}
          {kind === 'fluid' ? <FluidPart state={state} part={part} materials={materials} /> : null}
          <div>
            <SubmitButton>{part === null ? 'Add the part' : 'Change the part'}</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

function Buying({ state, part }: { readonly state: FormState; readonly part: Part | null }) {
  const price = part?.priceMinor ?? null;
  const lead = part?.leadTimeDays ?? null;
  return (
    <div className="columns">
      <Field
        name="supplier"
        label="Supplier"
        optional
        maxLength={80}
        defaultValue={typedOr(state, 'supplier', part?.supplier ?? '')}
      />
      <NumberField
        name="price"
        label="Price"
        entry="decimal"
        unit="each"
        optional
        defaultValue={typedOr(state, 'price', price === null ? '' : String(price / 100))}
        error={fieldError(state, 'part.priceMinor')}
      />
      <NumberField
        name="leadTimeDays"
        label="Lead time"
        unit="days"
        optional
        defaultValue={typedOr(state, 'leadTimeDays', lead === null ? '' : String(lead))}
        error={fieldError(state, 'part.leadTimeDays')}
      />
    </div>
  );
}
