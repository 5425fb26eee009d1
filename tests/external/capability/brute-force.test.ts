import { expect, it } from 'vitest';
import { checkPlan } from '@/lib/capability/check-plan';
import { stratifiedUniforms } from '@/lib/numeric/random-stream';
import { completeSet, plan } from '../../support/plan-shop';
import {
  chanceOf,
  planOfShop,
  playOften,
  type SimLine,
  type SimShop,
  type SimTool,
} from '../../support/plan-simulation';

const PLANS = 520;
const FUTURES = 2000;
const REQUIRED = 0.9;

/** A small shop: one to four lines of two sizes, a few dies and blades, some of them serving both, some on order. */
function randomShop(seed: number): SimShop {
  const chance = chanceOf(seed + 1);
  const below = (n: number): number => Math.floor(chance() * n);
  const size = (): 'S' | 'T' => (chance() < 0.6 ? 'S' : 'T');
  const lines = Array.from({ length: 1 + below(4) }, (_, i): SimLine => {
    const start = below(16);
    const due = start + below(8);
    return {
      id: `L${i}`,
      size: size(),
      ends: 2 + below(14),
      start,
      due,
      perEnd: { die: 9 + below(9), blade: 40 + below(80) },
    };
  });
  const tool = (kind: 'die' | 'blade', i: number): SimTool => {
    const scale = (kind === 'die' ? 600 : 4500) * (0.6 + chance());
    const onOrder = i > 1 && chance() < 0.5;
    const sizes: readonly ('S' | 'T')[] =
      chance() < 0.2 ? ['S', 'T'] : i === 0 ? ['S'] : i === 1 ? ['T'] : [size()];
    return {
      id: `${kind}-${i}`,
      kind,
      sizes,
      shape: 1.2 + 3 * chance(),
      scale,
      used: onOrder ? 0 : 0.7 * chance() * scale,
      ...(onOrder ? { comes: { medianDays: 2 + below(18), sdLog: 0.15 + 0.4 * chance() } } : {}),
    };
  };
  const tools = (['die', 'blade'] as const).flatMap((kind) =>
    Array.from({ length: 3 + below(4) }, (_, i) => tool(kind, i)),
  );
  return { lines, tools: tools.sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

/** Everything but dies and blades abounds: enough sets for four lines at once. */
function abundance() {
  const rest = completeSet().filter(({ role }) => role !== 'die' && role !== 'blade');
  const items = Array.from({ length: 4 }, (_, n) =>
    rest.map((item) => ({ ...item, toolId: `${item.toolId}-${n}`, fitsConnectionIds: 'all' as const })),
  ).flat();
  return plan({
    items,
    connections: [
      { connectionId: 'S', hand: 'LH' },
      { connectionId: 'T', hand: 'LH' },
    ],
  });
}

interface Tally {
  lines: number;
  sure: number;
  short: number;
  missed: number;
  alarms: number;
  near: number;
}

/**
 * Three standard errors of the two shares about the required one: that of the played futures and that of the draws. Lines
 * closer than that to 0.9 cannot be told apart by so many futures, and count as near.
 */
const SLACK = 3 * Math.sqrt(REQUIRED * (1 - REQUIRED)) * (1 / Math.sqrt(FUTURES) + 1 / Math.sqrt(2048));

function tally(): { goesOn: Tally; spoils: Tally } {
  const base = abundance();
  const none = (): Tally => ({ lines: 0, sure: 0, short: 0, missed: 0, alarms: 0, near: 0 });
  const got = { goesOn: none(), spoils: none() };
  for (let seed = 0; seed < PLANS; seed++) {
    const shop = randomShop(seed);
    const verdicts = checkPlan(planOfShop(shop, base, stratifiedUniforms));
    for (const way of ['goesOn', 'spoils'] as const) {
      const played = playOften(shop, FUTURES, seed + 7, way === 'spoils');
      verdicts.forEach(({ verdict }, i) => {
        count(got[way], played[i] ?? 0, verdict === 'can-make');
      });
    }
  }
  return got;
}

function count(into: Tally, played: number, canMake: boolean): void {
  into.lines++;
  if (Math.abs(played - REQUIRED) <= SLACK) into.near++;
  else if (played < REQUIRED) {
    into.short++;
    if (canMake) into.missed++;
  } else {
    into.sure++;
    if (!canMake) into.alarms++;
  }
}

/*
 * A shortage: played day by day, the line is made on its dates in fewer than 0.9 of the futures. Missed: the plan check says
 * "can make" all the same. A false alarm: it says at risk or cannot, and played the line is made in 0.9 of them or more.
 * Measured on 1,307 lines: no shortage missed of 324, 9 false alarms among 808 (1.1 %); the same where an end is spoilt.
 */
// source: other-software. A simulation of its own (tests/support/plan-simulation.ts), lives and days by other chance.
it('520 random plans played day by day: no shortage is missed, false alarms stay under 5 %', () => {
  const { goesOn, spoils } = tally();
  for (const got of [goesOn, spoils]) {
    expect(got.lines).toBeGreaterThan(1000);
    expect(got.short).toBeGreaterThan(200);
    expect(got.sure).toBeGreaterThan(200);
    expect(got.missed).toBe(0);
    expect(got.alarms / got.sure).toBeLessThan(0.05);
  }
}, 120_000);
