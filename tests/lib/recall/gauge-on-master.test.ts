import { expect, it } from 'vitest';
import { gaugeOnMaster } from '@/lib/recall/gauge-on-master';

const noon = (day: string) => Date.parse(`${day}T12:00:00Z`);
const at = (onDay: string) => ({ onDay, atMs: noon(onDay) });
const NOW = at('2026-06-20');
const plug = {
  ...{ id: 'SP-1.R1', gaugeId: 'SP-1', foundOnDay: '2026-06-10' },
  ...{ evidenceOnDay: '2026-01-10', windowFromMs: noon('2026-01-10'), windowToMs: noon('2026-06-10') },
};
const other = { ...plug, id: 'SP-2.R1', gaugeId: 'SP-2' };
type Found = 'in' | 'out' | 'not-taken';
const check = (onDay: string, againstToolId: string, found: 'in' | 'out' = 'in') => ({
  ...{ entryId: `check ${onDay}`, kind: 'interim' as const, ...at(onDay), qualifies: true },
  ...{ asFound: found as Found, asLeft: found, againstToolId: againstToolId as string | null },
});
const certificate = (onDay: string, asFound: Found, asLeft: 'in' | 'out' = 'in') => ({
  ...{ entryId: `certificate ${onDay}`, kind: 'calibration' as const, ...at(onDay), qualifies: true },
  ...{ asFound, asLeft, againstToolId: null as string | null },
});
const stands = (list: (ReturnType<typeof check> | ReturnType<typeof certificate>)[], recalls = [plug]) => {
  const { standing, until, count } = gaugeOnMaster(list, plug, recalls, NOW) ?? {};
  return [standing, until?.onDay, count];
};

// source: hand. Each history read by a person: does anything but the plug show since that the ring was good?
it('is in doubt until something else finds it good', () => {
  const onPlug = check('2026-03-03', 'SP-1');
  expect(stands([certificate('2026-02-01', 'in'), onPlug])).toEqual(['in-doubt', NOW.onDay, 1]);
  expect(stands([onPlug, certificate('2026-05-01', 'in')])[0]).toBe('cleared');
  expect(stands([onPlug, check('2026-05-01', 'SP-2')])[0]).toBe('cleared');
  expect(stands([onPlug, check('2026-05-01', 'SP-2')], [plug, other])[0], 'that one is out too').toBe(
    'in-doubt',
  );
  expect(stands([certificate('2026-05-01', 'in'), check('2026-05-09', 'SP-1')])[0]).toBe('in-doubt');
});

it('one left good without a word on how it came ends the doubt there, and does not clear what was before', () => {
  const onPlug = check('2026-03-03', 'SP-1');
  const silent = certificate('2026-05-01', 'not-taken');
  expect(stands([onPlug, silent, check('2026-06-01', 'SP-2')])).toEqual(['in-doubt', '2026-05-01', 1]);
  expect(stands([onPlug, certificate('2026-05-02', 'out')])).toEqual(['in-doubt', '2026-05-02', 1]);
});

it('one that only failed on it may have been good; one never on it in that time is no matter', () => {
  expect(stands([check('2026-03-03', 'SP-1', 'out')])[0]).toBe('not-passed');
  expect(stands([check('2026-03-03', 'SP-1', 'out'), check('2026-03-04', 'SP-1')])).toEqual([
    ...['in-doubt', NOW.onDay, 2],
  ]);
  expect(gaugeOnMaster([check('2025-03-03', 'SP-1')], plug, [plug], NOW)).toBeUndefined();
});
