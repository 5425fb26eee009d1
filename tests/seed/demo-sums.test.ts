import { expect, it } from 'vitest';
import { DEMO_NOW, demoShop, rowsOf } from '@/tests/support/demo-shop';

const db = demoShop();

// source: hand. The invented shop's own table of retired dies: turns × published material factor, and ends.
const RETIRED: readonly (readonly [id: string, turns: number, ends: number, end?: string])[] = [
  ['D-38-01', 1281, 122],
  ['D-38-02', 1407, 65],
  ['D-38-03', 1327, 128],
  ['D-38-04', 884, 85],
  ['D-38-05', 1208, 103],
  ['D-38-06', 1638, 96],
  ['D-38-07', 1113, 106],
  ['D-38-08', 1549, 113],
  ['D-38-09', 1144, 70],
  ['D-38-10', 1218, 116],
  ['D-25-01', 1365, 96],
  ['D-25-02', 1258, 83],
  ['D-25-03', 356, 37, 'incident'],
  ['D-25-04', 1218, 124],
  ['D-25-05', 2242, 182],
  ['D-25-06', 1460, 121],
  ['D-25-07', 2203, 138],
  ['D-25-08', 1790, 107],
  ['D-56-01', 1222, 85],
  ['D-56-02', 1603, 82],
  ['D-56-03', 1299, 112],
  ['D-56-04', 1401, 83],
  ['D-56-05', 1340, 105],
  ['D-56-06', 563, 49, 'incident'],
  ['D-56-07', 1590, 111],
  ['D-56-08', 442, 43, 'incident'],
  ['D-56-09', 1071, 119],
  ['D-56-10', 740, 91],
  ['D-56-11', 1269, 97],
  ['D-56-12', 670, 69],
  ['D-56-13', 1490, 133],
  ['D-75-01', 1130, 86],
];

// source: hand. Turns of the dies still in service.
const LIVE: readonly (readonly [id: string, turns: number])[] = [
  ['D-25-09', 534],
  ['D-38-11', 430],
  ['D-56-14', 166],
  ['D-75-02', 80],
  ['D-100-01', 175],
];

interface DieRow {
  readonly id: string;
  readonly end: string | null;
  readonly ends: number;
  readonly turns: number;
}

const dies = new Map(
  rowsOf<DieRow>(
    db,
    `SELECT e.tool_id AS id, e.end, sum(u.ends) AS ends, sum(u.exposure_micro * m.factor) / 1e6 AS turns
     FROM edge e JOIN edge_use u USING (tool_id, edge_no) JOIN material m ON m.id = u.material_id
     WHERE e.tool_id LIKE 'D-%' GROUP BY e.tool_id`,
  ).map((row) => [row.id, row]),
);

// source: hand. 32 retired and 5 live.
it('has the 37 dies of the story that have cut', () => {
  expect([...dies.keys()].sort()).toEqual([...RETIRED, ...LIVE].map(([id]) => id).sort());
});

// source: hand. The table above. Ends are exact; turns, made of whole ends of few sizes and materials, within 2.5 %.
it.each(RETIRED.map(([id, turns, ends, end]) => ({ id, turns, ends, end: end ?? 'worn' })))(
  '$id was retired after about $turns turns and $ends ends',
  ({ id, turns, ends, end }) => {
    const die = dies.get(id);
    expect(die).toMatchObject({ ends, end });
    expect(Math.abs((die?.turns ?? 0) / turns - 1)).toBeLessThan(0.025);
  },
);

// source: hand. The table above; within 4 turns.
it.each(LIVE)('%s is in service with about %s turns', (id, turns) => {
  const die = dies.get(id);
  expect(die?.end).toBeNull();
  expect(Math.abs((die?.turns ?? 0) - turns)).toBeLessThan(4);
});

const accepted = (column: string) =>
  Object.fromEntries(
    rowsOf<{ key: string; ends: number }>(
      db,
      `SELECT ${column} AS key, sum(good_ends) AS ends FROM cut WHERE operation = 'thread' AND reversed = 0 GROUP BY 1`,
    ).map(({ key, ends }) => [key, ends]),
  );

// source: hand. The story's totals.
it('accepted 3 160 ends and made 122 again, in 85 jobs', () => {
  const sql =
    "SELECT sum(good_ends) AS good, sum(ends - good_ends) AS bad FROM cut WHERE operation = 'thread' AND reversed = 0";
  expect(rowsOf(db, sql)).toEqual([{ good: 3160, bad: 122 }]);
  expect(rowsOf(db, "SELECT count(*) AS n FROM job WHERE status = 'done'")).toEqual([{ n: 85 }]);
});

// source: hand.
it('accepted the ends of each size and service', () => {
  expect(accepted('connection_id')).toEqual({
    '3-8-medium': 1004,
    '9-16-medium': 672,
    '9-16-high': 480,
    '1-4-medium': 476,
    '1-4-high': 424,
    '3-4-medium': 90,
    '1-medium': 14,
  });
});

// source: hand.
it('accepted the ends of each material', () => {
  expect(accepted('material_id')).toEqual({
    '316-cw': 2316,
    '316-annealed': 524,
    '2507': 160,
    'ti-2': 120,
    '625': 40,
  });
});

// source: hand. Ends by month, the first one first.
it('accepted the ends of each month', () => {
  const ends = new Map<number, number>();
  const rows = rowsOf<{ at: number; good: number }>(
    db,
    "SELECT cut_at_ms AS at, good_ends AS good FROM cut WHERE operation = 'thread' AND reversed = 0",
  );
  for (const { at, good } of rows) {
    const daysAgo = Math.floor(DEMO_NOW / 86_400_000) - Math.floor(at / 86_400_000);
    const month = Math.ceil((daysAgo - 0.5) / 30.4375);
    ends.set(month, (ends.get(month) ?? 0) + good);
  }
  const told = [224, 160, 132, 140, 244, 132, 200, 144, 136, 248, 126, 288, 142, 260, 184, 96, 132, 172];
  expect(told.map((_, index) => ends.get(18 - index))).toEqual(told);
});

// source: identity. Every end that was threaded was coned, once.
it('coned what it threaded', () => {
  const sql =
    'SELECT connection_id, material_id, sum(ends) AS ends FROM cut WHERE operation = ? AND reversed = 0 GROUP BY 1, 2';
  expect(rowsOf(db, sql, 'cone')).toEqual(rowsOf(db, sql, 'thread'));
});

// source: hand. 19 blades scrapped, none with more than two regrinds. Identities: 26 told, 30 with the regrinder's days counted.
it('wore out its blades', () => {
  const sql = `SELECT count(DISTINCT u.tool_id) AS used, max(u.edge_no) AS edges FROM edge_use u WHERE u.tool_id LIKE 'B-%'`;
  const [blades] = rowsOf<{ used: number; edges: number }>(db, sql);
  expect(blades?.edges).toBe(3);
  expect(Math.abs((blades?.used ?? 0) - 26)).toBeLessThanOrEqual(4);
  const scrapped = "SELECT count(*) AS n FROM tool WHERE role = 'blade' AND state = 'scrapped'";
  expect(rowsOf(db, scrapped)).toEqual([{ n: 19 }]);
});
