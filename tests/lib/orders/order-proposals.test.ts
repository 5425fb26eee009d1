import { expect, it } from 'vitest';
import { addDays, daysBetween } from '@/lib/calendar/day';
import { LEAD_TIME_PRIOR, leadDaysWithin } from '@/lib/lead-time/lead-time-belief';
import { normalCdf } from '@/lib/numeric/normal';
import { orderProposals, partProposals } from '@/lib/orders/order-proposals';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { exposureOfEnd } from '@/lib/wear/connection-exposure';
import { type StatedFutures, statedDraws } from '../../support/life-draws';
import { lineFacts, orderFacts, setParts, shopRecord, TODAY, toolFacts } from '../../support/shop-record';

const die = setParts().find(({ role }) => role === 'die');
const connection = shopRecord().connections[0];
if (die === undefined || connection === undefined) throw new Error('the set has a die and a size');
const LEAD_DAYS = die.leadTimeDays ?? 0;
const TURNS = exposureOfEnd({ operation: 'thread', connection });
const thread = (change: Parameters<typeof lineFacts>[0]) => lineFacts({ operations: ['thread'], ...change });
const far = { startOnDay: addDays(TODAY, 40), dueOnDay: addDays(TODAY, 50) };
/** One material whose factor makes so many ends of this size cost so many turns; dies of a stated normal life. */
const futures = (factor: number | readonly number[], change: StatedFutures = {}) =>
  statedDraws({ factors: { '316-cw': factor }, parts: { [die.id]: { mean: 1200, used: 0 } }, ...change });
const proposalOf = (facts: ShopFacts, draws: ReturnType<typeof futures>, days = 84) => {
  const found = partProposals(facts, draws, days).find(({ part }) => part.id === die.id);
  if (found === undefined) throw new Error('the die has a proposal');
  return found;
};

/** Worked normal-life arithmetic: P that n new dies of mean 1 200, sd 360 last for so many turns. */
const lastsNormal = (dies: number, turns: number) =>
  dies === 0 ? 0 : normalCdf((dies * 1200 - turns) / (360 * Math.sqrt(dies)));

// source: formula. The worked figures of the trade notes: 120 ends, 2 835 turns with factor 2.5 and 5 % rework, normal lives of
// mean 1 200: 3 dies are enough in 0.89 of the cases, 4 in 0.997, so 4 are ordered; factors of 1.5 to 4 ask for 2 to 5.
it('Q7: as many dies for 120 ends of super duplex as the worked figures say, and as many as the factor leaves open', () => {
  const facts = shopRecord({ lines: [thread({ ends: 120, ...far })] });
  const withTurns = (turns: number) => proposalOf(facts, futures(turns / (120 * TURNS)));
  const worked = withTurns(2835);
  for (const { pieces, stockOut } of worked.byPieces)
    expect(Math.abs(1 - stockOut - lastsNormal(pieces, 2835)), `${pieces} dies`).toBeLessThan(0.02);
  expect(1 - (worked.byPieces[3]?.stockOut ?? 0)).toBeCloseTo(0.89, 1);
  expect(worked.quantity).toBe(4);
  expect(withTurns((2835 * 1.5) / 2.5).quantity).toBe(2);
  expect(withTurns((2835 * 4) / 2.5).quantity).toBe(5);
  const open = proposalOf(facts, futures([1.5, 2, 2.5, 3, 4].map((k) => (2835 * k) / 2.5 / (120 * TURNS))));
  expect(open.totalBand.low).toBeLessThan(worked.totalBand.median);
  expect(open.totalBand.high).toBeGreaterThan(worked.totalBand.median);
});

// source: formula. Three jobs in six weeks, no die: P(running out) with n dies is that of the worked normal sum; the last day to
// order is the start of the first job less the lead time that nine orders in ten keep and the receiving day.
it('Q25: chance of running out for 0 to 4 dies until the shutdown, their cost, and the last day to order', () => {
  const lines = [0, 1, 2].map((n) =>
    thread({
      id: `J-${n}.1`,
      ends: 50,
      startOnDay: addDays(TODAY, 38 + n),
      dueOnDay: addDays(TODAY, 40 + n),
    }),
  );
  const turns = 150 * TURNS;
  const found = proposalOf(shopRecord({ lines }), futures(1), 42);
  expect(found.byPieces.map(({ pieces }) => pieces)).toEqual(expect.arrayContaining([0, 1, 2, 3, 4]));
  for (const { pieces, stockOut } of found.byPieces.slice(0, 5))
    expect(Math.abs(1 - stockOut - lastsNormal(pieces, turns)), `${pieces} dies`).toBeLessThan(0.02);
  expect(found.byPieces[2]?.costMinor).toBe(2 * (die.priceMinor ?? 0) + 2_500);
  const keeps = Math.round(leadDaysWithin(LEAD_TIME_PRIOR, LEAD_DAYS, 0.9)) + 1;
  expect(Math.abs(daysBetween(addDays(TODAY, 38 - keeps), found.orderByOnDay ?? TODAY))).toBeLessThanOrEqual(
    1,
  );
});

