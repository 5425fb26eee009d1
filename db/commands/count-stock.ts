import type { Permit } from '../../lib/access/permit';
import { stockVariances } from '../../lib/kit/stock-variances';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { CountStock } from '../../lib/shop/kit-input';
import type { Drawer, StockCount, Variance } from '../../lib/shop/stock-count';
import { toolKey } from '../../lib/shop/tool-id';
import { derivedId } from '../ledger/derived-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { listCountedTools } from '../queries/counted-tools';

/**
 * Enters a stock-take: what was scanned against what the record expects at this moment. Every difference carries a
 * reason and what becomes of it; a difference that nobody explained, or one that is none, refuses the whole count.
 */
export function countStock(
  db: Db,
  permit: Permit<'move-tool'>,
  input: CountStock,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, scope, variances } = input;
  const drawer = drawerOf(input);
  return write(db, permit, env, (ledger) => {
    const before = ledger.sentBefore(
      id,
      reason,
      (entry) =>
        entry.kind === 'stock-counted' &&
        holdsAll(entry.payload, { scope, variances }) &&
        sameDrawer(entry.payload, drawer) &&
        sameScans(entry.payload, input.scanned),
    );
    if (before !== undefined) return before;
    const counted = checkCount(db, input);
    if (!counted.ok) return counted;
    for (const [place, variance] of variances.entries()) {
      const moved = settle(ledger, variance, { id: derivedId(id, String(place)), deviceAtMs });
      if (!moved.ok) return moved;
    }
    const payload = counted.value;
    return ledger.record({ id, deviceAtMs, reason, subjectId: id, kind: 'stock-counted', payload });
  });
}

/** Whether a count holds the tools that were scanned: each counts once, in any order, read as it would be marked. */
function sameScans({ scanned: kept }: StockCount, typed: readonly string[]): boolean {
  // A count entered before the list was kept says only how many were found: its scope and differences have to do.
  if (kept === undefined) return true;
  const sent = new Set(typed.map(toolKey));
  return kept.length === sent.size && kept.every((id) => sent.has(toolKey(id)));
}

/** What narrows a count, without what was left open. */
function drawerOf({ connectionId, edgeKind }: Drawer): Drawer {
  return {
    ...(connectionId === undefined ? {} : { connectionId }),
    ...(edgeKind === undefined ? {} : { edgeKind }),
  };
}

function sameDrawer(kept: Drawer, { connectionId, edgeKind }: Drawer): boolean {
  return kept.connectionId === connectionId && kept.edgeKind === edgeKind;
}

function checkCount(db: Db, input: CountStock): Result<StockCount, Refusal> {
  const { scope, scanned, variances } = input;
  const drawer = drawerOf(input);
  if (scope !== 'edges' && Object.keys(drawer).length > 0)
    return refuse('drawer', 'Only a count of blades and dies is narrowed to a size or a kind.', 'scope');
  const result = stockVariances(listCountedTools(db), scope, scanned, drawer);
  if (result.unknown.length > 0)
    return refuse(
      'unknown-tool',
      `Not in the record: ${result.unknown.join(', ')}. Receive it first, or leave it out of the count.`,
      'scanned',
    );
  const differing = new Map<string, Variance['kind']>([
    ...result.missingIds.map((id) => [id, 'missing'] as const),
    ...result.unexpectedIds.map((id) => [id, 'unexpected'] as const),
  ]);
  for (const { toolId, kind } of variances) {
    if (differing.get(toolId) !== kind)
      return refuse('moved', `${toolId} has moved since it was counted. Load the count again.`, 'variances');
    differing.delete(toolId);
  }
  const [left] = differing.keys();
  if (left !== undefined) return refuse('unexplained', `Say what is with ${left}.`, 'variances');
  const { expectedIds, foundIds, scannedIds } = result;
  return ok({
    scope,
    ...drawer,
    expected: expectedIds.length,
    found: foundIds.length,
    variances,
    scanned: [...scannedIds],
  });
}

/** What becomes of one difference: lost, in the crib after all, or left as it is while somebody looks. */
function settle(
  ledger: Ledger,
  { toolId, kind, outcome, reason }: Variance,
  stamp: { readonly id: string; readonly deviceAtMs: number },
): Result<unknown, Refusal> {
  if ((kind === 'missing' && outcome === 'in-crib') || (kind === 'unexpected' && outcome === 'lost'))
    return refuse('outcome', `${toolId}: that does not follow from the count.`, 'variances');
  if (outcome === 'left') return ok(null);
  const about = { ...stamp, subjectId: toolId, reason: `stock-take: ${reason}` };
  const isOut = ledger.find('tool', toolId)?.state === 'issued';
  if (outcome === 'in-crib' && isOut)
    return ledger.record({ ...about, kind: 'tool-returned', payload: { condition: 'ok' } });
  const to = outcome === 'lost' ? 'lost' : 'in-crib';
  return ledger.record({ ...about, kind: 'tool-moved', payload: { to, backOnDay: null } });
}
