import { disk } from "../../src/cli/disk.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { readSources } from "../../src/content/world.ts";

const { value, messages } = readLibrary(await readSources(disk, ["content"]));
if (!value) throw new Error(`the content has errors: ${JSON.stringify(messages)}`);

/** The content that is shipped, read once for all the tests that share their modules. */
export const shippedLibrary = value;
