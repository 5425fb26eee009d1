import type { Db } from '../db/open';
import { acceptanceActs } from './demo/acceptances';
import { play } from './demo/act';
import { BladeBench } from './demo/blade-bench';
import { calendarOf } from './demo/calendar';
import { careActs } from './demo/care-acts';
import { cutJobs } from './demo/cutting';
import { dieActs } from './demo/die-acts';
import { equipmentActs } from './demo/equipment';
import { fluidActs } from './demo/fluids';
import { gaugeActs } from './demo/gauges';
import { pastOrderActs } from './demo/past-orders';
import { setUpActs } from './demo/set-up';
import { threadReadingActs } from './demo/thread-readings';
import { todayActs } from './demo/today';
import { chanceOf } from './random';

/** What the demo is made from: the moment it is dated from, and IDs for its entries. */
export interface DemoEnv {
  /** Epoch ms. Eighteen months of history end here; the same moment gives the same shop. */
  readonly now: number;
  /** An entry's ID, from its name in the story. */
  readonly newId: (name: string) => string;
}

/**
 * Fills an empty, migrated database with the invented Tidewrack shop: eighteen months of jobs, tools worn out and
 * bought, gauges sent out, mistakes mended, and the plan of today. Everything is done by the commands that screens use,
 * each at its own moment of the past, so the ledger reads as if the shop had kept it. All or nothing.
 */
export function seedDemo(db: Db, { now, newId }: DemoEnv): void {
  const calendar = calendarOf(now);
  const bench = new BladeBench(calendar, chanceOf('demo blades 221'));
  const { acts, use, rows } = cutJobs(calendar, chanceOf('demo jobs'), bench);
  const story = [
    ...setUpActs(calendar),
    ...equipmentActs(calendar),
    ...gaugeActs(calendar),
    ...fluidActs(calendar),
    ...dieActs(calendar, chanceOf('demo dies'), use),
    ...acts,
    ...todayActs(calendar, bench),
    ...bench.acts,
    ...acceptanceActs(calendar, rows),
    ...threadReadingActs(calendar, rows),
    ...careActs(calendar, rows),
  ];
  story.push(...pastOrderActs(calendar, story));
  db.$client.transaction(() => play(db, story, newId)).immediate();
}
