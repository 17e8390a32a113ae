import { neighbours } from "../../core/lists.ts";
import type { Curve, Sample } from "../curve.ts";

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
  const pieced = strands.map(({ curve }, index) => inPieces(curve, index));
  for (const one of pieced) {
    for (const other of pieced.slice(one.index)) crossings.push(...between(one, other));
  }
  return crossings;
}

/** A strand in straight pieces. */
interface PiecedStrand {
  /** Its place among the strands. */
  readonly index: number;
  readonly closed: boolean;
  readonly pieces: number;
  readonly runs: readonly Run[];
}

/** The box that something lies in. */
interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A straight piece of a strand. */
interface Piece extends Bounds {
  /** Its place along the strand. */
  readonly at: number;
  readonly from: Sample;
  readonly to: Sample;
}

/** Some neighbouring pieces of a strand. */
interface Run extends Bounds {
  readonly pieces: readonly Piece[];
}

function between(one: PiecedStrand, other: PiecedStrand): Crossing[] {
  const found: Crossing[] = [];
  for (const run of one.runs) {
    for (const otherRun of other.runs) {
      if (apart(run, otherRun)) continue;
      for (const piece of run.pieces) {
        if (apart(piece, otherRun)) continue;
        for (const otherPiece of otherRun.pieces) {
          if (one === other && !mayCross(piece, otherPiece, one)) continue;
          const crossing = crossingOf(one.index, piece, other.index, otherPiece);
          if (crossing) found.push(crossing);
        }
      }
    }
  }
  return found;
}

/** Neighbouring pieces of one strand meet without crossing; so do the ends of a closed one. */
function mayCross(piece: Piece, later: Piece, { closed, pieces }: PiecedStrand): boolean {
  return later.at >= piece.at + 2 && !(closed && piece.at === 0 && later.at === pieces - 1);
}

function crossingOf(a: number, first: Piece, b: number, second: Piece): Crossing | undefined {
  const meet = meeting(first.from, first.to, second.from, second.to);
  if (!meet) return undefined;
  const one = pass(a, first.from, first.to, meet.t);
  const two = pass(b, second.from, second.to, meet.u);
  const [over, under] = one.height >= two.height ? [one, two] : [two, one];
  const declared = over.height - under.height >= heightApart;
  return { x: meet.x, y: meet.y, over, under, declared };
}

const piecesPerRun = 12;

function inPieces({ samples, closed }: Curve, index: number): PiecedStrand {
  const pieces = neighbours(samples).map(([from, to], at) => pieceOf(at, from, to));
  const runs: Run[] = [];
  for (let at = 0; at < pieces.length; at += piecesPerRun)
    runs.push(runOf(pieces.slice(at, at + piecesPerRun)));
  return { index, closed, pieces: pieces.length, runs };
}

function pieceOf(at: number, from: Sample, to: Sample): Piece {
  return {
    at,
    from,
    to,
    left: Math.min(from.x, to.x),
    right: Math.max(from.x, to.x),
    top: Math.min(from.y, to.y),
    bottom: Math.max(from.y, to.y),
  };
}

function runOf(pieces: readonly Piece[]): Run {
  return {
    pieces,
    left: Math.min(...pieces.map(({ left }) => left)),
    right: Math.max(...pieces.map(({ right }) => right)),
    top: Math.min(...pieces.map(({ top }) => top)),
    bottom: Math.max(...pieces.map(({ bottom }) => bottom)),
  };
}

/** Boxes this near count as touching, so that strands which meet at the edge of a box are not missed. */
const slack = 0.01;

function apart(a: Bounds, b: Bounds): boolean {
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
