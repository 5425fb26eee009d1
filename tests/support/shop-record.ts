import type { Blocker } from '@/lib/capability/blocker';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import type { LineFacts, OrderFacts, ShopFacts, ToolFacts } from '@/lib/outlook/shop-facts';
import { completeSetParts } from '@/lib/shipped/complete-set-parts';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { SHIPPED_MATERIALS } from '@/lib/shipped/materials';
import type { Part } from '@/lib/shop/part';

/** Day 1 of every hand-built record. */
export const TODAY = '2026-03-02';

const size = SHIPPED_CONNECTIONS.filter(({ id }) => id === '3-8-medium');

/** A shop with the row and the parts of 3/8 medium pressure, and nothing in the crib. */
export function shopRecord(change: Partial<ShopFacts> = {}): ShopFacts {
  return {
    today: TODAY,
    shop: undefined,
    connections: size,
    materials: SHIPPED_MATERIALS,
    parts: setParts(),
    guesses: [],
    tools: [],
    edges: [],
    lines: [lineFacts()],
    orders: [],
    ...change,
  };
}

/** The parts of a complete set for 3/8 medium pressure. */
export function setParts(): Part[] {
  return size.flatMap((connection) =>
    completeSetParts(connection, { connections: size, materials: SHIPPED_MATERIALS }),
  );
}

export function lineFacts(change: Partial<LineFacts> = {}): LineFacts {
  return {
    id: 'J-1.1',
    jobId: 'J-1',
    connectionId: '3-8-medium',
    materialId: '316-cw',
    ends: 24,
    operations: ['cone', 'thread'],
    startOnDay: '2026-03-09',
    dueOnDay: '2026-03-13',
    value: 'ordinary',
    goodCones: 0,
    goodThreads: 0,
    ...change,
  };
}

/** A tool of the set; its part is the first of its role. */
export function toolFacts(change: Partial<ToolFacts> & Pick<ToolFacts, 'id' | 'role'>): ToolFacts {
  const part = setParts().find(({ role }) => role === change.role);
  return {
    partId: part?.id ?? '',
    hand: part?.hand ?? null,
    opening: { known: 'new' },
    state: 'in-crib',
    jobLineId: null,
    backOnDay: null,
    dueOnDay: null,
    expiresOnDay: null,
    openedOnDay: null,
    levelMl: null,
    ...change,
  };
}

export function orderFacts(change: Partial<OrderFacts> & Pick<OrderFacts, 'id' | 'partId'>): OrderFacts {
  return { quantity: 1, receivedQuantity: 0, expectedOnDay: '2026-03-14', ...change };
}

/** A verdict as the plan check would give it, stated by hand. */
export function verdict(change: Partial<LineVerdict> = {}): LineVerdict {
  return {
    lineId: 'J-1.1',
    jobId: 'J-1',
    verdict: 'can-make',
    canCut: true,
    canAccept: true,
    pMade: 1,
    blockers: [],
    clearsOnDay: null,
    safeEnds: 37,
    likelyEnds: 83,
    limitingRole: 'die',
    shorterEdge: 'die',
    ...change,
  };
}

export function blocker(change: Partial<Blocker>): Blocker {
  const base = {
    kind: 'missing',
    role: 'die',
    phase: 'cut',
    hard: true,
    toolIds: [],
    clearsOnDay: null,
    rank: 1,
  };
  return { ...base, ...change } as Blocker;
}
