import { planBuilds } from "./src/build/part-builds.ts";
import { stageParts } from "./src/build/stage-parts.ts";
import { loadKernel } from "./src/geometry/kernel.ts";
import { UNCALIBRATED } from "./src/printing/printer.ts";
import { deriveStage } from "./src/stage/index.ts";
import { widePlan } from "./tests/support/plans.ts";
const kernel = await loadKernel();
const plan = widePlan();
const stage=deriveStage(plan,()=>UNCALIBRATED);
const parts=stageParts(stage,()=>({ printer: UNCALIBRATED, calibrated: true }),"b");
const {works}=planBuilds(parts);
for(let i=0;i<4;i++) for(const w of works) kernel.build(w.piece.solid,(body)=>{
  body.mesh();
  const close=w.piece.keepOuts.map(k=>k.body), roomy=w.piece.keepOuts.flatMap(k=>k.roomy??[]);
  const t=(f:()=>unknown)=>{const a=performance.now();const r=f();return (performance.now()-a).toFixed(1)+"="+r;};
  const out=[w.piece.name,close.length,roomy.length,"meets close",t(()=>body.meets(close)),"roomy",t(()=>body.meets(roomy)),"single close",t(()=>close.map(c=>body.shared(c)).filter(v=>v>0).length),"roomy",t(()=>roomy.map(c=>body.shared(c)).filter(v=>v>0).length)];
  if(i==3)console.log(out.join(" "));
  if(i==3&&w===works[0]) for(const c of [...close]) console.log("   ", t(()=>body.shared(c)), t(()=>body.meets([c])));
});
