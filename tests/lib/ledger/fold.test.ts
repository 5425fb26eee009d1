import { expect, it } from 'vitest';
import { evolve, findUnsupported, foldSubject } from '@/lib/ledger/fold';
import { must, sentence } from '../../support/db';
import { entry, ISSUE, receipt } from '../../support/entry';

const received = entry('tool-received', 'T-1', receipt('die'));
const returned = entry('tool-returned', 'T-1', { condition: 'ok' });

it('no entries, no record', () => {
  expect(must(foldSubject('tool', []))).toBeUndefined();
});

it('the record is what its entries add up to, one after another', () => {
  const record = must(foldSubject('tool', [received, ISSUE, returned]));
  expect(record).toMatchObject({ id: 'T-1', state: 'in-crib' });
  const step = must(evolve('tool', must(foldSubject('tool', [received, ISSUE])), returned));
  expect(step).toEqual(record);
});

it('of a noun that one entry sets as a whole, the last entry is the record', () => {
  const named = (name: string) => entry('person-set', 'lee', { id: 'lee', name, role: 'lead' });
  expect(must(foldSubject('person', [named('Lee'), named('Lee Fen')]))).toMatchObject({ name: 'Lee Fen' });
});

it('refuses a history in which an entry has nothing to stand on, and finds that entry', () => {
  expect(sentence(foldSubject('tool', [received, returned]))).toBe(
    'T-1 is in the crib; only an issued tool can come back.',
  );
  expect(findUnsupported('tool', [received, returned, ISSUE])).toBe(returned);
  expect(findUnsupported('tool', [received, ISSUE, returned])).toBeUndefined();
});
