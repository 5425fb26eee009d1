import type { EdgeHistory, ExposurePart } from '@/lib/life/observation';
import { defaultLifePriors, type LifePriors, type Prior } from '@/lib/life/priors';

export const FLAT: Prior = { form: 'flat' };
export const NONE: Prior = { form: 'fixed', value: 0 };

/** Cutting in the reference material "ref", first cuts, with fluid. */
export function cut(base: number, part: Partial<ExposurePart> = {}): ExposurePart {
  return { materialId: 'ref', dry: false, rework: false, base, ...part };
}

/** One edge of a 3/8 die, in service after 100 turns unless told otherwise. */
export function edge(toolId: string, history: Partial<EdgeHistory> = {}): EdgeHistory {
  return {
    toolId,
    edgeNo: 1,
    kind: 'die',
    partId: 'die-38',
    odIn: 0.375,
    regrinds: 0,
    before: [cut(100)],
    during: [],
    end: 'in-service',
    ...history,
  };
}

/** Priors that say nothing and leave only the figures named in `more` to be fitted beside shape and median. */
export function flatPriors(more: Partial<LifePriors> = {}): LifePriors {
  return {
    ...defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] }),
    logShape: FLAT,
    logMedian: FLAT,
    sizeExponent: NONE,
    part: NONE,
    regrind: NONE,
    dry: NONE,
    rework: NONE,
    unlistedMaterial: FLAT,
    ...more,
  };
}
