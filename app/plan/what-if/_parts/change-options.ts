import { count, dayText } from '@/app/_shared/format';
import type { Option } from '@/app/_shared/ui';
import { sizeTextOf } from '@/app/plan/_parts/plan-rows';
import { endsToMake } from '@/lib/outlook/plan-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { ROLE_LABEL, ROLES, TOOL_STATE_LABEL } from '@/lib/shop/vocabulary';

/** The open lines to choose from, the one that starts first on top. */
export function lineOptions({ lines, connections, today }: ShopFacts): Option[] {
  return [...lines]
    .sort((a, b) => (a.startOnDay < b.startOnDay ? -1 : 1))
    .map((line) => ({
      value: line.id,
      label: `${line.id}: ${count(endsToMake(line), 'end')}, ${sizeTextOf(connections, line.connectionId)}, from ${dayText(line.startOnDay, today)}`,
    }));
}

/** Every tool that is in the shop, dies and blades first. */
export function toolOptions({ tools }: ShopFacts): Option[] {
  const rank = (role: string): number => (role === 'die' ? 0 : role === 'blade' ? 1 : 2);
  return tools
    .filter(({ state }) => state !== 'scrapped' && state !== 'lost')
    .sort((a, b) => rank(a.role) - rank(b.role) || (a.id < b.id ? -1 : 1))
    .map(({ id, role, state }) => ({
      value: id,
      label: `${id}: ${ROLE_LABEL[role]}, ${TOOL_STATE_LABEL[state]}`,
    }));
}

export function partOptions({ parts }: ShopFacts): Option[] {
  return ROLES.flatMap((role) =>
    parts
      .filter((part) => part.role === role)
      .map((part) => ({ value: part.id, label: `${ROLE_LABEL[role]}: ${part.name}` })),
  );
}

export function orderOptions({ orders, parts, today }: ShopFacts): Option[] {
  return orders.map((order) => {
    const name = parts.find(({ id }) => id === order.partId)?.name ?? order.partId;
    const toCome = order.quantity - order.receivedQuantity;
    return {
      value: order.id,
      label: `${order.id}: ${toCome} × ${name}, ${dayText(order.expectedOnDay, today)}`,
    };
  });
}
