/** One life: the age reached, and whether it ended there by wear. */
export interface ObservedLife {
  readonly age: number;
  readonly worn: boolean;
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
 * while still working count as at risk up to and including their age.
 * S = Π(1 − d/n), standard error S·√Σ d/(n(n − d)). Returns no steps when nothing wore out.
 * Source: E. L. Kaplan and P. Meier, JASA 53 (1958); M. Greenwood (1926). Formula.
 */
export function kaplanMeier(lives: readonly ObservedLife[]): SurvivalStep[] {
  const ordered = [...lives].sort((a, b) => a.age - b.age);
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
    const atRisk = ordered.length - i;
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
