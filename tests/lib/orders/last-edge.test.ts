import { expect, it } from 'vitest';
import { lastEdge } from '@/lib/orders/last-edge';
import type { ShopFacts } from '@/lib/outlook/shop-facts';

const edge = (toolId: string, edgeNo: number) => ({ toolId, edgeNo }) as ShopFacts['edges'][number];

// source: hand. B-1 was reground once: its second edge is the one in hand, wherever it stands in the list.
it('is the edge of the highest number', () => {
  const edges = [edge('B-1', 2), edge('B-2', 3), edge('B-1', 1)];
  expect(lastEdge({ edges }, 'B-1')?.edgeNo).toBe(2);
  expect(lastEdge({ edges }, 'B-3')).toBeUndefined();
});
