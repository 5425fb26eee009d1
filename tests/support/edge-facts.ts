import type { EdgeUse } from '@/lib/ledger/tool-record';
import type { EdgeFacts } from '@/lib/outlook/shop-facts';

/** Turns of one 3/8 medium-pressure thread: 7/16 in at 24 threads per inch. */
export const TURNS = 10.5;

/** Threads of 3/8 medium pressure in cold-worked 316, all good unless told otherwise. */
export function use(ends: number, change: Partial<EdgeUse> = {}): EdgeUse {
  return {
    connectionId: '3-8-medium',
    materialId: '316-cw',
    dry: false,
    rework: false,
    ends,
    goodEnds: ends,
    exposureMicro: ends * TURNS * 1_000_000,
    ...change,
  };
}

/** A first edge in service that has cut nothing, unless told otherwise. */
export function edgeFacts(toolId: string, change: Partial<EdgeFacts> = {}): EdgeFacts {
  return { toolId, edgeNo: 1, end: null, lastUse: null, use: [], ...change };
}
