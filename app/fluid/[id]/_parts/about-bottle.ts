import type { ToolRow } from '@/db/queries/tools';
import type { ShopBottle } from '@/lib/outlook/fluid-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';

/** What every part of a bottle's page is made from. */
export interface AboutBottle {
  readonly tool: ToolRow;
  readonly bottle: ShopBottle;
  readonly facts: ShopFacts;
}
