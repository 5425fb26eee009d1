import fc from 'fast-check';
import { expect, it } from 'vitest';
import { logCut } from '@/db/commands/log-cut';
import { reverseEntry } from '@/db/commands/reverse-entry';
import { setNoun } from '@/db/commands/set-noun';
import { replay } from '@/db/ledger/replay';
import { type Db, openDb } from '@/db/open';
import { LogCutInput } from '@/lib/shop/command-input';
import {
  BLADE,
  BODY,
  DIE,
  dump,
  ENV,
  entered,
  envelope,
  FLUID,
  may,
  must,
  NOW_MS,
  part,
  RING,
  receive,
  testDb,
  testShop,
} from '../../support/db';
import { type Act, history, type Past, type Send, toSend } from '../../support/history';
import { keptTools, naiveTools } from '../../support/naive-counts';

/** With which a blade's first-off passes. */
const CONE_GAUGE = part({ id: 'cg-56', role: 'cone-gauge' });
const RUNS = { numRuns: 60 };
let template: Buffer | undefined;

/** A shop with one of each kind of tool but the second die, so that histories get somewhere. */
function shopWithTools(): Db {
  if (template === undefined) {
    const db = testShop();
    receive(db, 'D-56-01', DIE);
    receive(db, 'B-56-01', BLADE);
    receive(db, 'G-56-GO-1', RING);
    receive(db, 'F-L01', FLUID);
    receive(db, 'BDY-A', BODY);
    must(setNoun(db, may('set-up-shop'), { noun: 'part', value: CONE_GAUGE, envelope: envelope() }, ENV));
    receive(db, 'CG-56-1', CONE_GAUGE, { dueOnDay: '2027-12-31' });
    template = db.$client.serialize();
  }
  return testDbOf(template);
}

function testDbOf(bytes: Buffer): Db {
  return openDb(Buffer.from(bytes));
}

interface Played {
  readonly db: Db;
  readonly accepted: readonly Send[];
  readonly endMs: number;
}

/** Lives through a history. A refused command must leave the database as it was, to the byte. */
function play(acts: readonly Act[], seen?: Map<string, number>): Played {
  const db = shopWithTools();
  const accepted: Send[] = [];
  acts.forEach((act, no) => {
    const send = toSend(act, no, pastOf(db));
    const before = db.$client.serialize();
    const result = send(db, { nowMs: NOW_MS + no * 60_000 });
    const outcome = `${act.deed.do} ${result.ok ? 'done' : result.refusal.code}`;
    seen?.set(outcome, (seen.get(outcome) ?? 0) + 1);
    if (result.ok) accepted.push(send);
    else expect(db.$client.serialize().equals(before), outcome).toBe(true);
  });
  return { db, accepted, endMs: NOW_MS + acts.length * 60_000 };
}

function pastOf(db: Db): Past {
  const rows = db.$client.prepare('SELECT id, kind FROM entry ORDER BY seq DESC').all() as {
    id: string;
    kind: string;
  }[];
  const cuts = rows.filter((row) => row.kind === 'cut-logged');
  return { all: rows.map((row) => row.id), cuts: cuts.map((row) => row.id) };
}

// source: identity. Σ edge_use = Σ standing cuts + Σ standing openings.
const SUMS = `SELECT (SELECT TOTAL(exposure_micro) FROM edge_use) AS kept,
  (SELECT TOTAL(exposure_micro) FROM cut WHERE reversed = 0)
  + (SELECT TOTAL(opening ->> 'exposureMicro') FROM tool) AS counted`;

it('keeps what a replay gives and what a naive count of the raw entries gives, whatever happened', () => {
  fc.assert(
    fc.property(history, (acts) => {
      const { db } = play(acts);
      const again = testDb();
      replay(db, again);
      expect(dump(again)).toEqual(dump(db));
      // source: identity. Kept counters = the sum of what stands in the ledger.
      expect(keptTools(db)).toEqual(naiveTools(db));
      const { kept, counted } = db.$client.prepare(SUMS).get() as { kept: number; counted: number };
      expect(kept).toBe(counted);
      expect(db.$client.pragma('foreign_key_check')).toEqual([]);
    }),
    RUNS,
  );
});

