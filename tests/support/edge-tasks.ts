import type { EdgeSupply, EdgeTask } from '@/lib/issue-order/edge-task';
import { stratifiedExponentials } from '@/lib/numeric/random-stream';

export const DRAWS = 64;

/** A line that wants threads cut, each costing one unit of exposure unless told otherwise. */
export function task(lineId: string, more: Partial<EdgeTask> & { each?: number } = {}): EdgeTask {
  const { each = 1, ...rest } = more;
  const toolIds = rest.toolIds ?? ['A', 'B', 'C'];
  return {
    kind: 'die',
    ends: 10,
    required: 0.9,
    startOnDay: '2026-11-23',
    dueOnDay: '2026-11-27',
    perEnd: new Float64Array(DRAWS).fill(each),
    spareIds: toolIds,
    freeFromDay: new Map(toolIds.map((id) => [id, '2026-11-23'])),
    ...rest,
    lineId,
    toolIds,
  };
}

/** A tool that is sure to last so long. */
export function sure(toolId: string, life: number): EdgeSupply {
  return { toolId, life: new Float64Array(DRAWS).fill(life) };
}

/** A tool whose life scatters as chance failures do, about a mean. */
export function scattered(toolId: string, mean: number, draws = DRAWS): EdgeSupply {
  return { toolId, life: stratifiedExponentials(toolId, draws).map((unit) => unit * mean) };
}
