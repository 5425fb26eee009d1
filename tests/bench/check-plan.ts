import { addDays } from '@/lib/calendar/day';
import { checkPlan, type PlanInput } from '@/lib/capability/check-plan';
import type { SetItem } from '@/lib/capability/plan-input';
import { normalQuantile } from '@/lib/numeric/normal';
import { stratifiedUniforms, streamOfKey } from '@/lib/numeric/random-stream';
import type { Role } from '@/lib/shop/vocabulary';
import { statedDraws } from '../support/life-draws';
import { arrival, completeSet, planLine, setItem, TODAY } from '../support/plan-shop';

/** 200 lines over 90 days, 1,000 tools over ten sizes, 20 orders, 2,048 draws: how long one check of the plan takes. */
const SIZES = Array.from({ length: 10 }, (_, i) => `C${i}`);
const LASTING: readonly Role[] = [
  ...(['go-ring', 'not-go-ring', 'cone-gauge', 'length-gauge', 'coning-body'] as const),
  ...(['die-stock', 'coning-guide', 'threading-guide', 'collet'] as const),
];

/** `crossing`: share of tools that also serve the next size, so that pools of lives cross and takers are moved. */
function largePlan(crossing: number, drawn: boolean): PlanInput {
  const chance = streamOfKey('bench check-plan');
  const below = (n: number): number => Math.floor(chance() * n);
  const size = (at: number): string => SIZES[at % SIZES.length] ?? '';
  const tools: Record<string, { mean: number; used: number }> = {};
  const items = Array.from({ length: 1000 }, (_, n): SetItem => {
    const at = below(SIZES.length);
    const share = chance();
    const role: Role =
      share < 0.25 ? 'die' : share < 0.7 ? 'blade' : (LASTING[below(LASTING.length)] ?? 'collet');
    const mean = role === 'die' ? 1300 : 6000;
    tools[`T${n}`] = { mean, used: chance() * mean };
    const fitsConnectionIds = chance() < crossing ? [size(at), size(at + 1)] : [size(at)];
    return setItem(role, { toolId: `T${n}`, fitsConnectionIds, dueOnDay: addDays(TODAY, 200 + below(200)) });
  });
  const passed = completeSet().filter(({ role }) => ['brush', 'deburr-tool', 'fluid'].includes(role));
  return {
    today: TODAY,
    connections: SIZES.map((connectionId) => ({ connectionId, hand: 'LH' })),
    items: [
      ...items,
      ...passed.map((item): SetItem => ({ ...item, fitsConnectionIds: 'all', levelMl: 1e5 })),
    ],
    lines: Array.from({ length: 200 }, (_, i) => {
      const startOnDay = addDays(TODAY, below(90));
      const dueOnDay = addDays(startOnDay, 2 + below(5));
      return planLine({
        lineId: `L${i}`,
        connectionId: size(below(10)),
        endsToMake: 5 + below(60),
        startOnDay,
        dueOnDay,
      });
    }),
    arrivals: Array.from({ length: 20 }, (_, i) =>
      arrival(i % 2 === 0 ? 'die' : 'blade', {
        orderId: `PO-${i}`,
        quantity: 3,
        fitsConnectionIds: [size(i)],
        ...(drawn ? { arrivalDayDraws: arrivalDays(`PO-${i}`, 5 + below(50)) } : {}),
        expectedOnDay: addDays(TODAY, below(60)),
      }),
    ),
    draws: statedDraws({
      tools,
      parts: { 'part-die': { mean: 1300, used: 0 }, 'part-blade': { mean: 6000, used: 0 } },
      factors: { M: 1 },
    }),
  };
}

/** Lognormal days about a median, sd of the log 0.35: one per draw. */
function arrivalDays(key: string, medianDays: number): Float64Array {
  return stratifiedUniforms(key, 2048).map((u) => Math.ceil(medianDays * Math.exp(0.35 * normalQuantile(u))));
}

for (const [crossing, drawn] of [
  [0, false],
  [0, true],
  [0.3, false],
  [0.3, true],
] as const) {
  const input = largePlan(crossing, drawn);
  checkPlan(input);
  const runs = Array.from({ length: 15 }, () => {
    const before = process.cpuUsage();
    const startMs = performance.now();
    checkPlan(input);
    const { user, system } = process.cpuUsage(before);
    return { wallMs: performance.now() - startMs, cpuMs: (user + system) / 1000 };
  });
  const median = (pick: (run: (typeof runs)[number]) => number): string =>
    (runs.map(pick).sort((a, b) => a - b)[7] ?? Number.NaN).toFixed(0);
  const made = checkPlan(input).filter(({ verdict }) => verdict === 'can-make').length;
  process.stdout.write(
    `checkPlan, 200 lines, 1,000 tools, 2,048 draws, crossing ${crossing}, ${drawn ? 'drawn' : 'dated'} arrivals: ` +
      `median ${median((run) => run.wallMs)} ms wall, ${median((run) => run.cpuMs)} ms processor; ${made} can make\n`,
  );
}
