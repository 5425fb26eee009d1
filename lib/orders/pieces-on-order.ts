import type { ShopFacts } from '../outlook/shop-facts';

/** Pieces of a part still to come. */
export function piecesOnOrder({ orders }: Pick<ShopFacts, 'orders'>, partId: string): number {
  return orders.reduce(
    (sum, order) => sum + (order.partId === partId ? order.quantity - order.receivedQuantity : 0),
    0,
  );
}
