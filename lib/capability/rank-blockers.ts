import type { Role } from '../shop/vocabulary';
import type { Blocker, BlockerKind } from './blocker';
import type { UnrankedBlocker } from './need-blockers';

/** Among blockers without a date: what takes longest to put right first. Source: common practice, no source. */
const KIND_ORDER: readonly BlockerKind[] = [
  'unknown-connection',
  'unknown-material',
  'missing',
  'hand-mismatch',
  'quarantined',
  'fluid-not-permitted',
  'calibration-lapses',
  'out-for-calibration',
  'out-for-regrind',
  'held-elsewhere',
  'fluid-expired',
  'fluid-short',
  'needs-first-off',
  'life-short',
  'no-sure-edge',
];

/** Among equals: what has the longest lead time and stops most first. Source: common practice, no source. */
const ROLE_ORDER: readonly (Role | null)[] = [
  null,
  'die',
  'threading-guide',
  'go-ring',
  'not-go-ring',
  'blade',
  'coning-guide',
  'cone-gauge',
  'length-gauge',
  'collet',
  'coning-body',
  'die-stock',
  'torque-wrench',
  'deburr-tool',
  'brush',
  'fluid',
];

/**
 * Most limiting first: hard before soft; then no known date before any date; then the latest date; then kind and role
 * in the orders above. Independent of the order of its input.
 */
export function rankBlockers(blockers: readonly UnrankedBlocker[]): Blocker[] {
  return [...blockers].sort(compareBlockers).map((blocker, i) => ({ ...blocker, rank: i + 1 }));
}

function compareBlockers(a: UnrankedBlocker, b: UnrankedBlocker): number {
  if (a.hard !== b.hard) return a.hard ? -1 : 1;
  if (a.clearsOnDay !== b.clearsOnDay) {
    if (a.clearsOnDay === null) return -1;
    if (b.clearsOnDay === null) return 1;
    return a.clearsOnDay > b.clearsOnDay ? -1 : 1;
  }
  const kinds = KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind);
  return kinds === 0 ? ROLE_ORDER.indexOf(a.role) - ROLE_ORDER.indexOf(b.role) : kinds;
}
