import type { LineFacts, ShopFacts } from '../outlook/shop-facts';
import { ok, type Result, refuse } from '../result';
import type { ChangeOf } from './change';

type LineChange = ChangeOf<'change-dates' | 'change-material' | 'change-ends' | 'drop-line'>;

/** A line that might come in: coned and threaded. Its ID is of this question only. */
export function newLine(change: ChangeOf<'add-line'>, mark: string): LineFacts {
  const { kind: _, ...line } = change;
  return {
    ...line,
    id: `~${mark}`,
    jobId: `~${mark}`,
    operations: ['cone', 'thread'],
    goodCones: 0,
    goodThreads: 0,
  };
}

/** The facts with one open line changed or dropped. What it has cut already stays cut, and its tools are free again. */
export function changeLine(facts: ShopFacts, change: LineChange): Result<ShopFacts> {
  const line = facts.lines.find(({ id }) => id === change.lineId);
  if (line === undefined) return refuse('unknown-line', `There is no open line ${change.lineId}.`, 'lineId');
  if (change.kind === 'drop-line') return ok(withoutLine(facts, change.lineId));
  if (change.kind === 'change-ends' && change.ends < Math.max(line.goodCones, line.goodThreads))
    return refuse('ends-made', `Line ${line.id} has more ends made than that.`, 'ends');
  if (change.kind === 'change-material' && !facts.materials.some(({ id }) => id === change.materialId))
    return refuse('unknown-material', `The material ${change.materialId} is not in the table.`, 'materialId');
  const { kind: _kind, lineId: _lineId, ...fields } = change;
  const changed: LineFacts = { ...line, ...fields };
  return ok({ ...facts, lines: facts.lines.map((known) => (known === line ? changed : known)) });
}

/** The job falls away: what was out or kept for it counts as back in the crib. Wear that it caused stays. */
function withoutLine(facts: ShopFacts, lineId: string): ShopFacts {
  return {
    ...facts,
    lines: facts.lines.filter(({ id }) => id !== lineId),
    tools: facts.tools.map((tool) => {
      const isOut = tool.jobLineId === lineId && tool.state === 'issued';
      const isKept = tool.reservation?.jobLineId === lineId;
      if (!isOut && !isKept) return tool;
      const back = isOut ? { state: 'in-crib' as const, jobLineId: null, backOnDay: null } : {};
      return { ...tool, ...back, ...(isKept ? { reservation: null } : {}) };
    }),
  };
}
