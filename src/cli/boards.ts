import { createHash } from "node:crypto";
import { sum } from "../core/lists.ts";
import type { OpenStore, Pieces } from "../model/kept.ts";
import { sealBytes, sealed, unsealed } from "./kept-on-disk.ts";

/** So much lies in one entry of the store. */
const boardBytes = 4_000_000;
/** Boards that are open at once: results are asked for much in the order in which they were put there. */
const boardsAtHand = 24;
/**
 * Of what a build did not ask for so much may stay, and as much again as one asked for lately: after a word of a text nobody asks for
 * what the next rig needs.
 */
const unaskedBytes = 24_000_000;
/** How much less counts of what was asked for most, with each build that asks for less. */
const mostFades = 0.02;

/** Lengths of the results on a board, by their keys, in the order in which they lie there, each with its seal. */
interface Board {
  readonly name: string;
  readonly lengths: ReadonlyMap<string, number>;
  /** So many builds in a row asked for nothing of it. */
  readonly idle: number;
}

/** The boards of a store, and how much a build asked for lately. */
export interface Shelved {
  readonly boards: readonly Board[];
  readonly askedBytes: number;
}

/** A board that is read from: where each result begins, and its bytes, if there are any. */
interface OpenBoard {
  readonly begins: ReadonlyMap<string, number>;
  readonly bytes: Pieces | undefined;
}

/** Many small results that lie together in a store, some on each board, of which only those that somebody asks for are read. */
export class Boards {
  readonly #store: OpenStore;
  readonly #boards: Set<Board>;
  readonly #boardOf = new Map<string, Board>();
  readonly #atHand = new Map<Board, OpenBoard>();
  #fresh = new Map<string, Uint8Array>();
  #freshBytes = 0;

  readonly #askedBytes: number;

  constructor(store: OpenStore, { boards, askedBytes }: Shelved = { boards: [], askedBytes: 0 }) {
    this.#store = store;
    this.#boards = new Set(boards);
    this.#askedBytes = askedBytes;
    for (const board of this.#boards) for (const key of board.lengths.keys()) this.#boardOf.set(key, board);
  }

  find(key: string): Uint8Array | undefined {
    const board = this.#boardOf.get(key);
    return this.#fresh.get(key) ?? (board && this.#read(board, key));
  }

  add(key: string, bytes: Uint8Array): void {
    this.#fresh.set(key, bytes);
    this.#freshBytes += bytes.length;
    if (this.#freshBytes > boardBytes) this.#setUp();
  }

  /** Puts what is new into the store, and takes away what is too much of what was not asked for, the longest idle first. */
  tidied(asked: ReadonlySet<string>): Shelved {
    // Boards with little on them are put together.
    for (const board of [...this.#boards])
      if (bytesOn(board) < boardBytes / 2) this.#clear(board, () => true);
    const shares = [...this.#boards].map((board) => {
      const unasked = bytesOn(board, (key) => !asked.has(key));
      return { board, unasked, idle: unasked < bytesOn(board) ? 0 : board.idle + 1 };
    });
    const bytes = this.#freshBytes + sum(shares.map(({ board }) => bytesOn(board)));
    const allUnasked = sum(shares.map(({ unasked }) => unasked));
    const askedBytes = Math.max(bytes - allUnasked, this.#askedBytes * (1 - mostFades));
    let tooMuch = allUnasked - askedBytes - unaskedBytes;
    for (const { board, unasked } of shares.sort((a, b) => b.idle - a.idle || b.unasked - a.unasked)) {
      if (tooMuch <= 0) break;
      this.#clear(board, (key) => asked.has(key));
      tooMuch -= unasked;
    }
    this.#setUp();
    const idle = new Map(shares.map((share) => [share.board, share.idle]));
    return {
      boards: [...this.#boards].map((board) => ({ ...board, idle: idle.get(board) ?? 0 })),
      askedBytes,
    };
  }

  /** Ends reading; whoever asks for more opens boards again. */
  close(): void {
    for (const board of this.#atHand.keys()) this.#shut(board);
  }

  /** What cannot be read is not there. */
  #read(board: Board, key: string): Uint8Array | undefined {
    const { begins, bytes } = this.#opened(board);
    const begin = begins.get(key);
    const length = board.lengths.get(key);
    if (begin === undefined || length === undefined) return undefined;
    try {
      const piece = bytes?.piece(begin, sealBytes + length);
      return piece && unsealed(key, piece);
    } catch {
      return undefined;
    }
  }

  #opened(board: Board): OpenBoard {
    const opened = this.#atHand.get(board) ?? {
      begins: beginsOn(board),
      bytes: this.#store.open("board", board.name),
    };
    this.#atHand.delete(board);
    this.#atHand.set(board, opened);
    for (const oldest of this.#atHand.keys()) {
      if (this.#atHand.size <= boardsAtHand) break;
      this.#shut(oldest);
    }
    return opened;
  }

  #shut(board: Board): void {
    this.#atHand.get(board)?.bytes?.close();
    this.#atHand.delete(board);
  }

  /** What is new, on a board of its own. */
  #setUp(): void {
    if (this.#fresh.size === 0) return;
    const lengths = new Map([...this.#fresh].map(([key, { length }]) => [key, length]));
    const board = { name: hashOf([...lengths.keys()].join("")), lengths, idle: 0 };
    const results = [...this.#fresh].flatMap(([key, bytes]) => sealed(key, bytes));
    this.#store.put("board", board.name, undefined, Buffer.concat(results));
    this.#boards.add(board);
    for (const key of lengths.keys()) this.#boardOf.set(key, board);
    this.#fresh = new Map();
    this.#freshBytes = 0;
  }

  /** Takes a board away; what is to stay of it comes to what is new. */
  #clear(board: Board, stays: (key: string) => boolean): void {
    this.#boards.delete(board);
    for (const key of board.lengths.keys()) {
      if (this.#boardOf.get(key) !== board || this.#fresh.has(key)) continue;
      const bytes = stays(key) ? this.#read(board, key) : undefined;
      if (bytes) this.add(key, bytes);
    }
    this.#shut(board);
  }
}

function beginsOn({ lengths }: Board): ReadonlyMap<string, number> {
  const begins = new Map<string, number>();
  let begin = 0;
  for (const [key, length] of lengths) {
    begins.set(key, begin);
    begin += sealBytes + length;
  }
  return begins;
}

function bytesOn({ lengths }: Board, counts: (key: string) => boolean = () => true): number {
  let bytes = 0;
  for (const [key, length] of lengths) if (counts(key)) bytes += length;
  return bytes;
}

/** Enough of a hash to tell all results of a guide apart. */
const hashOf = (text: string): string => createHash("sha256").update(text).digest("binary").slice(0, 16);

/** What a result goes by among others. */
export const resultKey = (kind: string, of: string) => hashOf(`${kind}\0${of}`);
