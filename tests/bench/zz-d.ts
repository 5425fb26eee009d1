import { defaultLifePriors } from '@/lib/life/priors';
import { backtest } from '@/lib/score/backtest';
import { simulateReach } from '@/tests/support/reach-shop';
import { REACH_PRIORS } from '@/tests/support/reach-study';
const S=400, J=12; const P=Array.from({length:J},()=>({n:0,p:0,k:0,o:0,d2:0,v:0}));
for(let s=0;s<S;s++){ const shop=simulateReach({key:`d:${s}`,law:'weibull',truth:'as-believed',jobs:J});
 const made=backtest({events:shop.events,priors:{die:REACH_PRIORS,blade:REACH_PRIORS},guesses:{die:shop.guesses,blade:[]},drawCount:512});
 made.forEach((m,i)=>{const c=P[i]!; const k=shop.truly(m); const pr=m.prediction; c.n++; c.p+=pr.probability; c.k+=k; c.d2+=(k-pr.probability)**2; if(pr.settled?.outcome===null)c.v++; else c.o+=pr.settled?.outcome?1:0;}); }
P.forEach((c,i)=>console.log(i,c.n,'ours',(c.p/c.n).toFixed(3),'know',(c.k/c.n).toFixed(3),'out',(c.o/(c.n-c.v)).toFixed(3),'se',(Math.sqrt(c.d2/c.n/c.n)).toFixed(3),'void',c.v));
