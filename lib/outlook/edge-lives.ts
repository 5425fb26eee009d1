import type { Ensemble } from '../ensemble/build-ensemble';
import type { EdgeHistory, ExposurePart } from '../life/observation';
import { edgeHistories } from './edge-histories';
import type { Outlook } from './outlook';
import { exposurePerEnd, ownConnection } from './part-wear';

/** One edge of a part as a life told in ends of the part's own connection, reference material, new edge. */
export interface EdgeLife {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly end: EdgeHistory['end'];
  /** Ends that it really cut, of any size and material. */
  readonly cutEnds: number;
  /** The same in ends of the part's own connection; worn: where it wore out, the middle of what is known. */
  readonly ageEnds: number;
  /** Ends that it had cut when the log began to follow it; 0: followed from the first. */
  readonly enteredEnds: number;
}

/**
 * The lives of the edges of one part, longest first. Exposure is turned into ends by the most probable factors: of the
 * material, of cutting dry, of recutting, and of regrinds, so that all of them stand on one scale.
 */
export function edgeLives(
  { facts, ensemble }: Pick<Outlook, 'facts' | 'ensemble'>,
  partId: string,
): EdgeLife[] {
  const part = facts.parts.find(({ id }) => id === partId);
  const connection = part && ownConnection(facts, part);
  if (part === undefined || connection === undefined) return [];
  const cut = new Map(
    facts.edges.map(({ toolId, edgeNo, use }) => [
      `${toolId} ${edgeNo}`,
      use.reduce((sum, { ends }) => sum + ends, 0),
    ]),
  );
  return edgeHistories(facts)
    .filter((history) => history.partId === partId)
    .map((history) => {
      const { toolId, edgeNo, end, kind } = history;
      const age = exposureOf(ensemble, history, history.before);
      const during = exposureOf(ensemble, history, history.during);
      const perEnd = exposurePerEnd(kind, connection) * regrindFactor(ensemble, history);
      const ageEnds = (age + during / 2) / perEnd;
      const enteredEnds = exposureOf(ensemble, history, history.entered ?? []) / perEnd;
      return { toolId, edgeNo, end, cutEnds: cut.get(`${toolId} ${edgeNo}`) ?? 0, ageEnds, enteredEnds };
    })
    .sort((a, b) => b.ageEnds - a.ageEnds || (a.toolId < b.toolId ? -1 : 1));
}

function exposureOf(ensemble: Ensemble, { kind }: EdgeHistory, parts: readonly ExposurePart[]): number {
  const mode = ensemble.fit(kind)?.mode ?? {};
  return parts.reduce((sum, { base, materialId, dry, rework }) => {
    const logFactor =
      (mode[`material:${materialId}`] ?? 0) + (dry ? (mode.dry ?? 0) : 0) + (rework ? (mode.rework ?? 0) : 0);
    return sum + base * Math.exp(logFactor);
  }, 0);
}

function regrindFactor(ensemble: Ensemble, { kind, regrinds }: EdgeHistory): number {
  return Math.exp(regrinds * (ensemble.fit(kind)?.mode.regrind ?? 0));
}
