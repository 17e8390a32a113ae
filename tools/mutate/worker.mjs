// Runs test files with mutants in the sources, in a process of its own: one that hangs can be ended.
import { createVitest } from "vitest/node";
import { instrumented } from "./mutants.mjs";

const { paths, wanted } = JSON.parse(process.env.MUTATE);
const chosen = new Set(wanted);

const plugin = {
  name: "mutants",
  enforce: "pre",
  transform(source, id) {
    const path = id.split("?")[0];
    const first = paths[path];
    return first === undefined
      ? undefined
      : { code: instrumented(path, source, first, chosen).code, map: null };
  },
};

const vitest = await createVitest(
  "test",
  {
    watch: false,
    root: process.cwd(),
    config: "tools/mutate/vitest.config.ts",
    reporters: [{}],
    maxWorkers: 1,
    silent: true,
  },
  { plugins: [plugin] },
);
await vitest.standalone();
const project = vitest.projects[0];

/** Whether the tests pass. */
async function passes({ files, ...told }) {
  for (const [name, value] of Object.entries(told)) project.provide(name, value);
  const run = await vitest.runTestSpecifications(files.map((file) => project.createSpecification(file)));
  // Vitest gives the modules of earlier runs too.
  const modules = run.testModules.filter(({ moduleId }) => files.includes(moduleId));
  return run.unhandledErrors.length === 0 && modules.every((one) => one.ok());
}

process.on("message", async (job) => {
  try {
    process.send({ outcome: (await passes(job)) ? "passes" : "fails" });
  } catch (error) {
    process.send({ fault: String(error?.stack ?? error) });
  }
});
process.on("disconnect", () => process.exit(0));
process.send({ ready: true });
