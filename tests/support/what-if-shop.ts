import type { EdgeUse } from '@/lib/ledger/tool-record';
import { computeOutlook, type Outlook } from '@/lib/outlook/outlook';
import type { EdgeFacts, ShopFacts, ToolFacts } from '@/lib/outlook/shop-facts';
import { CALIBRATED_ROLES } from '@/lib/shop/vocabulary';
import { orderFacts, setParts, shopRecord, toolFacts } from './shop-record';

/** One of everything for 3/8 medium pressure, gauges a year in date; the die has cut 90 ends, the blade 10. */
export function whatIfFacts(change: Partial<ShopFacts> = {}): ShopFacts {
  const parts = setParts().map((part) => ({
    ...part,
    supplier: 'Ninefold',
    priceMinor: part.role === 'die' ? 12_000 : 5_000,
    leadTimeDays: 20,
    regrindLimit: part.role === 'blade' ? 3 : 0,
  }));
  const tools = parts.map((part): ToolFacts => {
    const calibrated = CALIBRATED_ROLES.includes(part.role);
    return toolFacts({
      id: toolIdOf(part.role),
      role: part.role,
      dueOnDay: calibrated ? '2027-03-01' : null,
      levelMl: part.role === 'fluid' ? 5000 : null,
    });
  });
  return shopRecord({
    parts,
    tools,
    edges: [edgeOf('DIE-1', use(90, 'thread')), edgeOf('BLADE-1', use(10, 'cone'))],
    orders: [
      orderFacts({
        id: 'PO-1',
        partId: parts.find(({ role }) => role === 'die')?.id ?? '',
        expectedOnDay: '2026-03-20',
        statedOnDay: '2026-03-01',
      }),
    ],
    ...change,
  });
}

export function toolIdOf(role: string): string {
  return `${role.toUpperCase()}-1`;
}

export function outlookOf(facts: ShopFacts): Outlook {
  return computeOutlook(facts);
}

function edgeOf(toolId: string, ...cut: EdgeUse[]): EdgeFacts {
  return { toolId, edgeNo: 1, end: null, lastUse: cut.at(-1) ?? null, use: cut };
}

/** Ends of 3/8 medium in the reference material, as the record keeps them: 10.5 turns or 59 mm³ an end. */
function use(ends: number, operation: 'cone' | 'thread'): EdgeUse {
  const exposureMicro = Math.round(ends * (operation === 'thread' ? 10.5 : 59) * 1e6);
  return {
    connectionId: '3-8-medium',
    materialId: '316-cw',
    dry: false,
    rework: false,
    ends,
    goodEnds: ends,
    exposureMicro,
  };
}
