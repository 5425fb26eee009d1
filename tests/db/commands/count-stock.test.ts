import { beforeEach, expect, it } from 'vitest';
import { countStock } from '@/db/commands/count-stock';
import { write } from '@/db/ledger/write';
import type { Db } from '@/db/open';
import { CountStockInput } from '@/lib/shop/kit-input';
import {
  BLADE,
  DIE,
  dump,
  ENV,
  entered,
  may,
  must,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

// source: hand. A variance is an event with a reason, never a silent fix.
beforeEach(() => {
  db = testShop();
  send = sender(db);
  for (const id of ['D-56-01', 'D-56-02', 'D-56-03', 'D-56-04']) receive(db, id, DIE);
  receive(db, 'G-56-GO-1', RING);
  must(send.issue('D-56-03'));
  must(send.move('D-56-04', 'lost'));
});

const count = (scanned: string[], variances: object[] = [], over: object = {}) =>
  countStock(
    db,
    may('move-tool'),
    CountStockInput.parse({ ...entered(), scope: 'edges', scanned, variances, ...over }),
    ENV,
  );
const variance = (toolId: string, kind: string, outcome: string) => ({
  toolId,
  kind,
  outcome,
  reason: 'bin 4 checked',
});

it('a count that agrees is one entry and moves nothing', () => {
  const { id } = must(count(['D-56-01', 'd-56-o2']));
  expect(row(db, 'stock_count', 'id', id)).toMatchObject({ expected: 2, found: 2, variances: '[]' });
  replayedEqualsKept(db);
});

it('each difference is settled as said, with its reason on the tool, and goes back with the count', () => {
  const { id } = must(
    count(
      ['D-56-01', 'D-56-03', 'D-56-04'],
      [
        variance('D-56-02', 'missing', 'lost'),
        variance('D-56-03', 'unexpected', 'in-crib'),
        variance('D-56-04', 'unexpected', 'left'),
      ],
    ),
  );
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({
    state: 'lost',
    state_reason: 'stock-take: bin 4 checked',
  });
  expect(row(db, 'tool', 'id', 'D-56-03')).toMatchObject({ state: 'in-crib', holder_id: null });
  expect(row(db, 'tool', 'id', 'D-56-04')).toMatchObject({ state: 'lost' });
  replayedEqualsKept(db);
  must(send.reverse(id));
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({ state: 'in-crib' });
  expect(row(db, 'tool', 'id', 'D-56-03')).toMatchObject({ state: 'issued' });
  replayedEqualsKept(db);
});

it('refuses what nobody explained, what is no difference, and what is not ours; nothing changes', () => {
  const before = dump(db);
  expect(sentence(count(['D-56-01']))).toBe('Say what is with D-56-02.');
  expect(sentence(count(['D-56-01', 'D-56-02'], [variance('D-56-02', 'missing', 'lost')]))).toBe(
    'D-56-02 has moved since it was counted. Load the count again.',
  );
  expect(sentence(count(['D-56-01', 'D-56-02', 'X-1']))).toMatch(/^Not in the record: X-1\./);
  expect(sentence(count(['D-56-01'], [variance('D-56-02', 'missing', 'in-crib')]))).toBe(
    'D-56-02: that does not follow from the count.',
  );
  expect(dump(db)).toEqual(before);
});

// source: hand. The rule of the house: an ID counts once with one content, and is refused with any other.
it('sent twice it counts once; its ID with another list of scans is refused', () => {
  const about = { entryId: 'count-0001', deviceAtMs: ENV.nowMs };
  must(count(['D-56-01', 'D-56-02'], [], about));
  const before = dump(db);
  expect(must(count(['D-56-01', 'D-56-02'], [], about)).alreadyRecorded).toBe(true);
  // The same tools in another order, typed otherwise, or scanned twice: the same count.
  expect(must(count(['d-56-o2', 'D-56-01', 'D-56-01'], [], about)).alreadyRecorded).toBe(true);
  for (const scanned of [['D-56-01'], ['D-56-01', 'D-56-02', 'G-56-GO-1'], ['D-56-01', 'D-56-03'], []])
    expect(sentence(count(scanned, [], about)), scanned.join()).toBe(
      'This entry ID was already used for something else.',
    );
  expect(dump(db)).toEqual(before);
});

// source: hand. What the entry of a count held before the list of scans was kept: it still answers for itself.
it('a count entered before its scans were kept is known by what it did keep', () => {
  const about = { entryId: 'count-0002', deviceAtMs: ENV.nowMs };
  const old = { scope: 'edges' as const, expected: 2, found: 2, variances: [] };
  must(
    write(db, may('move-tool'), ENV, (ledger) =>
      ledger.record({
        ...{ id: about.entryId, subjectId: about.entryId, deviceAtMs: ENV.nowMs, reason: '' },
        ...{ kind: 'stock-counted' as const, payload: old },
      }),
    ),
  );
  expect(must(count(['D-56-01', 'D-56-02'], [], about)).alreadyRecorded).toBe(true);
  expect(sentence(count(['D-56-01', 'D-56-02'], [], { ...about, scope: 'gauges' }))).toBe(
    'This entry ID was already used for something else.',
  );
  replayedEqualsKept(db);
});

// source: hand. One drawer is counted without the rest reported missing; the entry says which drawer it was.
it('a count of one drawer expects that drawer only, and its entry says so', () => {
  receive(db, 'B-56-01', BLADE);
  const drawer = { connectionId: DIE.fitsConnectionIds[0], edgeKind: 'die' };
  expect(sentence(count(['D-56-01', 'D-56-02']))).toBe('Say what is with B-56-01.');
  const about = { ...drawer, entryId: 'count-0003', deviceAtMs: ENV.nowMs };
  const { id } = must(count(['D-56-01', 'D-56-02'], [], about));
  expect(row(db, 'stock_count', 'id', id)).toMatchObject({ scope: 'edges', expected: 2, found: 2 });
  expect(JSON.parse(String(row(db, 'entry', 'id', id)?.payload))).toMatchObject(drawer);
  expect(must(count(['D-56-02', 'D-56-01'], [], about)).alreadyRecorded).toBe(true);
  for (const other of [{ edgeKind: 'blade' }, { edgeKind: undefined }, { connectionId: undefined }])
    expect(sentence(count(['D-56-01', 'D-56-02'], [], { ...about, ...other }))).toBe(
      'This entry ID was already used for something else.',
    );
  expect(must(count([], [], { connectionId: '1-high' })).alreadyRecorded).toBe(false);
  replayedEqualsKept(db);
});

it('only blades and dies lie in drawers by size: any other count is refused one', () => {
  const before = dump(db);
  expect(sentence(count(['G-56-GO-1'], [], { scope: 'gauges', edgeKind: 'die' }))).toBe(
    'Only a count of blades and dies is narrowed to a size or a kind.',
  );
  expect(dump(db)).toEqual(before);
});
