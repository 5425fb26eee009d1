import type { Disposition, Suspect, SuspectDisposal } from '../shop/recall';

/** How it stands with the suspect ends of one acceptance. open + good + gone = endCount. */
export interface DisposalSum {
  readonly endCount: number;
  /** Nothing decided yet. */
  readonly open: number;
  /** Good after all, or used as they are: they count as accepted again. */
  readonly good: number;
  /** Scrapped, made again or no longer in the record: they count no more. */
  readonly gone: number;
}

/** What a decision makes of the ends. Ends whose customer was told are out of the shop’s hands: they count as they are. */
const OUTCOME: Record<Disposition, 'good' | 'gone'> = {
  'regauged-good': 'good',
  'cleared-otherwise': 'good',
  concession: 'good',
  'customer-told': 'good',
  reworked: 'gone',
  scrapped: 'gone',
  'taken-back': 'gone',
};

/**
 * Sums the decisions of a recall by acceptance: how many of its suspect ends are open, good after all, or gone. For the
 * list of suspects and for what a job can release. Ends, whole numbers.
 */
export function sumDisposals(recall: {
  readonly suspects: readonly Suspect[];
  readonly disposals: readonly Pick<SuspectDisposal, 'acceptanceId' | 'endCount' | 'how'>[];
}): Map<string, DisposalSum> {
  const sums = new Map<string, DisposalSum>(
    recall.suspects.map(({ acceptanceId, endCount }) => [
      acceptanceId,
      { endCount, open: endCount, good: 0, gone: 0 },
    ]),
  );
  for (const { acceptanceId, endCount, how } of recall.disposals) {
    const sum = sums.get(acceptanceId);
    if (sum === undefined) continue;
    const outcome = OUTCOME[how];
    sums.set(acceptanceId, {
      ...sum,
      open: sum.open - endCount,
      [outcome]: sum[outcome] + endCount,
    });
  }
  return sums;
}
