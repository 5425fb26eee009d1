import { simulateShop } from '@/tests/support/simulated-shop';
import { fitted } from '@/tests/support/small-shop';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandOf } from '@/lib/ensemble/reasons';
const S=Number(process.argv[2]??1200);
for (const tools of [3,12,60]) {
  let below=0,above=0,all=0;
  for (let s=0;s<S;s++){ const shop=simulateShop(`cov2:${tools}:${s}`,tools); const sub=shop.inService[0]; if(!sub) continue;
    const left=buildEnsemble({kinds:{die:fitted(shop.histories)},tools:[sub.tool],parts:[],drawCount:512}).residualLife(sub.tool.toolId)!;
    const b=bandOf(left); all++; if(sub.trulyLeft<b.low) below++; else if(sub.trulyLeft>b.high) above++; }
  console.log(tools, all, 'below',(below/all).toFixed(4),'above',(above/all).toFixed(4),'se',(Math.sqrt(.09/all)).toFixed(4));
}
