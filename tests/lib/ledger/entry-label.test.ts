import { expect, it } from 'vitest';
import { ENTRY_LABEL } from '@/lib/ledger/entry-label';
import { ENTRY } from '@/lib/ledger/event';

it('every kind of entry has words of its own', () => {
  expect(Object.keys(ENTRY_LABEL).sort()).toEqual([...Object.keys(ENTRY), 'entry-reversed'].sort());
  expect(new Set(Object.values(ENTRY_LABEL)).size).toBe(Object.keys(ENTRY_LABEL).length);
});
