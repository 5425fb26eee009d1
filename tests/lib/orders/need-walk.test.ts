import fc from 'fast-check';
import { expect, it } from 'vitest';
import { normalCdf } from '@/lib/numeric/normal';
import { type NeedLine, type NeedSource, walkNeed } from '@/lib/orders/need-walk';
import { statedDraws } from '../../support/life-draws';

const ones = (count: number) => new Float64Array(count).fill(1);
const line = (change: Partial<NeedLine> & Pick<NeedLine, 'lineId' | 'amount'>, drawCount = 1): NeedLine => ({
  ...{ startInDays: 0, dueInDays: 10, weights: ones(drawCount), part: 0 },
  ...change,
});
const source = (life: number, change: Partial<NeedSource> = {}): NeedSource => ({
  ...{ serves: [0, 1], freeInDays: 0, life: Float64Array.of(life) },
  ...change,
});
const walk = (lines: readonly NeedLine[], sources: readonly NeedSource[], life = 100) =>
  walkNeed({ lines, sources, partCount: 1, drawCount: 1, newLife: () => Float64Array.of(life) });

// source: hand. 150 in hand; the first line takes 100, the second 130: short after 50 of 130, day 20 + 10·50/130; the new
// edge of 100 leaves 20.
it('uses up what is here, then begins a new edge on the day that it runs out', () => {
  const lines = [
    line({ lineId: 'a', amount: 100 }),
    line({ lineId: 'b', amount: 130, startInDays: 20, dueInDays: 30 }),
  ];
  const found = walk(lines, [source(150)]);
  expect(found.shortDays[0]?.[0]).toBe(Number.POSITIVE_INFINITY);
  expect(found.shortDays[1]?.[0]).toBeCloseTo(20 + (10 * 50) / 130, 12);
  expect(found.parts[0]?.needDays).toHaveLength(1);
  expect(found.parts[0]?.leftOver[0]).toBeCloseTo(20, 12);
});

// source: hand. An order that comes on day 12 is too late for a line due on day 10, and there for one due on day 30.
it('counts what is on its way for the lines that it comes in time for', () => {
  const lines = [
    line({ lineId: 'a', amount: 50 }),
    line({ lineId: 'b', amount: 50, startInDays: 20, dueInDays: 30 }),
  ];
  const found = walk(lines, [source(100, { freeInDays: Int32Array.of(12) })]);
  expect([found.shortDays[0]?.[0], found.shortDays[1]?.[0]]).toEqual([0, Number.POSITIVE_INFINITY]);
  expect(found.parts[0]?.needDays).toHaveLength(1);
});

// source: formula. Worked normal lives of the trade notes (Q3): a die of mean 1 200 turns, sd 360, with 600 behind it; job 41
// takes 506 turns, job 44 then 360. P(41) = S(1106)/S(600) = 0.63, P(both) = S(1466)/S(600) = 0.24.
it('Q3: without the order that slipped, each job is as sure as the worked figures say', () => {
  const drawCount = 2048;
  const draws = statedDraws({ drawCount, tools: { D: { mean: 1200, used: 600 } } });
  const life = draws.residualLife('D') ?? new Float64Array();
  const weights = ones(drawCount);
  const found = walkNeed({
    lines: [
      line({ lineId: 'J-41', amount: 506, weights }),
      line({ lineId: 'J-44', amount: 360, weights, startInDays: 14, dueInDays: 20 }),
    ],
    sources: [{ serves: [0, 1], freeInDays: 0, life }],
    ...{ partCount: 1, drawCount },
    newLife: () => new Float64Array(drawCount).fill(1e6),
  });
  const survive = (turns: number) => 1 - normalCdf((turns - 1200) / 360);
  const made = (i: number) => 1 - (found.shortDays[i]?.filter(Number.isFinite).length ?? 0) / drawCount;
  expect(made(0)).toBeCloseTo(survive(1106) / survive(600), 2);
  expect(made(0)).toBeCloseTo(0.63, 2);
  // A new edge begun for job 41 does job 44 too: the futures in which either runs short are those that do not make both.
  const both = made(0) + made(1) - 1;
  expect(both).toBeCloseTo(survive(1466) / survive(600), 2);
  expect(survive(1466) / survive(600)).toBeCloseTo(0.24, 2);
});

