import { readCsv } from '@/app/_import/read-csv';
const enc=new TextEncoder();
const lap=(w:string,make:()=>string)=>{const b=enc.encode(make());const t=performance.now();const r=readCsv(b);console.log(w,b.length,Math.round(performance.now()-t),'ms',Math.round(process.memoryUsage().rss/1e6),'MB',r.ok?`${r.value.rows.length}x${r.value.rows[0]?.length}`:r.refusal.sentence);};
const M=50*1024*1024-100;
lap('newlines',()=>'a,b\n1'+'\n'.repeat(M)+'x');
lap('commas rows',()=>{const l=','.repeat(199)+'\n';return 'a'+l+l.repeat(Math.floor(M/200)-1)+'x';});
lap('wide rows',()=>{const l=','.repeat(99_000)+'\n';return 'a,b\n'+l.repeat(Math.floor(M/l.length));});
