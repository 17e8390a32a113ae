import type { WordKey } from "../../words/word-key.ts";
import type { WordKeyIn } from "../../words/words.ts";
import type { Point } from "../items.ts";
import { point } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";

/** Scenes with a caption for each of their steps. */
type SteppedScene = WordKey extends infer Key
  ? Key extends `drawing.scenes.${infer Scene}.do.${string}`
    ? Scene
    : never
  : never;

/** A scene told in steps: one picture for each, its title and its caption from the words of that scene. */
export function stepPictures<Scene extends SteppedScene, S extends WordKeyIn<`drawing.scenes.${Scene}.do`>>(
  scene: Scene,
  steps: readonly S[],
  box: Box,
  { words }: DrawingKit,
  itemsOf: (step: S) => readonly Item[],
  values: Readonly<Record<string, string>> = {},
): Drawing[] {
  return steps.map((step, index) => ({
    ...box,
    title: words(`drawing.scenes.${scene}.title` as WordKey, { step: index + 1, steps: steps.length }),
    description: words(`drawing.scenes.${scene}.do.${step}` as WordKey, values),
    items: itemsOf(step),
  }));
}

/** Places and lengths in hundredths of a picture's width, so that a scene keeps its proportions at every size. */
export interface Hundredths {
  readonly at: (x: number, y: number) => Point;
  readonly mm: (length: number) => number;
}

export function hundredths({ widthMm }: Box): Hundredths {
  const mm = (length: number) => (length * widthMm) / 100;
  return { at: (x, y) => point(mm(x), mm(y)), mm };
}
