import { invariant } from '../invariant';
import { compensatedSum } from '../numeric/sum';
import type { EdgeEnd, EdgeKind } from '../shop/vocabulary';

/** Cutting in one material under one condition; `base` in forward cutting turns (die) or mm³ removed (blade). */
export interface ExposurePart {
  readonly materialId: string;
  readonly dry: boolean;
  /** Recutting an end that was refused. */
  readonly rework: boolean;
  readonly base: number;
}

/**
 * All that is known about the life of one edge (one edge of one tool between regrinds).
 * `before` was certainly survived. `during` is the log row in which it wore out: somewhere between its start and its end
 * (interval-censored). Worn with nothing in `during`: wore out exactly at the end of `before`.
 * Any other end: right-censored at `before` + `during`.
 */
export interface EdgeHistory {
  readonly toolId: string;
  /** First edge 1. With `toolId` it names the history: no two may share both. */
  readonly edgeNo: number;
  readonly kind: EdgeKind;
  readonly partId: string;
  /** Tube outside diameter that the part is for, inches. */
  readonly odIn: number;
  /** How often it had been reground before this edge began. */
  readonly regrinds: number;
  readonly before: readonly ExposurePart[];
  readonly during: readonly ExposurePart[];
  readonly end: EdgeEnd | 'in-service';
  /**
   * Of `before`, what the edge had cut when the log began to follow it. It is in the log because it lasted so long; those that
   * did not are missing from it. Absent: followed from its first end.
   */
  readonly entered?: readonly ExposurePart[] | undefined;
}

/** Total exposure of one edge under one condition: the form in which the fit reads it. */
export interface ExposureCell {
  readonly materialId: string;
  readonly dry: boolean;
  readonly rework: boolean;
  readonly base: number;
}

/**
 * Adds up the rows of one edge by material and condition, in an order and with a rounding that do not depend on the
 * order of the rows. Rows without exposure vanish. Errors: throws on a negative or non-finite exposure (a bug).
 */
export function cellsOf(parts: readonly ExposurePart[]): ExposureCell[] {
  const groups: { part: ExposurePart; bases: number[] }[] = [];
  for (const part of parts) {
    invariant(Number.isFinite(part.base) && part.base >= 0, 'exposure is a finite figure, zero or more');
    if (part.base === 0) continue;
    const group = groups.find(({ part: first }) => conditionOrder(first, part) === 0);
    if (group === undefined) groups.push({ part, bases: [part.base] });
    else group.bases.push(part.base);
  }
  groups.sort((a, b) => conditionOrder(a.part, b.part));
  return groups.map(({ part: { materialId, dry, rework }, bases }) => ({
    materialId,
    dry,
    rework,
    base: bases.length === 1 ? (bases[0] as number) : compensatedSum(Float64Array.from(bases).sort()),
  }));
}

/** Fixed order of cutting conditions: wet before dry, first cuts before recuts, then by material. */
function conditionOrder(a: ExposurePart, b: ExposurePart): number {
  if (a.dry !== b.dry) return a.dry ? 1 : -1;
  if (a.rework !== b.rework) return a.rework ? 1 : -1;
  if (a.materialId === b.materialId) return 0;
  return a.materialId < b.materialId ? -1 : 1;
}

/** Histories of one kind in a fixed order, whatever order they came in. Errors: throws when two share tool and edge. */
export function orderHistories(histories: readonly EdgeHistory[], kind: EdgeKind): EdgeHistory[] {
  const ordered = histories.filter((history) => history.kind === kind).sort(byToolAndEdge);
  ordered.forEach((history, i) => {
    const last = ordered[i - 1];
    invariant(
      last === undefined || byToolAndEdge(last, history) !== 0,
      `edge ${history.edgeNo} of ${history.toolId} is given twice`,
    );
  });
  return ordered;
}

function byToolAndEdge(a: EdgeHistory, b: EdgeHistory): number {
  if (a.toolId !== b.toolId) return a.toolId < b.toolId ? -1 : 1;
  return a.edgeNo - b.edgeNo;
}
