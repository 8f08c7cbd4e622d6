import { bodiesOf } from "./src/stage/bodies/index.ts";
import { nearPairs } from "./src/build/clash/near-pairs.ts";
import { clashesOf } from "./src/build/clash/clashes.ts";
import { loadKernel } from "./src/geometry/kernel.ts";
import { UNCALIBRATED } from "./src/printing/printer.ts";
import { deriveStage } from "./src/stage/index.ts";
import { widePlan } from "./tests/support/plans.ts";
const kernel = await loadKernel();
const plan = widePlan();
const stage=deriveStage(plan,()=>UNCALIBRATED);
for(let i=0;i<4;i++){
const bodies=bodiesOf(stage,()=>UNCALIBRATED);
const kindOf=new Map(bodies.map(b=>[b.solid,b.kind]));
const by=new Map<string,[number,number,number]>();
let evals=new Map<string,[number,number]>();
const t0=process.cpuUsage().user;
kernel.assemble(hall=>{
  for(const b of bodies){const t=performance.now();hall.box(b.solid);const e=evals.get(b.kind)??[0,0];evals.set(b.kind,[e[0]+1,e[1]+performance.now()-t]);}
  const wrap={...hall,overlap:(a:any,b:any,r:any)=>{const t=performance.now();const o=hall.overlap(a,b,r);const k=kindOf.get(a.solid)+"-"+kindOf.get(b.solid);const e=by.get(k)??[0,0,0];by.set(k,[e[0]+1,e[1]+performance.now()-t,e[2]+(o?1:0)]);return o;}};
  clashesOf(bodies,plan.travel.lift,wrap as any);
});
console.log("total",(process.cpuUsage().user-t0)/1000);
if(i==3){console.log([...evals].map(([k,v])=>k+" "+v[0]+" "+v[1].toFixed(1)).join("; "));
console.log([...by].sort((a,b)=>b[1][1]-a[1][1]).map(([k,v])=>k+" n"+v[0]+" "+v[1].toFixed(1)+"ms hits"+v[2]).join("\n"));
console.log(nearPairs(bodies.map(b=>b.box)).length, nearPairs(bodies.map(b=>b.box),-0.001).length);}
}
