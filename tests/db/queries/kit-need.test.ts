import { beforeAll, describe, expect, it } from 'vitest';
import { issueKit } from '@/db/commands/issue-kit';
import { issueTool } from '@/db/commands/issue-tool';
import { placeOrder } from '@/db/commands/keep-orders';
import { planJob } from '@/db/commands/plan-job';
import { type Db, openDb } from '@/db/open';
import { findLine } from '@/db/queries/jobs';
import { readKitNeed } from '@/db/queries/kit-need';
import { findKitStock, listKitStock } from '@/db/queries/kit-stock';
import { readShopFacts } from '@/db/queries/shop-facts';
import { listMaterials } from '@/db/queries/tables';
import { benchLines } from '@/lib/bench/bench-snapshot';
import { invariant } from '@/lib/invariant';
import { judgeItem } from '@/lib/kit/judge-item';
import { computeOutlook } from '@/lib/outlook/outlook';
import { IssueToolInput, PlaceOrderInput, PlanJobInput } from '@/lib/shop/command-input';
import { DUTIES } from '@/lib/shop/duty';
import { IssueKitInput } from '@/lib/shop/kit-input';
import { play } from '@/seed/demo/act';
import { calendarOf } from '@/seed/demo/calendar';
import { fluidActs } from '@/seed/demo/fluids';
import { CHLORINE_FREE_FLUID, OXYGEN_FLUID, setUpActs } from '@/seed/demo/set-up';
import { entered, may, must, sentence } from '../../support/db';
import { DEMO_DAY, DEMO_NOW, rowsOf } from '../../support/demo-shop';

const ENV = { nowMs: DEMO_NOW };
const SIZE = '9-16-high';
const WORKS = [] as { lineId: string; materialId: string; duty: string }[];
let db: Db;
let bottleIds: string[];

/** The fluids of the demo as they have come to stand, and one line of each material for each service. */
beforeAll(() => {
  db = openDb(':memory:');
  const calendar = calendarOf(DEMO_NOW);
  let count = 0;
  const newId = () => `demo-${String(++count).padStart(6, '0')}`;
  play(db, setUpActs(calendar), newId);
  for (const [id, partId] of [
    ['PO-044', CHLORINE_FREE_FLUID],
    ['PO-085', OXYGEN_FLUID],
  ] as const) {
    const days = { placedOnDay: '2024-01-01', expectedOnDay: '2024-01-08' };
    const order = { id, partId, quantity: 1, ...days };
    must(placeOrder(db, may('keep-orders'), PlaceOrderInput.parse({ ...entered(), order }), ENV));
  }
  play(db, fluidActs(calendar), newId);
  bottleIds = rowsOf<{ id: string }>(db, "SELECT id FROM tool WHERE role = 'fluid' ORDER BY id").map(
    ({ id }) => id,
  );
  const works = listMaterials(db).flatMap(({ id }) => DUTIES.map((duty) => ({ materialId: id, duty })));
  const plain = { connectionId: SIZE, heat: '', ends: 4, operations: ['thread'], value: 'ordinary' };
  const days = { startOnDay: DEMO_DAY, dueOnDay: DEMO_DAY };
  const lines = works.map((work, at) => ({ ...plain, ...days, ...work, lineNo: at + 1 }));
  const job = { id: 'J-900', title: 'Every work', lines };
  must(planJob(db, may('plan-job'), PlanJobInput.parse({ ...entered(), job }), ENV));
  WORKS.push(...works.map((work, at) => ({ ...work, lineId: `J-900.${at + 1}` })));
});

/** What the counter says of a scan into the kit of a line. */
function scan(toolId: string, lineId: string) {
  const line = findLine(db, lineId);
  const need = line && readKitNeed(db, line, DEMO_DAY);
  const [stock] = findKitStock(db, [toolId]);
  invariant(need !== undefined && stock !== undefined, 'the demo has the line and the bottle');
  return judgeItem(stock.tool, stock.part, need);
}

/** Does something to the demo and looks at what came of it, then takes all of it back. */
function tried<T>(deed: () => T): T {
  db.$client.exec('BEGIN');
  try {
    return deed();
  } finally {
    db.$client.exec('ROLLBACK');
  }
}

const person = () => rowsOf<{ id: string }>(db, 'SELECT id FROM person ORDER BY id')[0]?.id ?? '';
const kit = (toolId: string, jobLineId: string) =>
  issueKit(
    db,
    may('issue-tool'),
    IssueKitInput.parse({ ...entered(), jobLineId, toPersonId: person(), toolIds: [toolId] }),
    ENV,
  );
const single = (toolId: string, jobLineId: string) => {
  const fields = { toolId, jobLineId, toPersonId: person(), bench: '' };
  return issueTool(db, may('issue-tool'), IssueToolInput.parse({ ...entered(), ...fields }), ENV);
};

