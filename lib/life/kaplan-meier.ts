/** One life: the age reached, whether it ended there by wear, and from which age on it was followed (absent: from the start). */
export interface ObservedLife {
  readonly age: number;
  readonly worn: boolean;
  readonly enteredAt?: number | undefined;
}

/** A step of the survival curve, at an age at which something wore out. */
export interface SurvivalStep {
  readonly age: number;
  readonly atRisk: number;
  readonly worn: number;
  /** Share expected to last beyond this age. */
  readonly survival: number;
  /** Greenwood's standard error of `survival`. */
  readonly standardError: number;
}

/**
 * Kaplan–Meier survival curve: what share of edges lasts beyond each age, judged without any model. Edges taken out
 * while still working count as at risk up to and including their age, edges that were followed only from some age on from just
 * beyond it.
 * S = Π(1 − d/n), standard error S·√Σ d/(n(n − d)). Returns no steps when nothing wore out.
 * Source: E. L. Kaplan and P. Meier, JASA 53 (1958); M. Greenwood (1926). Formula.
 */
export function kaplanMeier(lives: readonly ObservedLife[]): SurvivalStep[] {
  const ordered = followed(lives).sort((a, b) => a.age - b.age);
  const late = entriesOf(ordered);
  let come = 0;
  const steps: SurvivalStep[] = [];
  let survival = 1;
  let greenwood = 0;
  for (let i = 0; i < ordered.length; ) {
    const age = (ordered[i] as ObservedLife).age;
    let next = i;
    let worn = 0;
    for (; next < ordered.length && (ordered[next] as ObservedLife).age === age; next++) {
      if ((ordered[next] as ObservedLife).worn) worn++;
    }
    while (come < late.length && (late[come] as number) < age) come++;
    const atRisk = ordered.length - i - (late.length - come);
    if (worn > 0) {
      survival *= (atRisk - worn) / atRisk;
      greenwood += worn / (atRisk * (atRisk - worn));
      const standardError = survival === 0 ? 0 : survival * Math.sqrt(greenwood);
      steps.push({ age, atRisk, worn, survival, standardError });
    }
    i = next;
  }
  return steps;
}

/** Lives that were followed at all: an edge that ended where it was entered is not evidence. */
export function followed<Life extends ObservedLife>(lives: readonly Life[]): Life[] {
  return lives.filter(({ age, enteredAt = 0 }) => enteredAt === 0 || age > enteredAt);
}

/** The ages from which on lives were followed that were not followed from the start, in order. */
export function entriesOf(lives: readonly ObservedLife[]): Float64Array {
  return Float64Array.from(lives.flatMap(({ enteredAt = 0 }) => (enteredAt > 0 ? [enteredAt] : []))).sort();
}
