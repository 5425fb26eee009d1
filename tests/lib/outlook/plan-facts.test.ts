import { describe, expect, it } from 'vitest';
import { RECEIVING_DAYS } from '@/lib/outlook/order-arrivals';
import {
  demandOf,
  endsLeftFor,
  endsToMake,
  fluidExpiresOnDay,
  planArrivals,
  planConnections,
  planLines,
  requiredProbability,
  setItems,
  sizeProbes,
} from '@/lib/outlook/plan-facts';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { ShopSchema } from '@/lib/shop/shop-settings';
import { lineFacts, orderFacts, setParts, shopRecord, TODAY, toolFacts } from '../../support/shop-record';

const connection = SHIPPED_CONNECTIONS.find(({ id }) => id === '3-8-medium');
const usual = { dropsPerMl: 40, wasteFactor: 3 };
const shop = ShopSchema.parse({ name: 'A shop', requiredProbability: 0.8, fluidWasteFactor: 2 });

/** source: formula. The volume of one 3/8 medium cone, worked apart from the project: see life-beliefs.test.ts. */
const CONE_MM3 = 59.24037;

// source: hand. 7/16 in at 24 threads an inch: 10.5 turns. Drops: 10 on the cone, 3 at each of ⌈10.5 ÷ 2⌉ = 6 turns; 40
// drops to the mL, times 3 for what runs off.
describe('demandOf one end', () => {
  it.each([
    [['cone', 'thread', 'assemble'], CONE_MM3, 10.5, (28 / 40) * 3],
    [['cone'], CONE_MM3, undefined, (10 / 40) * 3],
    [['thread'], undefined, 10.5, (18 / 40) * 3],
    [['assemble'], undefined, undefined, 0],
  ] as const)('%j', (operations, cone, thread, fluidMl) => {
    const { exposurePerEnd, fluidMlPerEnd } = demandOf(connection, operations, usual);
    if (cone === undefined) expect(exposurePerEnd.cone).toBeUndefined();
    else expect(exposurePerEnd.cone).toBeCloseTo(cone, 4);
    if (thread === undefined) expect(exposurePerEnd.thread).toBeUndefined();
    else expect(exposurePerEnd.thread).toBeCloseTo(thread, 9);
    expect(fluidMlPerEnd).toBeCloseTo(fluidMl, 9);
  });

  it('takes the usual 40 drops and 3 times where the shop has set nothing', () => {
    const unset = { dropsPerMl: undefined, wasteFactor: undefined };
    expect(demandOf(connection, ['thread'], unset)).toEqual(demandOf(connection, ['thread'], usual));
  });

  it('invents nothing for a size without a table row', () => {
    expect(demandOf(undefined, ['cone', 'thread'], usual)).toEqual({ exposurePerEnd: {}, fluidMlPerEnd: 0 });
  });
});

// source: hand. 24 ends wanted; an end is made when every cut of it is good. In whatever order they are cut.
it.each([
  [['cone', 'thread'], 24, 10, 14],
  [['cone', 'thread'], 10, 24, 14],
  [['cone', 'thread', 'assemble'], 24, 30, 0],
  [['cone'], 20, 0, 4],
  [['cone', 'assemble'], 20, 0, 4],
  [['thread'], 0, 30, 0],
  [['assemble'], 24, 24, 24],
] as const)(
  'endsToMake of %j with %i good cones and %i good threads is %i',
  (operations, goodCones, goodThreads, left) => {
    expect(endsToMake(lineFacts({ operations, goodCones, goodThreads }))).toBe(left);
  },
);

// source: hand. 24 − 20 cones, 24 − 10 threads; what a line does not ask for is not left either.
it('endsLeftFor counts each operation by itself', () => {
  const line = lineFacts({ goodCones: 20, goodThreads: 10 });
  expect([endsLeftFor(line, 'cone'), endsLeftFor(line, 'thread')]).toEqual([4, 14]);
  expect(endsLeftFor(lineFacts({ operations: ['thread'] }), 'cone')).toBe(0);
  expect(endsLeftFor(lineFacts({ goodCones: 30 }), 'cone')).toBe(0);
});

