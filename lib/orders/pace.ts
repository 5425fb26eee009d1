import type { LifeDraws } from '../ensemble/life-draws';
import type { ShopFacts } from '../outlook/shop-facts';
import type { EdgeKind } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import { choosePart } from './choose-part';

/**
 * Exposure a day that the log of the last half year brings to one part, per draw: ends a day × exposure of an end ×
 * factor of the material. What would be bought for a size decides whose it is.
 */
export function pacePerDay(
  kind: EdgeKind,
  partId: string,
  facts: ShopFacts,
  ensemble: LifeDraws,
): Float64Array {
  const pace = new Float64Array(ensemble.drawCount);
  const operation = kind === 'blade' ? 'cone' : 'thread';
  for (const use of facts.recentUse ?? []) {
    const connection = facts.connections.find(({ id }) => id === use.connectionId);
    const factors = ensemble.materialFactor(kind, use.materialId);
    if (use.operation !== operation || connection === undefined || factors === undefined) continue;
    if (choosePart(kind, { connectionId: connection.id, hand: connection.hand }, facts)?.id !== partId)
      continue;
    const perDay = (use.ends / use.days) * exposureOfEnd({ operation, connection });
    for (let k = 0; k < pace.length; k++) pace[k] = (pace[k] as number) + perDay * (factors[k] as number);
  }
  return pace;
}
