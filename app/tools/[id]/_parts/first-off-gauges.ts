import { dayText } from '@/app/_shared/format';
import { firstOffRoles } from '@/lib/acceptance/first-off';
import { proposeGauge } from '@/lib/acceptance/propose-gauges';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Connection } from '@/lib/shop/noun';
import { ROLE_LABEL, type Role } from '@/lib/shop/vocabulary';
import type { FirstOffGauge } from './first-off-forms';

/** The gauges that a first-off asks for, in date and of the size: the only one is filled in, of several the first in date. */
export function firstOffGauges(
  facts: ShopFacts,
  { role, connection }: { readonly role: Role; readonly connection: Connection | undefined },
): FirstOffGauge[] {
  if (connection === undefined) return [];
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  return firstOffRoles(role).map((gaugeRole) => {
    const wanted = { role: gaugeRole, connectionId: connection.id, hand: connection.hand };
    const { toolId, candidateIds } = proposeGauge(facts.tools, parts, {
      ...wanted,
      ...{ lineId: '', today: facts.today },
    });
    const chosen = toolId ?? candidateIds[0] ?? '';
    const dueOnDay = facts.tools.find(({ id }) => id === chosen)?.dueOnDay ?? null;
    const hint =
      dueOnDay === null
        ? 'None of this size is in date'
        : `In date to the end of ${dayText(dueOnDay, facts.today)}`;
    return { role: gaugeRole, label: ROLE_LABEL[gaugeRole], toolId: chosen, hint };
  });
}
