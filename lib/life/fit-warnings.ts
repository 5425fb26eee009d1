import type { NewtonResult } from '../numeric/newton';
import type { EdgeRow } from './edge-rows';
import type { LifeWarning } from './life-fit';
import type { EdgeHistory } from './observation';
import type { ParameterLayout } from './parameter-layout';

/** Below this number of worn edges the fit leans on its priors, and says so. */
const FEW_WORN = 5;

/**
 * What a reader of a fit ought to know, as codes in a fixed order: how few edges have worn, what was ignored, what was
 * taken on trust, and whether the search ended as it should.
 */
export function warningsOf(
  histories: readonly EdgeHistory[],
  rows: readonly EdgeRow[],
  layout: ParameterLayout,
  stoppedBy: NewtonResult['stoppedBy'],
): LifeWarning[] {
  const worn = histories.filter((history) => history.end === 'worn').length;
  const checks: [boolean, LifeWarning][] = [
    [worn === 0, 'no-worn-edges'],
    [worn > 0 && worn < FEW_WORN, 'few-worn-edges'],
    [rows.length < histories.length, 'edges-without-exposure-ignored'],
    [layout.indexOf.guessError === undefined && layout.priors[1]?.form === 'normal', 'default-life-used'],
    [layout.unlistedMaterialIds.length > 0, 'material-without-prior'],
    [stoppedBy !== 'converged', 'not-converged'],
  ];
  return checks.flatMap(([raised, warning]) => (raised ? [warning] : []));
}
