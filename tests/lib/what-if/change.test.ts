import { expect, it } from 'vitest';
import { CHANGE_KINDS, changeSchema, isChangeKind } from '@/lib/what-if/change';

// source: hand. The list is closed: what is not in it is no change.
it('every kind has its rule, and nothing else is a kind', () => {
  expect(CHANGE_KINDS.length).toBe(13);
  for (const kind of CHANGE_KINDS) expect(changeSchema(kind).safeParse({ kind }).success).toBe(false);
  expect(isChangeKind('lose-tool')).toBe(true);
  expect(isChangeKind('toString')).toBe(false);
});
