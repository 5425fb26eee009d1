import { issueKit } from '../../db/commands/issue-kit';
import { placeOrder } from '../../db/commands/keep-orders';
import { planJob } from '../../db/commands/plan-job';
import { jobLineId } from '../../lib/shop/job-line-id';
import type { Shown } from '../../lib/shop/shown';
import { type Act, act } from './act';
import type { BladeBench } from './blade-bench';
import type { Calendar } from './calendar';
import { issue } from './crib-acts';
import { actorOf } from './people';
import { saidOfJob, saidOfTool } from './said';
import { CHLORINE_FREE_FLUID } from './set-up';

/** An open job of today: days from today, ends to make. */
type Line = readonly [
  id: string,
  title: string,
  connectionId: string,
  materialId: string,
  ends: number,
  startOffset: number,
  dueOffset: number,
  value: 'ordinary' | 'precious',
];

/**
 * The plan of the next six weeks. J-086 can be made with the one 3/8 die left; J-087 then runs short of life and waits
 * for the die on order; J-094 is a quote for a size that the shop has no row, die, guide or gauge for.
 */
const OPEN: readonly Line[] = [
  ['J-086', 'Winch brake lines, second set', '3-8-medium', '316-cw', 24, 0, 5, 'ordinary'],
  ['J-087', 'Deck panel tubing, second set', '3-8-medium', '316-cw', 40, 6, 11, 'ordinary'],
  ['J-088', 'Pressure bench 1 high-side lines', '9-16-high', '316-cw', 20, 2, 9, 'ordinary'],
  ['J-089', 'Gauge board spares', '1-4-medium', '316-annealed', 16, 2, 5, 'ordinary'],
  ['J-090', 'Bench 2 vent lines, renewal', '9-16-medium', '316-annealed', 12, 10, 18, 'ordinary'],
  ['J-091', 'Brine header branch', '3-4-medium', '316-cw', 8, 14, 24, 'ordinary'],
  [
    'J-092',
    'Bent lander spool worth 900 dollars: no length to remake',
    '1-4-high',
    '316-cw',
    2,
    8,
    12,
    'precious',
  ],
  ['J-093', 'Bilge line, 1 in', '1-medium', '316-cw', 4, 25, 34, 'ordinary'],
  ['J-094', 'Quote: 1 in high pressure test line', '1-high', '316-cw', 12, 28, 40, 'ordinary'],
];

/** The job of the plan that is for oxygen service: its line is held until its cleaning is written down. */
const OXYGEN_JOB_TODAY = 'J-090';

/** Blades bought ahead of the plan, so that dies are what it turns on. */
const SPARE_BLADES = [
  '3-8-medium',
  '3-8-medium',
  '1-4-medium',
  '1-4-high',
  '9-16-medium',
  '9-16-high',
  '3-4-medium',
  '1-medium',
];

/** What is out with the first job this morning. */
const KIT = [
  'D-38-11',
  'BDY-A',
  'STK-A',
  'GDE-38-3',
  'TGD-38-1',
  'CLT-38-1',
  'G-38-GO-1',
  'G-38-NG-1',
  'CG-38-1',
  'LG-38-1',
  'BRS-1',
];

/** Where the shop stands today: what is planned, on order, out at the benches and on loan. */
export function todayActs(calendar: Calendar, bench: BladeBench): Act[] {
  for (const connectionId of SPARE_BLADES) bench.buy(connectionId, -9);
  const jobs = OPEN.map((line, index) => planned(line, index, calendar));
  const orders = [
    ordered('PO-118', 'die-3-8', 2, -16, 12, calendar),
    ordered('PO-119', 'blade-9-16-high', 4, -6, 5, calendar),
    ordered('PO-120', CHLORINE_FREE_FLUID, 1, -3, 2, calendar),
  ];
  const kit = morningKit([...KIT, bench.inCrib('3-8-medium')], calendar);
  const loan = { atMs: calendar.at(-3, 830), by: 'crib-2' as const, toolId: 'MKR-2', mark: 'loan' };
  return [...jobs, ...orders, kit, issue(loan, 'quality-1', null, 'gauge room')];
}

/** The first job's kit, issued together this morning. */
function morningKit(toolIds: readonly string[], calendar: Calendar): Act {
  const when = { atMs: calendar.now - 80 * 60_000, by: actorOf('crib-1'), name: 'kit of today' };
  const kit = { jobLineId: jobLineId('J-086', 1), toPersonId: 'tech-2', bench: 'B1' };
  return act(when, 'issue-tool', (db, permit, entered, env) => {
    const said = toolIds.flatMap((toolId): [string, Shown][] => {
      const shown = saidOfTool(db, env.nowMs, { ...kit, toolId });
      return shown === undefined ? [] : [[toolId, shown]];
    });
    const shown = Object.fromEntries(said);
    return issueKit(db, permit, { ...entered, ...kit, shown, toolIds: [...toolIds] }, env);
  });
}

function planned(line: Line, index: number, calendar: Calendar): Act {
  const [id, title, connectionId, materialId, ends, startOffset, dueOffset, value] = line;
  const job = {
    id,
    title,
    lines: [
      {
        lineNo: 1,
        connectionId,
        materialId,
        heat: '',
        ends,
        operations: ['cone' as const, 'thread' as const],
        startOnDay: calendar.day(startOffset),
        dueOnDay: calendar.day(dueOffset),
        value,
        ...(id === OXYGEN_JOB_TODAY ? { duty: 'oxygen' as const } : {}),
      },
    ],
  };
  const when = { atMs: calendar.at(-14 + index, 910), by: actorOf('lead-1'), name: `plan ${id}` };
  return act(when, 'plan-job', (db, permit, entered, env) =>
    planJob(db, permit, { ...entered, job: { ...job, shown: saidOfJob(db, env.nowMs, job) } }, env),
  );
}

function ordered(
  id: string,
  partId: string,
  quantity: number,
  placedOffset: number,
  expectedOffset: number,
  calendar: Calendar,
): Act {
  const order = {
    id,
    partId,
    quantity,
    placedOnDay: calendar.day(placedOffset),
    expectedOnDay: calendar.day(expectedOffset),
  };
  const when = { atMs: calendar.at(placedOffset, 950), by: actorOf('lead-1'), name: `order ${id}` };
  return act(when, 'keep-orders', (db, permit, entered, env) =>
    placeOrder(db, permit, { ...entered, order }, env),
  );
}
