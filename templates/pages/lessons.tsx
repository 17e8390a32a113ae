import { sitePaths } from "../../src/model/addresses.ts";
import type { Lesson } from "../../src/model/library.ts";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** The course in its order, part by part. */
export function LessonListPage({ view }: { view: View }) {
  const { say } = view;
  return (
    <>
      <PageHead title={say("lessons.title")} lead={say("lessons.lead")} />
      {courseParts(view).map(({ part, firstNumber, lessons }) => (
        <section aria-labelledby={`part-${firstNumber}`}>
          <h2 id={`part-${firstNumber}`}>{part}</h2>
          <ol class="course" start={firstNumber}>
            {lessons.map((lesson) => (
              <li>
                <a href={view.href(sitePaths.lesson(lesson.id))}>{lesson.title}</a>
                <p>{lesson.summary}</p>
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

/** The course by its titles alone, part beside part. */
export function CourseAtAGlance({ view }: { view: View }) {
  return (
    <div class="side-by-side">
      {courseParts(view).map(({ part, firstNumber, lessons }) => (
        <div>
          <h3>{part}</h3>
          <ol class="course" start={firstNumber}>
            {lessons.map((lesson) => (
              <li>
                <a href={view.href(sitePaths.lesson(lesson.id))}>{lesson.title}</a>
              </li>
            ))}
          </ol>
        </div>
      ))}
    </div>
  );
}

interface CoursePart {
  readonly part: string;
  /** Number of its first lesson in the whole course. */
  readonly firstNumber: number;
  readonly lessons: readonly Lesson[];
}

function courseParts({ library: { lessons } }: View): CoursePart[] {
  return [...new Set(lessons.map(({ part }) => part))].map((part) => ({
    part,
    firstNumber: lessons.findIndex((lesson) => lesson.part === part) + 1,
    lessons: lessons.filter((lesson) => lesson.part === part),
  }));
}

/** One lesson, with the way back and on. */
export function LessonPage({ view, lesson }: { view: View; lesson: Lesson }) {
  const { say, href, library } = view;
  const index = library.lessons.indexOf(lesson);
  const before = library.lessons[index - 1];
  const after = library.lessons[index + 1];
  return (
    <article class="prose">
      <header class="page-head">
        <p class="where">
          {say("lessons.count", { number: index + 1, total: library.lessons.length, part: lesson.part })}
        </p>
        <h1>{lesson.title}</h1>
        <p class="lead">{lesson.summary}</p>
      </header>
      {view.markdown(lesson)}
      <nav class="onward" aria-label={say("lessons.onward")}>
        {before && (
          <a rel="prev" href={href(sitePaths.lesson(before.id))}>
            <span>{say("lessons.previous")}</span> {before.title}
          </a>
        )}
        {after ? (
          <a rel="next" href={href(sitePaths.lesson(after.id))}>
            <span>{say("lessons.next")}</span> {after.title}
          </a>
        ) : (
          <a rel="next" href={href(sitePaths.rigs)}>
            <span>{say("lessons.next")}</span> {say("rigs.title")}
          </a>
        )}
      </nav>
    </article>
  );
}
