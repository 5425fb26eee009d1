import { expect, it } from 'vitest';
import { costsOfForm } from '@/app/plan/_parts/costs-of-form';
import { setNoun } from '@/db/commands/set-noun';
import { findCosts } from '@/db/queries/shop';
import { type Costs, CostsSchema, DEFAULT_COSTS } from '@/lib/shop/costs';
import { SetCostsInput } from '@/lib/shop/costs-input';
import { ENV, entered, envelope, may, must, testShop } from '../../support/db';

const typed: Record<keyof Costs, string> = {
  ...{ orderMinor: '25', holdingPerYear: '20', plannedChangeMinor: '6.5', midJobChangeMinor: '30' },
  ...{
    spoiltEndMinor: '30',
    spoiltPreciousMinor: '1 200',
    regrindMinor: '20',
    regrindDays: '14',
    stoppedDayMinor: '400',
    calibrationMinor: '85',
  },
};

function sent(change: Partial<typeof typed> = {}): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries({ ...typed, ...change })) form.set(name, value);
  return form;
}

// source: hand. Money is typed in major units and kept in hundredths, stock in per cent; what is saved is what is read back.
it('reads money and per cent, and they are kept', () => {
  const { costs } = SetCostsInput.parse({ ...entered(), costs: costsOfForm(sent()) });
  expect(costs).toEqual({
    ...DEFAULT_COSTS,
    ...{ plannedChangeMinor: 650, spoiltPreciousMinor: 120_000, calibrationMinor: 8_500 },
  });
  const db = testShop();
  must(setNoun(db, may('set-up-shop'), { envelope: envelope(), noun: 'costs', value: costs }, ENV));
  expect(findCosts(db)).toEqual(costs);
});

// source: hand. A calibration may be left open: an older entry has none, and it is not counted.
it('lets a calibration go unsaid', () => {
  const { costs } = SetCostsInput.parse({ ...entered(), costs: costsOfForm(sent({ calibrationMinor: '' })) });
  expect(costs.calibrationMinor).toBeUndefined();
  expect(CostsSchema.parse(DEFAULT_COSTS)).toEqual(DEFAULT_COSTS);
});

// source: hand. What is no number, and what is below nothing, is refused at its own field.
it.each([
  ['orderMinor', 'ten'],
  ['holdingPerYear', '-5'],
  ['regrindDays', '2.5'],
] as const)('refuses %s of %s', (name, value) => {
  const parsed = SetCostsInput.safeParse({ ...entered(), costs: costsOfForm(sent({ [name]: value })) });
  expect(parsed.error?.issues[0]?.path).toEqual(['costs', name]);
});
