import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isInDate } from '@/lib/gauge/due';
import { evolveTool } from '@/lib/ledger/tool-history';
import { gaugeCalibrated } from '@/lib/ledger/tool-step/calibration';
import type { Calibration } from '@/lib/shop/calibration';
import { must, sentence } from '../../../support/db';
import { entry, ISSUE, move, toolAfter } from '../../../support/entry';

const passed = { onDay: '2026-03-02', result: 'pass', dueOnDay: '2027-03-01', certificate: '' } as const;
const calibrated = entry('gauge-calibrated', 'T-1', passed);
const calibratedAs = (over = {}) => entry('gauge-calibrated', 'T-1', { ...passed, ...over });

it('passed: due on the new day; back from calibration it is in the crib, elsewhere it stays', () => {
  const states = [toolAfter('go-ring', move('calibration')), toolAfter('go-ring', ISSUE)].map((tool) => {
    const { state, dueOnDay } = must(gaugeCalibrated(tool, passed, calibrated));
    return [state, dueOnDay];
  });
  expect(states).toEqual([
    ['in-crib', '2027-03-01'],
    ['issued', '2027-03-01'],
  ]);
});

it('failed: quarantined, and due never', () => {
  const failed = { ...passed, result: 'fail', dueOnDay: null } as const;
  expect(must(gaugeCalibrated(toolAfter('go-ring'), failed, calibrated))).toMatchObject({
    ...{ state: 'quarantined', dueOnDay: null },
  });
});

it('what is not a gauge is not calibrated', () => {
  expect(sentence(gaugeCalibrated(toolAfter('brush'), passed, calibrated))).toBe(
    'T-1 is not kept under calibration.',
  );
});

it('what an old entry does not state stays unknown: no word on how it was found', () => {
  const { evidence } = toolAfter('go-ring', calibrated);
  expect(evidence).toMatchObject([
    { kind: 'calibration', asFound: 'not-taken', asLeft: 'in', qualifies: true },
  ]);
  const failed = toolAfter('go-ring', calibratedAs({ result: 'fail', dueOnDay: null }));
  expect(failed.evidence).toMatchObject([{ asFound: 'out', asLeft: 'out' }]);
});

it('found out of limits it is set aside, though it was adjusted and passed', () => {
  const tool = toolAfter('go-ring', ISSUE, calibratedAs({ asFound: 'out', adjusted: true }));
  expect(tool).toMatchObject({ state: 'quarantined', dueOnDay: '2027-03-01', holderId: null });
  expect(tool.evidence.at(-1)).toMatchObject({ asFound: 'out', asLeft: 'in' });
});

it('no calibration is good for longer than the interval, which is set first', () => {
  const interval = { intervalDays: 300, intervalEnds: 500, method: 'in-use' } as const;
  const tool = toolAfter('go-ring', entry('gauge-interval-set', 'T-1', interval));
  expect(sentence(gaugeCalibrated(tool, passed, calibrated))).toBe(
    'Its interval is 300 days, so it is due by 2026-12-27. A longer one is set first, with a name and a reason.',
  );
  expect(must(gaugeCalibrated(tool, { ...passed, dueOnDay: '2026-12-27' }, calibrated)).dueOnDay).toBe(
    '2026-12-27',
  );
});

const byDay = (over: Partial<Calibration>, id = 'entry-by-day') =>
  entry('gauge-calibrated', 'T-1', { ...passed, takesHold: 'by-day', ...over }, { id });

// source: hand. The newest certificate is that of 2 March 2026; the other is from the year before.
it('an old certificate filed late is history: due day, as-left and place stay', () => {
  const old = { onDay: '2025-03-02', dueOnDay: '2026-03-01' };
  const now = byDay({}, 'entry-now');
  const away = toolAfter('go-ring', now, move('calibration'), byDay(old));
  expect(away).toMatchObject({ state: 'calibration', dueOnDay: '2027-03-01' });
  expect(away.evidence).toHaveLength(2);
  const bad = toolAfter('go-ring', now, ISSUE, byDay({ ...old, result: 'fail', dueOnDay: null }));
  expect(bad).toMatchObject({ state: 'issued', dueOnDay: '2027-03-01' });
  const interval = entry('gauge-interval-set', 'T-1', {
    intervalDays: 364,
    intervalEnds: null,
    method: 'shorter',
  });
  expect(toolAfter('go-ring', now, byDay({ ...old, dueOnDay: '2026-12-31' }), interval).dueOnDay).toBe(
    '2027-03-01',
  );
});

