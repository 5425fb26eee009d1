import type { EdgeKind, Role } from '../shop/vocabulary';

/** What the record says of a shop's gauging since its first end was accepted. */
export interface Gauging {
  /** Calibrations of each gauge and master. */
  readonly calibrations: readonly CalibratedGauge[];
  /** Ends accepted with each gauge, by size. */
  readonly looks: readonly {
    readonly toolId: string;
    readonly connectionId: string;
    readonly ends: number;
  }[];
  /** Ends accepted at all, by size. */
  readonly accepted: ReadonlyMap<string, number>;
}

export interface CalibratedGauge {
  readonly toolId: string;
  readonly role: Role;
  /** Sizes that it is for. */
  readonly fitsConnectionIds: readonly string[];
  readonly calibrations: number;
}

/** Which work a gauge looks at; a torque wrench looks at none of the cutting. */
const LOOKS_AT: Partial<Record<Role, EdgeKind>> = {
  'cone-gauge': 'blade',
  'master-seat': 'blade',
  'go-ring': 'die',
  'not-go-ring': 'die',
  'length-gauge': 'die',
  'setting-plug': 'die',
  'thread-wires': 'die',
  micrometer: 'die',
};

/**
 * What calibrating its gauges adds to an accepted end of a size, cones and threads apart, minor units. A gauge's calibrations are
 * spread over the ends that were accepted with it; those of one that looked at no end itself, a master or a twin on the shelf, over
 * all ends accepted of the sizes that it is for.
 *
 *   per end of size s = Σ_g cost·calibrations_g·(ends_gs ÷ ends_g) ÷ ends_s
 *
 * A gauge for sizes of which nothing was accepted adds nothing. Domain: calibrationMinor >= 0. Source: formula.
 */
export function gaugeCosts(
  { calibrations, looks, accepted }: Gauging,
  calibrationMinor: number,
): (connectionId: string, kind: EdgeKind) => number {
  const sums = new Map<string, number>();
  for (const { toolId, role, fitsConnectionIds, calibrations: times } of calibrations) {
    const kind = LOOKS_AT[role];
    if (kind === undefined) continue;
    const own = looks.filter((look) => look.toolId === toolId);
    const over = own.length > 0 ? own : fittingEnds(fitsConnectionIds, accepted);
    const all = over.reduce((sum, { ends }) => sum + ends, 0);
    for (const { connectionId, ends } of over) {
      const key = `${connectionId} ${kind}`;
      sums.set(key, (sums.get(key) ?? 0) + (calibrationMinor * times * ends) / all);
    }
  }
  return (connectionId, kind) => {
    const ends = accepted.get(connectionId) ?? 0;
    return ends === 0 ? 0 : (sums.get(`${connectionId} ${kind}`) ?? 0) / ends;
  };
}

/** The accepted ends of the sizes that a gauge is for; of all sizes where it names none. */
function fittingEnds(fitsConnectionIds: readonly string[], accepted: ReadonlyMap<string, number>) {
  return [...accepted]
    .filter(([id, ends]) => ends > 0 && (fitsConnectionIds.length === 0 || fitsConnectionIds.includes(id)))
    .map(([connectionId, ends]) => ({ connectionId, ends }));
}
