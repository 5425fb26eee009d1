import { receiveTool } from '@/db/commands/receive-tool';
import { setNoun } from '@/db/commands/set-noun';
import type { Env } from '@/db/ledger/ledger';
import { type Db, openDb } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import { type Action, type Permit, permit } from '@/lib/access/permit';
import type { Result } from '@/lib/result';
import { ReceiveToolInput } from '@/lib/shop/command-input';
import type { Connection, Material, Person } from '@/lib/shop/noun';
import type { Part } from '@/lib/shop/part';

/** 2026-03-02 08:00 UTC: the moment that all test shops live at unless a test says otherwise. */
export const NOW_MS = Date.UTC(2026, 2, 2, 8);
export const ENV: Env = { nowMs: NOW_MS };

let template: Buffer | undefined;

/** A fresh, migrated, empty database: the migrations run once per worker, each test gets its own copy. */
export function testDb(): Db {
  if (template === undefined) {
    const db = openDb(':memory:');
    template = db.$client.serialize();
    db.$client.close();
  }
  return openDb(Buffer.from(template));
}

let count = 0;

/** An entry ID, never the same twice in a worker. */
export function newId(): string {
  count += 1;
  return `entry-${String(count).padStart(6, '0')}`;
}

/** What every entry carries beside its content, with a fresh ID. */
export function envelope(over: { id?: string; deviceAtMs?: number; reason?: string } = {}) {
  return { id: newId(), deviceAtMs: NOW_MS, reason: '', ...over };
}

/** The same for the input of a command. */
export function entered(over: { entryId?: string; deviceAtMs?: number; reason?: string } = {}) {
  return { entryId: newId(), deviceAtMs: NOW_MS, reason: '', ...over };
}

/** The value of a result that must not be a refusal. */
export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${result.refusal.sentence}`);
  return result.value;
}

/** The sentence of a result that must be a refusal. */
export function sentence(result: Result<unknown>): string {
  if (result.ok) throw new Error('expected a refusal');
  return result.refusal.sentence;
}

/** Leave to do an action, for somebody of the test shop. */
export function may<A extends Action>(action: A, actor: Actor = ROBIN): Permit<A> {
  return must(permit(actor, action));
}

export const ROBIN: Actor = { personId: 'robin', name: 'Robin Vale', role: 'attendant' };
export const ASH: Actor = { personId: 'ash', name: 'Ash Moor', role: 'technician' };

export const PEOPLE: readonly Person[] = [
  { id: 'robin', name: 'Robin Vale', role: 'attendant' },
  { id: 'ash', name: 'Ash Moor', role: 'technician' },
];

const connection = {
  odNum: 9,
  odDen: 16,
  tpi: 18,
  hand: 'LH',
  threadClass: '2A',
  coneAngleDeg: 59,
  notGoTurnsMax: 3,
  confirmed: false,
  inUse: true,
} as const;

/** Two services of one size, sharing die and blade; thread lengths chosen for whole turns: 9 and 10.5. */
export const MEDIUM: Connection = {
  ...connection,
  id: '9-16-medium',
  service: 'medium',
  threadLengthMm: 12.7,
  noseMm: 10.3,
};
export const HIGH: Connection = {
  ...connection,
  id: '9-16-high',
  service: 'high',
  threadLengthMm: (10.5 / 18) * 25.4,
  noseMm: 7.1,
};
export const QUARTER: Connection = {
  ...connection,
  id: '1-4-medium',
  odNum: 1,
  odDen: 4,
  service: 'medium',
  tpi: 28,
  threadLengthMm: 9.5,
  noseMm: 3.2,
};

export const MATERIALS: readonly Material[] = [
  { id: '316', name: '316', condition: 'cold worked', factor: 1, factorGiveOrTake: 1, isReference: true },
  { id: '2507', name: '2507', condition: 'annealed', factor: 1.8, factorGiveOrTake: 1.5, isReference: false },
];

export function part(over: Partial<Part> & Pick<Part, 'id' | 'role'>): Part {
  return {
    name: over.id,
    designation: '',
    hand: null,
    adjustable: false,
    matchedPair: false,
    regrindLimit: 0,
    fitsConnectionIds: [MEDIUM.id, HIGH.id],
    supplier: '',
    priceMinor: null,
    leadTimeDays: null,
    permittedMaterialIds: 'all',
    chlorinated: 'unknown',
    openedLifeDays: null,
    dropsPerMl: null,
    containerMl: null,
    ...{ packSize: null, minQuantity: null, breakKind: null, priceBreaks: null, offers: null },
    ...(over.permittedDuties === undefined ? { permittedDuties: ['ordinary' as const] } : {}),
    shelfLifeDays: null,
    ...over,
  };
}

export const DIE = part({ id: 'die-56', role: 'die', name: '9/16 die', hand: 'LH' });
export const BLADE = part({ id: 'blade-56', role: 'blade', name: '9/16 blade', regrindLimit: 2 });
export const RING = part({ id: 'go-56', role: 'go-ring', name: '9/16 GO ring', hand: 'LH' });
export const BODY = part({ id: 'body', role: 'coning-body', name: 'coning body' });
export const FLUID = part({ id: 'oil', role: 'fluid', name: 'cutting oil', fitsConnectionIds: [] });

/** A shop with people, three sizes, two materials and a part of every kind that has rules of its own. No tools. */
export function testShop(db: Db = testDb()): Db {
  const set = (noun: Parameters<typeof setNoun>[2]) => must(setNoun(db, may('set-up-shop'), noun, ENV));
  for (const value of PEOPLE) set({ noun: 'person', value, envelope: envelope() });
  for (const value of [MEDIUM, HIGH, QUARTER]) set({ noun: 'connection', value, envelope: envelope() });
  for (const value of MATERIALS) set({ noun: 'material', value, envelope: envelope() });
  for (const value of [DIE, BLADE, RING, BODY, FLUID]) set({ noun: 'part', value, envelope: envelope() });
  return db;
}

/** Receives one tool of a part of the test shop, with its hand as the part has it. */
export function receive(
  db: Db,
  toolId: string,
  of: Part,
  over: Partial<Parameters<typeof ReceiveToolInput.parse>[0] & object> = {},
): void {
  const input = ReceiveToolInput.parse({
    ...entered(),
    toolId,
    partId: of.id,
    hand: of.hand,
    receivedOnDay: '2026-01-05',
    dueOnDay: of.role === 'go-ring' ? '2026-12-31' : null,
    ...over,
  });
  must(receiveTool(db, may('receive-tool'), input, ENV));
}

/** Every row of every table, in order: what two databases must share to be equal. */
export function dump(db: Db): Record<string, unknown[]> {
  const tables = db.$client
    .prepare(`SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name`)
    .pluck()
    .all() as string[];
  return Object.fromEntries(
    tables.map((table) => {
      const rows = db.$client.prepare(`SELECT * FROM ${table}`).all();
      return [table, rows.sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1))];
    }),
  );
}
