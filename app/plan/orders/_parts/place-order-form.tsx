'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, NumberField, Panel, SubmitButton } from '@/app/_shared/ui';
import { placeOrderAction } from '../actions';
import styles from './orders.module.css';

interface PlaceOrderFormProps {
  readonly partId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
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
        {(state) => (
          <>
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
                defaultValue={typedOr(state, 'id', draft?.id ?? '')}
                error={fieldError(state, 'id')}
              />
              <NumberField
                name="quantity"
                label="How many"
                unit="pieces"
                required
                readOnly={draft !== undefined}
                defaultValue={typedOr(state, 'quantity', String(draft?.quantity ?? 1))}
                error={fieldError(state, 'quantity')}
              />
              <Field
                name="supplier"
                label="Supplier"
                optional
                maxLength={80}
                defaultValue={typedOr(state, 'supplier', supplier)}
                error={fieldError(state, 'supplier')}
              />
              <NumberField
                name="price"
                label="Price of one"
                entry="decimal"
                unit="each"
                optional
                defaultValue={typedOr(
                  state,
                  'price',
                  unitPriceMinor === null ? '' : String(unitPriceMinor / 100),
                )}
                error={fieldError(state, 'unitPriceMinor')}
              />
              <Field
                name="placedOnDay"
                label="Placed on"
                type="date"
                required
                defaultValue={typedOr(state, 'placedOnDay', placedOnDay)}
                error={fieldError(state, 'placedOnDay')}
              />
              <Field
                name="expectedOnDay"
                label="Promised for"
                hint={hint}
                type="date"
                required
                defaultValue={typedOr(state, 'expectedOnDay', expectedOnDay)}
                error={fieldError(state, 'expectedOnDay')}
              />
              <Field
                name="reason"
                label="Note"
                optional
                maxLength={300}
                defaultValue={typedOr(state, 'reason', '')}
              />
            </div>
            <div>
              <SubmitButton>Write the order down</SubmitButton>
            </div>
          </>
        )}
      </EntryForm>
    </Panel>
  );
}
