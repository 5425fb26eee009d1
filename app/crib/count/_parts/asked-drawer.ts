import type { Drawer } from '@/lib/shop/stock-count';
import { EDGE_KINDS } from '@/lib/shop/vocabulary';

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** The drawer that the address asks for; what the shop has no row for narrows nothing. */
export function askedDrawer(asked: Asked, connections: readonly { readonly id: string }[]): Drawer {
  const connection = connections.find(({ id }) => id === asked.size);
  const edgeKind = EDGE_KINDS.find((known) => known === asked.kind);
  return {
    ...(connection === undefined ? {} : { connectionId: connection.id }),
    ...(edgeKind === undefined ? {} : { edgeKind }),
  };
}
