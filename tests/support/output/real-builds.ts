import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder, writeContent } from "../cli.ts";
import { run, start } from "../run-process.ts";
import { contentWith, edited } from "../smallest-content.ts";

/** A folder with content and output of its own, where the compiled tool builds as a process that can be stopped. */
export function workshop(command: string) {
  const folder = temporaryFolder();
  const place = join(folder, "place");
  mkdirSync(place);
  const out = join(place, "out");
  const options = { env: { ...process.env, XDG_STATE_HOME: join(folder, "state"), DOTDOWN_CACHE: "off" } };
  const args = (content: string) => [command, "build", "--content", content, "--out", out];
  return {
    place,
    out,
    /** Writes an edition of the content, with its name on every page, and gives its folder. */
    edition: (title: string, name = "content") =>
      writeContent(join(folder, name), contentWith(edited("guide.yaml", "Test guide", title))),
    build: (content: string) => start(process.execPath, args(content), folder, options),
    /** Any other command, which knows nothing of the output. */
    sheet: (content: string) =>
      run(process.execPath, [command, "sheet", "plain", "--content", content], folder, options),
    /** What is beside the output. */
    leftovers: () => readdirSync(place).filter((name) => name !== "out"),
    titleOfOutput: () =>
      existsSync(out)
        ? /<title>(.*?)<\/title>/.exec(readFileSync(join(out, "site/index.html"), "utf8"))![1]
        : "",
  };
}

export type Workshop = ReturnType<typeof workshop>;

/** Does a numbered piece of work so many times, so many of them beside each other. */
export async function inLanes(
  times: number,
  lanes: number,
  work: (index: number, lane: number) => Promise<void>,
) {
  let index = 0;
  const lane = async (number: number) => {
    while (index < times) await work(index++, number);
  };
  await Promise.all(Array.from({ length: lanes }, (_, number) => lane(number)));
}
