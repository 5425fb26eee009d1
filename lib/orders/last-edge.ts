import type { ShopFacts } from '../outlook/shop-facts';

/** The edge that a tool cuts with, or cut with last; undefined where it never had one. For orders and regrinds. */
export function lastEdge(
  { edges }: Pick<ShopFacts, 'edges'>,
  toolId: string,
): ShopFacts['edges'][number] | undefined {
  let last: ShopFacts['edges'][number] | undefined;
  for (const edge of edges)
    if (edge.toolId === toolId && (last === undefined || edge.edgeNo > last.edgeNo)) last = edge;
  return last;
}
