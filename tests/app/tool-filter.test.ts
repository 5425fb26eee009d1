import { describe, expect, it } from 'vitest';
import { filterTools, readToolFilter, type ToolFilter } from '@/app/tools/_parts/tool-filter';
import { listParts } from '@/db/queries/tables';
import { listTools } from '@/db/queries/tools';
import { BLADE, DIE, FLUID, HIGH, must, QUARTER, receive, testShop } from '../support/db';
import { sender } from '../support/send';

const ALL: ToolFilter = { find: '', size: '', role: '', state: 'here', page: 1 };

// source: hand. What makes no sense is left out; what is typed is tidied as it would be marked.
describe('readToolFilter', () => {
  it('shows what is here when nothing is asked', () => {
    expect(readToolFilter({})).toEqual(ALL);
  });

  it('reads what is asked', () => {
    const asked = { find: ' d–38 ', size: '9-16-high', kind: 'die', state: 'regrind', page: '3' };
    expect(readToolFilter(asked)).toEqual({
      find: 'D-38',
      size: '9-16-high',
      role: 'die',
      state: 'regrind',
      page: 3,
    });
    expect(readToolFilter({ state: 'all' }).state).toBe('all');
  });

  it('leaves out what makes no sense', () => {
    const asked = { find: ['a', 'b'], kind: 'hammer', state: 'eaten', page: '-2' };
    expect(readToolFilter(asked)).toEqual(ALL);
    for (const page of ['0', '1.5', 'x', '', 'Infinity', '1e99'])
      expect(readToolFilter({ page }).page, page).toSatisfy((n: number) => Number.isSafeInteger(n) && n >= 1);
    expect(readToolFilter({ find: 'x'.repeat(500) }).find).toHaveLength(80);
  });
});

// source: hand. Five tools in the crib, one scrapped, one lost.
describe('filterTools', () => {
  const db = testShop();
  const send = sender(db);
  for (const id of ['D-56-01', 'D-56-02', 'D-56-O3']) receive(db, id, DIE);
  for (const id of ['B-56-01', 'B-56-02']) receive(db, id, BLADE);
  receive(db, 'F-L01', FLUID, { levelMl: 500 });
  must(send.move('D-56-02', 'scrapped'));
  must(send.move('B-56-02', 'lost'));
  must(send.issue('D-56-01'));
  const tools = listTools(db);
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const ids = (change: Partial<ToolFilter>) =>
    filterTools(tools, parts, { ...ALL, ...change }).map(({ id }) => id);

  it('leaves out what is scrapped or lost, unless it is asked for', () => {
    expect(ids({})).toEqual(['B-56-01', 'D-56-01', 'D-56-O3', 'F-L01']);
    expect(ids({ state: 'all' })).toHaveLength(6);
    expect(ids({ state: 'lost' })).toEqual(['B-56-02']);
    expect(ids({ state: 'issued' })).toEqual(['D-56-01']);
  });

  it('finds a tool by what is marked on it, a scrapped one too, O and 0 alike', () => {
    expect(ids({ find: 'D-56-03' })).toEqual(['D-56-O3']);
    expect(ids({ find: 'D-56-02' })).toEqual(['D-56-02']);
    expect(ids({ find: '56' })).toHaveLength(5);
    expect(ids({ find: 'D-99' })).toEqual([]);
  });

  it('keeps to a kind and a size; what names no size serves all', () => {
    expect(ids({ role: 'die' })).toEqual(['D-56-01', 'D-56-O3']);
    expect(ids({ size: HIGH.id })).toHaveLength(4);
    expect(ids({ size: QUARTER.id })).toEqual(['F-L01']);
    expect(ids({ size: QUARTER.id, role: 'die' })).toEqual([]);
  });
});
