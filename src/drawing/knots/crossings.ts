import type { Curve, Sample } from "./curve.ts";

/** A strand as the crossings see it. */
interface NamedCurve {
  readonly name: string;
  readonly curve: Curve;
}

/** One of the two passes of a crossing. */
export interface Pass {
  /** Index into the strands given. */
  readonly strand: number;
  /** Distance from the strand's start. */
  readonly s: number;
  readonly height: number;
  readonly direction: { readonly x: number; readonly y: number };
}

export interface Crossing {
  readonly x: number;
  readonly y: number;
  readonly over: Pass;
  readonly under: Pass;
  /** Whether the data says which strand is on top: their heights differ clearly. */
  readonly declared: boolean;
}

/** Strands closer than this in height do not say which is on top. */
const heightApart = 0.5;

/** Every place where strands cross on the paper, each other or themselves, in the order of the strands. */
export function crossingsOf(strands: readonly NamedCurve[]): Crossing[] {
  const crossings: Crossing[] = [];
  for (let a = 0; a < strands.length; a++) {
    for (let b = a; b < strands.length; b++) crossings.push(...between(strands, a, b));
  }
  return crossings;
}

function between(strands: readonly NamedCurve[], a: number, b: number): Crossing[] {
  const first = strands[a]!.curve.samples;
  const second = strands[b]!.curve.samples;
  const closed = a === b && strands[a]!.curve.closed;
  const runs = runsOf(first);
  const others = a === b ? runs : runsOf(second);
  const found: Crossing[] = [];
  for (const run of runs) {
    for (const other of others) {
      if (apart(run, other)) continue;
      for (let i = run.from; i < run.to; i++) {
        // Neighbouring pieces of one strand meet without crossing; so do the ends of a closed one.
        const from = a === b ? Math.max(other.from, i + 2) : other.from;
        const to = closed && i === 0 ? Math.min(other.to, second.length - 2) : other.to;
        for (let j = from; j < to; j++) {
          const meet = meeting(first[i]!, first[i + 1]!, second[j]!, second[j + 1]!);
          if (!meet) continue;
          const one = pass(a, first[i]!, first[i + 1]!, meet.t);
          const two = pass(b, second[j]!, second[j + 1]!, meet.u);
          const [over, under] = one.height >= two.height ? [one, two] : [two, one];
          const declared = over.height - under.height >= heightApart;
          found.push({ x: meet.x, y: meet.y, over, under, declared });
        }
      }
    }
  }
  return found;
}

/** Some neighbouring pieces of a strand and the box that they lie in. */
interface Run {
  /** Index of the first piece, and of the one after the last. */
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const piecesPerRun = 12;

function runsOf(samples: readonly Sample[]): Run[] {
  const runs: Run[] = [];
  for (let from = 0; from + 1 < samples.length; from += piecesPerRun) {
    const to = Math.min(from + piecesPerRun, samples.length - 1);
    const places = samples.slice(from, to + 1);
    const xs = places.map(({ x }) => x);
    const ys = places.map(({ y }) => y);
    runs.push({
      from,
      to,
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: Math.max(...ys),
    });
  }
  return runs;
}

/** Boxes this near count as touching, so that strands which meet at the edge of a box are not missed. */
const slack = 0.01;

function apart(a: Run, b: Run): boolean {
  return Math.max(a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom) > slack;
}

/** Pieces that meet at their very ends, as strands drawn through one place do, count as crossing in one pair only. */
const endShare = 1e-6;

/** Where two straight pieces cross; each counts its start and not its end, so that no crossing is found twice. */
function meeting(a: Sample, b: Sample, c: Sample, d: Sample) {
  const [abX, abY, cdX, cdY] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const cross = abX * cdY - abY * cdX;
  if (cross === 0) return undefined;
  const t = ((c.x - a.x) * cdY - (c.y - a.y) * cdX) / cross;
  const u = ((c.x - a.x) * abY - (c.y - a.y) * abX) / cross;
  if (Math.min(t, u) < -endShare || Math.max(t, u) >= 1 - endShare) return undefined;
  return { x: a.x + t * abX, y: a.y + t * abY, t, u };
}

function pass(strand: number, a: Sample, b: Sample, t: number): Pass {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return {
    strand,
    s: a.s + t * (b.s - a.s),
    height: a.height + t * (b.height - a.height),
    direction: { x: (b.x - a.x) / length, y: (b.y - a.y) / length },
  };
}
