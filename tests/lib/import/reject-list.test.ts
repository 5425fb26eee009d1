import { expect, it } from 'vitest';
import { readRejects, rejectsText } from '@/lib/import/reject-list';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';

it.each([
  [
    'torn-thread: 1; length: 2',
    [
      ['torn-thread', 1],
      ['length', 2],
    ],
  ],
  [
    '2 torn thread | 1 x chatter',
    [
      ['torn-thread', 2],
      ['cone-finish', 1],
    ],
  ],
  ['chatter x2, chatter', [['cone-finish', 3]]],
  ['nicked', [['nicked', 1]]],
  ['cone finish: chatter, step or tear', [['cone-finish', 1]]],
])('readRejects reads %s', (text, rejects) => {
  const read = readRejects(text);
  expect(read.ok && read.value.map(({ cause, count }) => [cause, count])).toEqual(rejects);
});

it('readRejects refuses causes it does not know, and a count of nought', () => {
  for (const text of ['ugly: 2', 'torn-thread: 0', 'torn-thread: -1', '3', 'torn-thread: 99999'])
    expect(readRejects(text).ok).toBe(false);
});

it('rejectsText is read back the same', () => {
  const rejects = REJECT_CAUSES.map(({ code }, at) => ({ cause: code, count: at + 1 }));
  expect(readRejects(rejectsText(rejects))).toEqual({ ok: true, value: rejects });
});
