import { describe, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { readShopFacts } from '@/db/queries/shop-facts';
import { addDays, daysBetween } from '@/lib/calendar/day';
import { LEAD_TIME_PRIOR, leadDaysWithin, probabilityWithin } from '@/lib/lead-time/lead-time-belief';
import { computeOutlook, type Outlook } from '@/lib/outlook/outlook';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { entered, must } from '../../support/db';
import { ownShop } from '../../support/own-shop';
import { sender } from '../../support/send';

const MEDIUM = { connectionId: '3-8-medium', materialId: '316-cw' };
const die = { toolId: 'D-38-01', partId: 'die-3-8', hand: 'LH' };
const job = {
  id: 'J-1',
  title: 'Manifold',
  lines: [
    {
      ...MEDIUM,
      lineNo: 1,
      heat: '',
      ends: 10,
      operations: ['cone', 'thread'],
      startOnDay: '2026-03-09',
      dueOnDay: '2026-03-13',
      value: 'ordinary',
    },
  ],
};

const factsOf = (db: Db): ShopFacts => readShopFacts(db, { today: '2026-03-02' });
const outlookOf = (db: Db): Outlook => computeOutlook(factsOf(db));
const blockersOf = (outlook: Outlook) => outlook.lines[0]?.blockers.map(({ kind, role }) => [kind, role]);

/** Everything that a screen could read of a tool and of the plan, to the last digit. */
function digits(outlook: Outlook, toolId: string) {
  const left = outlook.forecast(toolId, MEDIUM);
  return JSON.stringify({
    lines: outlook.lines,
    sizes: outlook.sizes,
    left,
    chances: [1, 10, 24, 60, 120].map((ends) => left?.probabilityFinishes(ends)),
    life: [...(outlook.ensemble.residualLife(toolId) ?? [])],
    next: [...(outlook.ensemble.newLife('die-3-8', 1) ?? [])],
  });
}

function shopWithDie(): { db: Db; send: ReturnType<typeof sender> } {
  const db = ownShop({ without: ['die'] });
  const send = sender(db);
  must(send.receive(die));
  must(send.plan(job));
  return { db, send };
}

// source: hand. The story is stated: one of everything but a die, ten ends planned.
describe('a shop without a die', () => {
  const shop = () => {
    const db = ownShop({ without: ['die'] });
    const send = sender(db);
    must(send.plan(job));
    return { db, send };
  };

  it('cannot make the size, and the die is named', () => {
    const { db } = shop();
    const outlook = outlookOf(db);
    expect(outlook.lines).toMatchObject([
      { lineId: 'J-1.1', verdict: 'cannot-make-now', pMade: 0, canAccept: true, clearsOnDay: null },
    ]);
    expect(blockersOf(outlook)?.[0]).toEqual(['missing', 'die']);
    expect(outlook.sizes).toMatchObject([
      { connectionId: '3-8-medium', verdict: 'cannot-make-now', limitingRole: 'die' },
    ]);
  });

  it('can make it once a die is received', () => {
    const { db, send } = shop();
    must(send.receive(die));
    const outlook = outlookOf(db);
    expect(outlook.lines).toMatchObject([{ verdict: 'can-make', blockers: [] }]);
    expect(outlook.sizes).toMatchObject([{ verdict: 'can-make', blockers: [] }]);
  });

  it('cannot with a die of the other hand, had it got past the box', () => {
    const { db, send } = shop();
    must(send.receive(die));
    const facts = factsOf(db);
    const tools = facts.tools.map((tool) => (tool.role === 'die' ? { ...tool, hand: 'RH' as const } : tool));
    expect(blockersOf(computeOutlook({ ...facts, tools }))).toEqual([['hand-mismatch', 'die']]);
  });

  // source: formula. The day by which nine orders in ten are there, given that this one has not come yet: quote × exp of the
  // predictive t at F(out) + 0.9·(1 − F(out)), and a day for the receiving check. The prior: as quoted, give or take 1.5.
  it('knows the day by which an order is there as surely as the shop asks, be it late or not', () => {
    const { db, send } = shop();
    const order = { id: 'PO-1', partId: 'die-3-8', quantity: 2, placedOnDay: '2026-02-02' };
    const surelyThere = (statedOnDay: string, quoted: number, today: string) => {
      const gone = probabilityWithin(LEAD_TIME_PRIOR, quoted, daysBetween(statedOnDay, today) - 0.5);
      const days = leadDaysWithin(LEAD_TIME_PRIOR, quoted, gone + 0.9 * (1 - gone));
      return addDays(statedOnDay, Math.round(days) + 1);
    };
    must(send.order({ ...order, expectedOnDay: '2026-03-19' }));
    expect(outlookOf(db).lines[0]?.clearsOnDay).toBe(surelyThere('2026-02-02', 45, '2026-03-02'));
    must(send.slip('PO-1', '2026-03-05'));
    expect(outlookOf(db).lines[0]?.verdict).toBe('can-make');
    const late = computeOutlook(readShopFacts(db, { today: '2026-03-07' }));
    expect(late.lines[0]?.clearsOnDay).toBe(surelyThere('2026-03-02', 3, '2026-03-07'));
    expect(blockersOf(late)?.[0]).toEqual(['missing', 'die']);
  });

  it('says what is missing for a size without a table row, and makes nothing up', () => {
    const { db, send } = shop();
    must(send.plan({ ...job, lines: [{ ...job.lines[0], connectionId: '1-high' }] }));
    const outlook = outlookOf(db);
    expect(outlook.lines).toMatchObject([{ verdict: 'cannot-make-now', pMade: 0, safeEnds: null }]);
    const blockers = blockersOf(outlook) ?? [];
    expect(blockers).toContainEqual(['unknown-connection', null]);
    for (const role of ['die', 'threading-guide', 'go-ring', 'blade'])
      expect(blockers, role).toContainEqual(['missing', role]);
    expect(outlook.forecast('D-38-01', { ...MEDIUM, connectionId: '1-high' })).toBeUndefined();
  });
});

describe('logging and taking back', () => {
  // source: hand. 40 ends more behind it leave fewer ends in it; the wrong entry taken back was never cut.
  it('lowers what is left, and gives it back bit for bit', () => {
    const { db, send } = shopWithDie();
    const before = digits(outlookOf(db), 'D-38-01');
    const likely = () => outlookOf(db).forecast('D-38-01', MEDIUM)?.likelyEnds ?? Number.NaN;
    const fresh = likely();
    const { id } = must(send.cut('D-38-01', 40, MEDIUM));
    expect(likely()).toBeLessThan(fresh);
    expect(digits(outlookOf(db), 'D-38-01') === before).toBe(false);
    must(send.reverse(id));
    expect(digits(outlookOf(db), 'D-38-01') === before).toBe(true);
  });

  // source: hand. A row taken back is no evidence: 40 − 40 + 7 ends are 7, 73.5 turns, and the last row is the one of 7.
  it('leaves no trace of a reversed row in the evidence', () => {
    const { db, send } = shopWithDie();
    const { id } = must(send.cut('D-38-01', 40, MEDIUM));
    must(send.cut('D-38-01', 7, { ...MEDIUM, goodEnds: 6 }));
    must(send.reverse(id));
    const edge = factsOf(db).edges.find(({ toolId }) => toolId === 'D-38-01');
    expect(edge?.use).toMatchObject([{ ends: 7, goodEnds: 6, exposureMicro: 73_500_000 }]);
    expect(edge?.lastUse).toMatchObject({ ends: 7 });
  });

  // source: identity. The record corrected is the record of a shop in which the right die was logged at once.
  it('corrects both lives when the wrong die was logged', () => {
    const twoDies = () => {
      const shop = shopWithDie();
      must(shop.send.receive({ ...die, toolId: 'D-38-02' }));
      return shop;
    };
    const [wrong, right] = [twoDies(), twoDies()];
    const { id } = must(wrong.send.cut('D-38-01', 40, MEDIUM));
    must(wrong.send.correct(id, 'D-38-02'));
    must(right.send.cut('D-38-02', 40, MEDIUM));
    for (const toolId of ['D-38-01', 'D-38-02'])
      expect(digits(outlookOf(wrong.db), toolId) === digits(outlookOf(right.db), toolId), toolId).toBe(true);
    expect(outlookOf(wrong.db).ensemble.tool('D-38-02')?.exposure).toMatchObject([{ base: 420 }]);
  });
});

// source: identity. Entry IDs, and the order in which tools came, are no evidence.
it('the same record gives the same digits in another database', () => {
  const fill = (turned: boolean) => {
    const { db, send } = shopWithDie();
    const more = ['D-38-02', 'D-38-03'].map((toolId) => () => must(send.receive({ ...die, toolId })));
    const rows = [30, 12].map((ends) => () => must(send.cut('D-38-02', ends, MEDIUM)));
    const dry = () => must(send.cut('D-38-02', 3, { ...MEDIUM, dry: true }));
    for (const step of turned ? [...more].reverse() : more) step();
    if (turned) must(send.cut('D-38-01', 5, { ...MEDIUM, ...entered({ entryId: 'a-wrong-row' }) }));
    if (turned) must(send.reverse('a-wrong-row'));
    for (const step of turned ? [dry, ...rows] : [...rows, dry]) step();
    return outlookOf(db);
  };
  expect(digits(fill(true), 'D-38-02') === digits(fill(false), 'D-38-02')).toBe(true);
});

// source: identity. Both are counts over the same futures, so no two screens can disagree.
it('what a die finishes is what the plan says of a line that has only that die', () => {
  const { db, send } = shopWithDie();
  must(send.cut('D-38-01', 20, MEDIUM));
  const facts = factsOf(db);
  const forecast = computeOutlook(facts).forecast('D-38-01', MEDIUM);
  const shares = [1, 10, 24, 60, 90, 120, 200, 400, 800].map((ends) => {
    const lines = facts.lines.map((line) => ({ ...line, ends, operations: ['thread'] as const }));
    const [verdict] = computeOutlook({ ...facts, lines }).lines;
    expect(verdict?.pMade, `${ends} ends`).toBe(forecast?.probabilityFinishes(ends));
    expect(verdict).toMatchObject({ safeEnds: forecast?.safeEnds, likelyEnds: forecast?.likelyEnds });
    return verdict?.pMade ?? Number.NaN;
  });
  expect(shares[0]).toBeGreaterThan(0.95);
  expect(shares.at(-1)).toBeLessThan(0.05);
});

// source: hand. A blade back from regrind before the start has a new edge to give; one that is not back has none yet.
it('counts on a blade that is back from regrind in time', () => {
  const { db, send } = shopWithDie();
  const bladeId = factsOf(db).tools.find(({ role }) => role === 'blade')?.id ?? '';
  must(send.end(bladeId, 'worn', 'regrind'));
  expect(blockersOf(outlookOf(db))).toEqual([['out-for-regrind', 'blade']]);
  const back = (backOnDay: string) => {
    const facts = factsOf(db);
    const tools = facts.tools.map((tool) => (tool.id === bladeId ? { ...tool, backOnDay } : tool));
    return computeOutlook({ ...facts, tools }).lines[0];
  };
  expect(back('2026-03-09')).toMatchObject({ verdict: 'can-make', blockers: [] });
  expect(back('2026-03-16')).toMatchObject({ verdict: 'cannot-make-now', clearsOnDay: '2026-03-16' });
});

// source: hand. Coned to the end it needs no blade, threaded to the end no die: whatever has gone since.
it('a line asks for what is still to be done, and done for nothing', () => {
  const { db, send } = shopWithDie();
  const bladeId = factsOf(db).tools.find(({ role }) => role === 'blade')?.id ?? '';
  must(send.cut(bladeId, 10, { ...MEDIUM, jobLineId: 'J-1.1' }));
  must(send.end(bladeId, 'dropped', 'scrapped'));
  expect(outlookOf(db).lines).toMatchObject([{ verdict: 'can-make', blockers: [] }]);
  must(send.cut('D-38-01', 9, { ...MEDIUM, jobLineId: 'J-1.1' }));
  must(send.end('D-38-01', 'dropped', 'scrapped'));
  expect(blockersOf(outlookOf(db))).toEqual([['missing', 'die']]);
  must(send.receive({ ...die, toolId: 'D-38-02' }));
  must(send.cut('D-38-02', 1, { ...MEDIUM, jobLineId: 'J-1.1' }));
  must(send.end('D-38-02', 'dropped', 'scrapped'));
  expect(outlookOf(db).lines).toMatchObject([{ blockers: [] }]);
  expect(outlookOf(db).sizes).toMatchObject([{ verdict: 'cannot-make-now' }]);
});
