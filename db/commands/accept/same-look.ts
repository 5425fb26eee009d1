import type { Entry } from '../../../lib/ledger/event';
import type { AcceptEnds } from '../../../lib/shop/acceptance-input';
import { toolKey } from '../../../lib/shop/tool-id';
import { holdsAll } from '../../ledger/same-content';

/** The look as the device sent it: tools by their folded IDs, without what the server worked out. */
export function isSameLook(entry: Entry, input: AcceptEnds): boolean {
  if (entry.kind !== 'ends-accepted') return false;
  const { entryId: _id, deviceAtMs: _at, reason: _why, gaugedAtMs, gaugedOnDay: _day, ...seen } = input;
  return holdsAll(folded(entry.payload), {
    ...folded(seen),
    ...(gaugedAtMs === null ? {} : { gaugedAtMs }),
  });
}

type Named = Pick<AcceptEnds, 'gauges' | 'dieId' | 'bladeId' | 'fluidId'>;

function folded<T extends Named>(look: T): T {
  const key = (id: string | null) => (id === null ? null : toolKey(id));
  return {
    ...look,
    gauges: look.gauges.map((gauge) => ({ ...gauge, toolId: toolKey(gauge.toolId) })),
    dieId: key(look.dieId),
    bladeId: key(look.bladeId),
    fluidId: key(look.fluidId),
  };
}
