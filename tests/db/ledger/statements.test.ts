import { expect, it } from 'vitest';
import { bit, clear, insert, statement, upsert } from '@/db/ledger/statements';
import { testDb } from '../../support/db';

it('prepares a statement once per database', () => {
  const [one, two] = [testDb().$client, testDb().$client];
  expect(statement(one, 'SELECT 1')).toBe(statement(one, 'SELECT 1'));
  expect(statement(one, 'SELECT 1')).not.toBe(statement(two, 'SELECT 1'));
});

it('inserts, replaces and removes rows', () => {
  const { $client } = testDb();
  const names = () => $client.prepare('SELECT id, name FROM person ORDER BY id').raw().all();
  insert($client, 'person', { id: 'a', name: 'A', role: 'lead' });
  upsert($client, 'person', 'id', { id: 'a', name: 'B', role: 'lead' });
  upsert($client, 'person', 'id', { id: 'b', name: 'C', role: 'lead' });
  expect(names()).toEqual([
    ['a', 'B'],
    ['b', 'C'],
  ]);
  clear($client, 'person', 'id', 'a');
  expect(names()).toEqual([['b', 'C']]);
});

it('keeps a yes as 1 and a no as 0', () => {
  expect([bit(true), bit(false)]).toEqual([1, 0]);
});
