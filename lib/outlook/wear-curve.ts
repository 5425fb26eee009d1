import { bandOf } from '../ensemble/reasons';
import { kaplanMeier, type SurvivalStep } from '../life/kaplan-meier';
import { gatheredBy, LOG_LOGISTIC_STRETCH } from '../life/life-law';
import { scaleFromMedian, survival } from '../life/weibull';
import { isEdgeKind, partSizes } from './edge-histories';
import { type EdgeLife, edgeLives } from './edge-lives';
import type { Outlook } from './outlook';
import { exposurePerEnd, ownConnection } from './part-wear';

/** Share of new edges still cutting after so many ends, as the model has it: middle and 10–90 % band over the draws. */
export interface CurvePoint {
  readonly ends: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** How the edges of a part wear: the model's band beside the shop's own edges. */
export interface WearCurve {
  readonly model: readonly CurvePoint[];
  /** Kaplan–Meier: no model, only what the log holds. Accidents and edges taken out good count up to their age. */
  readonly log: readonly SurvivalStep[];
  readonly lives: readonly EdgeLife[];
}

const POINTS = 24;

/** The survival curve of new edges of a part, in ends of its own connection. Undefined for a part without an edge. */
export function wearCurve(
  outlook: Pick<Outlook, 'facts' | 'ensemble'>,
  partId: string,
): WearCurve | undefined {
  const { facts, ensemble } = outlook;
  const part = facts.parts.find(({ id }) => id === partId);
  const connection = part && ownConnection(facts, part);
  const odIn = partSizes(facts).get(partId);
  if (part === undefined || connection === undefined || odIn === undefined || !isEdgeKind(part.role))
    return undefined;
  const draws = ensemble.draws(part.role);
  const medians = ensemble.medianLife(part.role, { partId, odIn, regrinds: 0 });
  if (draws === undefined || medians === undefined) return undefined;
  const { shape, logLogistic } = draws;
  const perEnd = exposurePerEnd(part.role, connection);
  const drawn = Array.from(medians, (median, k): Lasts => {
    const own = shape[k] as number;
    return lastsBy(own, median / perEnd, logLogistic?.[k] === 1);
  });
  const lives = edgeLives(outlook, partId);
  const log = kaplanMeier(
    lives.map(({ ageEnds: age, enteredEnds: enteredAt, end }) => ({ age, worn: end === 'worn', enteredAt })),
  );
  const typical = bandOf(medians.map((life) => life / perEnd)).median;
  return { model: modelCurve(drawn, Math.max(1.05 * (lives[0]?.ageEnds ?? 0), 1.8 * typical)), log, lives };
}

/** Share of new edges that lasts beyond so many ends, in one draw. */
type Lasts = (ends: number) => number;

function lastsBy(shape: number, median: number, logLogistic: boolean): Lasts {
  const life = { shape, scale: scaleFromMedian({ shape, median }) };
  if (!logLogistic) return (ends) => survival(life, ends);
  const power = LOG_LOGISTIC_STRETCH * shape;
  return (ends) => Math.exp(-gatheredBy('log-logistic', power * Math.log(ends / median)));
}

function modelCurve(drawn: readonly Lasts[], span: number): CurvePoint[] {
  const step = niceStep(span / POINTS);
  return Array.from({ length: Math.ceil(span / step) + 1 }, (_, i) => {
    const ends = i * step;
    const { low, median, high } = bandOf(Float64Array.from(drawn, (lasts) => lasts(ends)));
    return { ends, low, median, high };
  });
}

/** The next step of 1, 2, 5 × a power of ten, so that the figures read as whole tens. At least one end. */
export function niceStep(atLeast: number): number {
  if (!(atLeast > 1)) return 1;
  const power = 10 ** Math.floor(Math.log10(atLeast));
  return power * ([1, 2, 5, 10].find((multiple) => multiple * power >= atLeast * (1 - 1e-9)) ?? 10);
}
