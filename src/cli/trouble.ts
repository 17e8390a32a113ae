import { exitCodes } from "./command.ts";

/** The system, not the tool or its user, was in the way; the message says where, what was kept, and what to do. */
export class Trouble extends Error {
  constructor(
    message: string,
    readonly exitCode: number,
  ) {
    super(message);
  }
}

/** What a system's answer means, and what helps in reading and in writing. */
interface Meaning {
  readonly reason: string;
  readonly read: string;
  readonly write: string;
  /** The disk gave out, whatever is asked of it. */
  readonly isDisk?: true;
}

const otherFolder = "name another folder with --out";
const rightsToRead = "change its rights, or take it out of the content";
const readAgain = "look after the disk that it is on, and try again";

const noRight: Meaning = {
  reason: "the system does not allow it",
  read: rightsToRead,
  write: `change the rights of the folder, or ${otherFolder}`,
};
const tooLong: Meaning = {
  reason: "the name is too long",
  read: "shorten it",
  write: "shorten it with --out",
};
const fullDisk: Meaning = {
  reason: "there is no room left on the disk",
  read: readAgain,
  write: "make room and build again, or name a folder on another disk with --out",
  isDisk: true,
};
const brokenDisk: Meaning = {
  reason: "the disk does not answer as it should",
  read: readAgain,
  write: `look after the disk, or ${otherFolder}`,
  isDisk: true,
};
const inUse: Meaning = {
  reason: "something else is using it, or a disk is mounted there",
  read: "close what uses it, and try again",
  write: `close what uses it, or name a folder inside or beside it with --out`,
};
const otherDisk: Meaning = { ...inUse, reason: "it is on another disk than what it is in" };
const notFolder: Meaning = {
  reason: "a part of the path is a file, not a folder",
  read: "name a folder with --content",
  write: otherFolder,
};
const gone: Meaning = {
  reason: "it was taken away meanwhile",
  read: "put it back, and try again",
  write: "build again",
};
const inTheWay: Meaning = {
  reason: "something else put a file or folder there meanwhile",
  read: "try again",
  write: "build again",
};
const tooLarge: Meaning = {
  reason: "the file is too large",
  read: "make it smaller, or take it out of the content",
  write: "raise the limit on file sizes, or name a folder on another disk with --out",
  isDisk: true,
};
const circle: Meaning = {
  reason: "links on the way lead round in a circle",
  read: "name the folder itself",
  write: otherFolder,
};
const tooMany: Meaning = {
  reason: "too many files are open",
  read: "close other programs, and try again",
  write: "close other programs, and build again",
};
const oddName: Meaning = {
  reason: "the disk does not take the name",
  read: "name it otherwise",
  write: otherFolder,
};

const meanings = new Map<string, Meaning>([
  ["EACCES", noRight],
  ["EPERM", noRight],
  ["EROFS", { ...noRight, reason: "the disk can only be read", write: otherFolder }],
  ["ENAMETOOLONG", tooLong],
  ["ENOSPC", fullDisk],
  ["EDQUOT", { ...fullDisk, reason: "your share of the disk is used up" }],
  ["EIO", brokenDisk],
  ["ENXIO", brokenDisk],
  ["ENODEV", brokenDisk],
  ["ESTALE", brokenDisk],
  ["ETIMEDOUT", brokenDisk],
  ["EHOSTDOWN", brokenDisk],
  ["EBUSY", inUse],
  ["ETXTBSY", inUse],
  ["EXDEV", otherDisk],
  ["ENOTDIR", notFolder],
  ["EISDIR", { ...notFolder, reason: "it is a folder, not a file", read: "name a file" }],
  ["ENOENT", gone],
  ["EEXIST", inTheWay],
  ["ENOTEMPTY", inTheWay],
  ["EFBIG", tooLarge],
  ["ERR_FS_FILE_TOO_LARGE", tooLarge],
  ["ERR_STRING_TOO_LONG", tooLarge],
  ["ELOOP", circle],
  ["EMFILE", tooMany],
  ["ENFILE", tooMany],
  ["EINVAL", oddName],
  ["EILSEQ", oddName],
]);

/** What a system's error means; undefined where it is no error of the system. */
function meaningOf(error: unknown): Meaning | undefined {
  if (!(error instanceof Error) || !("code" in error)) return undefined;
  const known = meanings.get(String(error.code));
  if (known) return known;
  return "syscall" in error ? { ...brokenDisk, reason: `the system answers ${error.code}` } : undefined;
}

/** A system's error in reading something, as a person can understand it; what is none stays as it is. */
function readTrouble(error: unknown, what: string): unknown {
  const meaning = meaningOf(error);
  if (!meaning) return error;
  const path = error instanceof Error && "path" in error ? error.path : what;
  const said = `${path} cannot be read: ${meaning.reason}; nothing was written. To go on, ${meaning.read}`;
  return new Trouble(said, exitCodes.unreadable);
}

/**
 * A system's error in writing the output, as a person can understand it; what is none stays as it is.
 *
 * @param kept what is in the output folder now
 */
export function writeTrouble(error: unknown, out: string, kept: string): unknown {
  const meaning = meaningOf(error);
  if (!meaning) return error;
  const said = `${out} cannot be written: ${meaning.reason}; ${kept}. To go on, ${meaning.write}`;
  return new Trouble(said, meaning.isDisk ? exitCodes.diskGaveOut : exitCodes.unwritable);
}

/** Reads something, and tells a system's error in the words of {@link readTrouble}. */
export async function reading<T>(what: string, read: () => T | Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (error) {
    throw readTrouble(error, what);
  }
}

/** Trouble that reached the command line; undefined for a fault of the tool. */
export function systemTrouble(error: unknown): Trouble | undefined {
  if (error instanceof Trouble) return error;
  // Node asks for the working folder whenever a path is not absolute.
  if (error instanceof Error && "syscall" in error && error.syscall === "uv_cwd")
    return new Trouble(
      "the working folder is gone; nothing was written. To go on, change to a folder that is there",
      exitCodes.unreadable,
    );
  return undefined;
}