describe('planLines', () => {
  // source: hand. 24 − 10 = 14 ends, 12 cones of 10 drops and 14 threads of 18: 372 ÷ 14 ÷ 40 × 2 mL an end; it asks 0.8, of what cannot be remade 0.95.
  it('takes what is left of each line, and the shop’s own settings', () => {
    const lines = [
      lineFacts({ goodCones: 12, goodThreads: 10 }),
      lineFacts({ id: 'J-1.2', value: 'precious' }),
    ];
    const [first, second] = planLines(shopRecord({ shop, lines }));
    expect(first).toMatchObject({ lineId: 'J-1.1', jobId: 'J-1', endsToMake: 14, requiredProbability: 0.8 });
    expect(first?.fluidMlPerEnd).toBeCloseTo(372 / 14 / 20, 9);
    expect(second).toMatchObject({ lineId: 'J-1.2', endsToMake: 24, requiredProbability: 0.95 });
  });

  // source: hand. All coned, none threaded: 18 drops ÷ 40 × 3 = 1.35 mL an end, no blade. Half coned: everything is needed.
  it('asks no blade of a line that is coned to the end, and no die of one that is threaded', () => {
    const lines = [{ goodCones: 24 }, { goodThreads: 24 }, { goodCones: 12 }].map(lineFacts);
    const [coned, threaded, begun] = planLines(shopRecord({ lines }));
    expect(coned).toMatchObject({ endsToMake: 24, operations: ['thread'] });
    expect(coned?.exposurePerEnd.cone).toBeUndefined();
    expect(coned?.fluidMlPerEnd).toBeCloseTo(1.35, 9);
    expect(threaded).toMatchObject({ endsToMake: 24, operations: ['cone'] });
    expect(threaded?.exposurePerEnd.thread).toBeUndefined();
    expect(begun).toMatchObject({ endsToMake: 24, operations: ['cone', 'thread'] });
    expect([coned, threaded, begun].map((line) => line?.cutsLeft)).toEqual([
      undefined,
      undefined,
      { cone: 12, thread: 24 },
    ]);
    // 12 cones of 10 drops and 24 threads of 18: 23 drops an end, ÷ 40 × 3.
    expect(begun?.fluidMlPerEnd).toBeCloseTo(1.725, 9);
  });

  // source: hand. 20 drops to the mL: 28 ÷ 20 × 3 = 4.2 mL.
  it('counts drops as the shop’s own bottle gives them', () => {
    const parts = setParts().map((part) => (part.role === 'fluid' ? { ...part, dropsPerMl: 20 } : part));
    expect(planLines(shopRecord({ parts }))[0]?.fluidMlPerEnd).toBeCloseTo(4.2, 9);
  });

  // source: hand. Stated.
  it('keeps a line whose size has no row, and asks nothing of it', () => {
    const [line] = planLines(shopRecord({ lines: [lineFacts({ connectionId: '1-high' })] }));
    expect(line).toMatchObject({ connectionId: '1-high', exposurePerEnd: {}, fluidMlPerEnd: 0 });
  });
});

// source: common practice, no source. 0.9 and 0.95 until the shop sets its own.
it('requiredProbability is the shop’s own, or 0.9 and 0.95', () => {
  expect([requiredProbability(undefined, 'ordinary'), requiredProbability(undefined, 'precious')]).toEqual([
    0.9, 0.95,
  ]);
  expect([requiredProbability(shop, 'ordinary'), requiredProbability(shop, 'precious')]).toEqual([0.8, 0.95]);
});

// source: hand. A size put aside is not asked about, but a line may still name it.
it('asks about the sizes in use, and plans on every row', () => {
  const connections = SHIPPED_CONNECTIONS.slice(0, 3).map((row, i) => ({ ...row, inUse: i !== 1 }));
  const facts = shopRecord({ connections });
  expect(sizeProbes(facts).map(({ connectionId }) => connectionId)).toEqual(['1-4-medium', '3-8-medium']);
  expect(sizeProbes(facts)[1]?.exposurePerEnd.thread).toBeCloseTo(10.5, 9);
  expect(planConnections(facts)).toEqual([
    { connectionId: '1-4-medium', hand: 'LH' },
    { connectionId: '1-4-high', hand: 'LH' },
    { connectionId: '3-8-medium', hand: 'LH' },
  ]);
});

