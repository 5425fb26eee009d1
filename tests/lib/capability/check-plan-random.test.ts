import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween } from '@/lib/calendar/day';
import { checkPlan, type PlanInput } from '@/lib/capability/check-plan';
import type { LineVerdict, Verdict } from '@/lib/capability/line-verdict';
import type { Arrival, PlanLine, SetItem } from '@/lib/capability/plan-input';
import { statedDraws } from '../../support/life-draws';
import { completeSet, plan, planLine, setItem } from '../../support/plan-shop';
import { slowVerdicts } from '../../support/slow-plan';

/** Sizes S, T and U; pieces that fit one, two or all of them, so that reaches nest in some plans and cross in others. */
const fitting = fc.constantFrom(['S'], ['T'], ['U'], ['S', 'T'], ['T', 'U'], ['S', 'U'], ['S', 'T', 'U']);
const day = (n: number) => addDays('2026-03-02', n);
const lives = fc.array(fc.integer({ min: 0, max: 45 }), { minLength: 6, maxLength: 6 });

const line = fc
  .record({
    start: fc.integer({ min: 0, max: 14 }),
    days: fc.integer({ min: 0, max: 6 }),
    connectionId: fc.constantFrom('S', 'T', 'U'),
    materialId: fc.constantFrom('M', 'N'),
    endsToMake: fc.integer({ min: 1, max: 6 }),
    thread: fc.integer({ min: 1, max: 4 }),
    cone: fc.integer({ min: 1, max: 4 }),
    ahead: fc.constantFrom('none', 'none', 'cone', 'thread'),
    endsAhead: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ start, days, thread, cone, ahead, endsAhead, ...rest }): Partial<PlanLine> => {
    const dates = { startOnDay: day(start), dueOnDay: day(start + days) };
    const behind = rest.endsToMake;
    const cutsLeft = { cone: behind, thread: behind };
    if (ahead !== 'none') cutsLeft[ahead] = Math.max(1, behind - endsAhead);
    return { ...rest, ...dates, cutsLeft, exposurePerEnd: { thread, cone }, fluidMlPerEnd: 0 };
  });

const piece = fc
  .record({
    role: fc.constantFrom('die', 'die', 'blade', 'go-ring'),
    fitsConnectionIds: fitting,
    hand: fc.constantFrom('LH', 'LH', 'LH', 'RH'),
    standing: fc.constantFrom('in-crib', 'in-crib', 'in-crib', 'in-crib', 'quarantined', 'back', 'first-off'),
    back: fc.integer({ min: 1, max: 18 }),
    due: fc.integer({ min: 8, max: 40 }),
    life: lives,
  })
  .map(({ role, standing, back, due, life, hand, fitsConnectionIds }) => {
    const state = standing === 'quarantined' ? standing : standing === 'back' ? 'issued' : 'in-crib';
    const item = setItem(role as SetItem['role'], {
      fitsConnectionIds,
      hand: hand as 'LH' | 'RH',
      state,
      dueOnDay: day(due),
      ...(standing === 'back' ? { backOnDay: day(back) } : {}),
      needsFirstOff: standing === 'first-off',
    });
    return { item, life };
  });

