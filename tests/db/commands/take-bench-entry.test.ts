import { beforeEach, expect, it } from 'vitest';
import { settleConflict } from '@/db/commands/keep-conflicts';
import { takeBenchEntry } from '@/db/commands/take-bench-entry';
import type { Db } from '@/db/open';
import { listConflicts, listOpenConflicts } from '@/db/queries/conflicts';
import { BenchEntrySchema } from '@/lib/shop/bench-input';
import { SettleConflictInput } from '@/lib/shop/kit-input';
import {
  ASH,
  DIE,
  dump,
  ENV,
  entered,
  HIGH,
  may,
  must,
  NOW_MS,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  must(send.issue('D-56-01'));
});

const HOUR_MS = 3_600_000;
const cut = (over: object = {}) =>
  BenchEntrySchema.parse({
    ...{ kind: 'cut', toolId: 'D-56-01', connectionId: HIGH.id, materialId: '316', ends: 12, goodEnds: 11 },
    ...{ rejects: [{ cause: 'go-tight', count: 1 }] },
    ...entered({ deviceAtMs: NOW_MS - HOUR_MS }),
    ...over,
  });
const stop = (how: string, over: object = {}) =>
  BenchEntrySchema.parse({ kind: 'stop', toolId: 'D-56-01', how, ...entered(), ...over });
const take = (entry: unknown, behindMs = 0, actor: typeof ASH | null = ASH) =>
  takeBenchEntry(db, actor, entry, { behindMs, nowMs: NOW_MS });

// source: hand. Twelve ends, sent twice, are twelve.
it('Q18: the same entry sent twice counts once', () => {
  const entry = cut();
  expect(must(take(entry)).outcome).toBe('recorded');
  const before = dump(db);
  expect(must(take(entry))).toMatchObject({
    outcome: 'already',
    sentence: 'Already recorded; nothing was counted twice.',
  });
  expect(dump(db)).toEqual(before);
  expect(row(db, 'edge_use', 'tool_id', 'D-56-01')).toMatchObject({ ends: 12, good_ends: 11 });
});

// source: hand. The answer was lost and the clock measured anew, some milliseconds off: still the same twelve ends.
it('sent again with the clock set right by another amount it counts once', () => {
  for (const cutAtMs of [null, NOW_MS - 2 * HOUR_MS]) {
    const entry = cut({ ...entered({ deviceAtMs: NOW_MS - HOUR_MS }), cutAtMs });
    must(take(entry, 1_500));
    expect(must(take(entry, 1_463)).outcome).toBe('already');
  }
  expect(row(db, 'edge_use', 'tool_id', 'D-56-01')).toMatchObject({ ends: 24 });
  expect(listOpenConflicts(db)).toEqual([]);
});

// source: hand. Set aside in the crib by the stop; looked at, issued anew, and then the same stop comes once more.
it('a stop sent again is the same stop, wherever the tool is by now', () => {
  must(send.giveBack('D-56-01'));
  const entry = stop('dropped');
  must(take(entry));
  must(send.move('D-56-01', 'in-crib'));
  must(send.issue('D-56-01'));
  expect(must(take(entry)).outcome).toBe('already');
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'issued' });
});

// source: hand. Nested deeper than can be written out: kept as a conflict that says so, not an error.
it('an entry nested without end is kept as a conflict', () => {
  const deep = JSON.parse(`${'['.repeat(100_000)}${']'.repeat(100_000)}`);
  expect(must(take({ entryId: 'deep-00001', kind: 'cut', deep })).outcome).toBe('conflict');
  expect(listOpenConflicts(db)).toHaveLength(1);
});

// source: hand. A clock a day behind, corrected: cut at 06:00 by the wall, not a day before.
it('sets the clock of the device right', () => {
  must(take(cut({ deviceAtMs: NOW_MS - 26 * HOUR_MS }), 24 * HOUR_MS));
  expect(row(db, 'cut', 'tool_id', 'D-56-01')).toMatchObject({ cut_at_ms: NOW_MS - 2 * HOUR_MS });
});

it('a clock ahead never puts a cut into the future', () => {
  must(take(cut({ deviceAtMs: NOW_MS + 5 * HOUR_MS })));
  expect(row(db, 'cut', 'tool_id', 'D-56-01')).toMatchObject({ cut_at_ms: NOW_MS });
});

