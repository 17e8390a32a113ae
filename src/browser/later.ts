import type { SolvedDepth } from "../model/solved.ts";
import { type LaterAsked, laterSums } from "./later-sums.ts";

interface Later {
  ask(asked: LaterAsked, told: Told): void;
  /** What is under way is not told any more. */
  drop(): void;
}

type Told = (depth: SolvedDepth | undefined) => void;

/** Where the page has to do the sums itself, they wait until nobody is typing. */
const typingPauseMs = 250;

/**
 * Has the longer sums done, one at a time: while one is under way only the last that was asked for waits. What was asked
 * for before another is never told.
 *
 * @param script the worker's address; opened from disk there is none to be had, and the page does its sums
 */
export function laterBy(script: string): Later {
  let worker = startWorker(script);
  let waiting: { readonly asked: LaterAsked; readonly told: Told } | undefined;
  let busy = false;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const ownSums = () => {
    clearTimeout(pause);
    pause = setTimeout(() => {
      const one = waiting;
      waiting = undefined;
      one?.told(laterSums(one.asked));
    }, typingPauseMs);
  };
  const next = () => {
    if (!worker) return ownSums();
    if (busy || !waiting) return;
    const one = waiting;
    busy = true;
    worker.onmessage = ({ data }: MessageEvent<SolvedDepth | undefined>) => {
      busy = false;
      if (waiting === one) {
        waiting = undefined;
        one.told(data);
      }
      next();
    };
    worker.onerror = (event) => {
      event.preventDefault();
      worker = undefined;
      next();
    };
    worker.postMessage(one.asked);
  };
  // A page that has been left is gone at once, or a new edition would wait for its work; one that comes back begins anew.
  addEventListener("pagehide", () => {
    worker?.terminate();
    busy = false;
  });
  addEventListener("pageshow", ({ persisted }) => {
    if (persisted) worker = startWorker(script);
  });
  return {
    ask(asked, told) {
      waiting = { asked, told };
      next();
    },
    drop() {
      waiting = undefined;
    },
  };
}

function startWorker(script: string): Worker | undefined {
  if (location.protocol === "file:") return undefined;
  try {
    return new Worker(script);
  } catch {
    return undefined;
  }
}
