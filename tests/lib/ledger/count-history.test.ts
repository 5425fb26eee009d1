import { expect, it } from 'vitest';
import { evolveCount } from '@/lib/ledger/count-history';
import { must, NOW_MS, sentence } from '../../support/db';
import { entry } from '../../support/entry';

const counted = entry('stock-counted', 'c-1', { scope: 'edges', expected: 3, found: 3, variances: [] });

// source: hand. One entry, never two.
it('a stock-take is one entry', () => {
  const count = must(evolveCount(undefined, counted));
  expect(count).toMatchObject({ expected: 3, countedAtMs: NOW_MS, countedById: 'robin' });
  expect(sentence(evolveCount(count, counted))).toBe('This stock-take is already in the record.');
  expect(sentence(evolveCount(undefined, entry('tool-freed', 'c-1', {})))).toBe(
    'An entry "tool-freed" cannot be about a stock-take.',
  );
});
