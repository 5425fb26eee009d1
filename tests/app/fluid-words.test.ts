import { expect, it } from 'vitest';
import { monthsText, volumeText } from '@/app/_shared/format';
import { lifeWords, needSentence, purchaseSentence } from '@/app/_shared/words/fluid-words';
import { fluidLotOfForm } from '@/app/fluid/lot-of-form';
import type { FluidNeed } from '@/lib/outlook/fluid-needs';
import { part } from '../support/db';

const TODAY = '2026-03-02';
const need = (change: Partial<FluidNeed> = {}): FluidNeed => ({
  ...{ part: part({ id: 'oil', role: 'fluid' }), usableMl: 500, mlPerDay: 3, fan: [], wasted: [] },
  ...{ shortOnDay: { early: null, median: null }, firstUseByDay: null, endsBy: null, orderByDay: null },
  ...{ containers: 1, containerMl: 1000, lifeDays: 365, smallerContainerMl: null, containerMonths: null },
  ...change,
});

// source: hand. Rounded down to what can be relied on.
it('volumes and months are rounded down', () => {
  expect(
    [volumeText(99.9), volumeText(1234), volumeText(0)].map((text) => text.replace(/\u202f/g, ' ')),
  ).toEqual(['99 mL', '1230 mL', '0 mL']);
  expect([monthsText(364), monthsText(365), monthsText(31)]).toEqual(['11 months', '12 months', '1 month']);
});

// source: hand. Worded by hand from the days given.
it('words the life, the need and the purchase', () => {
  expect(lifeWords({ onDay: null, by: null }, TODAY)).toBe('no day on record');
  expect(lifeWords({ onDay: '2026-03-01', by: 'opened life' }, TODAY)).toBe('was Sun 1 Mar, opened life');
  expect(needSentence(need({ shortOnDay: { early: TODAY, median: TODAY } }), TODAY)).toBe(
    'There is none that may be used.',
  );
  expect(needSentence(need({ shortOnDay: { early: '2026-03-12', median: '2026-03-20' } }), TODAY)).toBe(
    'Likely runs short in 18 days, Fri 20 Mar, perhaps already in 10 days, Thu 12 Mar.',
  );
  const wasted = [{ toolId: 'F-1', useByDay: '2026-05-01', leftMl: 410 }];
  expect(needSentence(need({ endsBy: 'out-of-date', wasted }), TODAY)).toContain('The date comes first');
  expect(purchaseSentence(need(), TODAY)).toBeNull();
  expect(purchaseSentence(need({ orderByDay: '2026-03-01' }), TODAY)).toContain('now');
  const big = need({ containerMl: 5000, smallerContainerMl: 2000, containerMonths: 13 });
  expect(purchaseSentence(big, TODAY)).toContain('keeps 12 months: buy');
});

// source: hand. Hazard statements one to a line, ticked pictograms by name, what is empty stays empty.
it('reads a lot from its form', () => {
  const form = new FormData();
  for (const [name, value] of Object.entries({
    partId: 'oil',
    lot: 'L1',
    'pictogram-GHS07': 'on',
    hazards: ' a \n\nb',
  }))
    form.set(name, value);
  expect(fluidLotOfForm(form)).toMatchObject({
    ...{ partId: 'oil', lot: 'L1', pictograms: ['GHS07'], hazards: ['a', 'b'], signal: null, sdsOnDay: null },
  });
});
