import { expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { comingPieces, restsOnComing } from '@/lib/capability/coming-pieces';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { queueLines } from '@/lib/capability/line-order';
import { needStatuses } from '@/lib/capability/need-status';
import type { SetItem } from '@/lib/capability/plan-input';
import { arrival, planLine, setItem, TODAY } from '../../support/plan-shop';

function ready(items: SetItem[], arrivals = [arrival('collet', { expectedOnDay: '2026-03-08' })]) {
  const queue = queueLines([planLine()], [{ connectionId: 'S', hand: 'LH' }], TODAY);
  const find = indexCandidates(
    listCandidates(items, arrivals, { today: TODAY, lineDueOnDay: new Map<string, string>() }),
  );
  return { queue, statuses: queue.map((queued) => needStatuses(queued, find)), goes: [true] };
}

const loan = setItem('collet', { toolId: 'LOAN', state: 'issued', backOnDay: '2026-03-05' });
const late = setItem('collet', { toolId: 'LATE', state: 'issued', backOnDay: '2026-03-20' });
const here = setItem('collet');

// source: hand. The line starts on 9 March: what is back later is no piece that comes in time.
it('names what comes in time, soonest first, and not what is here or late', () => {
  const items = [here, late, loan];
  const status = ready(items).statuses[0]?.find(({ need }) => need.role === 'collet');
  expect(comingPieces(status ?? { pieces: [] }, items, TODAY)).toEqual([
    { toolId: 'LOAN', fromDay: '2026-03-05', where: 'issued', lineId: null },
    { toolId: null, fromDay: '2026-03-08', where: 'on-order', lineId: null },
  ]);
});

it('rests on what comes only where nothing usable is here', () => {
  expect(restsOnComing(ready([loan]), 0, 'collet', TODAY)).toBe(true);
  expect(restsOnComing(ready([loan, here]), 0, 'collet', TODAY)).toBe(false);
  expect(restsOnComing(ready([here], []), 0, 'collet', TODAY)).toBe(false);
  expect(restsOnComing(ready([late], []), 0, 'collet', TODAY)).toBe(false);
});
