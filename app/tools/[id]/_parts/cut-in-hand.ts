import type { Outlook } from '@/lib/outlook/outlook';
import { endsLeftFor } from '@/lib/outlook/plan-facts';
import type { LineFacts } from '@/lib/outlook/shop-facts';
import type { Connection, Material } from '@/lib/shop/noun';
import type { Part } from '@/lib/shop/part';
import type { CutOperation } from '@/lib/shop/vocabulary';

/** What the technician is about to cut with this tool: a line of the plan, or a size, material and count of their own. */
export interface CutInHand {
  readonly line: LineFacts | undefined;
  readonly connection: Connection;
  readonly material: Material;
  readonly ends: number | undefined;
}

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** The lines of the plan that this part has still something to cut for, next first. */
export function linesFor(outlook: Outlook, part: Part): LineFacts[] {
  return outlook.facts.lines.filter(
    (line) => part.fitsConnectionIds.includes(line.connectionId) && endsLeftOn(line, part) > 0,
  );
}

/** Ends of a line that this part has still to cone or to thread. */
export function endsLeftOn(line: LineFacts, part: Part): number {
  const operation: CutOperation = part.role === 'blade' ? 'cone' : 'thread';
  return endsLeftFor(line, operation);
}

/** Reads from the address what is asked; else the line it is issued for; else the next line it can serve; else its own size. */
export function cutInHand(
  outlook: Outlook,
  { part, heldForLineId, asked }: { part: Part; heldForLineId: string | null; asked: Asked },
): CutInHand | undefined {
  const { connections, materials } = outlook.facts;
  const own = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  const lines = linesFor(outlook, part);
  const byHand = typeof asked.connection === 'string';
  const line = byHand
    ? undefined
    : (lines.find(({ id }) => id === (asked.line ?? heldForLineId)) ?? lines[0]);
  const connection = own.find(({ id }) => id === (line?.connectionId ?? asked.connection)) ?? own[0];
  const material = materials.find(({ id }) => id === (line?.materialId ?? asked.material)) ?? materials[0];
  if (connection === undefined || material === undefined) return undefined;
  const typed = Number(asked.ends);
  const ends = line
    ? endsLeftOn(line, part)
    : Number.isInteger(typed) && typed > 0 && typed <= 5000
      ? typed
      : undefined;
  return { line, connection, material, ends };
}
