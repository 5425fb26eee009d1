import { beforeEach, expect, it } from 'vitest';
import { markTool } from '@/db/commands/mark-tool';
import type { Db } from '@/db/open';
import { listEntriesAbout } from '@/db/queries/entries';
import { MarkToolInput } from '@/lib/shop/mark-input';
import { DIE, ENV, entered, may, must, receive, sentence, testShop } from '../../support/db';

let db: Db;
const mark = (over: object = {}) => {
  const about = {
    ...entered(),
    toolId: 'D-56-01',
    reason: 'the old one was worn smooth',
    onDay: '2026-03-02',
  };
  const input = MarkToolInput.parse({
    ...about,
    how: 'etched',
    codeKind: 'data-matrix',
    readAs: '',
    ...over,
  });
  return markTool(db, may('mark-tool'), input, ENV);
};
const last = () => listEntriesAbout(db, { kind: 'tool', id: 'D-56-01', limit: 1 })[0];

beforeEach(() => {
  db = testShop();
  receive(db, 'D-56-01', DIE);
});

// source: hand. Read back with look-alike letters it is still the same tool.
it('stands in the history with how, which code, and whether it was read back', () => {
  must(mark({ readAs: 'd-56-o1' }));
  expect(last()).toMatchObject({
    kind: 'tool-marked',
    payload: { how: 'etched', codeKind: 'data-matrix', readBack: true, onDay: '2026-03-02' },
    reason: 'the old one was worn smooth',
  });
  must(mark({ codeKind: null, how: 'stamped' }));
  expect(last()?.payload).toMatchObject({ how: 'stamped', codeKind: null, readBack: false });
});

// source: hand. A mark that reads as another tool sits on the wrong one: nothing is entered.
it('refuses a mark that reads as another tool, and a tool that nobody knows', () => {
  expect(sentence(mark({ readAs: 'D-56-02' }))).toBe(
    'The mark reads D-56-02, and this is D-56-01. Check which tool is in your hand before anything else.',
  );
  expect(sentence(mark({ toolId: 'D-99-01' }))).toMatch(/No tool D-99-01/);
  expect(last()?.kind).toBe('tool-received');
});

// source: identity. Sent twice it counts once.
it('sent twice counts once', () => {
  const entryId = 'entry-mark-01';
  must(mark({ entryId }));
  expect(must(mark({ entryId })).alreadyRecorded).toBe(true);
});
