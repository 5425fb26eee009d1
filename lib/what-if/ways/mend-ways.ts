import { addDays } from '../../calendar/day';
import type { Blocker } from '../../capability/blocker';
import { laterDay } from '../../capability/line-order';
import { RECEIVING_DAYS } from '../../outlook/order-arrivals';
import { DEFAULT_COSTS } from '../../shop/costs';
import { CALIBRATED_ROLES } from '../../shop/vocabulary';
import type { Change } from '../change';
import { pricedWay, type WayQuestion } from './ask-way';
import { datesFrom } from './date-ways';
import type { PricedWay, WayAction } from './priced-way';

/** A calibration holds for a year where nothing else is said. Common practice, no source. */
const CALIBRATION_DAYS = 365;

interface Mend {
  readonly action: WayAction;
  readonly change: Change;
  readonly costMinor: number | null;
}

/**
 * What the shop can do with the tools that it has about one blocker: calibrate the gauge, gauge the first-off, call a loan
 * back, look at what is set aside. Undefined where only a new piece or another day helps.
 */
export function mendOf(blocker: Blocker, { facts }: WayQuestion): Mend | undefined {
  const [toolId] = blocker.toolIds;
  if (toolId === undefined || blocker.role === null) return undefined;
  const isGauge = CALIBRATED_ROLES.includes(blocker.role);
  if (blocker.kind === 'calibration-lapses' || (blocker.kind === 'quarantined' && isGauge))
    return {
      action: { kind: 'calibrate', toolId },
      change: { kind: 'calibrate-tool', toolId, dueOnDay: addDays(facts.today, CALIBRATION_DAYS) },
      costMinor: facts.costs?.calibrationMinor || null,
    };
  const onLoan = blocker.kind === 'held-elsewhere' && blocker.lineId === null;
  if (blocker.kind === 'needs-first-off' || blocker.kind === 'quarantined' || onLoan)
    return { action: { kind: 'free', toolId }, change: { kind: 'free-tool', toolId }, costMinor: 0 };
  return undefined;
}

/** Everything that is in the way mended with the shop's own tools; undefined where that is not all of it. */
export function mendWay(question: WayQuestion): PricedWay | undefined {
  const mends: Mend[] = [];
  for (const role of new Set(question.verdict.blockers.map((blocker) => blocker.role))) {
    const mine = question.verdict.blockers.filter((blocker) => blocker.role === role);
    const mend = mine.map((blocker) => mendOf(blocker, question)).find((one) => one !== undefined);
    if (mend === undefined) return undefined;
    mends.push(mend);
  }
  if (mends.length === 0) return undefined;
  const known = mends.flatMap(({ costMinor }) => costMinor ?? []);
  return pricedWay(question, {
    actions: mends.map(({ action }) => action),
    changes: mends.map(({ change }) => change),
    costMinor: known.length < mends.length ? null : known.reduce((sum, minor) => sum + minor, 0),
  });
}

/** The most worn blade of the line sent for a regrind: on the line's dates where it is back in time, else when it is back. */
export function regrindWay(question: WayQuestion): PricedWay | undefined {
  const { facts, line } = question;
  if (!question.verdict.blockers.some(({ role }) => role === 'blade')) return undefined;
  const toolId = mostWornBlade(question);
  if (toolId === undefined) return undefined;
  const { regrindDays, regrindMinor } = facts.costs ?? DEFAULT_COSTS;
  const backOnDay = addDays(facts.today, regrindDays + RECEIVING_DAYS);
  const start = laterDay(line.startOnDay, facts.today);
  const later = backOnDay > start ? [datesFrom(question, backOnDay)] : [];
  return pricedWay(question, {
    actions: [{ kind: 'regrind', toolId, backOnDay }],
    changes: [{ kind: 'regrind-tool', toolId, backOnDay }, ...later],
    costMinor: facts.costs === undefined ? null : regrindMinor,
  });
}

/** Of the blades that fit and may be reground again, the one with the least left, in the crib or set aside. */
function mostWornBlade({ facts, ensemble, line }: WayQuestion): string | undefined {
  const mean = (life: Float64Array | undefined): number =>
    life === undefined ? 0 : life.reduce((sum, one) => sum + one, 0) / life.length;
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  return facts.tools
    .filter(({ id, partId, role, state }) => {
      const part = parts.get(partId);
      const edges = facts.edges.filter(({ toolId }) => toolId === id).length;
      const here = state === 'in-crib' || state === 'quarantined';
      return (
        role === 'blade' &&
        here &&
        part?.fitsConnectionIds.includes(line.connectionId) === true &&
        edges <= part.regrindLimit
      );
    })
    .map(({ id }) => ({ id, left: mean(ensemble.residualLife(id)) }))
    .sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1))[0]?.id;
}