// source: hand. Shelf life and opened life: the earlier counts. 2026-03-02 + 365 days = 2027-03-02.
it.each([
  [null, null, 365, null],
  ['2026-12-31', null, 365, '2026-12-31'],
  [null, '2026-03-02', null, null],
  [null, '2026-03-02', 365, '2027-03-02'],
  ['2027-03-01', '2026-03-02', 365, '2027-03-01'],
  ['2027-03-03', '2026-03-02', 365, '2027-03-02'],
  ['2027-03-03', '2026-03-02', null, '2027-03-03'],
])(
  'fluid kept until %s, opened %s for %s days, expires on %s',
  (expiresOnDay, openedOnDay, openedLifeDays, day) => {
    expect(fluidExpiresOnDay({ expiresOnDay, openedOnDay }, { openedLifeDays })).toBe(day);
  },
);

// source: hand. Stated cases.
describe('setItems', () => {
  it('leaves out what is scrapped, lost or of no known part, and keeps every other state', () => {
    const states = [
      'in-crib',
      'issued',
      'regrind',
      'calibration',
      'quarantined',
      'scrapped',
      'lost',
    ] as const;
    const tools = states.map((state) => toolFacts({ id: `B-${state}`, role: 'blade', state }));
    const items = setItems(
      shopRecord({ tools: [...tools, { ...toolFacts({ id: 'X', role: 'die' }), partId: 'gone' }] }),
    );
    expect(items.map(({ state }) => state)).toEqual(states.slice(0, 5));
  });

  it('says where a tool is, to whom it is bound and until when it is good', () => {
    const tools = [
      toolFacts({ id: 'D-1', role: 'die', state: 'issued', jobLineId: 'J-1.1', backOnDay: '2026-03-20' }),
      toolFacts({ id: 'G-1', role: 'go-ring', dueOnDay: '2026-09-30' }),
      toolFacts({
        id: 'F-1',
        role: 'fluid',
        levelMl: 400,
        openedOnDay: '2026-03-02',
        expiresOnDay: '2028-01-01',
      }),
    ];
    const [die, ring, fluid] = setItems(shopRecord({ tools }));
    expect(die).toMatchObject({
      hand: 'LH',
      fitsConnectionIds: ['3-8-medium'],
      heldForLineId: 'J-1.1',
      backOnDay: '2026-03-20',
    });
    expect(ring).toMatchObject({ dueOnDay: '2026-09-30', permittedMaterialIds: undefined });
    expect(fluid).toMatchObject({ fitsConnectionIds: 'all', levelMl: 400, expiresOnDay: '2027-03-02' });
    expect(fluid?.permittedMaterialIds).not.toContain('ti-2');
  });

  it('an unmarked die has no hand, and a part that names no size serves none unless its kind is bound to none', () => {
    const parts = setParts().map((part) => ({ ...part, fitsConnectionIds: [] }));
    const roles = ['die', 'go-ring', 'brush', 'deburr-tool', 'fluid'] as const;
    const tools = roles.map((role) => toolFacts({ id: role, role, hand: null }));
    const items = setItems(shopRecord({ parts, tools }));
    expect(items[0]?.hand).toBeUndefined();
    expect(items.map(({ fitsConnectionIds }) => fitsConnectionIds)).toEqual([[], [], 'all', 'all', 'all']);
  });
});

// source: hand. The receiving check takes a day; a day already past is no date.
describe('planArrivals', () => {
  const order = (change: object) => orderFacts({ id: 'PO-1', partId: 'die-3-8', ...change });
  const arrivals = (...orders: ReturnType<typeof order>[]) => planArrivals(shopRecord({ orders }));

  it('brings what is still to come, usable the day after', () => {
    expect(RECEIVING_DAYS).toBe(1);
    const [arrival] = arrivals(order({ quantity: 5, receivedQuantity: 2, expectedOnDay: '2026-03-31' }));
    expect(arrival).toMatchObject({
      orderId: 'PO-1',
      partId: 'die-3-8',
      role: 'die',
      hand: 'LH',
      fitsConnectionIds: ['3-8-medium'],
      quantity: 3,
      expectedOnDay: '2026-04-01',
    });
  });

  it('never makes a late order usable today: its day stays in the past', () => {
    const days = ['2026-03-02', '2026-03-01', '2026-02-20'].map(
      (expectedOnDay) => arrivals(order({ expectedOnDay }))[0]?.expectedOnDay ?? '',
    );
    expect(days[0]).toBe('2026-03-03');
    expect(days.slice(1).every((day) => day < TODAY)).toBe(true);
  });

  it('leaves out an order for a part that is no more', () => {
    expect(arrivals(order({ partId: 'gone' }))).toEqual([]);
  });
});