it('Q34: what the record cannot take becomes one conflict, kept as it was sent, settled by a person', () => {
  must(send.end('D-56-01', 'worn', 'scrapped'));
  const entry = cut();
  expect(must(take(entry))).toMatchObject({ outcome: 'conflict' });
  const before = dump(db);
  expect(must(take(entry))).toMatchObject({ outcome: 'conflict', sentence: 'Kept for somebody to settle.' });
  expect(dump(db)).toEqual(before);
  const [conflict] = listOpenConflicts(db);
  expect(conflict).toMatchObject({
    toolId: 'D-56-01',
    what: '12 ends cut with D-56-01, 11 good',
    sentence: 'D-56-01 has no edge left in service; nothing more can be cut with it.',
  });
  expect(JSON.parse(conflict?.sent ?? '')).toEqual(entry);
  const settle = () =>
    settleConflict(
      db,
      may('settle-conflict'),
      SettleConflictInput.parse({
        ...entered(),
        conflictId: conflict?.id,
        how: 'dropped',
        note: 'logged on D-56-02',
      }),
      ENV,
    );
  must(settle());
  expect(sentence(settle())).toBe('Somebody has already settled this.');
  expect(listOpenConflicts(db)).toEqual([]);
  expect(listConflicts(db)).toMatchObject([{ settled: 'dropped' }]);
  replayedEqualsKept(db);
});

it('Q27: turning hard stops the tool: back, set aside, no life lost but what was cut', () => {
  expect(must(take(stop('hard'))).outcome).toBe('recorded');
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({
    ...{ state: 'quarantined', state_reason: 'stopped: turns hard', pieces: 'none' },
  });
  expect(row(db, 'edge', 'tool_id', 'D-56-01')).toMatchObject({ end: null });
});

it('broken, its pieces are owed; sent again it is still the same stop', () => {
  const entry = stop('broken');
  must(take(entry));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'quarantined', pieces: 'owed' });
  expect(must(take(entry)).outcome).toBe('already');
});

it('a tool that lies in the crib is set aside all the same', () => {
  must(send.giveBack('D-56-01'));
  must(take(stop('dropped')));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'quarantined' });
});

it('nobody is not a conflict: the bench keeps it', () => {
  const before = dump(db);
  expect(sentence(take(cut(), 0, null))).toBe('Say who you are first: choose your name.');
  expect(dump(db)).toEqual(before);
});

it('what cannot be read is kept too, so that it does not hold up what comes after it', () => {
  const entryId = 'unreadable-1';
  expect(must(take({ entryId, kind: 'cut', ends: 'many' }))).toMatchObject({ entryId, outcome: 'conflict' });
  expect(listOpenConflicts(db)).toMatchObject([{ what: 'an entry that cannot be read' }]);
  expect(sentence(take({ kind: 'cut' }))).toBe(
    'An entry of the bench has no ID of its own and cannot be kept.',
  );
  expect(sentence(take(null))).toMatch(/no ID of its own/);
});

// source: hand. First come, first served; the second is told so and keeps a conflict, and nobody holds the tool twice.
it('a tool is taken and given back at the bench; taken by two, the second becomes a conflict', () => {
  receive(db, 'D-56-02', DIE);
  const taking = (over: object = {}) =>
    BenchEntrySchema.parse({ kind: 'take', toolId: 'd-56-o2', jobLineId: 'J-1.1', ...entered(), ...over });
  const first = taking();
  expect(must(take(first)).outcome).toBe('recorded');
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({ state: 'issued', holder_id: 'ash' });
  expect(must(take(first)).outcome).toBe('already');
  expect(must(take(taking()))).toMatchObject({
    outcome: 'conflict',
    sentence: 'D-56-02 is with Ash Moor, for J-1.1; it must come back before it can be issued again.',
  });
  expect(listOpenConflicts(db)).toMatchObject([{ what: 'D-56-O2 taken for J-1.1' }]);
  const back = BenchEntrySchema.parse({
    ...{ kind: 'give-back', toolId: 'D-56-02', condition: 'dull' },
    ...entered(),
  });
  expect(must(take(back)).outcome).toBe('recorded');
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({ state: 'quarantined', holder_id: null });
  expect(must(take(back)).outcome).toBe('already');
  replayedEqualsKept(db);
});