it('one from before a knock does not clear it; one since does', () => {
  const knock = entry('gauge-dropped', 'T-1', { onDay: '2026-03-05' });
  const before = toolAfter('go-ring', knock, byDay({}));
  expect(before).toMatchObject({ state: 'quarantined', dropped: { onDay: '2026-03-05' } });
  expect(toolAfter('go-ring', knock, byDay({ onDay: '2026-03-06' }))).toMatchObject({
    ...{ state: 'in-crib', dropped: null },
  });
});

it('a newer certificate that leaves it good ends what an older one set aside, and nothing else', () => {
  const failed = byDay({ result: 'fail', dueOnDay: null }, 'entry-failed');
  const newer = byDay({ onDay: '2026-03-09', asFound: 'in' }, 'entry-newer');
  expect(toolAfter('go-ring', failed, newer)).toMatchObject({ state: 'in-crib', dueOnDay: '2027-03-01' });
  const byHand = entry('tool-moved', 'T-1', { to: 'quarantined', backOnDay: null }, { id: 'entry-by-hand' });
  expect(toolAfter('go-ring', byHand, failed, newer).state).toBe('quarantined');
});

const certificate = fc.record({
  result: fc.constantFrom('pass' as const, 'pass' as const, 'fail' as const),
  asFound: fc.constantFrom('in' as const, 'out' as const, 'not-taken' as const),
  validDays: fc.integer({ min: 1, max: 900 }),
});
const DAYS = Array.from({ length: 9 }, (_, i) => Date.UTC(2024, 0, 5) + i * 97 * 86_400_000);
const dayText = (ms: number) => new Date(ms).toISOString().slice(0, 10);

// source: identity. The order of entry is no fact about the gauge: any order gives what the order of the days gives.
it('any order of entry gives the same standing', () => {
  const starts = {
    crib: [],
    calibration: [move('calibration')],
    knocked: [entry('gauge-dropped', 'T-1', { onDay: '2024-08-01' })],
  };
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.nat(DAYS.length - 1), { minLength: 1, maxLength: 6 }),
      fc.array(certificate, { minLength: 6, maxLength: 6 }),
      fc.constantFrom(...(Object.keys(starts) as (keyof typeof starts)[])),
      fc.boolean(),
      (days, certificates, start, held) => {
        const entries = days.map((at, i) => {
          const { result, asFound, validDays } = certificates[i] as (typeof certificates)[number];
          const ms = DAYS[at] as number;
          const dueOnDay = result === 'fail' ? null : dayText(ms + validDays * 86_400_000);
          return byDay({ onDay: dayText(ms), result, asFound, dueOnDay }, `entry-of-day-${at}`);
        });
        const filed = (list: typeof entries) => {
          const first = toolAfter('go-ring', ...(start === 'crib' && held ? [ISSUE] : starts[start]));
          const tool = list.reduce((one, next) => must(evolveTool(one, next)), first);
          const { dueOnDay, state, dropped } = tool;
          const usable = state === 'in-crib' || state === 'issued';
          const inDate = isInDate({ dueOnDay, interval: null, endsSince: 0 }, '2026-01-01');
          return { dueOnDay, usable, away: state === 'calibration', dropped: dropped !== null, inDate };
        };
        const inOrder = entries.toSorted((a, b) => (a.id < b.id ? -1 : 1));
        expect(filed(entries)).toEqual(filed(inOrder));
        const newest = inOrder.at(-1)?.payload as Calibration;
        expect(filed(entries).dueOnDay).toBe(newest.dueOnDay);
      },
    ),
    { numRuns: 1000 },
  );
});
