import { planBuilds, builtPart } from "./src/build/part-builds.ts";
import { stageParts } from "./src/build/stage-parts.ts";
import { pieceResult } from "./src/build/piece-work.ts";
import { loadKernel } from "./src/geometry/kernel.ts";
import { UNCALIBRATED } from "./src/printing/printer.ts";
import { deriveStage } from "./src/stage/index.ts";
import { widePlan } from "./tests/support/plans.ts";
import { printMesh } from "./src/geometry/print-mesh.ts";
import { meshEdges } from "./src/verify/mesh-edges.ts";
import { soundness } from "./src/verify/soundness.ts";
import { thinnestWalls } from "./src/verify/wall.ts";
import { overhangs } from "./src/verify/overhang.ts";
import { brokenFacets } from "./src/verify/weld.ts";
import { verifyPiece } from "./src/build/verify-piece.ts";
import { prepare, runBare } from "./bench/bare.ts";
const kernel = await loadKernel();
const printing = { printer: UNCALIBRATED, calibrated: true };
const plan = widePlan();
const stage=deriveStage(plan,()=>UNCALIBRATED);
const parts=stageParts(stage,()=>printing,"b");
const {builds,works}=planBuilds(parts);
const acc:Record<string,number>={};
const T=<A,>(n:string,f:()=>A):A=>{const t=performance.now();const r=f();acc[n]=(acc[n]??0)+performance.now()-t;return r;};
for(let i=0;i<10;i++){ for(const k of Object.keys(acc))acc[k]=0;
 for(const w of works){
  kernel.build(w.piece.solid,(body)=>{
   const raw=T("mesh",()=>body.mesh());
   const mesh=T("print",()=>printMesh(raw,1));
   T("broken",()=>brokenFacets(mesh));
   const edges=T("edges",()=>meshEdges(mesh));
   T("sound",()=>soundness(mesh,edges));
   T("walls",()=>thinnestWalls(edges.mesh,{sampleDensity:0.2}));
   T("over",()=>overhangs(edges.mesh,w.printer,edges));
   T("fit",()=>verifyPiece(w.piece,body,raw));
   if(i==9)console.log(w.piece.name,mesh.triangles.length/3,w.piece.keepOuts.length,w.piece.contacts.length);
  });
 }
 T("all",()=>works.map(w=>pieceResult(w,kernel)));
 const bare=works.map(w=>prepare(w.piece.solid)); T("bare",()=>bare.map(runBare));
 const allb=parts.flatMap(({request,designed})=>designed.design.pieces().map(p=>prepare(p.solid))); T("bareall"+allb.length,()=>allb.map(runBare));
 console.log(Object.entries(acc).map(([k,v])=>k+" "+v.toFixed(0)).join("  "));
}
