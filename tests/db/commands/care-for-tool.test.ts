import { beforeEach, expect, it } from 'vitest';
import { accountPieces, adjustDie, checkFirstOff, freeTool, reserveTool } from '@/db/commands/care-for-tool';
import { issueTool } from '@/db/commands/issue-tool';
import { setNoun } from '@/db/commands/set-noun';
import { takeBenchEntry } from '@/db/commands/take-bench-entry';
import type { Env } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import { IssueToolInput } from '@/lib/shop/command-input';
import * as input from '@/lib/shop/kit-input';
import {
  ASH,
  BLADE,
  DIE,
  ENV,
  entered,
  envelope,
  may,
  must,
  NOW_MS,
  part,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { LEE, THREADS_JOB } from '../../support/kit-shop';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

// source: hand. The rules are those of TRADE §1.5 and its questions 5, 20 and 30.
beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  must(send.plan(THREADS_JOB));
});

const on = '2026-03-02';
const reserve = (toolId: string, jobLineId = 'J-7.1', untilDay = '2026-03-06') =>
  reserveTool(
    db,
    may('issue-tool'),
    input.ReserveToolInput.parse({ ...entered(), toolId, jobLineId, untilDay }),
    ENV,
  );
const free = (toolId: string) =>
  freeTool(db, may('issue-tool'), input.FreeToolInput.parse({ ...entered(), toolId }), ENV);
const pieces = (toolId: string, allFound: boolean, actor?: Actor) =>
  accountPieces(
    db,
    may('return-tool', actor),
    input.AccountPiecesInput.parse({ ...entered(), toolId, allFound, where: 'in the bore, with a light' }),
    ENV,
  );
const adjust = (toolId: string) =>
  adjustDie(
    db,
    may('read-edge'),
    input.AdjustDieInput.parse({ ...entered(), toolId, direction: 'closed', amount: 'a touch', onDay: on }),
    ENV,
  );
const firstOff = (toolId: string, result: 'pass' | 'fail' | 'not-gauged', gaugeIds: string[] = []) =>
  checkFirstOff(
    db,
    may('read-edge'),
    input.CheckFirstOffInput.parse({ ...entered(), toolId, result, onDay: on, gaugeIds }),
    ENV,
  );

/** A gauge of the size that the test shop's tools cut, in date. */
function receiveGauge(id: string, role: 'cone-gauge' | 'go-ring' | 'not-go-ring', hand: 'LH' | null = null) {
  const value = part({ id: `part-${id.toLowerCase()}`, role, hand });
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value, envelope: envelope() }, ENV));
  receive(db, id, value, { dueOnDay: '2026-12-31' });
}

/** The first-offs on record of a tool, oldest first. */
const firstOffs = (toolId: string) =>
  db.$client
    .prepare(`SELECT payload FROM entry WHERE subject_id = ? AND kind = 'first-off-checked' ORDER BY seq`)
    .pluck()
    .all(toolId)
    .map((payload) => JSON.parse(String(payload)));

it('Q5: a die kept for one line goes to no other until the day is over or it is freed', () => {
  must(reserve('D-56-01'));
  expect(sentence(send.issue('D-56-01', { jobLineId: 'J-9.1' }))).toBe(
    'D-56-01 is kept for J-7.1 until 6 Mar 2026. Free it first if that no longer holds.',
  );
  expect(sentence(reserve('D-56-01'))).toBe('D-56-01 is already kept for J-7.1 until 6 Mar 2026.');
  must(send.issue('D-56-01', { jobLineId: 'J-7.1' }));
  must(send.giveBack('D-56-01'));
  must(free('D-56-01'));
  must(send.issue('D-56-01', { jobLineId: 'J-9.1' }));
  replayedEqualsKept(db);
});

it('a reservation that is over keeps nothing', () => {
  const lastWeek = { nowMs: NOW_MS - 7 * 86_400_000 };
  const keep = (untilDay: string, env = ENV) => {
    const fields = { ...entered(), toolId: 'D-56-01', jobLineId: 'J-7.1', untilDay };
    return reserveTool(db, may('issue-tool'), input.ReserveToolInput.parse(fields), env);
  };
  must(keep('2026-03-01', lastWeek));
  expect(sentence(keep('2026-03-01'))).toBe('That day is past.');
  must(send.issue('D-56-01', { jobLineId: 'J-9.1' }));
  must(send.giveBack('D-56-01'));
  // The old keeping is over, so it stands in the way of no new one.
  must(keep('2026-03-02'));
  expect(sentence(send.issue('D-56-01', { jobLineId: 'J-9.1' }))).toMatch(/^D-56-01 is kept for J-7.1/);
  replayedEqualsKept(db);
});

