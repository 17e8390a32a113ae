import {
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmdirSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { basename, dirname, join } from "node:path";
import { isAlive, ownerOf } from "./owner.ts";

/**
 * Notes of which work folders there are, so that a command that knows nothing of an output can clear up after a build
 * that was stopped there. They stand where programs keep their state (XDG Base Directory Specification 0.8). Without
 * the right to write there, only commands beside the output clear up.
 */
function notesFolder(): string {
  const { XDG_STATE_HOME, LOCALAPPDATA } = process.env;
  return join(XDG_STATE_HOME || LOCALAPPDATA || join(homedir(), ".local", "state"), "dotdown");
}

const noteOf = (workFolder: string) => join(notesFolder(), basename(workFolder));

function ifAllowed(act: () => void): void {
  try {
    act();
  } catch {
    // Notes are a help; all goes on without them.
  }
}

/** To be called before the folder is made, so that there is none without a note. */
export function remember(workFolder: string): void {
  ifAllowed(() => {
    mkdirSync(notesFolder(), { recursive: true });
    writeFileSync(noteOf(workFolder), workFolder, { flag: "wx" });
  });
}

export function forget(workFolder: string): void {
  ifAllowed(() => unlinkSync(noteOf(workFolder)));
  ifAllowed(() => rmdirSync(notesFolder()));
}

/** The folders in which there may be work folders; notes of such as are gone, with their owners, are dropped. */
export function rememberedFolders(): ReadonlySet<string> {
  const folders = new Set<string>();
  ifAllowed(() => {
    for (const name of readdirSync(notesFolder())) {
      const owner = ownerOf(name);
      const workFolder = readFileSync(join(notesFolder(), name), "utf8");
      if (lstatSync(workFolder, { throwIfNoEntry: false })) folders.add(dirname(workFolder));
      else if (owner && !isAlive(owner, workFolder)) forget(join(notesFolder(), name));
    }
  });
  return folders;
}
