import fc from 'fast-check';
import { expect, it } from 'vitest';
import { assignTools } from '@/lib/issue-order/assign-tools';
import { compareTasks, type EdgeSupply, type EdgeTask } from '@/lib/issue-order/edge-task';
import { compareMeasures, planFault, playPlan } from '@/lib/issue-order/objective';
import { wavePlan } from '@/lib/issue-order/wave-plan';
import { scattered, sure, task } from '../../support/edge-tasks';

const DAYS = ['2026-11-23', '2026-11-24', '2026-11-25', '2026-11-26', '2026-11-27', '2026-11-28'] as const;

/** Random weeks: lines of some days, tools of some life, not every tool for every line. */
const week = (maxLines: number) =>
  fc.record({
    lines: fc.array(
      fc.record({
        from: fc.integer({ min: 0, max: 5 }),
        days: fc.integer({ min: 0, max: 3 }),
        ends: fc.integer({ min: 1, max: 40 }),
        skips: fc.integer({ min: 0, max: 4 }),
      }),
      { minLength: 1, maxLength: maxLines },
    ),
    lives: fc.array(fc.integer({ min: 2, max: 120 }), { minLength: 1, maxLength: 4 }),
  });

type Week = { lines: { from: number; days: number; ends: number; skips: number }[]; lives: number[] };

function tasksOf({ lines, lives }: Week): { tasks: EdgeTask[]; tools: EdgeSupply[] } {
  const tools = lives.map((mean, i) => scattered(`T${i}`, mean));
  const tasks = lines.map(({ from, days, ends, skips }, i) =>
    task(`L${i}`, {
      ends,
      startOnDay: DAYS[from] ?? DAYS[0],
      dueOnDay: DAYS[Math.min(5, from + days)] ?? DAYS[0],
      toolIds: tools.map(({ toolId }) => toolId).filter((_, j) => j !== skips),
    }),
  );
  return { tasks, tools };
}

/** The best of all plans in which every line has one tool or none, tried one by one. */
function bestOfAll(tasks: readonly EdgeTask[], tools: readonly EdgeSupply[]) {
  const queue = [...tasks].sort(compareTasks);
  let best = playPlan(queue, tools, new Map()).measure;
  const tryFrom = (at: number, plan: Map<string, string>): void => {
    const next = queue[at];
    if (next === undefined) {
      if (planFault(queue, plan) !== null) return;
      const { measure } = playPlan(queue, tools, plan);
      if (compareMeasures(measure, best) < 0) best = measure;
      return;
    }
    tryFrom(at + 1, plan);
    for (const toolId of next.toolIds) tryFrom(at + 1, new Map([...plan, [next.lineId, toolId]]));
  };
  tryFrom(0, new Map());
  return best;
}

// source: hand. Every plan of up to four lines and four tools tried one by one.
it('is the best of all plans, one tool to a line', () => {
  fc.assert(
    fc.property(week(4), (drawn) => {
      const { tasks, tools } = tasksOf(drawn);
      const { plan, played } = assignTools(tasks, tools);
      expect(planFault([...tasks].sort(compareTasks), plan)).toBeNull();
      expect(played.measure).toEqual(bestOfAll(tasks, tools));
    }),
    { numRuns: 120 },
  );
});

// source: hand. Every plan of nine lines and two tools tried one by one: exact beyond the eight of a simple search.
it('is the best of all plans of nine lines', () => {
  fc.assert(
    fc.property(week(9), (drawn) => {
      const { lines, lives } = drawn;
      const nine = Array.from({ length: 9 }, (_, i) => ({
        ...(lines[i % lines.length] ?? lines[0]),
        from: i % 6,
      }));
      const { tasks, tools } = tasksOf({ lines: nine as Week['lines'], lives: lives.slice(0, 2) });
      expect(assignTools(tasks, tools).played.measure).toEqual(bestOfAll(tasks, tools));
    }),
    { numRuns: 6 },
  );
});

