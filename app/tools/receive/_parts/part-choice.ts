import { materialWords } from '@/app/_shared/words/material-words';
import { dayLabel } from '@/lib/calendar/day-text';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { connectionText } from '@/lib/shop/connection-text';
import { idSizeText } from '@/lib/shop/id-size-text';
import type { Part } from '@/lib/shop/part';
import { suggestToolId } from '@/lib/shop/suggest-tool-id';
import { CALIBRATED_ROLES } from '@/lib/shop/vocabulary';

/** What is being received, with what the form needs to know about it. Plain data: it goes to the browser. */
export interface PartChoice {
  readonly part: Part;
  readonly orderId: string;
  /** Open orders of this part, the next to come first. */
  readonly orders: readonly { value: string; label: string }[];
  readonly suggestedId: string;
  readonly calibrated: boolean;
  readonly hasEdge: boolean;
  readonly connections: readonly { value: string; label: string }[];
  readonly materials: readonly { value: string; label: string }[];
}

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** The part that the address asks for, by itself or by the order it comes on. */
export function choosePart(facts: ShopFacts, asked: Asked): PartChoice | undefined {
  const { parts, orders, connections, materials, tools } = facts;
  const order = orders.find(({ id }) => id === asked.order);
  const part = parts.find(({ id }) => id === (order?.partId ?? asked.part));
  if (part === undefined) return undefined;
  const open = orders.filter(({ partId }) => partId === part.id);
  const fits = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  return {
    part,
    orderId: order?.id ?? open[0]?.id ?? '',
    orders: open.map(({ id, expectedOnDay }) => ({
      value: id,
      label: `${id}, expected ${dayLabel(expectedOnDay)}`,
    })),
    suggestedId: suggestToolId({
      role: part.role,
      sizeText: idSizeText(fits),
      existingIds: tools.map(({ id }) => id),
    }),
    calibrated: CALIBRATED_ROLES.includes(part.role),
    hasEdge: part.role === 'blade' || part.role === 'die',
    connections: fits.map((connection) => ({ value: connection.id, label: connectionText(connection) })),
    materials: materials.map((material) => ({ value: material.id, label: materialWords(material) })),
  };
}
