import { expect, it } from 'vitest';
import { derivedId } from '@/db/ledger/derived-id';

it('is the ID with its suffix while that fits', () => {
  expect(derivedId('entry-000001', 'back')).toBe('entry-000001.back');
  expect(derivedId('x'.repeat(59), 'back')).toBe(`${'x'.repeat(59)}.back`);
});

it('of a long ID is at most 64 long, the same every time, and never that of another', () => {
  const one = derivedId(`${'x'.repeat(63)}1`, 'back');
  expect(one).toMatch(/^[0-9a-f]{40}\.back$/);
  expect(derivedId(`${'x'.repeat(63)}1`, 'back')).toBe(one);
  expect(derivedId(`${'x'.repeat(63)}2`, 'back')).not.toBe(one);
  expect(derivedId(`${'x'.repeat(63)}1`, 'order')).not.toBe(one);
});
