import type { main } from "../main.ts";
import { compileSeldom } from "./compile-seldom.ts";
import { compiledFor } from "./compiled-for.ts";
import { scriptsIn } from "./scripts.ts";

// What is run first: loads the command.

const args = process.argv.slice(2);
const [command = ""] = args;
const goesOn = command === "preview" || args.includes("--watch");
// Before anything is loaded: to the engine what it made with another setting is of no use.
if (!goesOn) compileSeldom();
const scripts = scriptsIn(
  new URL(".", import.meta.url),
  compiledFor(goesOn ? `${command}, going on` : command),
);
process.on("exit", scripts.keep);
const tool = scripts.load("./main.js") as { readonly main: typeof main };
await tool.main(args);
