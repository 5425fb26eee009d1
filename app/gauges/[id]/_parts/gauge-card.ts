import 'server-only';
import { nowMs } from '@/app/_server/clock';
import type { Db } from '@/db/open';
import { listOpenFindings } from '@/db/queries/gauge-looks';
import { listAcceptedWith, listGaugeUse } from '@/db/queries/gauge-use';
import { listEvidence } from '@/db/queries/gauges';
import { countedEvidence, recallsOfMasters } from '@/db/queries/master-recalls';
import { gaugeSettingsInForce } from '@/db/queries/shop';
import { addDays, daysBetween } from '@/lib/calendar/day';
import { calibrationInForce } from '@/lib/gauge/calibration-in-force';
import { endsAtStake } from '@/lib/gauge/ends-at-stake';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import { reviewInterval } from '@/lib/gauge/interval-review';
import { canCheckOn, masterRank } from '@/lib/gauge/master-of';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { restsOnDoubt } from '@/lib/recall/master-doubt';
import type { GaugeView } from '../../_parts/gauge-view';
import { mayAccept } from '../../_parts/gauge-words';
import type { FigureDefaults } from './calibration-form';

const DEFAULT_DAYS = 365;

interface CardFacts {
  readonly view: GaugeView;
  readonly views: readonly GaugeView[];
  readonly facts: ShopFacts;
  readonly askedDays: string | string[] | undefined;
}

/** Everything that a gauge's card shows beside its row in the register. */
export function cardOf(db: Db, { view, views, facts, askedDays }: CardFacts) {
  const { gauge } = view;
  const { today } = facts;
  const filed = listEvidence(db, gauge.id);
  const evidence = countedEvidence(db, filed);
  const last = evidence.at(-1);
  const inForce = calibrationInForce(inOrderOfEntry(evidence));
  const inForceDays = daysInForce(view, evidence);
  const settings = gaugeSettingsInForce(db);
  const target = settings.targetReliability;
  const use = listGaugeUse(db, gauge.id);
  const masters = mastersOf(view, views);
  return {
    evidence,
    doubtedIn: recallsBehind(db, filed),
    findings: listOpenFindings(db, gauge.id),
    last,
    inForce,
    stake: endsAtStake(evidence, listAcceptedWith(db, gauge.id), foundMoment(last, today)),
    twinIds: twinsOf(view, views),
    masters,
    canCheck: masters.length > 0,
    inForceDays,
    settings,
    review: reviewInterval({ evidence, intervalDays: inForceDays, use, target }),
    askedDays: daysAsked(askedDays),
    proposedDueDay: addDays(today, inForceDays ?? DEFAULT_DAYS),
    figures: figuresLast(evidence),
  };
}
export type GaugeCard = ReturnType<typeof cardOf>;

/** The moment it was found out, or now for one that is only in doubt: the window of what is at stake ends there. */
function foundMoment(last: GaugeEvidence | undefined, today: string) {
  if (last === undefined || last.asFound !== 'out') return { onDay: today, atMs: nowMs() };
  return { onDay: last.onDay, atMs: last.atMs };
}

/** The checks that rest on a master in doubt, with the recall that says so. */
function recallsBehind(db: Db, filed: readonly GaugeEvidence[]): ReadonlyMap<string, string> {
  const recalls = recallsOfMasters(db, filed);
  return new Map(
    filed.flatMap((one) => {
      const recall = recalls.find((each) => restsOnDoubt(one, each));
      return recall === undefined ? [] : [[one.entryId, recall.id] as const];
    }),
  );
}

function inOrderOfEntry(evidence: readonly GaugeEvidence[]): GaugeEvidence[] {
  return evidence.toSorted((a, b) => a.atMs - b.atMs);
}

/** The interval somebody set, or the one that the last certificate's due day tells. */
function daysInForce({ gauge }: GaugeView, evidence: readonly GaugeEvidence[]): number | null {
  if (gauge.interval !== null) return gauge.interval.intervalDays;
  const last = evidence.findLast(({ calibration }) => calibration?.dueOnDay != null)?.calibration;
  return last?.dueOnDay == null ? null : daysBetween(last.onDay, last.dueOnDay);
}

function twinsOf({ gauge, part }: GaugeView, views: readonly GaugeView[]): string[] {
  return views
    .filter(
      (other) =>
        other.gauge.id !== gauge.id &&
        other.gauge.role === gauge.role &&
        other.gauge.hand === gauge.hand &&
        other.part.fitsConnectionIds.some((id) => part.fitsConnectionIds.includes(id)) &&
        mayAccept(other.gauge, other.due) !== 'no',
    )
    .map((other) => other.gauge.id);
}

/** What it can be checked on, in date and in the shop. */
function mastersOf({ gauge, part }: GaugeView, views: readonly GaugeView[]) {
  const self = { id: gauge.id, role: gauge.role, fitsConnectionIds: part.fitsConnectionIds };
  const ranked = views.toSorted(
    (a, b) => masterRank(gauge.role, a.gauge.role) - masterRank(gauge.role, b.gauge.role),
  );
  return ranked.flatMap((other) => {
    const master = { ...self, ...other.gauge, fitsConnectionIds: other.part.fitsConnectionIds };
    const fit = mayAccept(other.gauge, other.due) !== 'no' && canCheckOn(self, master);
    return fit ? [{ value: master.id, label: `${master.id}, ${other.part.name}` }] : [];
  });
}

function daysAsked(asked: string | string[] | undefined): number | undefined {
  const days = typeof asked === 'string' ? Number(asked) : Number.NaN;
  return Number.isInteger(days) && days >= 1 && days <= 3660 ? days : undefined;
}

/** The last certificate's feature, limits and uncertainty, so that they need not be typed again. */
function figuresLast(evidence: readonly GaugeEvidence[]): FigureDefaults {
  const row = evidence.flatMap(({ calibration }) => calibration?.features ?? []).at(-1);
  const text = (value: number | null | undefined) => (value == null ? '' : String(value));
  return {
    feature: row?.feature ?? '',
    unit: row?.unit ?? 'um',
    lowerLimit: text(row?.lowerLimit),
    upperLimit: text(row?.upperLimit),
    expandedUncertainty: text(row?.expandedUncertainty),
  };
}