it('counts an entry once, however often and however late it is sent again', () => {
  fc.assert(
    fc.property(history, fc.nat(7 * 86_400_000), (acts, laterMs) => {
      const { db, accepted, endMs } = play(acts);
      const before = dump(db);
      for (const send of accepted) {
        expect(send(db, { nowMs: endMs + laterMs })).toMatchObject({
          ok: true,
          value: { alreadyRecorded: true },
        });
      }
      expect(dump(db)).toEqual(before);
    }),
    RUNS,
  );
});

it('taking a row back and entering it again restores every sum exactly', () => {
  let mended = 0;
  fc.assert(
    fc.property(history, (acts) => {
      const { db, endMs } = play(acts);
      const env = { nowMs: endMs };
      const row = db.$client.prepare(LAST_ROW_OF_A_WORKING_EDGE).get() as CutRow | undefined;
      if (row === undefined) return;
      mended += 1;
      const before = keptTools(db);
      const input = { ...entered(), targetId: row.entry_id, reason: 'a slip' };
      must(reverseEntry(db, may('reverse-entry'), input, env));
      const without = keptTools(db);
      expect(totalMicro(before) - totalMicro(without)).toBe(row.exposure_micro);
      must(logCut(db, may('log-cut'), sameRow(row), env));
      expect(keptTools(db)).toEqual(before);
    }),
    RUNS,
  );
  expect(mended).toBeGreaterThan(8);
});

it('the histories reach what they are meant to reach', () => {
  const seen = new Map<string, number>();
  for (const acts of fc.sample(history, { numRuns: 160, seed: 7 })) play(acts, seen);
  for (const outcome of [
    ...['cut done', 'cut edge', 'cut state', 'cut fit', 'cut unit-slip', 'cut future', 'cut unknown-tool'],
    ...[
      'receive done',
      'receive clash',
      'receive hand',
      'receive unknown-material',
      'issue done',
      'issue state',
    ],
    ...['return done', 'return state', 'move done', 'move state', 'move reason', 'move back', 'end done'],
    ...[
      'end edge',
      'renew done',
      'renew state',
      'calibrate done',
      'calibrate due',
      'open done',
      'open opened',
    ],
    ...[
      'level done',
      'read done',
      'read method',
      'read edge',
      'reverse done',
      'reverse reversed',
      'reverse rested-on',
      'reverse reversal',
      'correct done',
      'gauge done',
      'gauge state',
      'gauge role',
    ],
  ]) {
    expect(seen.get(outcome) ?? 0, outcome).toBeGreaterThan(0);
  }
}, 180_000);

interface CutRow {
  readonly entry_id: string;
  readonly tool_id: string;
  readonly exposure_micro: number;
  readonly payload: string;
}

const LAST_ROW_OF_A_WORKING_EDGE = `SELECT c.*, e.payload FROM cut c JOIN entry e ON e.id = c.entry_id
  JOIN tool t ON t.id = c.tool_id JOIN edge g ON g.tool_id = t.id
  WHERE c.reversed = 0 AND t.state IN ('in-crib', 'issued') AND g.end IS NULL
    AND g.edge_no = (SELECT MAX(edge_no) FROM edge WHERE tool_id = t.id)
    AND c.seq > COALESCE((SELECT MAX(seq) FROM entry WHERE subject_id = t.id AND kind IN ('edge-renewed', 'tool-received')), 0)
  ORDER BY c.seq DESC LIMIT 1`;

function sameRow(row: CutRow) {
  const { threadLengthTyped, ...cut } = JSON.parse(row.payload);
  const [typed, unit] = threadLengthTyped.split(' ');
  const threadLength = threadLengthTyped === '' ? null : { typed, unit };
  return LogCutInput.parse({ ...entered(), ...cut, toolId: row.tool_id, threadLength });
}

function totalMicro(tools: ReturnType<typeof keptTools>): number {
  return Object.values(tools)
    .flatMap((tool) => Object.values(tool.use))
    .reduce((sum, [, , micro]) => sum + micro, 0);
}