// More life in hand never asks for more new edges, nor sooner; more work never for fewer.
it('is monotone in what is here and in what is asked', () => {
  const amount = fc.integer({ min: 1, max: 400 });
  fc.assert(
    fc.property(fc.array(amount, { minLength: 1, maxLength: 6 }), amount, amount, (amounts, a, b) => {
      const lines = amounts.map((of, i) =>
        line({ lineId: String(i), amount: of, startInDays: 5 * i, dueInDays: 5 * i + 4 }),
      );
      const serves = lines.map((_, i) => i);
      const few = walk(lines, [source(Math.min(a, b), { serves })]);
      const many = walk(lines, [source(Math.max(a, b), { serves })]);
      const days = (found: typeof few) => found.parts[0]?.needDays.map((piece) => piece[0] as number) ?? [];
      expect(days(many).length).toBeLessThanOrEqual(days(few).length);
      days(many).forEach((day, n) => {
        expect(day).toBeGreaterThanOrEqual((days(few)[n] ?? Number.NaN) - 1e-9);
      });
      const total = amounts.reduce((sum, of) => sum + of, 0);
      expect(days(few)).toHaveLength(Math.max(0, Math.ceil((total - Math.min(a, b)) / 100 - 1e-9)));
    }),
  );
});

/** A shop of one part: lines of some size and day, a tool, and orders with days and lives per draw. */
const DRAWS = 8;
const perDraw = (max: number) =>
  fc.array(fc.integer({ min: 0, max }), { minLength: DRAWS, maxLength: DRAWS });
