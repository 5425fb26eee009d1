/**
 * What the shop's fixed count says of a job: an edge is changed at `changeAtEnds`, so it finishes when the ends it has cut
 * and those of the job stay within that. 1 yes, 0 no. Source: common practice, no source.
 * @example fixedCountSays({ usedEnds: 90, jobEnds: 24, changeAtEnds: 120 }) // => 1
 */
export function fixedCountSays({
  usedEnds,
  jobEnds,
  changeAtEnds,
}: {
  usedEnds: number;
  jobEnds: number;
  changeAtEnds: number;
}): 0 | 1 {
  return usedEnds + jobEnds <= changeAtEnds ? 1 : 0;
}
