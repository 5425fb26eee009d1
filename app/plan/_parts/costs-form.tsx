'use client';
/**
 * <CostsForm costs={facts.costs ?? DEFAULT_COSTS} currency={shop.currency} stamp={newStamp()} />
 * What things cost the shop beside the prices of its parts: one form for every screen that counts in money.
 */
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { NumberField, SubmitButton } from '@/app/_shared/ui';
import type { Costs } from '@/lib/shop/costs';
import { setCostsAction } from './costs-action';

interface CostsFormProps {
  readonly costs: Costs;
  /** ISO 4217, as the shop's settings have it. */
  readonly currency: string;
  readonly stamp: EntryStamp;
}

interface CostField {
  readonly name: keyof Costs;
  readonly label: string;
  readonly hint: string;
  readonly unit: 'money' | 'percent' | 'days';
}

const FIELDS: readonly CostField[] = [
  {
    name: 'plannedChangeMinor',
    label: 'Changing an edge between jobs',
    hint: 'The time it takes when nobody waits for it. The price of the edge comes on top.',
    unit: 'money',
  },
  {
    name: 'midJobChangeMinor',
    label: 'Changing it in the middle of a job',
    hint: 'The time lost at the bench. The edge and the spoilt end come on top.',
    unit: 'money',
  },
  {
    name: 'spoiltEndMinor',
    label: 'An end spoilt that can be remade',
    hint: 'Tube and time.',
    unit: 'money',
  },
  {
    name: 'spoiltPreciousMinor',
    label: 'An end spoilt that cannot be remade',
    hint: 'The spool, as a rule.',
    unit: 'money',
  },
  {
    name: 'regrindMinor',
    label: 'Having a blade reground',
    hint: 'With its first-off check.',
    unit: 'money',
  },
  { name: 'regrindDays', label: 'A regrind takes', hint: 'Until it is back on the shelf.', unit: 'days' },
  { name: 'orderMinor', label: 'Placing an order', hint: 'Paper, post, the receiving check.', unit: 'money' },
  { name: 'holdingPerYear', label: 'Keeping stock', hint: 'A year, of its price.', unit: 'percent' },
  {
    name: 'stoppedDayMinor',
    label: 'A bench standing still',
    hint: 'A day, for want of a tool.',
    unit: 'money',
  },
  {
    name: 'calibrationMinor',
    label: 'Having a gauge calibrated',
    hint: 'With carriage. Empty or 0: gauges are not counted in what an end costs.',
    unit: 'money',
  },
];

export function CostsForm({ costs, currency, stamp }: CostsFormProps) {
  return (
    <EntryForm action={setCostsAction} stamp={stamp} label="What things cost">
      <div className="columns">
        {FIELDS.map(({ name, label, hint, unit }) => (
          <NumberField
            key={name}
            name={name}
            id={`costs-${name}`}
            label={label}
            hint={hint}
            entry={unit === 'days' ? 'whole' : 'decimal'}
            unit={unit === 'money' ? currency : unit === 'percent' ? '%' : 'days'}
            defaultValue={asTyped(costs[name] ?? 0, unit)}
            answers={`costs.${name}`}
          />
        ))}
      </div>
      <div>
        <SubmitButton>Save the costs</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** A figure as it is typed: money in major units without needless zeros, a share in per cent. */
function asTyped(value: number, unit: CostField['unit']): string {
  if (unit === 'days') return String(value);
  if (unit === 'percent') return String(Math.round(value * 1000) / 10);
  return value % 100 === 0 ? String(value / 100) : (value / 100).toFixed(2);
}
