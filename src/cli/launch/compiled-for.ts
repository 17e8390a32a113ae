import { storeOnDisk } from "../kept-on-disk.ts";

/**
 * What the engine made of scripts for a use of the tool. With other settings it makes something else of them.
 *
 * @param use such as a command
 */
export const compiledFor = (use: string) => ({
  store: storeOnDisk(),
  use: JSON.stringify([use, process.execArgv, process.env.NODE_OPTIONS ?? ""]),
});
