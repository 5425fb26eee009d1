import { choleskyFactor, choleskyInverse } from '../numeric/cholesky';
import { minimizeNewton, type Surface } from '../numeric/newton';
import { edgeTerms, type LifeEvidence, LOG_LN2, roomForTerms } from './edge-likelihood';
import type { WeibullFit, WeibullSample } from './weibull-sample';

/**
 * The same maximum-likelihood fit when some lives are known only to have ended between two ages: Newton on
 * (ln shape, ln median) with analytic derivatives. Errors: `not-identified` when the intervals settle no shape.
 */
export function fitWeibullIntervals(sample: WeibullSample): WeibullFit {
  const rows = rowsOf(sample);
  const middle = rows.reduce((sum, row) => sum + row.logAge, 0) / rows.length;
  const found = minimizeNewton({ start: [0.3, middle], evaluate: (x) => surfaceAt(rows, x) });
  const lower = choleskyFactor(found.surface.hessian, 2);
  const inverse = lower === undefined ? undefined : choleskyInverse(lower, 2);
  if (inverse === undefined || !((inverse[0] as number) < 1e4 && (inverse[3] as number) < 1e4)) {
    return { ok: false, reason: 'not-identified' };
  }
  const shape = Math.exp(found.x[0] as number);
  const bend = LOG_LN2 / shape;
  const [ss, sm, mm] = [inverse[0] as number, inverse[1] as number, inverse[3] as number];
  const cross = sm + bend * ss;
  return {
    ok: true,
    shape,
    scale: Math.exp((found.x[1] as number) - bend),
    logLik: -found.surface.value,
    covariance: [mm + 2 * bend * sm + bend * bend * ss, cross, cross, ss],
    iterations: found.iterations,
    stoppedBy: found.stoppedBy,
  };
}

interface Row {
  readonly evidence: LifeEvidence;
  readonly logAge: number;
  readonly logRatio: number;
  readonly fromZero: boolean;
}

function rowsOf({ wornAt, workingAt, wornBetween = [] }: WeibullSample): Row[] {
  const plain = (ages: ArrayLike<number>, evidence: LifeEvidence): Row[] =>
    Array.from(ages)
      .filter((age) => age > 0)
      .map((age) => ({ evidence, logAge: Math.log(age), logRatio: 0, fromZero: false }));
  const between = wornBetween.map(
    ({ from, to }): Row => ({
      evidence: 'between',
      logAge: Math.log(from === 0 ? to : from),
      logRatio: from === 0 ? 0 : Math.log((to - from) / from),
      fromZero: from === 0,
    }),
  );
  return [...plain(wornAt, 'exactly'), ...plain(workingAt, 'beyond'), ...between];
}

function surfaceAt(rows: readonly Row[], x: Float64Array): Surface {
  const terms = roomForTerms();
  const gradient = new Float64Array(2);
  const hessian = new Float64Array(4);
  let value = 0;
  for (const row of rows) {
    edgeTerms(row.evidence, [x[0] as number, x[1] as number, row.logAge, row.logRatio], row.fromZero, terms);
    value -= terms.value - (row.evidence === 'exactly' ? row.logAge : 0);
    for (let a = 0; a < 2; a++) {
      gradient[a] = (gradient[a] as number) - (terms.gradient[a] as number);
      for (let b = 0; b < 2; b++)
        hessian[a * 2 + b] = (hessian[a * 2 + b] as number) - (terms.hessian[a * 4 + b] as number);
    }
  }
  return { value, gradient, hessian };
}
