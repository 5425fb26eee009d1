import { reachCases, reachFigures, type ReachCase } from '@/tests/support/reach-study';
const rows: ReachCase[][]=[];
for (const [age,shops,jobs,skip] of [['young',120,30,0],['mid',60,110,80],['old',16,350,250]] as const) {
  const c=reachCases({law:(process.argv[2] as 'weibull')??'weibull',truth:process.argv[3] as 'as-believed',shops,jobs,skip}); rows.push(c);
  const f=reachFigures(c); const mp=c.reduce((s,x)=>s+x.ours.probability,0)/c.length, mk=c.reduce((s,x)=>s+x.knowing.probability,0)/c.length;
  console.log(process.env.MODE,age,'meanp',mp.toFixed(4),'know',mk.toFixed(4),JSON.stringify(f,(_k,v)=>typeof v==='number'?Number(v.toFixed(4)):v));
}
const c=rows.flat(); console.log(process.env.MODE,'ALL',JSON.stringify(reachFigures(c),(_k,v)=>typeof v==='number'?Number(v.toFixed(4)):v));
