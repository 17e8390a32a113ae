import { setFlagsFromString } from "node:v8";

/**
 * How much of a function's bytecode is run before the engine compiles it anew, to be quicker: seven times what is usual. Much of a
 * build, or of a check, is run a few hundred times, and compiling that took a quarter of the processors' time.
 */
const bytecodeBeforeCompiled = 500_000;

/** Has the engine compile anew only what runs often, for a process that ends with its command. */
export function compileSeldom(): void {
  setFlagsFromString(`--interrupt-budget=${bytecodeBeforeCompiled}`);
}
