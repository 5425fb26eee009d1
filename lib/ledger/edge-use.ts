import type { Cut } from '../shop/cut';
import type { EdgeRecord, EdgeUse } from './tool-record';

/** The use that one logged row adds to an edge. */
export function cutToUse(cut: Cut): EdgeUse {
  const { connectionId, materialId, dry, rework, ends, goodEnds, exposureMicro } = cut;
  return { connectionId, materialId, dry, rework, ends, goodEnds, exposureMicro };
}

/** Adds a row to an edge: sums by connection, material and condition; integers, so the order never matters. */
export function addUse(edge: EdgeRecord, added: EdgeUse): EdgeRecord {
  const at = edge.use.findIndex((use) => sameCondition(use, added));
  const before = edge.use[at];
  const merged = before === undefined ? added : sumOf(before, added);
  const use = before === undefined ? [...edge.use, merged] : edge.use.with(at, merged);
  return { ...edge, use, lastUse: added };
}

/** True while every sum is a whole number that can be held exactly; a row that would break this is refused. */
export function holdsExactly(edge: EdgeRecord): boolean {
  return edge.use.every(({ ends, exposureMicro }) => [ends, exposureMicro].every(Number.isSafeInteger));
}

function sameCondition(a: EdgeUse, b: EdgeUse): boolean {
  return (
    a.connectionId === b.connectionId &&
    a.materialId === b.materialId &&
    a.dry === b.dry &&
    a.rework === b.rework
  );
}

function sumOf(a: EdgeUse, b: EdgeUse): EdgeUse {
  return {
    ...a,
    ends: a.ends + b.ends,
    goodEnds: a.goodEnds + b.goodEnds,
    exposureMicro: a.exposureMicro + b.exposureMicro,
  };
}
