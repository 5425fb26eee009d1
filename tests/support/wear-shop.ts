import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import type { EdgeFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { edgeFacts, use } from './edge-facts';
import { shopRecord, toolFacts } from './shop-record';

/** Eight dies worn out near 100 threads, one dropped at 30, one taken out good at 60, one still cutting at 20. */
export function wearFacts(change: Partial<ShopFacts> = {}): ShopFacts {
  const ends: [EdgeFacts['end'], number][] = [
    ...[80, 88, 94, 98, 102, 106, 112, 120].map((n): [EdgeFacts['end'], number] => ['worn', n]),
    ['incident', 30],
    ['removed-working', 60],
    [null, 20],
  ];
  const id = (at: number) => `D-${10 + at}`;
  return shopRecord({
    guesses: [{ partId: 'die-3-8', connectionId: '3-8-medium', ends: 150, giveOrTake: 2 }],
    tools: [
      ...ends.map((_, at) => toolFacts({ id: id(at), role: 'die' })),
      toolFacts({ id: 'D-99', role: 'die', opening: { known: 'unknown' } }),
    ],
    edges: [
      ...ends.map(([end, n], at) => edgeFacts(id(at), { end, use: [use(n)], lastUse: use(1) })),
      edgeFacts('D-99', { use: [use(5)] }),
    ],
    ...change,
  });
}

export function wearShop(change: Partial<ShopFacts> = {}) {
  const facts = wearFacts(change);
  return { facts, ensemble: shopEnsemble(facts) };
}
