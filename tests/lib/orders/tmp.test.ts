import { it } from 'vitest';
import { readShopFacts } from '@/db/queries/shop-facts';
import { computeOutlook } from '@/lib/outlook/outlook';
import { edgeNeeds } from '@/lib/orders/edge-need';
import { partOutlooks } from '@/lib/orders/part-outlook';
import { partProposals } from '@/lib/orders/order-proposals';
import { DEMO_DAY, demoShop } from '../../support/demo-shop';
it('x', () => {
  const db = demoShop();
  const facts = readShopFacts(db, { today: DEMO_DAY });
  const o = computeOutlook(facts);
  let t = performance.now();
  const lap = (n: string) => { console.log('ms', n, performance.now() - t); t = performance.now(); };
  edgeNeeds(o.facts, o.ensemble, 'as-here'); lap('need1');
  edgeNeeds(o.facts, o.ensemble, 'as-here'); lap('need2');
  partOutlooks(o.facts, o.ensemble, 56); lap('outlooks');
  const ps = partProposals(o.facts, o.ensemble);lap('props');
  for (const p of ps.slice(0,4)) console.log(JSON.stringify({ id: p.part.id, q: p.quantity, by: p.orderByOnDay, pl: p.plannedBand, tot: p.totalBand, out: p.runsOut, ch: { ...p.chosen, offer: undefined }, lines: p.lines, so: p.byPieces.map(x=>x.stockOut), ifNot: p.ifNot, wk: p.weekCostMinor, dr: p.outlook.drafted, oo: p.outlook.onOrder }));
});