/** Days from today on which an order comes in a draw: past, in the plan, or never. */
const comesInDays = fc.oneof(
  { weight: 9, arbitrary: fc.integer({ min: -2, max: 20 }) },
  { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
);

const order = fc
  .record({
    role: fc.constantFrom('die', 'blade'),
    fitsConnectionIds: fitting,
    on: fc.integer({ min: 0, max: 18 }),
    quantity: fc.integer({ min: 1, max: 2 }),
    drawn: fc.option(fc.array(comesInDays, { minLength: 6, maxLength: 6 })),
  })
  .map(({ role, on, drawn, ...rest }): Omit<Arrival, 'orderId'> => {
    return {
      ...rest,
      ...(drawn === null ? {} : { arrivalDayDraws: drawn }),
      role: role as 'die' | 'blade',
      partId: `part-${role}`,
      hand: 'LH',
      expectedOnDay: day(on),
    };
  });

const anyPlan = fc
  .record({
    lines: fc.array(line, { minLength: 1, maxLength: 5 }),
    pieces: fc.array(piece, { minLength: 3, maxLength: 10 }),
    orders: fc.array(order, { maxLength: 2 }),
    newLives: fc.record({ die: lives, blade: lives }),
  })
  .map((drawn) => buildPlan(drawn));

function buildPlan({
  lines,
  pieces,
  orders,
  newLives,
}: {
  lines: Partial<PlanLine>[];
  pieces: { item: SetItem; life: number[] }[];
  orders: Omit<Arrival, 'orderId'>[];
  newLives: { die: number[]; blade: number[] };
}): PlanInput {
  const named = pieces.map(({ item, life }, i) => ({ item: { ...item, toolId: `P${i}` }, life }));
  const abound = Array.from({ length: 6 }, (_, n) =>
    completeSet()
      .filter(({ role }) => role !== 'die' && role !== 'blade' && role !== 'go-ring')
      .map((item): SetItem => ({ ...item, toolId: `${item.toolId}-${n}`, fitsConnectionIds: 'all' })),
  ).flat();
  return plan({
    lines: lines.map((change, i) => planLine({ lineId: `L${i}`, ...change })),
    connections: ['S', 'T', 'U'].map((connectionId) => ({ connectionId, hand: 'LH' })),
    items: [...abound, ...named.map(({ item }) => item)],
    arrivals: orders.map((drawn, i) => ({ ...drawn, orderId: `PO-${i}` })),
    draws: statedDraws({
      drawCount: 6,
      tools: Object.fromEntries(named.map(({ item, life }) => [item.toolId, life])),
      parts: { 'part-die': newLives.die, 'part-blade': newLives.blade },
      factors: { M: 1, N: [1, 2, 1, 3, 1, 2] },
    }),
  });
}

function gist({ lineId, verdict, pMade, canCut, canAccept }: LineVerdict) {
  return { lineId, verdict, pMade, canCut, canAccept };
}

const ORDER: readonly Verdict[] = ['cannot-make-now', 'at-risk', 'can-make'];

describe('checkPlan on random plans', () => {
  // source: formula. Smallest cut over all subsets of lines, and every assignment tried (tests/support/slow-plan.ts).
  it('agrees with the slow check: verdict, share of futures, can cut, can accept', () => {
    let said = new Set<string>();
    fc.assert(
      fc.property(anyPlan, (input) => {
        const got = checkPlan(input);
        expect(got.map(gist)).toEqual(slowVerdicts(input));
        said = new Set([...said, ...got.map(({ verdict }) => verdict)]);
      }),
      { numRuns: 700, seed: 11 },
    );
    expect(said.size).toBe(3);
  });

  // source: identity. Nothing in a shop is in any order.
  it('does not depend on the order of lines, tools, orders and connections', () => {
    fc.assert(
      fc.property(anyPlan, (input) => {
        const turned = {
          ...input,
          lines: [...input.lines].reverse(),
          items: [...input.items].reverse(),
          arrivals: [...input.arrivals].reverse(),
          connections: [...input.connections].reverse(),
        };
        expect(checkPlan(turned)).toEqual(checkPlan(input));
      }),
      { numRuns: 300, seed: 12 },
    );
  });

  // source: identity. Safe ends reach the line's ends exactly when the required share of futures does.
  it('safe ends and P(line made) never contradict each other', () => {
    fc.assert(
      fc.property(anyPlan, (input) => {
        for (const { lineId, pMade, safeEnds, likelyEnds } of checkPlan(input)) {
          const wanted = input.lines.find((l) => l.lineId === lineId)?.endsToMake ?? 0;
          expect((safeEnds ?? 0) >= wanted).toBe(pMade >= 0.9);
          expect((likelyEnds ?? 0) >= wanted).toBe(pMade >= 0.5);
          expect(safeEnds ?? 0).toBeLessThanOrEqual(likelyEnds ?? 0);
        }
      }),
      { numRuns: 300, seed: 13 },
    );
  });

  // source: formula. Supply and demand of a transport problem are complements (Shapley 1962).
  it('another tool in the crib worsens no line, save after a stopped line that it sets going', () => {
    let helped = 0;
    let setGoing = 0;
    fc.assert(
      fc.property(anyPlan, piece, (input, { item, life }) => {
        const added = {
          ...item,
          toolId: 'ADDED',
          state: 'in-crib' as const,
          needsFirstOff: false,
          hand: 'LH' as const,
        };
        const { residualLife } = input.draws;
        const draws = {
          ...input.draws,
          residualLife: (id: string) => (id === 'ADDED' ? Float64Array.from(life) : residualLife(id)),
        };
        const before = checkPlan(input);
        const after = checkPlan({ ...input, draws, items: [...input.items, added] });
        const going = before.findIndex((line, i) => stopped(line) && !stopped(after[i]));
        if (going >= 0) setGoing++;
        after.slice(0, going < 0 ? after.length : going + 1).forEach((line, i) => {
          expect(rankOf(line)).toBeGreaterThanOrEqual(rankOf(before[i]));
          expect(line.pMade).toBeGreaterThanOrEqual(before[i]?.pMade ?? 0);
          if (rankOf(line) > rankOf(before[i])) helped++;
        });
      }),
      { numRuns: 900, seed: 14 },
    );
    expect(helped).toBeGreaterThan(50);
    expect(setGoing).toBeGreaterThan(50);
  });

  /** The order on the plan once with late days and once with days that are each as early or earlier. */
  function slippedAndOnTime(input: PlanInput, drawn: Omit<Arrival, 'orderId'>, days: readonly number[]) {
    const late = Array.from({ length: 6 }, (_, k) => drawn.arrivalDayDraws?.[k] ?? 14);
    const early = late.map((day, k) => day - (days[k] as number));
    return [late, early].map((arrivalDayDraws) =>
      checkPlan({ ...input, arrivals: [...input.arrivals, { ...drawn, orderId: 'PO-9', arrivalDayDraws }] }),
    );
  }

  // source: formula. An earlier day only adds to what a line can reach. Lines after it are another matter: what comes in
  // time for a line is its own, and those after it may have less (the first line to gain is the exception that is stated).
  it('an order that comes earlier in some draws never worsens the first line that waits for it; a slip never helps it', () => {
    let moved = 0;
    const sooner = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(anyPlan, order, sooner, (input, drawn, days) => {
        const [slipped = [], onTime = []] = slippedAndOnTime(input, drawn, days);
        const sizeOf = (lineId: string) => input.lines.find((l) => l.lineId === lineId)?.connectionId ?? '';
        const fits = drawn.fitsConnectionIds;
        const first = onTime.findIndex(({ lineId }) => fits === 'all' || fits.includes(sizeOf(lineId)));
        onTime.slice(0, first + 1).forEach((line, i) => {
          expect(rankOf(line)).toBeGreaterThanOrEqual(rankOf(slipped[i]));
          expect(line.pMade).toBeGreaterThanOrEqual(slipped[i]?.pMade ?? 0);
          if (line.pMade > (slipped[i]?.pMade ?? 0)) moved++;
        });
      }),
      { numRuns: 900, seed: 15 },
    );
    expect(moved).toBeGreaterThan(40);
  });

  // source: identity. A day drawn alike in every draw is a day.
  it('an order drawn alike in every draw is the same as one with that day', () => {
    fc.assert(
      fc.property(anyPlan, (input) => {
        const dated = input.arrivals.map(({ arrivalDayDraws: _, ...rest }) => rest);
        const drawn = dated.map((one) => ({
          ...one,
          arrivalDayDraws: Array.from({ length: 6 }, () => daysBetween(input.today, one.expectedOnDay)),
        }));
        const gists = (arrivals: Arrival[]) => checkPlan({ ...input, arrivals }).map(gist);
        expect(gists(drawn)).toEqual(gists(dated));
      }),
      { numRuns: 300, seed: 16 },
    );
  });
});

function rankOf(line: LineVerdict | undefined): number {
  return line === undefined ? -1 : ORDER.indexOf(line.verdict);
}

function stopped(line: LineVerdict | undefined): boolean {
  return (
    line?.blockers.some(({ hard, phase, clearsOnDay }) => hard && phase === 'cut' && clearsOnDay === null) ??
    false
  );
}
