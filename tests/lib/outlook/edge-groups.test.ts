import { expect, it } from 'vitest';
import { edgeGroups } from '@/lib/outlook/edge-groups';
import { setParts } from '../../support/shop-record';
import { logBook } from '../../support/tool-log';

const parts = setParts().map((part) => ({ ...part, supplier: part.role === 'die' ? 'Maker A' : '' }));

// source: hand. 30 of 50 ends are more than half, 25 of 50 are not; what was not written down is no group.
it('groups an edge by its lot, its supplier and the heat that it cut most of', () => {
  const book = logBook();
  book.receive('D-1', 'die', { lot: 'L7' });
  book.cut('D-1', 30, { heat: 'H1' });
  book.cut('D-1', 20, { heat: 'H2' });
  book.receive('D-2', 'die');
  book.cut('D-2', 25, { heat: 'H1' });
  book.cut('D-2', 25, { heat: 'H2' });
  book.receive('B-1', 'blade', { lot: 'B9' });
  book.cut('B-1', 9, { heat: '' });
  expect(edgeGroups(book.logs(), parts)).toEqual([
    { toolId: 'D-1', edgeNo: 1, lot: 'L7', supplier: 'Maker A', heat: 'H1' },
    { toolId: 'D-2', edgeNo: 1, lot: undefined, supplier: 'Maker A', heat: undefined },
    { toolId: 'B-1', edgeNo: 1, lot: 'B9', supplier: undefined, heat: undefined },
  ]);
});

// source: hand. A reground edge is of the same lot and cuts its own heats.
it('counts the heats of each edge apart', () => {
  const book = logBook();
  book.receive('B-1', 'blade', { lot: 'B9' });
  book.cut('B-1', 9, { heat: 'H1' });
  book.add('edge-renewed', 'B-1', { onDay: '2026-03-02' });
  book.cut('B-1', 9, { heat: 'H2' });
  expect(edgeGroups(book.logs(), parts).map(({ edgeNo, lot, heat }) => [edgeNo, lot, heat])).toEqual([
    [1, 'B9', 'H1'],
    [2, 'B9', 'H2'],
  ]);
});
