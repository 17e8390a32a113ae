import { workerData } from "node:worker_threads";
import type { Job } from "../crew/crew.ts";
import type { workBeside } from "../crew/work-beside.ts";
import { compiledFor } from "./compiled-for.ts";
import { scriptsIn } from "./scripts.ts";

// What a thread beside a build runs first.

const scripts = scriptsIn(new URL(".", import.meta.url), compiledFor("build"));
const beside = scripts.load("./beside.js") as { readonly workBeside: typeof workBeside };
await beside.workBeside(workerData as Job);
