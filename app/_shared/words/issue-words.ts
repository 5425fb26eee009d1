import type { Chosen } from '@/lib/issue-order/choose-tool';
import type { ToolInLine, ToolProposal } from '@/lib/issue-order/propose-tools';
import type { IssueGain } from '@/lib/issue-order/week-list';
import { capital } from '@/lib/text/capital';
import { chanceWords, count, floorEnds } from '../format';

const WHY: Record<Chosen, string> = {
  'in-hand': 'With the line already.',
  'most-worn-that-lasts': 'The most worn that is sure enough to last; fuller ones stay whole for long jobs.',
  'only-one-that-lasts': 'The only one that is sure enough to last.',
  'fewest-at-risk': 'None here is sure enough to last; this one leaves the fewest ends to chance.',
};

/** Why a tool is proposed. */
export function whyChosen(why: Chosen): string {
  return WHY[why];
}

/** "28 ends safe, 69 likely; better than 9 in 10 that it does all 24." */
export function doesSentence(tool: ToolInLine, ends: number): string {
  const safe = floorEnds(tool.safeEnds);
  const first = `${safe === 0 ? 'no ends' : count(safe, 'end')} safe, ${floorEnds(tool.likelyEnds)} likely`;
  return `${first}; ${chanceWords(tool.probability)} that it does ${ends === 1 ? 'it' : `all ${ends}`}.`;
}

/** Why another tool stays: "would do it too, but is kept for job 44". */
export function whyNot(
  tool: ToolProposal['runnersUp'][number],
  lineLabel: (lineId: string) => string,
): string {
  switch (tool.why.kind) {
    case 'kept-for':
      return `would do it too, but is kept for ${lineLabel(tool.why.lineId)}`;
    case 'fuller':
      return 'would do it too, but has more left than this line needs';
    case 'may-not-last':
      return `${chanceWords(tool.probability)} that it does all of them`;
  }
}

/** What follows the first edge: "Take B-38-09 along: about 6 in 10 that a change falls into the job." */
export function nextSentence({ next, changes, probability }: ToolProposal): string {
  if (next.length === 0) return '';
  const names = next.map(({ toolId }) => toolId).join(', then ');
  const often =
    changes < 1
      ? `${chanceWords(changes)} that it is needed`
      : `expect about ${count(changes, 'change')} in mid-job`;
  return `Take ${names} along: ${often}. Together, ${chanceWords(probability)} that they do it.`;
}

/**
 * What the plan says of one edge for its line, as it stands on the line's own page, sentence by sentence: does it cover the line;
 * of the one proposed also why it and what to take along. Nothing where the plan has no figure for it.
 */
export function edgeSays(proposal: ToolProposal, toolId: string): string[] {
  const { chosen, next, runnersUp, ends } = proposal;
  if (chosen?.toolId === toolId)
    return [doesSentence(chosen, ends), whyChosen(chosen.why), nextSentence(proposal)].filter(
      (sentence) => sentence !== '',
    );
  const other = [...next, ...runnersUp].find((tool) => tool.toolId === toolId);
  return other === undefined ? [] : [doesSentence(other, ends)];
}

const NOUN = { die: ['die', 'dies'], blade: ['blade', 'blades'] } as const;

/** What planning the issues of a week gained over first-come, on the same futures. */
export function gainSentence(gain: IssueGain, partName: (partId: string) => string): string {
  const [one, many] = NOUN[gain.kind];
  const lines = `${capital(many)}: one edge is sure enough for ${gain.lasting} of ${count(gain.lines, 'line')}`;
  const first = `, ${gain.lasting === gain.lastingFirstCome ? 'the same' : gain.lastingFirstCome} if each line takes the fullest ${one} as it comes`;
  const longest = gain.longest.map(({ partId, ends, endsFirstCome }) => {
    const more = ends - endsFirstCome;
    const which = partName(partId);
    return more > 0
      ? `A job of ${count(floorEnds(ends), 'end')} is still safe afterwards on one ${which}, ${count(more, 'end')} more.`
      : `The fullest ${which} left is safe for ${count(-more, 'end')} less than otherwise.`;
  });
  return [`${lines}${first}.`, ...longest].join(' ');
}