// source: identity. One bottle, one work, one day: whoever asks hears the same.
describe('every bottle of the demo, every material, every service', () => {
  const said = new Map<string, ReturnType<typeof scan>>();
  const each = (
    look: (toolId: string, work: (typeof WORKS)[number], at: ReturnType<typeof scan>) => void,
  ) => {
    for (const work of WORKS)
      for (const toolId of bottleIds) {
        const key = `${toolId} for ${work.lineId}`;
        const at = said.get(key) ?? scan(toolId, work.lineId);
        said.set(key, at);
        look(toolId, work, at);
      }
  };

  it('the scan at the counter says what the issue then says, in a kit and by itself, word for word', () => {
    let went = 0;
    each((toolId, { lineId }, at) => {
      const [inKit, alone] = [kit, single].map((issue) => tried(() => issue(toolId, lineId)));
      invariant(inKit !== undefined && alone !== undefined, 'both were tried');
      expect([inKit.ok, alone.ok], `${toolId} for ${lineId}`).toEqual([at.goes, at.goes]);
      if (!at.goes) expect(sentence(inKit)).toBe(at.sentence);
      if (!at.goes && at.code.startsWith('fluid')) expect(sentence(alone)).toBe(at.sentence);
      went += at.goes ? 1 : 0;
    });
    expect(said.size).toBeGreaterThan(100);
    expect([went > 0, went < said.size]).toEqual([true, true]);
  });

  // The rule written out anew from the rows: flagged for the service, listed for the metal, no chlorine on titanium, in date.
  it('lets out what the rows allow', () => {
    const rows = new Map(
      rowsOf<Raw>(db, RAW, DEMO_DAY, DEMO_DAY, DEMO_DAY).map((raw) => [raw.id, raw] as const),
    );
    each((toolId, { lineId, materialId, duty }, at) => {
      const raw = rows.get(toolId);
      invariant(raw !== undefined, 'every bottle has a row');
      const flagged = raw.duties === null ? duty === 'ordinary' : JSON.parse(raw.duties).includes(duty);
      const listed = raw.all === 1 || (raw.materials ?? '').split(',').includes(materialId);
      const clean = materialId !== 'ti-2' || raw.chlorinated === 'no';
      const inDate = raw.labelled === 1 || (raw.extended === 1 && duty !== 'oxygen');
      const goes = raw.free === 1 && flagged && listed && clean && inDate && raw.level !== 0;
      expect(at.goes, `${toolId} for ${lineId}`).toBe(goes);
    });
  });

  it('the bench says of a bottle that is out with a line what the counter would say of it', () => {
    const outlook = computeOutlook(readShopFacts(db, { today: DEMO_DAY }));
    const stock = listKitStock(db).filter(({ tool }) => tool.state === 'in-crib');
    const stops = new Map<string, string | null>();
    for (const { lineId } of WORKS) {
      const out = stock.map(({ tool, part }) => ({
        part,
        tool: { ...tool, state: 'issued' as const, jobLineId: lineId },
      }));
      const line = benchLines(outlook, out).find(({ id }) => id === lineId);
      for (const { toolId, stop } of line?.fluids ?? []) stops.set(`${toolId} for ${lineId}`, stop);
    }
    expect(stops.size).toBeGreaterThan(100);
    each((toolId, { lineId }, at) => {
      const stop = stops.get(`${toolId} for ${lineId}`);
      // A can that was disposed of is out with nobody.
      if (stop === undefined) expect(at).toMatchObject({ goes: false, code: 'gone' });
      else expect(stop).toBe(at.goes ? null : at.sentence);
    });
  });
});

interface Raw {
  readonly id: string;
  readonly free: 0 | 1;
  readonly level: number | null;
  readonly all: 0 | 1;
  readonly materials: string | null;
  readonly duties: string | null;
  readonly chlorinated: string;
  readonly labelled: 0 | 1;
  readonly extended: 0 | 1;
}

const RAW = `SELECT t.id, t.state = 'in-crib' AS free, t.level_ml AS level, p.permits_all_materials AS "all",
    (SELECT group_concat(m.material_id) FROM part_permit m WHERE m.part_id = p.id) AS materials,
    p.permitted_duties AS duties,
    COALESCE((SELECT json_extract(l.data, '$.chlorinated') FROM fluid_lot l
      WHERE l.part_id = t.part_id AND l.lot = t.lot), p.chlorinated) AS chlorinated,
    (COALESCE(t.expires_on_day >= ?, 1) AND COALESCE(date(t.opened_on_day, '+' || p.opened_life_days || ' days') >= ?, 1))
      AS labelled,
    COALESCE(t.extended_until_day >= ?, 0) AS extended
  FROM tool t JOIN part p ON p.id = t.part_id WHERE t.role = 'fluid'`;
