import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { edgeFacts, use } from './edge-facts';
import { toolFacts } from './shop-record';
import { wearFacts } from './wear-shop';

/** The shop of `wearShop` with three 3/8 dies that can cut: D-31 has cut 70 threads, D-32 has cut 30, D-33 is new. */
export function issueShop(change: Partial<ShopFacts> = {}) {
  const gone = wearFacts();
  const dies = ['D-31', 'D-32', 'D-33'];
  const cut = [70, 30, 0];
  const facts = wearFacts({
    tools: [
      ...gone.tools.map((tool) => ({ ...tool, state: 'scrapped' as const })),
      ...dies.map((id) => toolFacts({ id, role: 'die' })),
    ],
    edges: [
      ...gone.edges,
      ...dies.map((id, at) => edgeFacts(id, cut[at] ? { use: [use(cut[at])], lastUse: use(1) } : {})),
    ],
    ...change,
  });
  return { facts, ensemble: shopEnsemble(facts) };
}
