import { checkPlan } from '../capability/check-plan';
import type { LineVerdict } from '../capability/line-verdict';
import type { Job } from '../shop/job';
import { jobLineId } from '../shop/job-line-id';
import type { LineShown } from '../shop/line-shown';
import { isEdgeKind } from './edge-histories';
import type { Outlook } from './outlook';
import { endsToMake } from './plan-facts';
import type { LineFacts } from './shop-facts';
import { shopPlan } from './shop-plan';

/**
 * What the plan will say of the lines of a job as it is being entered or changed: the verdicts over the same futures as every
 * screen, with the job in the plan. Lines with nothing left to make are left out. For the entry that plans it.
 */
export function shownAtPlan(
  { facts, ensemble }: Pick<Outlook, 'facts' | 'ensemble'>,
  job: Pick<Job, 'id' | 'lines'>,
): LineShown[] {
  const before = new Map(facts.lines.map((line) => [line.id, line]));
  const mine = job.lines.map((line): LineFacts => {
    const id = jobLineId(job.id, line.lineNo);
    const { goodCones = 0, goodThreads = 0 } = before.get(id) ?? {};
    return { ...line, id, jobId: job.id, goodCones, goodThreads };
  });
  const others = facts.lines.filter(({ jobId }) => jobId !== job.id);
  const verdicts = checkPlan(shopPlan({ ...facts, lines: [...others, ...mine] }, ensemble));
  return mine.flatMap((line, at) => {
    const ends = endsToMake(line);
    const verdict = verdicts.find(({ lineId }) => lineId === line.id);
    const lineNo = job.lines[at]?.lineNo;
    return ends === 0 || verdict === undefined || lineNo === undefined
      ? []
      : [{ lineNo, verdict: verdict.verdict, pMade: verdict.pMade, ends, edges: edgesOf(verdict) }];
  });
}

/** The kinds of edge that were said to fall short, each with its chance. */
function edgesOf({ blockers }: LineVerdict): LineShown['edges'] {
  return blockers.flatMap((blocker) =>
    blocker.kind === 'life-short' && blocker.role !== null && isEdgeKind(blocker.role)
      ? [{ kind: blocker.role, pLasts: blocker.pMade }]
      : [],
  );
}
