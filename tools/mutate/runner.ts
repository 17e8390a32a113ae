// Runs each test as it is, and then again with each mutant that it has reached, all in one process: reading the sources
// anew for each mutant takes far longer than most tests do. What a test reaches only while its file is read, or in a
// hook, is out of its reach here.
import { appendFileSync } from "node:fs";
import { type RunnerTestCase, type RunnerTestFile, type RunnerTestSuite, TestRunner } from "vitest";

/** Shared with the sources, which read it at each mutant. */
interface Mutants {
  /** Number of the mutant that is switched on; 0 for none. */
  on: number;
  /** Those reached since somebody last looked; none where nobody asks. */
  reached?: Set<number> | undefined;
}

declare global {
  var mutants: Mutants;
}

// The first file of a process is collected before anything of it is set up.
globalThis.mutants ??= { on: 0 };

/** One line of what a run has to tell; the last is what it was at when it was ended. */
export type Line =
  | { readonly file: string }
  /** With the seconds after which nobody waits for it any longer. */
  | { readonly trying: number; readonly limitS: number }
  | { readonly killed: number; readonly by: string }
  /** Seconds that the file took without mutants, and those it reached outside of its tests. */
  | { readonly done: string; readonly seconds: number; readonly outside: readonly number[] };

export default class MutantRunner extends TestRunner {
  readonly #journal = this.injectValue("journal") as string;
  readonly #alive = new Set(this.injectValue("candidates") as readonly number[]);
  #outside = new Set<number>();
  #triedMs = 0;
  #fromMs = 0;

  override onCollectStart(file: RunnerTestFile): void {
    super.onCollectStart(file);
    this.#fromMs = performance.now();
    this.#triedMs = 0;
    this.#outside = new Set();
    this.#watch();
    this.#tell({ file: file.filepath });
  }

  override async onAfterRunSuite(suite: RunnerTestSuite): Promise<void> {
    await super.onAfterRunSuite(suite);
    if (!("filepath" in suite) || this.#alive.size === 0) return;
    this.#takeOutside();
    const seconds = (performance.now() - this.#fromMs - this.#triedMs) / 1000;
    this.#tell({ done: String(suite.filepath), seconds, outside: [...this.#outside] });
  }

  async runTask(test: RunnerTestCase): Promise<void> {
    const run = TestRunner.getTestFn(test);
    this.#takeOutside();
    const startMs = performance.now();
    await run();
    const limitS = 15 + (20 * (performance.now() - startMs)) / 1000;
    const reached = [...(globalThis.mutants.reached ?? [])].filter((id) => this.#alive.has(id));
    globalThis.mutants.reached = undefined;
    const from = performance.now();
    for (const id of reached) {
      this.#tell({ trying: id, limitS });
      if ((await fails(run, id)) && !(await fails(run, 0))) {
        this.#alive.delete(id);
        this.#tell({ killed: id, by: `${test.file.name} ${test.name}` });
      }
    }
    this.#triedMs += performance.now() - from;
    this.#watch();
  }

  #watch() {
    globalThis.mutants.reached = this.#alive.size > 0 ? new Set() : undefined;
  }

  #takeOutside() {
    for (const id of globalThis.mutants.reached ?? []) this.#outside.add(id);
    this.#watch();
  }

  #tell(line: Line) {
    if (this.#journal !== "") appendFileSync(this.#journal, `${JSON.stringify(line)}\n`);
  }
}

async function fails(run: () => unknown, mutant: number): Promise<boolean> {
  globalThis.mutants.on = mutant;
  try {
    await run();
    return false;
  } catch {
    return true;
  } finally {
    globalThis.mutants.on = 0;
  }
}
