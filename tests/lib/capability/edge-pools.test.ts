import { expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { poolLives } from '@/lib/capability/edge-pools';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { queueLines } from '@/lib/capability/line-order';
import { needStatuses } from '@/lib/capability/need-status';
import { statedDraws } from '../../support/life-draws';
import { planLine, setItem, TODAY } from '../../support/plan-shop';

// source: hand. The line runs from 9 to 13 March; each die stands differently.
it('poolLives: in time by the start, or before the due day; not on it; not barred; not unknown', () => {
  const die = (toolId: string, change: object) => setItem('die', { toolId, ...change });
  const away = (toolId: string, backOnDay: string) => die(toolId, { state: 'issued', backOnDay });
  const items = [
    die('CRIB', {}),
    away('START', '2026-03-09'),
    away('DURING', '2026-03-12'),
    away('DUE-DAY', '2026-03-13'),
    die('RIGHT', { hand: 'RH' }),
    die('HELD-BACK', { state: 'quarantined' }),
    die('UNKNOWN', {}),
  ];
  const tools = { CRIB: 1, START: 2, DURING: 4, 'DUE-DAY': 8, RIGHT: 16, 'HELD-BACK': 32 };
  const queue = queueLines([planLine()], [{ connectionId: 'S', hand: 'LH' }], TODAY);
  const find = indexCandidates(listCandidates(items, [], { today: TODAY, lineDueOnDay: new Map() }));
  const statuses = queue.map((queued) => needStatuses(queued, find).find(({ need }) => need.role === 'die'));
  const pools = poolLives(queue, statuses, statedDraws({ drawCount: 1, tools }), TODAY);
  expect(
    pools.map(({ reach, supply, lateInDays }) => [[...reach], supply[0], [...lateInDays.values()]]),
  ).toEqual([
    [[0], 7, []],
    [[], 8, [11]],
  ]);
});
