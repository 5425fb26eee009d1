import { beforeEach, expect, it } from 'vitest';
import { issueKit } from '@/db/commands/issue-kit';
import { setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import { findKit } from '@/db/queries/kits';
import { IssueKitInput } from '@/lib/shop/kit-input';
import {
  BLADE,
  DIE,
  dump,
  ENV,
  entered,
  envelope,
  FLUID,
  may,
  must,
  part,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { kitSender, THREADS_JOB } from '../../support/kit-shop';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;
let kits: ReturnType<typeof kitSender>;

// source: hand. Every expectation below is stated by the rules of TRADE: one holder, the right hand, in date, all or none.
beforeEach(() => {
  db = testShop();
  send = sender(db);
  kits = kitSender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-1', RING);
  receive(db, 'F-L01', FLUID, { levelMl: 400 });
  must(send.plan(THREADS_JOB));
});

it('every item goes out together, to one person, and the record says in which kit', () => {
  const { id } = must(kits.issueKit(['d-56-o1', 'G-56-GO-1', 'F-L01'], { entryId: 'kit-000001' }));
  expect(id).toBe('kit-000001');
  for (const toolId of ['D-56-01', 'G-56-GO-1', 'F-L01'])
    expect(row(db, 'tool', 'id', toolId)).toMatchObject({
      ...{ state: 'issued', holder_id: 'ash', job_line_id: 'J-7.1', bench: '4', kit_id: 'kit-000001' },
    });
  expect(findKit(db, 'kit-000001')?.itemsNow.map(({ tool, out }) => [tool.id, out])).toEqual([
    ['D-56-01', true],
    ['G-56-GO-1', true],
    ['F-L01', true],
  ]);
  replayedEqualsKept(db);
});

it('one item that stops refuses the whole kit, and nothing changes', () => {
  must(send.move('G-56-GO-1', 'quarantined', { reason: 'nicked' }));
  const before = dump(db);
  expect(sentence(kits.issueKit(['D-56-01', 'G-56-GO-1']))).toBe(
    'G-56-GO-1 is set aside (nicked). It must not be used.',
  );
  expect(sentence(kits.issueKit(['D-56-01', 'D-56-99']))).toMatch(/^No tool D-56-99 is in the record/);
  expect(sentence(kits.issueKit(['D-56-01', 'D-56-01']))).toBe('D-56-01 is already in this kit.');
  expect(sentence(kits.issueKit(['D-56-01'], { jobLineId: 'J-8.1' }))).toBe(
    'J-8.1 is not a line of an open job.',
  );
  expect(dump(db)).toEqual(before);
});

it('a blade is not asked for by a job of threads', () => {
  receive(db, 'B-56-01', BLADE);
  expect(sentence(kits.issueKit(['B-56-01']))).toBe('Coning blade B-56-01: this job does not ask for one.');
});

it('sent twice it counts once', () => {
  must(kits.issueKit(['D-56-01'], { entryId: 'kit-000002' }));
  const before = dump(db);
  expect(must(kits.issueKit(['D-56-01'], { entryId: 'kit-000002' })).alreadyRecorded).toBe(true);
  expect(must(kits.issueKit(['d-56-o1'], { entryId: 'kit-000002' })).alreadyRecorded).toBe(true);
  expect(dump(db)).toEqual(before);
});

// source: hand. Other items, more or fewer, are another kit: nobody is told that they went out when they did not.
it('its ID with other items is refused', () => {
  must(kits.issueKit(['D-56-01'], { entryId: 'kit-000003' }));
  const before = dump(db);
  for (const toolIds of [['G-56-GO-1'], ['D-56-01', 'G-56-GO-1']])
    expect(sentence(kits.issueKit(toolIds, { entryId: 'kit-000003' }))).toBe(
      'This entry ID was already used for something else.',
    );
  expect(dump(db)).toEqual(before);
});

// source: hand. 20:00 on 2 March in a shop six hours behind UTC is 3 March in UTC: the ring is good to the end of its day.
it('a gauge due today goes out until the shop’s own midnight', () => {
  receive(db, 'G-56-GO-2', RING, { dueOnDay: '2026-03-02' });
  const issue = (utcOffsetMinutes: number) =>
    issueKit(
      db,
      may('issue-tool'),
      IssueKitInput.parse({ ...entered(), jobLineId: 'J-7.1', toPersonId: 'ash', toolIds: ['G-56-GO-2'] }),
      { nowMs: Date.UTC(2026, 2, 3, 2), utcOffsetMinutes },
    );
  expect(issue(0).ok).toBe(false);
  must(issue(-360));
});

it('taken back, the kit and its items go back together', () => {
  const { id } = must(kits.issueKit(['D-56-01', 'G-56-GO-1']));
  must(send.reverse(id));
  expect(findKit(db, id)).toBeUndefined();
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'in-crib', kit_id: null });
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'in-crib' });
  replayedEqualsKept(db);
});

it('a tool kept for another line, or owing its first-off, stays in the crib', () => {
  receive(db, 'B-56-02', BLADE);
  must(send.move('B-56-02', 'regrind'));
  must(send.renew('B-56-02'));
  expect(sentence(send.issue('B-56-02'))).toBe(
    'B-56-02 goes out again when its first-off has passed the gauges.',
  );
});

// source: hand. The kit refuses a bottle with the same words as the issue by itself: why not, and which to take.
it('Q22: a bottle that is not flagged for the line’s service stops the kit, and the one that is, is named', () => {
  const [line] = THREADS_JOB.lines;
  const lines = [{ ...line, lineNo: 1, duty: 'oxygen' }];
  must(send.plan({ id: 'J-57', title: 'Oxygen line', lines }));
  const oxygen = part({ id: 'oxy', role: 'fluid', fitsConnectionIds: [], permittedDuties: ['oxygen'] });
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value: oxygen, envelope: envelope() }, ENV));
  receive(db, 'F-L08', oxygen, { levelMl: 400 });
  expect(sentence(kits.issueKit(['D-56-01', 'F-L01'], { jobLineId: 'J-57.1' }))).toBe(
    'F-L01 is not flagged for oxygen service. Use F-L08 first.',
  );
  expect(sentence(send.issue('F-L01', { jobLineId: 'J-57.1' }))).toBe(
    'F-L01 is not flagged for oxygen service. Use F-L08 first.',
  );
  must(kits.issueKit(['D-56-01', 'F-L08'], { jobLineId: 'J-57.1' }));
});