// source: formula. Half a year at 8 ends a week is 1 die in six weeks where 8·6 ends cost a life: work beyond the books is a
// Poisson number of dies, so a shop without a plan still keeps one or two.
it('Q25: work that nobody has planned yet is counted at the pace of the log', () => {
  const use = { connectionId: connection.id, materialId: '316-cw', operation: 'thread' as const };
  const recentUse = [{ ...use, ends: 8 * 26, days: 182 }];
  const draws = futures(1200 / (48 * TURNS), { parts: { [die.id]: 1200 } });
  const found = proposalOf(shopRecord({ lines: [], recentUse }), draws, 42);
  expect(found.plannedBand.high).toBe(0);
  expect(found.byPieces[0]?.stockOut).toBeCloseTo(1 - Math.exp(-1), 2);
  expect(found.byPieces[1]?.stockOut).toBeCloseTo(1 - 2 * Math.exp(-1), 2);
});

// A job cancelled frees what it would have taken: the order-by day moves to that of the job behind it, or nothing is ordered.
it('Q29: a cancelled job moves the order-by day', () => {
  const soon = thread({
    id: 'J-1.1',
    ends: 60,
    startOnDay: addDays(TODAY, 50),
    dueOnDay: addDays(TODAY, 55),
  });
  const later = thread({
    id: 'J-2.1',
    jobId: 'J-2',
    ends: 60,
    startOnDay: addDays(TODAY, 70),
    dueOnDay: addDays(TODAY, 75),
  });
  const draws = futures(1);
  const before = proposalOf(shopRecord({ lines: [soon, later] }), draws);
  const after = proposalOf(shopRecord({ lines: [later] }), draws);
  expect(before.lines.map(({ lineId }) => lineId)).toContain('J-1.1');
  expect(after.lines.map(({ lineId }) => lineId)).toEqual(['J-2.1']);
  expect(daysBetween(before.orderByOnDay ?? '', after.orderByOnDay ?? '')).toBe(20);
  expect(orderProposals(shopRecord({ lines: [] }), draws)).toEqual([]);
});

it('proposes nothing for what is here, on order or drafted already', () => {
  const facts = shopRecord({ lines: [thread({ ends: 20, ...far })] });
  const draws = futures(1, { tools: { 'D-38-01': 1e6 }, parts: { [die.id]: 1e6 } });
  expect(proposalOf(facts, draws).quantity).toBe(1);
  expect(proposalOf({ ...facts, tools: [toolFacts({ id: 'D-38-01', role: 'die' })] }, draws).quantity).toBe(
    0,
  );
  const orders = [orderFacts({ id: 'PO-1', partId: die.id, statedOnDay: TODAY })];
  expect(proposalOf({ ...facts, orders }, draws).quantity).toBe(0);
  const drafts = [{ id: 'PO-2', partId: die.id, quantity: 1 }];
  expect(proposalOf({ ...facts, drafts }, draws).quantity).toBe(0);
});

// source: hand. 12 000 at the first supplier, 9 000 at the second, which takes a year: the cheapest that comes in time is the first.
it('takes the cheapest offer that comes in time, and shows the others', () => {
  const slow = {
    ...{ supplier: 'Slow', priceMinor: 9_000, leadTimeDays: 365, packSize: 1, minQuantity: 1 },
    ...{ breakKind: 'all-units' as const, priceBreaks: [] },
  };
  const parts = setParts().map((part) =>
    part.id === die.id ? { ...part, priceMinor: 12_000, offers: [slow] } : part,
  );
  const days = { startOnDay: addDays(TODAY, 80), dueOnDay: addDays(TODAY, 83) };
  const draws = futures(1, { parts: { [die.id]: 1e6 } });
  const found = proposalOf(shopRecord({ parts, lines: [thread({ ends: 20, ...days })] }), draws);
  expect(found.chosen.priceMinor).toBe(12_000);
  expect(found.others.map(({ offer }) => offer.supplier)).toEqual(['Slow']);
});