// source: hand. Kept through 2 March. Six hours behind UTC that day lasts until 06:00 UTC of the 3rd; ten hours ahead it is
// over at 14:00 UTC of the 2nd. At the counter and at the bench alike.
it('a reservation ends with the day in the shop, not with the UTC day', () => {
  must(reserve('D-56-01', 'J-7.1', '2026-03-02'));
  const other = { toolId: 'D-56-01', toPersonId: 'ash', jobLineId: 'J-9.1', bench: '' };
  const issue = (env: Env) =>
    issueTool(db, may('issue-tool'), IssueToolInput.parse({ ...entered(), ...other }), env);
  const evening = { nowMs: Date.UTC(2026, 2, 3, 2), utcOffsetMinutes: -360 };
  const morning = { nowMs: Date.UTC(2026, 2, 2, 22), utcOffsetMinutes: 600 };
  expect(sentence(issue(evening))).toMatch(/^D-56-01 is kept for J-7.1/);
  const bench = { kind: 'take', toolId: 'D-56-01', jobLineId: 'J-9.1', ...entered() };
  expect(must(takeBenchEntry(db, ASH, bench, { behindMs: 0, ...evening })).sentence).toMatch(/is kept for/);
  must(issue(morning));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'issued', job_line_id: 'J-9.1' });
  replayedEqualsKept(db);
});

// source: hand. The day is the shop's own, so the same wish sent again after midnight is the same wish.
it('keeping a tool is sent twice and counts once, on either side of midnight', () => {
  const fields = { ...entered(), toolId: 'D-56-01', jobLineId: 'J-7.1', untilDay: '2026-03-06' };
  const keep = (env: Env) =>
    must(reserveTool(db, may('issue-tool'), input.ReserveToolInput.parse(fields), env)).alreadyRecorded;
  expect([keep(ENV), keep({ nowMs: NOW_MS + 86_400_000 })]).toEqual([false, true]);
});

// source: hand. A dropped ring keeps its due day, and gauges nothing; a die is no gauge.
it('a first-off is not gauged with what is set aside, or is no gauge', () => {
  receive(db, 'B-56-01', BLADE);
  receive(db, 'G-56-GO-1', RING);
  must(send.move('B-56-01', 'regrind'));
  must(send.renew('B-56-01'));
  must(send.move('G-56-GO-1', 'quarantined', { reason: 'knocked' }));
  for (const gaugeId of ['G-56-GO-1', 'D-56-01'])
    expect(sentence(firstOff('B-56-01', 'pass', [gaugeId]))).toBe(
      `${gaugeId} is no gauge in use here, or it is set aside. Take another one.`,
    );
});

it('a reservation needs a line of an open job', () => {
  expect(sentence(reserve('D-56-01', 'J-9.1'))).toBe('J-9.1 is not a line of an open job.');
  expect(sentence(free('D-56-01'))).toBe('D-56-01 is not kept for any line.');
});

it('Q20: a reground blade is not issuable until its first-off passes, and then counts from zero', () => {
  receive(db, 'B-56-01', BLADE);
  receiveGauge('CG-56-1', 'cone-gauge');
  must(send.cut('B-56-01', 30));
  must(send.move('B-56-01', 'regrind'));
  must(send.renew('B-56-01'));
  expect(sentence(send.issue('B-56-01'))).toBe(
    'B-56-01 goes out again when its first-off has passed the gauges.',
  );
  must(firstOff('B-56-01', 'pass', ['CG-56-1']));
  must(send.issue('B-56-01'));
  expect(row(db, 'edge', 'tool_id', 'B-56-01')).toMatchObject({ edge_no: 1, end: 'removed-working' });
  expect(sentence(firstOff('B-56-01', 'pass'))).toBe('B-56-01 owes no first-off check.');
  replayedEqualsKept(db);
});

