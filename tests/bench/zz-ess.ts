import { simulateShop } from '@/tests/support/simulated-shop';
import { fitted } from '@/tests/support/small-shop';
import { posteriorDraws, TUNE } from '@/lib/ensemble/posterior-draws';
for (const n of [1,3,12,60,250,600]) {
  const es:number[]=[]; let mm=0;
  TUNE.log=(e,m)=>{es.push(e/m);mm=m};
  let t=0,tf=0;
  for (let s=0;s<20;s++){ const sh=simulateShop(`e${n}:${s}`,n); const t1=performance.now(); const f=fitted(sh.histories); const t0=performance.now(); tf+=t0-t1; posteriorDraws(f,2048); t+=performance.now()-t0; }
  es.sort((a,b)=>a-b);
  console.log(n,mm,'ess min/med', es[0]?.toFixed(3), es[10]?.toFixed(3), 'ms draws', (t/20).toFixed(1),'fit',(tf/20).toFixed(1));
}
