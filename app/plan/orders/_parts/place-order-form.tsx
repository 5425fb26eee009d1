'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, Panel, SubmitButton } from '@/app/_shared/ui';
import { placeOrderAction } from '../actions';
import styles from './orders.module.css';

interface PlaceOrderFormProps {
  readonly partId: string;
  readonly stamp: EntryStamp;
  readonly placedOnDay: string;
  readonly expectedOnDay: string;
  readonly leadTimeDays: number | null;
  /** An approved draft that is placed: its number and quantity stand. */
  readonly draft?: { readonly id: string; readonly quantity: number };
  readonly supplier: string;
  readonly unitPriceMinor: number | null;
}

/** How many, under which number, placed and promised for when. */
export function PlaceOrderForm({
  partId,
  stamp,
  placedOnDay,
  expectedOnDay,
  leadTimeDays,
  draft,
  supplier,
  unitPriceMinor,
}: PlaceOrderFormProps) {
  const hint =
    leadTimeDays === null
      ? 'The day the supplier promises'
      : `Lead time on record ${leadTimeDays} days; the day they promise counts`;
  return (
    <Panel title={draft === undefined ? 'How many, and by when' : 'Place it'}>
      <EntryForm action={placeOrderAction} stamp={stamp} label="Order">
        <input type="hidden" name="partId" value={partId} />
        <div className={`columns ${styles.fields}`}>
          <Field
            name="id"
            label="Order number"
            hint="As on the purchase order: letters, digits, dashes"
            required
            maxLength={64}
            autoComplete="off"
            readOnly={draft !== undefined}
            defaultValue={draft?.id ?? ''}
          />
          <NumberField
            name="quantity"
            label="How many"
            unit="pieces"
            required
            readOnly={draft !== undefined}
            defaultValue={String(draft?.quantity ?? 1)}
          />
          <Field name="supplier" label="Supplier" optional maxLength={80} defaultValue={supplier} />
          <NumberField
            name="price"
            label="Price of one"
            entry="decimal"
            unit="each"
            optional
            defaultValue={unitPriceMinor === null ? '' : String(unitPriceMinor / 100)}
            answers="unitPriceMinor"
          />
          <Field name="placedOnDay" label="Placed on" type="date" required defaultValue={placedOnDay} />
          <Field
            name="expectedOnDay"
            label="Promised for"
            hint={hint}
            type="date"
            required
            defaultValue={expectedOnDay}
          />
          <Field name="reason" label="Note" optional maxLength={300} />
        </div>
        <div>
          <SubmitButton>Write the order down</SubmitButton>
        </div>
      </EntryForm>
    </Panel>
  );
}
