import { describe, expect, it } from 'vitest';
import type { Draft, Entry } from '@/lib/ledger/event';
import { endsLeftOpen, evolveRecall, type RecallRecord, suspectEndsLeft } from '@/lib/ledger/recall-history';
import { RecallSchema } from '@/lib/shop/recall';
import { must, sentence } from '../../support/db';

type Content = Draft extends infer D
  ? D extends { kind: infer K; payload: infer P }
    ? { kind: K; payload: P }
    : never
  : never;
let no = 0;
const entry = (content: Content): Entry => {
  no += 1;
  const about = {
    id: `entry-${no}`,
    subjectId: 'G.R1',
    deviceAtMs: 1,
    reason: '',
    seq: no,
    actorId: 'q',
    serverAtMs: no,
  };
  return { ...about, ...content } as Entry;
};
const opening = RecallSchema.parse({
  ...{ gaugeId: 'G', cause: 'found-by-hand', direction: 'large', found: 'worn', foundEntryId: null },
  ...{ foundOnDay: '2026-03-02', windowFromMs: null, windowToMs: Date.UTC(2026, 2, 2), evidence: 'none' },
  ...{ evidenceEntryId: null, evidenceOnDay: null, refusedIds: ['x'] },
  suspects: [],
});
const open = (suspects: { acceptanceId: string; endCount: number }[]) =>
  entry({ kind: 'recall-opened', payload: { ...opening, refusedIds: ['x'], suspects } });
const decide = (acceptanceId: string, endCount: number) =>
  entry({
    kind: 'suspect-disposed',
    payload: { acceptanceId, endCount, how: 'scrapped', gaugeId: null, evidence: 'in the bin' },
  });
const close = () => entry({ kind: 'recall-closed', payload: { conclusion: 'worn out' } });
const two = [
  { acceptanceId: 'a', endCount: 3 },
  { acceptanceId: 'b', endCount: 2 },
];
const fold = (...entries: Entry[]) =>
  entries.reduce<RecallRecord | undefined>(
    (record, one) => must(evolveRecall(record, one)),
    undefined,
  ) as RecallRecord;

// source: hand. Five suspect ends of two looks, counted down.
describe('a recall', () => {
  it('is opened once, with no look on it twice', () => {
    const record = fold(open(two));
    expect(record).toMatchObject({ id: 'G.R1', status: 'open', openedById: 'q', disposals: [] });
    expect(sentence(evolveRecall(record, open(two)))).toMatch(/already open/);
    expect(sentence(evolveRecall(undefined, open([...two, ...two])))).toMatch(/stand twice/);
    expect(sentence(evolveRecall(undefined, close()))).toMatch(/No recall/);
  });

  it('is closed when every end is decided about, and not before', () => {
    const record = fold(open(two), decide('a', 2));
    expect([endsLeftOpen(record, 'a'), endsLeftOpen(record, 'b'), suspectEndsLeft(record)]).toEqual([
      1, 2, 3,
    ]);
    expect(sentence(evolveRecall(record, close()))).toBe('3 suspect ends are still to be decided.');
    const closed = fold(open(two), decide('a', 3), decide('b', 2), close());
    expect(closed).toMatchObject({ status: 'closed', conclusion: 'worn out' });
    expect(sentence(evolveRecall(closed, close()))).toMatch(/is closed/);
  });

  it('decides about no more ends than there are', () => {
    expect(sentence(evolveRecall(fold(open(two)), decide('b', 3)))).toMatch(/Only 2/);
    expect(sentence(evolveRecall(fold(open(two)), decide('z', 1)))).toMatch(/Nothing is left/);
    const bare = { acceptanceId: 'a', endCount: 1, gaugeId: null, evidence: '' };
    const grounds = (how: 'concession' | 'regauged-good') =>
      evolveRecall(fold(open(two)), entry({ kind: 'suspect-disposed', payload: { ...bare, how } }));
    expect(sentence(grounds('concession'))).toMatch(/who granted/);
    expect(sentence(grounds('regauged-good'))).toMatch(/which other gauge/);
  });

  it('new evidence opens it again; news of refused ends alone does not', () => {
    const closed = fold(open([]), close());
    const more = (suspects: { acceptanceId: string; endCount: number }[]) =>
      entry({ kind: 'recall-extended', payload: { suspects, refusedIds: ['x', 'y'] } });
    expect(must(evolveRecall(closed, more([])))).toMatchObject({ status: 'closed', refusedIds: ['x', 'y'] });
    expect(must(evolveRecall(closed, more(two)))).toMatchObject({
      status: 'open',
      closedAtMs: null,
      closedOnDay: null,
      suspects: two,
    });
    expect(sentence(evolveRecall(fold(open(two)), more(two)))).toMatch(/already belong/);
  });

  it('its window can move back with what it rests on', () => {
    const window = {
      windowFromMs: null,
      evidence: 'none',
      evidenceEntryId: null,
      evidenceOnDay: null,
    } as const;
    const moved = entry({ kind: 'recall-extended', payload: { suspects: [], refusedIds: [], window } });
    expect(fold(open(two), moved)).toMatchObject({ windowFromMs: null, evidence: 'none' });
    expect(
      sentence(evolveRecall(fold(open(two)), entry({ kind: 'job-closed', payload: { how: 'done' } }))),
    ).toMatch(/cannot be about/);
  });
});
