import * as z from "zod";
import { lessonPlaces } from "../../core/course/course.ts";
import { sum } from "../../core/lists.ts";
import { length } from "./quantity-schema.ts";

const minutes = () => z.int().min(1).max(480);
const names = () => z.array(z.string()).default([]);

/** What somebody needs for a lesson, in what the guide has. */
const share = () =>
  z
    .strictObject({
      rigs: names(),
      floats: names(),
      shot: z.string().optional(),
      hooks: z.array(z.int().min(1).max(30)).default([]),
      baits: names(),
      "main-line": length().optional(),
      "hook-line": length().optional(),
      tools: names(),
    })
    .prefault({});

/** Front matter of `content/plans/*.md`: how the lesson of the same name is taught. */
export const planSchema = z
  .strictObject({
    aim: z.string(),
    minutes: minutes(),
    parts: z.strictObject({ begin: minutes(), show: minutes(), drills: minutes(), questions: minutes() }),
    at: z.enum(lessonPlaces),
    learners: z.int().min(1).max(30),
    after: names(),
    "teaches-safety": z.boolean().default(false),
    kit: z.strictObject({ each: share(), two: share(), group: share() }).prefault({}),
  })
  .refine(({ minutes: all, parts }) => sum(Object.values(parts)) === all, {
    message: "its parts do not add up to its minutes",
    path: ["minutes"],
  });

/** `content/tools.yaml`: what lessons need besides tackle, by the names that plans call it. */
export const toolsSchema = z.array(z.strictObject({ name: z.string(), title: z.string() })).min(1);