// source: identity. Wave by wave is one of the plans that are looked at.
it('is never worse than wave by wave up to fourteen lines', () => {
  fc.assert(
    fc.property(week(14), (drawn) => {
      const { tasks, tools } = tasksOf(drawn);
      const queue = [...tasks].sort(compareTasks);
      const waves = playPlan(queue, tools, wavePlan(queue, tools)).measure;
      expect(compareMeasures(assignTools(tasks, tools).played.measure, waves)).toBeLessThanOrEqual(0);
    }),
    { numRuns: 40 },
  );
});

// source: identity. First-come is one of the plans that are looked at; with many lines it is compared with at the end.
it('is never worse than first-come by the same measure', () => {
  fc.assert(
    fc.property(week(14), (drawn) => {
      const { tasks, tools } = tasksOf(drawn);
      const { plan, played, firstCome } = assignTools(tasks, tools);
      expect(planFault([...tasks].sort(compareTasks), plan)).toBeNull();
      expect(planFault([...tasks].sort(compareTasks), firstCome.plan)).toBeNull();
      expect(compareMeasures(played.measure, firstCome.played.measure)).toBeLessThanOrEqual(0);
    }),
    { numRuns: 120 },
  );
});

// source: identity. A plan without the new tool is still a plan.
it('another tool never makes it worse', () => {
  fc.assert(
    fc.property(week(6), fc.integer({ min: 2, max: 120 }), (drawn, life) => {
      const { tasks, tools } = tasksOf(drawn);
      const wider = tasks.map((one) => ({ ...one, toolIds: [...one.toolIds, 'new'] }));
      const before = assignTools(wider, tools).played.measure;
      const after = assignTools(wider, [...tools, scattered('new', life)]).played.measure;
      expect(compareMeasures(after, before)).toBeLessThanOrEqual(0);
    }),
    { numRuns: 80 },
  );
});

// source: identity. The order in which lines and tools are listed means nothing.
it('does not depend on the order of its inputs', () => {
  fc.assert(
    fc.property(week(7), (drawn) => {
      const { tasks, tools } = tasksOf(drawn);
      const turned = assignTools([...tasks].reverse(), [...tools].reverse());
      expect([...turned.plan].sort()).toEqual([...assignTools(tasks, tools).plan].sort());
    }),
    { numRuns: 60 },
  );
});

// source: hand. The 4-end job takes the worn die and leaves the fresh one to the 90-end job, whichever begins first; first come
// would take the fresh one for the short job.
it('keeps the long life for the long job', () => {
  const tools = [sure('worn', 12), sure('fresh', 95)];
  const short = task('short', { ends: 4, toolIds: ['worn', 'fresh'] });
  const long = task('long', { ends: 90, startOnDay: '2026-11-24', toolIds: ['worn', 'fresh'] });
  const { plan, firstCome } = assignTools([short, long], tools);
  expect([...plan].sort()).toEqual([
    ['long', 'fresh'],
    ['short', 'worn'],
  ]);
  expect(firstCome.plan.get('short')).toBe('fresh');
  expect(firstCome.played.work.get('long')?.madeEnds).toBe(12);
});

// source: hand. One die, two benches at a time: who begins first has it, the other goes without for now.
it('gives the only die to the line that begins first', () => {
  const first = task('first', { ends: 5, toolIds: ['D'] });
  const second = task('second', { ends: 30, startOnDay: '2026-11-24', toolIds: ['D'] });
  expect([...assignTools([second, first], [sure('D', 100)]).plan]).toEqual([['first', 'D']]);
});

// source: hand. Twelve lines that all run together and twelve tools: one wave, and every line gets the tool that just lasts.
it('solves many lines at a time as one assignment', () => {
  const ids = Array.from({ length: 12 }, (_, i) => `T${i + 10}`);
  const tools = ids.map((toolId, i) => sure(toolId, 10 * (i + 1)));
  const tasks = ids.map((toolId, i) => task(`L${toolId}`, { ends: 10 * (i + 1), toolIds: ids }));
  const { plan, played } = assignTools(tasks, tools);
  expect(played.measure).toMatchObject({ unserved: 0, endsAtRisk: 0 });
  for (const toolId of ids) expect(plan.get(`L${toolId}`)).toBe(toolId);
});
