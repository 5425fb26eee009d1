import type { ExposurePart } from '../life/observation';
import type { Cut } from '../shop/cut';
import type { Part } from '../shop/part';
import { fromMicro } from '../units/micro';
import type { ToolLog } from './stored-predictions';

/** What an edge cut of one heat. */
export interface HeatUse {
  readonly heat: string;
  readonly ends: number;
  readonly parts: readonly ExposurePart[];
}

/** What an edge may be grouped by to ask whether a group dies early. Undefined: not written down. */
export interface EdgeGroups {
  readonly toolId: string;
  readonly edgeNo: number;
  readonly lot: string | undefined;
  readonly supplier: string | undefined;
  /** Ends that it has cut, of any heat or none. */
  readonly ends: number;
  readonly heats: readonly HeatUse[];
  /** The heat of its last row; empty where none was written down. */
  readonly lastHeat: string;
  /** Lot and product of the fluid that most of its exposure was cut with: more than half of all of it. */
  readonly fluidLot: string | undefined;
  readonly fluidProduct: string | undefined;
}

/** A bottle of fluid, as far as groups care. */
export interface Bottle {
  readonly id: string;
  readonly lot: string;
  /** The name of what it holds. */
  readonly product: string;
}

/**
 * The groups of every edge in the log: the tool's lot, its part's supplier, what it cut of each heat, and the fluid that cut
 * most of its exposure. An edge belongs to a fluid whole or not at all: one that was cut half with this and half with that
 * belongs to none.
 */
export function edgeGroups(
  logs: readonly ToolLog[],
  parts: readonly Part[],
  bottles: readonly Bottle[] = [],
): EdgeGroups[] {
  const bottleOf = new Map(bottles.map((bottle) => [bottle.id, bottle]));
  const suppliers = new Map(parts.map(({ id, supplier }) => [id, supplier]));
  return logs.flatMap(({ toolId, partId, entries }) => {
    const received = entries.find(({ kind }) => kind === 'tool-received');
    const lot = received?.kind === 'tool-received' ? received.payload.lot : '';
    const supplier = suppliers.get(partId) ?? '';
    return rowsByEdge(entries).map((rows, at) => ({
      ...{ toolId, edgeNo: at + 1, lot: lot || undefined, supplier: supplier || undefined },
      ...{ ends: endsOf(rows), heats: heatsOf(rows), lastHeat: rows.at(-1)?.heat ?? '' },
      fluidLot: mostOf(rows, ({ fluidId }) => bottleOf.get(fluidId ?? '')?.lot),
      fluidProduct: mostOf(rows, ({ fluidId }) => bottleOf.get(fluidId ?? '')?.product),
    }));
  });
}

/** What more than half of the exposure of some rows has in common; undefined where nothing has. */
function mostOf(rows: readonly Cut[], keyOf: (row: Cut) => string | undefined): string | undefined {
  const sums = new Map<string, number>();
  for (const row of rows) {
    const key = keyOf(row) ?? '';
    sums.set(key, (sums.get(key) ?? 0) + row.exposureMicro);
  }
  const all = rows.reduce((sum, { exposureMicro }) => sum + exposureMicro, 0);
  return [...sums].find(([key, sum]) => key !== '' && sum > all / 2)?.[0];
}

function rowsByEdge(entries: ToolLog['entries']): Cut[][] {
  const edges: Cut[][] = [];
  for (const entry of entries) {
    if (entry.kind === 'tool-received' || entry.kind === 'edge-renewed') edges.push([]);
    if (entry.kind === 'cut-logged') edges.at(-1)?.push(entry.payload);
  }
  return edges;
}

function heatsOf(rows: readonly Cut[]): HeatUse[] {
  const heats = [...new Set(rows.map(({ heat }) => heat))].filter((heat) => heat !== '').sort();
  return heats.map((heat) => {
    const mine = rows.filter((row) => row.heat === heat);
    return {
      heat,
      ends: endsOf(mine),
      parts: mine.map(({ materialId, dry, rework, exposureMicro }) => ({
        ...{ materialId, dry, rework },
        base: fromMicro(exposureMicro),
      })),
    };
  });
}

function endsOf(rows: readonly Cut[]): number {
  return rows.reduce((sum, { ends }) => sum + ends, 0);
}
