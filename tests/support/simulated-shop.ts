import type { ToolInHand } from '@/lib/ensemble/build-ensemble';
import type { EdgeHistory, ExposurePart } from '@/lib/life/observation';
import type { LifePriors, Prior } from '@/lib/life/priors';
import { gammaQuantile } from '@/lib/numeric/gamma';
import { normalQuantile } from '@/lib/numeric/normal';
import { streamOfKey, type UniformStream } from '@/lib/numeric/random-stream';
import { cut, edge } from './edge-histories';
import { DIE_PRIORS, inHand } from './small-shop';

/** A shop whose truth is known: its figures and the law of lives are drawn from the priors, its tools' lives from those. */
export interface SimulatedShop {
  readonly histories: readonly EdgeHistory[];
  /** Tools still cutting, each with the reference exposure that it truly has left. */
  readonly inService: readonly { readonly tool: ToolInHand; readonly trulyLeft: number }[];
  readonly truth: { readonly logShape: number; readonly logMedian: number; readonly sizeExponent: number };
}

const TYPICAL = 1206;

function drawFrom(prior: Prior, random: UniformStream): number {
  if (prior.form === 'normal') return prior.mean + prior.sd * normalQuantile(random());
  if (prior.form === 'fixed') return prior.value;
  throw new Error('a flat prior cannot be drawn from');
}

export function simulateShop(key: string, tools: number, priors: LifePriors = DIE_PRIORS): SimulatedShop {
  const random = streamOfKey(key);
  const shape = Math.exp(drawFrom(priors.logShape, random));
  const logMedian = drawFrom(priors.logMedian, random);
  const size = drawFrom(priors.sizeExponent, random);
  const hard = Math.exp(drawFrom(priors.materials[0]?.logFactor ?? priors.unlistedMaterial, random));
  const incident = priors.incident;
  const rate = gammaQuantile(
    { shape: incident.shape, rate: incident.shape * incident.livesPerIncident * Math.exp(logMedian) },
    random(),
  );
  const parts = [0.375, 0.5625].map((odIn) => ({
    odIn,
    log: logMedian + size * Math.log(odIn / 0.375) + drawFrom(priors.part, random),
  }));
  const tailed = random() < (priors.logLogisticChance ?? 0);
  const histories: EdgeHistory[] = [];
  const inService: { tool: ToolInHand; trulyLeft: number }[] = [];
  for (let i = 0; i < tools; i++) {
    const { odIn, log } = parts[i % 2] ?? { odIn: 0.375, log: logMedian };
    const life = Math.exp(log) * lifeShare(random(), shape, tailed);
    const dropped = -Math.log(random()) / rate;
    // How much a tool was used, and how long its rows are, must not depend on the truth: else the log would tell more
    // than its lives, and no forecaster who reads only the lives could be calibrated.
    const rows = plannedRows(TYPICAL * (i < 2 ? 0.8 : 2) * random(), random);
    const outcome = play(
      rows,
      { worn: life, dropped },
      (row) => row.base * (row.materialId === '2507' ? hard : 1),
    );
    const history = edge(`T${i}`, { partId: `die-${odIn}`, odIn, ...outcome.history });
    histories.push(history);
    if (outcome.trulyLeft > 0) inService.push({ tool: inHand(history), trulyLeft: outcome.trulyLeft });
  }
  return { histories, inService, truth: { logShape: Math.log(shape), logMedian, sizeExponent: size } };
}

/** A life as a share of the median: Weibull, or log-logistic of the same scatter of the log life. */
function lifeShare(u: number, shape: number, tailed: boolean): number {
  if (tailed) return (1 / u - 1) ** (1 / (Math.SQRT2 * shape));
  return (-Math.log(u) / Math.LN2) ** (1 / shape);
}

/** Log rows of about 5 % of a typical life in one material each, until so much has been cut. */
function plannedRows(total: number, random: UniformStream): ExposurePart[] {
  const rows: ExposurePart[] = [];
  for (let sum = 0; sum < total; ) {
    const base = TYPICAL * (0.02 + 0.06 * random());
    rows.push(cut(base, { materialId: random() < 0.25 ? '2507' : 'ref' }));
    sum += base;
  }
  return rows;
}

/** Cuts row after row: of a wear-out only its row is known, of an incident its moment. */
function play(
  rows: readonly ExposurePart[],
  ends: { worn: number; dropped: number },
  exposureOf: (row: ExposurePart) => number,
): { history: Pick<EdgeHistory, 'before' | 'during' | 'end'>; trulyLeft: number } {
  const end = Math.min(ends.worn, ends.dropped);
  let exposure = 0;
  for (const [i, row] of rows.entries()) {
    const before = rows.slice(0, i);
    const next = exposure + exposureOf(row);
    if (end <= next && ends.worn < ends.dropped)
      return { history: { before, during: [row], end: 'worn' }, trulyLeft: 0 };
    const share = (end - exposure) / (next - exposure);
    const part = { ...row, base: row.base * share };
    if (end <= next)
      return { history: { before: [...before, part], during: [], end: 'incident' }, trulyLeft: 0 };
    exposure = next;
  }
  return { history: { before: rows, during: [], end: 'in-service' }, trulyLeft: end - exposure };
}
