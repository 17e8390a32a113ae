import { expect, test } from "vitest";
import { stageOf } from "../../src/browser/film-stage.ts";
import { first } from "../../src/core/lists.ts";
import { drawFilm } from "../../src/drawing/film/films.ts";
import { packFilm } from "../../src/drawing/film/pack-film.ts";
import { type Pose, poseBetween, readPoses } from "../../src/drawing/film/poses.ts";
import { filmsOf } from "../../src/model/films.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** A mark as far as a stage asks for it. */
class Mark {
  readonly attributes = new Map<string, string>();
  constructor(
    readonly part: number,
    readonly picture: Picture,
  ) {}
  setAttribute(name: string, value: string): void {
    this.picture.written.push(name);
    this.attributes.set(name, value);
  }
  removeAttribute(name: string): void {
    this.picture.written.push(name);
    this.attributes.delete(name);
  }
  remove(): void {
    this.picture.moved++;
    this.picture.marks.splice(this.picture.marks.indexOf(this), 1);
  }
  get at(): string {
    return this.attributes.get("at") ?? "";
  }
}

/** A group of marks that counts what is done to it. */
class Picture {
  readonly marks: Mark[] = [];
  written: string[] = [];
  moved = 0;
  insertBefore(mark: Mark, next: Mark | null): void {
    this.moved++;
    this.marks.splice(next ? this.marks.indexOf(next) : this.marks.length, 0, mark);
  }
  get seen(): Mark[] {
    return this.marks.filter(({ attributes }) => !attributes.has("visibility"));
  }
  begin(): void {
    this.written = [];
    this.moved = 0;
  }
}

function staged() {
  const picture = new Picture();
  const stage = stageOf(picture as unknown as Element, (part) => {
    const mark = new Mark(part, picture);
    return { element: mark as unknown as Element, put: (at) => mark.setAttribute("at", at) };
  });
  return { picture, stage };
}

/** The places alone, as a line through them may be written in more than one way. */
const numbersOf = (at: string) => at.match(/-?[\d.]+/g)?.join(" ") ?? "";
const shown = ({ seen }: Picture) => seen.map(({ part, at }) => `${part} ${numbersOf(at)}`);
const posed = (poses: readonly Pose[]) =>
  poses.map(
    (pose) => `${pose.part} ${pose.kind === "mark" ? "" : numbersOf(poseBetween(pose, undefined, 0))}`,
  );

test("a picture shows the parts of its moment, in their order and where they are", () => {
  const { picture, stage } = staged();
  for (const packed of ["0;1@5 6;2", "0;3;1@7 6;2;3", "2;1@7 6;0", "", "4M1 2L3 4;0", "0;4M1 2L3 4;2;0"]) {
    const poses = readPoses(packed);
    stage.paint(poses);
    expect(shown(picture), packed).toEqual(posed(poses));
  }
});

test("on the way to a moment with another part between, those that are in both go on", () => {
  const { picture, stage } = staged();
  stage.paint(readPoses("0@0 0;1@10 0"), readPoses("0@4 0;2;1@20 8"), 0.5);
  expect(shown(picture)).toEqual(["0 2 0", "1 15 4"]);
});

test("what a moment lacks is put in a few marks at a time and unseen; to show it then moves none", () => {
  const { picture, stage } = staged();
  const [now, next] = ["0;1@5 6;2", "0;3;4;5;6;7@1 1;8;9;10;11;12;13;14;15;1@5 6"].map(readPoses) as [
    Pose[],
    Pose[],
  ];
  stage.paint(now);
  const before = shown(picture);
  let times = 0;
  for (;;) {
    picture.begin();
    if (!stage.putIn(next)) break;
    times++;
    expect(picture.moved).toBeLessThanOrEqual(6);
    expect(shown(picture)).toEqual(before);
  }
  expect(times).toBe(3);
  picture.begin();
  stage.paint(next);
  expect(picture.moved).toBe(0);
  // Thirteen are shown and one is hidden, and none is moved.
  expect(picture.written).toEqual(Array(14).fill("visibility"));
  expect(shown(picture)).toEqual(posed(next));
});

test("however many moments are drawn through, few marks stay that nobody sees", () => {
  const { picture, stage } = staged();
  for (let moment = 0; moment < 300; moment++) {
    const poses = readPoses(`0;${moment + 1};${moment + 400}`);
    while (stage.putIn(poses));
    stage.paint(poses);
    while (stage.takeOut([]));
    expect(picture.marks.length).toBeLessThan(60);
    expect(shown(picture)).toEqual(posed(poses));
  }
});

test("a frame of every film does little: it puts in a few marks, or it shows what lies there", () => {
  const { rigs, kit } = shippedGuide;
  const seen = new Set<string>();
  for (const [rig, depth] of rigs.flatMap((solved) => solved.depths.map((one) => [solved, one] as const)))
    for (const name of filmsOf(rig, depth)) {
      if (seen.has(name)) continue;
      seen.add(name);
      const film = drawFilm(name, rig, depth, { widthMm: 80, textMm: 3.5 }, kit);
      const { picture, stage } = staged();
      const moments = packFilm(film.moments).poses.map(readPoses);
      stage.paint(first(moments));
      for (const poses of moments) {
        do {
          picture.begin();
        } while (stage.putIn(poses));
        stage.paint(poses);
        expect(picture.moved, name).toBe(0);
        expect(shown(picture), name).toEqual(posed(poses));
        expect(picture.written.length, name).toBeLessThan(90);
      }
    }
  expect(seen.size).toBe(8);
});
