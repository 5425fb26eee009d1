import { expect, it } from 'vitest';
import { standingEntries } from '@/db/ledger/entry-row';
import { daysBetween } from '@/lib/calendar/day';
import { foldSubject } from '@/lib/ledger/fold';
import { currentEdge } from '@/lib/ledger/tool-record';
import { DEMO_DAY, DEMO_NOW, demoShop, madeAnew, rowsOf } from '@/tests/support/demo-shop';

const DAY_MS = 86_400_000;
const db = demoShop();

const TABLES = [
  ...['entry', 'shop', 'person', 'connection', 'material', 'part', 'part_fit', 'part_permit', 'life_guess'],
  ...['job', 'job_line', 'purchase_order', 'tool', 'edge', 'edge_use', 'cut'],
];

interface EntryRow {
  readonly kind: string;
  readonly subject_id: string;
  readonly actor_id: string;
  readonly payload: string;
  readonly device_at_ms: number;
  readonly server_at_ms: number;
}

// source: identity. The same moment gives the same shop, row for row.
it('is the same twice', () => {
  const again = madeAnew();
  for (const table of TABLES) {
    const sql = `SELECT * FROM ${table}`;
    expect(rowsOf(again, sql)).toEqual(rowsOf(db, sql));
    expect(rowsOf(db, sql).length).toBeGreaterThan(0);
  }
});

// source: identity. Made 400 days later, everything lies 400 days later, and nothing else differs.
it('never ages: every date hangs on the day it is made', () => {
  const later = demoShop(DEMO_NOW + 400 * DAY_MS);
  const told = (shop: typeof db, now: number, today: string) =>
    rowsOf<EntryRow>(shop, 'SELECT * FROM entry ORDER BY seq').map((row) => ({
      ...{ kind: row.kind, subject: row.subject_id, actor: row.actor_id, at: row.server_at_ms - now },
      payload: row.payload
        .replace(/"(\d{4}-\d{2}-\d{2})"/g, (_, day: string) => String(daysBetween(today, day)))
        .replace(/"(?:cutAt|gaugedAt|windowFrom|windowTo)Ms":(\d+)/g, (_, ms: string) =>
          String(Number(ms) - now),
        ),
    }));
  expect(told(later, DEMO_NOW + 400 * DAY_MS, '2027-12-30')).toEqual(told(db, DEMO_NOW, DEMO_DAY));
});

// source: identity. SQLite's own check of references.
it('leaves no dangling reference', () => {
  expect(rowsOf(db, 'PRAGMA foreign_key_check')).toEqual([]);
});

// source: identity. The order of the ledger is the order of time, and nothing has happened yet that lies ahead.
it('tells a story that runs forward and ends now', () => {
  const entries = rowsOf<EntryRow>(db, 'SELECT * FROM entry ORDER BY seq');
  entries.forEach((entry, index) => {
    expect(entry.server_at_ms).toBeGreaterThanOrEqual(entries[index - 1]?.server_at_ms ?? 0);
    expect(entry.device_at_ms).toBeLessThanOrEqual(entry.server_at_ms);
    expect(entry.server_at_ms).toBeLessThanOrEqual(DEMO_NOW);
  });
  expect(rowsOf(db, 'SELECT 1 FROM cut WHERE cut_at_ms > ?', DEMO_NOW)).toEqual([]);
  const happened = rowsOf<{ day: string }>(
    db,
    `SELECT max(json_extract(payload, '$.receivedOnDay')) AS day FROM entry WHERE kind = 'tool-received'
     UNION SELECT max(json_extract(payload, '$.onDay')) FROM entry
     UNION SELECT max(placed_on_day) FROM purchase_order`,
  );
  for (const { day } of happened) expect(day <= DEMO_DAY).toBe(true);
});

// source: identity. Every tool stands where its own history, replayed, says; and in no state that cannot be.
it('leaves every tool in a state that its history explains', () => {
  const tools = rowsOf<{ id: string; state: string; holder_id: string | null }>(db, 'SELECT * FROM tool');
  expect(tools.length).toBeGreaterThan(150);
  for (const tool of tools) {
    const replay = foldSubject('tool', standingEntries(db.$client, 'tool', tool.id));
    if (!replay.ok || replay.value === undefined) throw new Error(`${tool.id} does not replay`);
    expect(replay.value).toMatchObject({ state: tool.state, holderId: tool.holder_id });
    expect(tool.state === 'issued').toBe(tool.holder_id !== null);
    const ended = (currentEdge(replay.value)?.end ?? null) !== null;
    if (ended) expect(['scrapped', 'regrind', 'quarantined']).toContain(tool.state);
  }
});

// source: hand. What the invented shop is said to hold in each state, one of each kind of trouble at least.
it('has something in every state', () => {
  const states = rowsOf<{ state: string }>(db, 'SELECT DISTINCT state FROM tool ORDER BY state');
  expect(states.map(({ state }) => state)).toEqual([
    ...['calibration', 'in-crib', 'issued', 'lost', 'quarantined', 'regrind', 'scrapped'],
  ]);
});

// source: hand. Forty ends logged on D-38-02 were D-38-03's: reversed and posted again the next day, both to be seen.
it('mends the row that was logged on the wrong die', () => {
  const [reversal] = rowsOf<{ target: string; at: number; logged: number; tool: string; entry: string }>(
    db,
    `SELECT r.reverses_id AS target, r.server_at_ms AS at, e.server_at_ms AS logged, e.subject_id AS tool, c.subject_id AS entry
     FROM entry r JOIN entry e ON e.id = r.reverses_id
     JOIN entry c ON json_extract(c.payload, '$.correctsId') = e.id`,
  );
  expect(reversal).toMatchObject({ tool: 'D-38-02', entry: 'D-38-03' });
  expect((reversal?.at ?? 0) - (reversal?.logged ?? 0)).toBe(DAY_MS);
  expect(rowsOf(db, 'SELECT tool_id, ends FROM cut WHERE reversed = 1')).toEqual([
    { tool_id: 'D-38-02', ends: 40 },
  ]);
});

// source: hand. Lots and fluids of the story.
it('tells of the faulty lot, the old can and the oil for titanium', () => {
  expect(rowsOf(db, "SELECT id, state FROM tool WHERE lot = '9F-31' ORDER BY id")).toEqual(
    ['D-56-06', 'D-56-08', 'D-56-15', 'D-56-16'].map((id) => ({ id, state: 'scrapped' })),
  );
  const [old] = rowsOf<{ state: string; opened_on_day: string; at: number }>(
    db,
    "SELECT state, opened_on_day, state_since_ms AS at FROM tool WHERE id = 'F-L03'",
  );
  expect(old?.state).toBe('scrapped');
  const openDays = daysBetween(old?.opened_on_day ?? '', new Date(old?.at ?? 0).toISOString().slice(0, 10));
  expect(Math.round(openDays / 30.4375)).toBe(14);
  const permits = rowsOf<{ id: string; chlorinated: string; titanium: number }>(
    db,
    `SELECT p.id, p.chlorinated, p.permits_all_materials
       OR EXISTS (SELECT 1 FROM part_permit m WHERE m.part_id = p.id AND m.material_id = 'ti-2') AS titanium
     FROM part p WHERE p.role = 'fluid' ORDER BY p.id`,
  );
  expect(permits).toEqual([
    { id: 'fluid', chlorinated: 'yes', titanium: 0 },
    { id: 'fluid-chlorine-free', chlorinated: 'no', titanium: 1 },
    { id: 'fluid-oxygen', chlorinated: 'no', titanium: 1 },
  ]);
});
