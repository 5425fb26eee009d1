import { CASES_TO_JUDGE, type ScoreSummary } from '@/lib/outlook/score-summary';
import type { Coverage } from '@/lib/score/band-coverage';
import type { ReliabilityBin } from '@/lib/score/scored-case';
import { count, share } from '../format';

/** A share in tenths as the shop says it: "7.8 in 10". */
export function inTen(part: number): string {
  const tenths = (part * 10).toFixed(1).replace(/\.0$/, '');
  return `${tenths} in 10`;
}

/** One group of cases: "When it said about 7 in 10, 6.4 in 10 finished." */
export function binSentence({ predicted, observed }: Pick<ReliabilityBin, 'predicted' | 'observed'>): string {
  return `When it said ${inTen(predicted)}, ${inTen(observed)} finished.`;
}

/** Whether what was said of a group is borne out: within its interval, else which way it erred. */
export function binJudgement({
  predicted,
  low,
  high,
}: Pick<ReliabilityBin, 'predicted' | 'low' | 'high'>): string {
  if (predicted < low) return 'too cautious';
  return predicted > high ? 'too hopeful' : 'as said';
}

/** The one sentence that a lead takes away: who was wrong how often, over the same cases. */
export function wrongSentence({ card, wrong }: Pick<ScoreSummary, 'card' | 'wrong'>): string {
  const { cases, ours, fixedCount } = wrong;
  if (cases < CASES_TO_JUDGE) return tooLittle(card.ours?.count ?? 0);
  return `Of ${count(cases, 'case')} it called ${ours} wrong; changing at the fixed count would have called ${fixedCount} wrong.`;
}

/** Too little to judge by, said plainly. */
export function tooLittle(cases: number): string {
  const have = cases === 0 ? 'Nothing has been settled yet' : `Only ${count(cases, 'case')} settled`;
  return `${have}: too little to judge it by. From about ${CASES_TO_JUDGE} on it says something.`;
}

/** How good the bands were: they claim to hold four times in five. */
export function coverageSentence(coverage: Coverage | undefined): string {
  if (coverage === undefined || coverage.count < CASES_TO_JUDGE) return 'too few bands have been settled';
  const { low, high, count: cases } = coverage;
  const fair = low <= 0.8 && high >= 0.8 ? 'as claimed' : low > 0.8 ? 'wider than need be' : 'too narrow';
  return `${share(coverage.share, 1)} of ${count(cases, 'band')} held what happened; 80\u202f% is claimed: ${fair}`;
}
