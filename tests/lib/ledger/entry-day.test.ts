import { expect, it } from 'vitest';
import { entryDay } from '@/lib/ledger/entry-day';

// source: hand. 3 March 2026, 02:00 UTC, is the evening of 2 March in a shop six hours behind: what was written down counts.
it('is the day written down, and only where none was the UTC day of the server’s moment', () => {
  const entry = { serverAtMs: Date.UTC(2026, 2, 3, 2) };
  expect(entryDay({ onDay: '2026-03-02' }, entry)).toBe('2026-03-02');
  expect(entryDay({}, entry)).toBe('2026-03-03');
  expect(entryDay({ onDay: undefined }, entry)).toBe('2026-03-03');
});
