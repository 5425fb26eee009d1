import type { Part } from '../shop/noun';
import type { ToolLog } from './stored-predictions';

/** What an edge may be grouped by to ask whether a group dies early. Undefined: not written down, or too mixed to say. */
export interface EdgeGroups {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly lot: string | undefined;
  readonly supplier: string | undefined;
  /** The heat that gave more than half of the exposure of the edge. */
  readonly heat: string | undefined;
}

/** The groups of every edge in the log: the tool's lot, its part's supplier, the heat that it cut most of. */
export function edgeGroups(logs: readonly ToolLog[], parts: readonly Part[]): EdgeGroups[] {
  const suppliers = new Map(parts.map(({ id, supplier }) => [id, supplier]));
  return logs.flatMap(({ toolId, partId, entries }) => {
    const received = entries.find(({ kind }) => kind === 'tool-received');
    const lot = received?.kind === 'tool-received' ? received.payload.lot : '';
    const supplier = suppliers.get(partId) ?? '';
    return heatsByEdge(entries).map((heats, at) => ({
      ...{ toolId, edgeNo: at + 1, lot: lot || undefined, supplier: supplier || undefined },
      heat: mostlyOf(heats),
    }));
  });
}

/** Exposure by heat, for each edge of a tool in turn. */
function heatsByEdge(entries: ToolLog['entries']): Map<string, number>[] {
  const edges: Map<string, number>[] = [];
  for (const entry of entries) {
    if (entry.kind === 'tool-received' || entry.kind === 'edge-renewed') edges.push(new Map());
    const heats = edges.at(-1);
    if (entry.kind !== 'cut-logged' || heats === undefined) continue;
    const { heat, exposureMicro } = entry.payload;
    heats.set(heat, (heats.get(heat) ?? 0) + exposureMicro);
  }
  return edges;
}

function mostlyOf(heats: ReadonlyMap<string, number>): string | undefined {
  const total = [...heats.values()].reduce((sum, exposure) => sum + exposure, 0);
  const [most] = [...heats].sort(([, a], [, b]) => b - a);
  return most !== undefined && most[0] !== '' && 2 * most[1] > total ? most[0] : undefined;
}
