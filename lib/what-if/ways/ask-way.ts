import type { LineVerdict } from '../../capability/line-verdict';
import type { LineFacts } from '../../outlook/shop-facts';
import type { Change } from '../change';
import { type WhatIfBase, whatIf } from '../what-if';
import type { PricedWay, WayAction } from './priced-way';

/** The line that a way out is sought for. */
export interface WayQuestion extends WhatIfBase {
  readonly line: LineFacts;
  readonly verdict: LineVerdict;
}

/** What the plan check says of the line with changes made; undefined where one of them cannot be. */
export function askLine({ line, ...base }: WayQuestion, changes: readonly Change[]): LineVerdict | undefined {
  const tried = whatIf(base, changes);
  return tried.ok ? tried.value.lines.find(({ lineId }) => lineId === line.id) : undefined;
}

/** A way with its verdict; undefined where it cannot be tried. */
export function pricedWay(
  question: WayQuestion,
  way: { actions: readonly WayAction[]; changes: readonly Change[]; costMinor: number | null },
): PricedWay | undefined {
  const after = askLine(question, way.changes);
  return after && { ...way, verdict: after.verdict, pMade: after.pMade };
}
