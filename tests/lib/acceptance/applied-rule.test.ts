import { expect, it } from 'vitest';
import { appliedRule, exposedThreadsRule, ruleText } from '@/lib/acceptance/applied-rule';
import { AcceptanceRuleSchema } from '@/lib/shop/acceptance-rule';

const rule = (notGoTurnsMax: number | null, whose: string) =>
  AcceptanceRuleSchema.parse({ notGoTurnsMax, whose });

// source: hand. The job goes before the size table, the size table before the shop.
it('the nearest written rule holds, and says where it is written', () => {
  const job = rule(1, 'drawing 4471');
  const shop = rule(2, 'instruction 7');
  expect(appliedRule({ job, sizeNotGoTurnsMax: 3, shop })).toEqual({
    notGoTurnsMax: 1,
    whose: 'drawing 4471',
    source: 'job',
  });
  expect(appliedRule({ job: undefined, sizeNotGoTurnsMax: 3, shop })?.source).toBe('size');
  expect(appliedRule({ job: undefined, sizeNotGoTurnsMax: null, shop })?.source).toBe('shop');
  expect(appliedRule({ job: rule(null, 'silent'), sizeNotGoTurnsMax: null, shop })?.source).toBe('shop');
});

// source: published. ASME B1.2 as quoted in gauging notes leaves the limit to the parties: without one there is none.
it('nobody may assume a rule where none is written', () => {
  expect(appliedRule({ job: undefined, sizeNotGoTurnsMax: null, shop: undefined })).toBeNull();
  expect(appliedRule({ job: undefined, sizeNotGoTurnsMax: 0, shop: undefined })?.notGoTurnsMax).toBe(0);
});

// source: hand. Common practice 1 to 2 where nothing is written.
it('exposed threads: as the job says, else the shop, else one to two', () => {
  const job = AcceptanceRuleSchema.parse({
    notGoTurnsMax: null,
    whose: 'drawing',
    exposedThreadsMin: 2,
    exposedThreadsMax: 3,
  });
  expect(exposedThreadsRule({ job, shop: rule(2, 'x') })).toEqual({ min: 2, max: 3 });
  expect(exposedThreadsRule({ job: undefined, shop: undefined })).toEqual({ min: 1, max: 2 });
});

// source: hand.
it('says whose rule it is', () => {
  expect(ruleText({ notGoTurnsMax: 1, whose: 'the size table', source: 'size' })).toBe(
    '1 turn by the size table',
  );
  expect(ruleText({ notGoTurnsMax: 2, whose: 'QA', source: 'shop' })).toBe(
    '2 turns by QA, written in the shop’s settings',
  );
});
