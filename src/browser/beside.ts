import { loadScript } from "./load-script.ts";
import type { Asked, SumAsked, SumName, sumOf, Told } from "./sums.ts";

/** Set by the worker's script where a page loads it itself. */
declare const dotdownSumOf: typeof sumOf;

/** How a question stands by now: its answer may be shown bit by bit, and meanwhile another be asked. */
export interface Standing {
  /** Nothing has been asked for since, and it was not dropped. */
  readonly isLast: boolean;
  readonly isDropped: boolean;
}

export interface Beside {
  /** @param told gets the answer; no other answer is told until it has ended */
  ask<N extends SumName>(
    name: N,
    asked: Asked<N>,
    told: (got: Told<N>, standing: Standing) => void | Promise<void>,
  ): void;
  /** What is under way is not told any more. */
  drop(): void;
}

interface Question extends Standing {
  readonly asked: SumAsked;
  readonly told: (got: Told<SumName>, standing: Standing) => void | Promise<void>;
  isLast: boolean;
  isDropped: boolean;
}

/**
 * Has sums done beside the page, one at a time: while one is under way only the last that was asked for waits.
 *
 * @param script the worker's address; opened from disk there is none to be had, and the page does its sums
 * @param failed hears that there is neither
 * @param ownPauseMs how long nobody may have typed before the page does its own; at once where there is no such pause
 */
export function besideBy(script: string, failed: () => void, ownPauseMs = 0): Beside {
  let worker = startWorker(script);
  let last: Question | undefined;
  let underWay: Question | undefined;
  let waiting: Question | undefined;
  let pause: ReturnType<typeof setTimeout> | undefined;

  const tell = (one: Question, got: Told<SumName>) =>
    toldOf(one, got).finally(() => {
      if (underWay !== one) return;
      underWay = undefined;
      next();
    });
  const take = (): Question | undefined => {
    if (underWay) return undefined;
    [underWay, waiting] = [waiting, undefined];
    return underWay;
  };
  const doWaiting = (sum: typeof sumOf) => {
    const one = take();
    if (one) void tell(one, sum(one.asked));
  };
  const own = () => inPage(script).then(doWaiting, failed);
  const ownSoon = () => {
    clearTimeout(pause);
    if (ownPauseMs === 0) void own();
    else pause = setTimeout(own, ownPauseMs);
  };
  const next = () => {
    if (!worker) return ownSoon();
    const one = take();
    if (!one) return;
    askOf(worker, one.asked, (got) => void tell(one, got), begin);
  };
  /** What was under way is asked again; of the page itself where there is no other worker. */
  const begin = (another?: Worker) => {
    worker = another;
    if (!underWay?.isDropped) waiting ??= underWay;
    underWay = undefined;
    next();
  };
  // A page that has been left is gone at once, or a new edition would wait for its work; one that comes back begins anew.
  addEventListener("pagehide", () => worker?.terminate());
  addEventListener("pageshow", ({ persisted }) => {
    if (persisted) begin(startWorker(script));
  });
  return {
    ask(name, asked, told) {
      if (last) last.isLast = false;
      const sum = { name, asked } as SumAsked;
      last = waiting = { asked: sum, told: told as Question["told"], isLast: true, isDropped: false };
      next();
    },
    drop() {
      if (last) last.isLast = false;
      if (underWay) underWay.isDropped = true;
      waiting = undefined;
    },
  };
}

async function toldOf(one: Question, got: Told<SumName>): Promise<void> {
  if (!one.isDropped) await one.told(got, one);
}

function askOf(worker: Worker, sum: SumAsked, told: (got: Told<SumName>) => void, failed: () => void): void {
  worker.onmessage = ({ data }: MessageEvent<Told<SumName>>) => told(data);
  worker.onerror = (event) => {
    event.preventDefault();
    failed();
  };
  worker.postMessage(sum);
}

let loading: Promise<typeof sumOf> | undefined;

/** The worker's sums, for the page to do; asked for again they are there. */
function inPage(script: string): Promise<typeof sumOf> {
  loading ??= loadScript(script).then(() => dotdownSumOf);
  return loading;
}

function startWorker(script: string): Worker | undefined {
  if (location.protocol === "file:") return undefined;
  try {
    return new Worker(script);
  } catch {
    return undefined;
  }
}
