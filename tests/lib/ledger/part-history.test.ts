import { expect, it } from 'vitest';
import { evolvePart } from '@/lib/ledger/part-history';
import { DIE, must, sentence } from '../../support/db';
import { entry } from '../../support/entry';

it('a part is what it was last set to, but keeps its kind', () => {
  const changed = { ...DIE, leadTimeDays: 21 };
  expect(must(evolvePart(DIE, entry('part-set', DIE.id, changed)))).toEqual(changed);
  expect(sentence(evolvePart(DIE, entry('part-set', DIE.id, { ...DIE, role: 'brush' })))).toBe(
    '9/16 die is entered as a threading die; enter a new part for a brush.',
  );
  expect(sentence(evolvePart(DIE, entry('job-closed', DIE.id, { how: 'done' })))).toBe(
    'An entry "job-closed" cannot be about a part.',
  );
});