const shopOfOnePart = fc.record({
  lines: fc.array(
    fc.record({
      amount: fc.integer({ min: 1, max: 300 }),
      start: fc.integer({ min: 0, max: 40 }),
      days: fc.integer({ min: 0, max: 12 }),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  tool: perDraw(150),
  orders: fc.array(fc.record({ days: perDraw(50), pieces: fc.integer({ min: 1, max: 2 }) }), {
    minLength: 1,
    maxLength: 3,
  }),
  lives: fc.array(fc.integer({ min: 20, max: 160 }), { minLength: 16, maxLength: 16 }),
});
type OnePart = typeof shopOfOnePart extends fc.Arbitrary<infer T> ? T : never;

function needOfShop({ lines, tool, orders, lives }: OnePart) {
  const queue = lines
    .map(({ amount, start, days }, i) =>
      line({ lineId: String(i), amount, startInDays: start, dueInDays: start + days, weights: ones(DRAWS) }),
    )
    .sort((a, b) => a.startInDays - b.startInDays || a.dueInDays - b.dueInDays);
  const serves = queue.map((_, i) => i);
  const sources: NeedSource[] = [
    { serves, freeInDays: 0, life: Float64Array.from(tool) },
    ...orders.map(({ days, pieces }) => ({
      ...{ serves, freeInDays: Float64Array.from(days), life: new Float64Array(DRAWS) },
      fresh: { part: 0, pieces },
    })),
  ];
  const newLife = (_: number, n: number) =>
    Float64Array.from({ length: DRAWS }, (_life, k) => lives[(n * 3 + k) % lives.length] as number);
  const { parts } = walkNeed({ lines: queue, sources, partCount: 1, drawCount: DRAWS, newLife });
  return Array.from(
    { length: DRAWS },
    (_, k) => parts[0]?.needDays.filter((days) => Number.isFinite(days[k])).length ?? 0,
  );
}

// source: identity. Fresh edges are dealt out in the order in which they are begun, so an order decides only which of them
// must be bought.
it('never needs more when an order comes earlier', () => {
  fc.assert(
    fc.property(shopOfOnePart, perDraw(30), fc.nat(2), (shop, sooner, which) => {
      const at = which % shop.orders.length;
      const earlier = shop.orders.map((order, i) =>
        i === at ? { ...order, days: order.days.map((day, k) => day - (sooner[k] ?? 0)) } : order,
      );
      const before = needOfShop(shop);
      needOfShop({ ...shop, orders: earlier }).forEach((pieces, k) => {
        expect(pieces).toBeLessThanOrEqual(before[k] as number);
      });
    }),
    { numRuns: 500 },
  );
});

// source: identity. As above.
it('never needs more, and at most as many fewer, when one more is on order', () => {
  fc.assert(
    fc.property(shopOfOnePart, fc.nat(2), (shop, which) => {
      const at = which % shop.orders.length;
      const more = shop.orders.map((order, i) => (i === at ? { ...order, pieces: order.pieces + 1 } : order));
      const before = needOfShop(shop);
      needOfShop({ ...shop, orders: more }).forEach((pieces, k) => {
        expect(pieces).toBeLessThanOrEqual(before[k] as number);
        expect(pieces).toBeGreaterThanOrEqual((before[k] as number) - 1);
      });
    }),
    { numRuns: 500 },
  );
});

// source: hand. Two on order: the first line takes one on its first day and leaves 20; the second, due before the other
// order comes, buys one on the day on which these 20 are gone: 20 + 10·20/100.
it('begins pieces on order from the day on which they come', () => {
  const lines = [
    line({ lineId: 'a', amount: 80 }),
    line({ lineId: 'b', amount: 100, startInDays: 20, dueInDays: 30 }),
  ];
  const order = (day: number): NeedSource => ({
    ...source(0, { freeInDays: day }),
    fresh: { part: 0, pieces: 1 },
  });
  const found = walk(lines, [order(0), order(30)]);
  expect(found.parts[0]?.needDays.map((days) => days[0])).toEqual([expect.closeTo(22, 9)]);
  // Bought: 100 less the 80 that the line still wanted; and the one on order, not begun.
  expect(found.parts[0]?.leftOver[0]).toBeCloseTo(120, 9);
});

// source: hand. It comes on day 5 of a line from day 0 to 10: with nothing there on day 0 the line is not begun.
it('does not begin a line with what comes in the middle of it', () => {
  const lines = [line({ lineId: 'a', amount: 50 })];
  const late = source(100, { freeInDays: 5 });
  expect(walk(lines, [late]).shortDays[0]?.[0]).toBe(0);
  expect(walk(lines, [source(10), late]).shortDays[0]?.[0]).toBe(Number.POSITIVE_INFINITY);
});

// source: hand. A blade of 50 that a regrind gives 40 more, 15 days away. Line a, days 0 to 10, takes 50 and wears it out on day 10: back on
// day 25, in time to begin no line on day 20, and for b, days 30 to 40, which takes 60: 40 of it, then a new one on day 30 + 10·40/60.
it('counts a regrind from the day on which the blade comes back', () => {
  const again = { afterDays: 15, lives: [Float64Array.of(40)] };
  const a = line({ lineId: 'a', amount: 50 });
  const b = line({ lineId: 'b', amount: 60, startInDays: 30, dueInDays: 40 });
  const found = walk([a, b], [source(50, { again })]);
  expect(found.parts[0]?.needDays.map(([day]) => day)).toEqual([expect.closeTo(30 + (10 * 40) / 60, 12)]);
  const early = line({ lineId: 'b', amount: 60, startInDays: 20, dueInDays: 24 });
  expect(walk([a, early], [source(50, { again })]).parts[0]?.needDays.map(([day]) => day)).toEqual([20]);
  expect(walk([a, b], [source(50)]).parts[0]?.needDays.map(([day]) => day)).toEqual([30]);
});

// source: identity. Regrinds to come never raise the need, whatever they give and however long they take.
it('never needs more for a regrind', () => {
  const amounts = fc.array(
    fc.record({ amount: fc.integer({ min: 1, max: 90 }), start: fc.integer({ min: 0, max: 60 }) }),
    {
      minLength: 1,
      maxLength: 5,
    },
  );
  const blades = fc.array(
    fc.record({
      life: fc.integer({ min: 1, max: 80 }),
      more: fc.array(fc.integer({ min: 0, max: 80 }), { maxLength: 2 }),
      afterDays: fc.integer({ min: 0, max: 30 }),
    }),
    { minLength: 1, maxLength: 3 },
  );
  fc.assert(
    fc.property(amounts, blades, (asked, had) => {
      const lines = [...asked]
        .sort((x, y) => x.start - y.start)
        .map(({ amount, start }, i) =>
          line({ lineId: `${i}`, amount, startInDays: start, dueInDays: start + 10 }),
        );
      const serves = lines.map((_, i) => i);
      const plain = had.map(({ life }) => source(life, { serves }));
      const reground = had.map(({ life, more, afterDays }) =>
        source(life, { serves, again: { afterDays, lives: more.map((each) => Float64Array.of(each)) } }),
      );
      const pieces = (sources: readonly NeedSource[]) => walk(lines, sources).parts[0]?.needDays.length ?? 0;
      expect(pieces(reground)).toBeLessThanOrEqual(pieces(plain));
    }),
  );
});
