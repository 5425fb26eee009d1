import { beforeEach, expect, it } from 'vitest';
import { setGaugeInterval } from '@/db/commands/keep-gauge';
import type { Db } from '@/db/open';
import { endsByGauge, listAcceptedWith, listGaugeUse } from '@/db/queries/gauge-use';
import { listGauges, listGaugesDueByEnds } from '@/db/queries/gauges';
import { readShopFacts } from '@/db/queries/shop-facts';
import { dueStanding } from '@/lib/gauge/due';
import { lapseWarnings } from '@/lib/outlook/lapse-warnings';
import { setItems } from '@/lib/outlook/plan-facts';
import { SetGaugeIntervalInput } from '@/lib/shop/gauge-input';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { ENV, entered, may, must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

const DAY_MS = 86_400_000;
const TODAY = '2026-03-02';
let db: Db;
let accept: ReturnType<typeof acceptSender>['accept'];

beforeEach(() => {
  db = acceptShop();
  accept = acceptSender(db).accept;
});

const goodForEnds = (toolId: string, intervalEnds: number) => {
  const interval = { intervalDays: null, intervalEnds, method: 'in-use', reason: 'a busy ring' };
  const input = SetGaugeIntervalInput.parse({ ...entered(), toolId, ...interval });
  must(setGaugeInterval(db, may('set-gauge-interval'), input, ENV));
};

// source: hand. 3 accepted and 2 refused on one day: 5 gauged, 3 accepted; a gauge not used counts nothing.
it('counts what each gauge was used on, accepted or refused', () => {
  must(accept(3));
  must(accept(2, { gauges: [{ ...GO, verdict: 'fail' }, { ...NG, verdict: 'not-used' }, CONE] }));
  expect(listGaugeUse(db, 'G-56-GO-1')).toEqual([{ toolId: 'G-56-GO-1', onDay: TODAY, ends: 5 }]);
  expect(listGaugeUse(db, 'G-56-NG-1')).toEqual([{ toolId: 'G-56-NG-1', onDay: TODAY, ends: 3 }]);
  expect(listAcceptedWith(db, 'G-56-GO-1')).toEqual([{ onDay: TODAY, atMs: NOW_MS, ends: 3 }]);
  expect(listGaugeUse(db, 'G-56-GO-2')).toEqual([]);
});

// source: hand. What was gauged after the day of the last calibration counts; before it, and once taken back, it does not.
it('counts from the last calibration on', () => {
  const { id } = must(accept(4));
  expect(endsByGauge(db).get('G-56-GO-1')).toBe(4);
  must(sender(db).calibrate('G-56-GO-1', { onDay: TODAY }));
  expect(endsByGauge(db).get('G-56-GO-1')).toBeUndefined();
  expect(endsByGauge(db).get('G-56-NG-1')).toBe(4);
  must(sender(db).reverse(id));
  expect(endsByGauge(db).size).toBe(0);
});

it('due by ends: the register and the plan see it, the day on the sticker notwithstanding', () => {
  goodForEnds('G-56-GO-1', 5);
  must(accept(5));
  expect(listGaugesDueByEnds(db)).toEqual([{ toolId: 'G-56-GO-1', intervalEnds: 5, endsSince: 5 }]);
  const ring = listGauges(db).find(({ id }) => id === 'G-56-GO-1');
  expect(ring && dueStanding(ring, TODAY).standing).toBe('ends-used');
  const items = setItems(readShopFacts(db, { today: TODAY }));
  expect(items.find(({ toolId }) => toolId === 'G-56-GO-1')?.dueOnDay).toBe('2026-03-01');
  expect(items.find(({ toolId }) => toolId === 'G-56-GO-2')?.dueOnDay).toBe('2026-12-31');
});

// source: hand. Due on the 3rd: warned on the 2nd with the twin, good all through the 3rd, refused on the 4th, while cutting goes on.
it('Q13: gauge due tomorrow, job runs three days', () => {
  must(sender(db).calibrate('G-56-GO-1', { onDay: '2026-02-02', dueOnDay: '2026-03-03' }));
  const facts = readShopFacts(db, { today: TODAY });
  const line = facts.lines.map((one) => ({ ...one, startOnDay: TODAY, dueOnDay: '2026-03-04' }));
  expect(lapseWarnings({ ...facts, lines: line })).toMatchObject([
    { toolId: 'G-56-GO-1', usableToDay: '2026-03-03', twinIds: ['G-56-GO-2'] },
  ]);
  const day = (days: number) => [{ gaugedOnDay: `2026-03-0${2 + days}` }, NOW_MS + days * DAY_MS] as const;
  must(accept(1, ...day(1)));
  expect(sentence(accept(1, ...day(2)))).toMatch(/good to the end of 3 Mar 2026/);
  must(accept(1, { ...day(2)[0], gauges: [{ ...GO, toolId: 'G-56-GO-2' }, NG, CONE] }, day(2)[1]));
  must(sender(db).cut('D-56-01', 2, {}, { nowMs: NOW_MS + 2 * DAY_MS }));
});
