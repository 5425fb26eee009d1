import { buildEnsemble } from '/work/main/lib/ensemble/build-ensemble';
import { bandOf } from '/work/main/lib/ensemble/reasons';
import { fitted, } from '/work/main/tests/support/small-shop';
import { simulateShop } from '/work/main/tests/support/simulated-shop';
for (const tools of [3,12,60]) { let b=0,a=0,i=0,n=0; const bins=Array.from({length:5},()=>[0,0,0]); let brier=0;
 for(let s=0;s<1200;s++){const shop=simulateShop(`big:${tools}:${s}`,tools);const x=shop.inService[0];if(!x)continue;
 const die=fitted(shop.histories);const e=buildEnsemble({kinds:{die},tools:[x.tool],parts:[],drawCount:1024});const l=e.residualLife(x.tool.toolId)!;
 const {low,high}=bandOf(l);n++; if(x.trulyLeft<low)b++;else if(x.trulyLeft>high)a++;else i++;
 const need=Math.exp(die.mode.logMedian!)*(0.1+0.9*((s*0.618)%1));const p=l.filter(v=>v>=need).length/l.length;const y=x.trulyLeft>=need?1:0;brier+=(p-y)**2;const k=Math.min(4,Math.floor(p*5));bins[k]![0]++;bins[k]![1]+=p;bins[k]![2]+=y;}
 console.log(tools,n,'below',(b/n).toFixed(3),'in',(i/n).toFixed(3),'above',(a/n).toFixed(3),'brier',(brier/n).toFixed(4),'ECE',bins.reduce((t,[c,p,y])=>t+Math.abs(p!-y!)/n,0).toFixed(4));}
