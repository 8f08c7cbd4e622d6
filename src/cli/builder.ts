// The second thread of a run that makes a whole machine. Its program is loaded as this one's is: compiled beforehand.
import { parentPort } from "node:worker_threads";
import { loadCompiled } from "./compiled.ts";

if (parentPort === null) throw new Error("this is a thread's program, and runs beside another one");
const { exports, keepCompiled } = loadCompiled<typeof import("./bodies.ts")>("bodies.cjs", "bodies.compiled");
exports.serve(parentPort, keepCompiled);