// source: hand. The rule for ends holds for the first one too: without a recorded gauge nothing has passed.
it('a first-off without a named gauge is looked at, and stays owed', () => {
  receive(db, 'B-56-01', BLADE);
  receiveGauge('CG-56-1', 'cone-gauge');
  must(send.move('B-56-01', 'regrind'));
  must(send.renew('B-56-01'));
  const asked = 'Name the cone gauge it was gauged with. Looked at without gauges it stays owed.';
  expect(sentence(firstOff('B-56-01', 'pass'))).toBe(asked);
  must(firstOff('B-56-01', 'not-gauged', ['CG-56-1']));
  expect(firstOffs('B-56-01')).toEqual([{ result: 'not-gauged', onDay: on, gaugeIds: [] }]);
  expect(row(db, 'tool', 'id', 'B-56-01')).toMatchObject({ state: 'in-crib', first_off_owed: 1 });
  expect(sentence(send.issue('B-56-01'))).toMatch(/goes out again when its first-off has passed/);
  must(firstOff('B-56-01', 'pass', ['CG-56-1']));
  must(send.move('B-56-01', 'regrind'));
  expect(sentence(send.renew('B-56-01', { firstOff: 'passed' })), 'nor with the regrind').toBe(asked);
  must(send.renew('B-56-01', { firstOff: 'passed', gaugeIds: ['CG-56-1'] }));
  must(send.issue('B-56-01'));
  replayedEqualsKept(db);
});

it('a first-off that fails sets the tool aside', () => {
  receive(db, 'B-56-01', BLADE);
  must(send.move('B-56-01', 'regrind'));
  must(send.renew('B-56-01'));
  must(firstOff('B-56-01', 'fail'));
  expect(row(db, 'tool', 'id', 'B-56-01')).toMatchObject({ state: 'quarantined', first_off_owed: 1 });
});

it('a first-off is gauged with gauges in date', () => {
  receive(db, 'B-56-01', BLADE);
  receive(db, 'G-56-GO-1', RING, { dueOnDay: '2026-03-01' });
  must(send.move('B-56-01', 'regrind'));
  must(send.renew('B-56-01'));
  expect(sentence(firstOff('B-56-01', 'pass', ['G-56-GO-1']))).toBe(
    'G-56-GO-1 is out of calibration. Do not accept with this gauge.',
  );
  expect(sentence(firstOff('B-56-01', 'pass', ['G-NO']))).toMatch(/^No tool G-NO is in the record/);
});

it('Q30: an adjusted die owes a first-off; its life is not reset; a solid die is not adjusted', () => {
  expect(sentence(adjust('D-56-01'))).toBe('D-56-01 is a solid die; it cannot be adjusted.');
  const split = part({ id: 'split', role: 'die', hand: 'LH', adjustable: true });
  must(send.receive({ toolId: 'B-0', partId: BLADE.id }));
  expect(sentence(adjust('B-0'))).toBe('B-0 is not a die; only dies are adjusted.');
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value: split, envelope: envelope() }, ENV));
  receive(db, 'D-56-02', split);
  must(send.cut('D-56-02', 12));
  must(adjust('D-56-02'));
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({ adjustments: 1, first_off_owed: 1 });
  expect(row(db, 'edge_use', 'tool_id', 'D-56-02')).toMatchObject({ ends: 12 });
  receiveGauge('G-56-GO-1', 'go-ring', 'LH');
  receiveGauge('G-56-NG-1', 'not-go-ring', 'LH');
  must(firstOff('D-56-02', 'pass', ['G-56-GO-1', 'g-56-ng-I']));
  expect(firstOffs('D-56-02')).toEqual([{ result: 'pass', onDay: on, gaugeIds: ['G-56-GO-1', 'G-56-NG-1'] }]);
  must(send.issue('D-56-02'));
  replayedEqualsKept(db);
});

it('Q1: after a breakage the pieces are owed; a technician cannot end the search without them', () => {
  must(send.end('D-56-01', 'teeth-broken-worn', 'quarantined', { pieces: 'owed' }));
  expect(sentence(pieces('D-56-01', false))).toBe(
    'Keep searching the tube, the bench and the floor; only a lead or quality ends the search.',
  );
  must(pieces('D-56-01', false, LEE));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ pieces: 'not-found' });
  must(pieces('D-56-01', true));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ pieces: 'found' });
  expect(sentence(pieces('D-56-01', true))).toBe('Nothing of D-56-01 is being searched for.');
  replayedEqualsKept(db);
});
