import { assemblyFaults } from "./src/build/clash/index.ts";
import { planBuilds, builtPart } from "./src/build/part-builds.ts";
import { stageParts } from "./src/build/stage-parts.ts";
import { pieceResult } from "./src/build/piece-work.ts";
import { loadKernel } from "./src/geometry/kernel.ts";
import { UNCALIBRATED } from "./src/printing/printer.ts";
import { deriveStage } from "./src/stage/index.ts";
import { WIDE, widePlan } from "./tests/support/plans.ts";
const kernel = await loadKernel();
const printing = { printer: UNCALIBRATED, calibrated: true };
const plan = widePlan();
for (let i=0;i<8;i++){
 const c=[process.cpuUsage().user/1000];
 const mark=()=>c.push(process.cpuUsage().user/1000);
 const stage=deriveStage(plan,()=>UNCALIBRATED); mark();
 const parts=stageParts(stage,()=>printing,"b"); mark();
 const {builds,works}=planBuilds(parts); mark();
 assemblyFaults(stage,()=>UNCALIBRATED,kernel); mark();
 const results=works.map(w=>pieceResult(w,kernel)); mark();
 const files=builds.map(b=>builtPart(b,results,"b")); mark();
 console.log(works.length,"derive parts plan clash pieces files", c.slice(1).map((v,k)=>(v-c[k]).toFixed(0)).join(" "));
}
