import { sitePaths } from "../../src/model/addresses.ts";
import type { RigEntry } from "../../src/model/library.ts";
import { keyOf } from "../../src/words/words.ts";
import { kindsCaught } from "./catches.ts";
import { CourseAtAGlance } from "./lessons.tsx";
import { RigMarks } from "./rig.tsx";
import type { View } from "./view.ts";

/** The way in: three questions to a first rig, then the lessons. */
export function HomePage({ view }: { view: View }) {
  const { say, href, library } = view;
  const [firstLesson] = library.lessons;
  const firstRig = library.rigs.find(({ level }) => level === "first") ?? library.rigs[0];
  return (
    <>
      <header class="page-head home-head">
        <h1>{library.guide.title}</h1>
        <p class="lead">{say("home.lead")}</p>
        {firstLesson && (
          <p>
            <a class="button" href={href(sitePaths.lesson(firstLesson.id))}>
              {say("home.start")}
            </a>
          </p>
        )}
      </header>
      <section aria-labelledby="which">
        <h2 id="which">{say("home.which")}</h2>
        <p>{say("home.which-lead")}</p>
        <RigQuestions view={view} target={sitePaths.rigs} />
      </section>
      {firstRig && (
        <section aria-labelledby="first-rig">
          <h2 id="first-rig">{say("home.first-rig")}</h2>
          <div class="side-by-side">
            <RigSummary view={view} entry={firstRig} level={3} />
            <FirstRigPicture view={view} entry={firstRig} />
          </div>
        </section>
      )}
      <section aria-labelledby="course">
        <h2 id="course">{say("home.course")}</h2>
        <CourseAtAGlance view={view} />
      </section>
      <section aria-labelledby="offline">
        <h2 id="offline">{say("home.offline")}</h2>
        <p>{say("home.offline-how", { size: megabytesKept(view) })}</p>
        <p>{say("home.offline-install")}</p>
      </section>
    </>
  );
}

/** More than this page itself takes [byte]. */
const ownRoomBytes = 50_000;

/** Rounded up, so that nobody is promised too little. */
function megabytesKept({ keptBytes }: View): string {
  return (Math.ceil((keptBytes + ownRoomBytes) / 1e5) / 10).toFixed(1);
}

function FirstRigPicture({ view, entry }: { view: View; entry: RigEntry }) {
  const solved = view.solved.get(entry.id);
  const depth = solved?.depths[0];
  if (!solved || !depth) return null;
  return (
    <div class="picture">
      <raw-html html={view.drawRig(solved, depth, entry.id)} />
    </div>
  );
}

/** Questions whose answers the list of rigs reads from its address. */
export function RigQuestions({ view, target }: { view: View; target: string }) {
  const { say, href, library, figures } = view;
  const depths = unique(library.rigs.flatMap(({ rig }) => rig.depthsMm)).sort((a, b) => a - b);
  const fish = unique(library.rigs.flatMap((entry) => kindsCaught(library, entry))).sort();
  const patterns = unique(library.rigs.map(({ rig }) => rig.pattern.kind));
  const isList = view.path === target;
  return (
    <form
      class={isList ? "questions needs-script" : "questions"}
      method="get"
      action={href(target)}
      aria-label={say("filter.name")}
    >
      <Choice
        name="water"
        label={say("filter.water")}
        any={say("filter.any")}
        options={(["still", "flowing"] as const).map((water) => [water, say(`water.${water}`)])}
      />
      <Choice
        name="depth"
        label={say("filter.depth")}
        any={say("filter.any")}
        options={depths.map((depth) => [String(Math.round(depth)), figures.shortDepth(depth)])}
      />
      <Choice
        name="catch"
        label={say("filter.catch")}
        any={say("filter.any")}
        options={fish.map((kind) => [kind, kind])}
      />
      {isList && (
        <>
          <Choice
            name="method"
            label={say("filter.method")}
            any={say("filter.any")}
            options={patterns.map((kind) => [kind, say(`pattern.${keyOf(kind)}`)])}
          />
          <Choice
            name="level"
            label={say("filter.level")}
            any={say("filter.any")}
            options={(["first", "beginner", "next"] as const).map((level) => [level, say(`level.${level}`)])}
          />
        </>
      )}
      <button type="submit">{say("filter.show")}</button>
    </form>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly label: string;
  readonly any: string;
  readonly options: readonly (readonly [value: string, words: string])[];
}

function Choice({ name, label, any, options }: ChoiceProps) {
  const id = `choose-${name}`;
  return (
    <p>
      <label for={id}>{label}</label>
      <select id={id} name={name}>
        <option value="">{any}</option>
        {options.map(([value, words]) => (
          <option value={value}>{words}</option>
        ))}
      </select>
    </p>
  );
}

/** A rig in a list: its name, purpose and marks, with what the filters look at. */
export function RigSummary({ view, entry, level }: { view: View; entry: RigEntry; level: 2 | 3 }) {
  const { href, library } = view;
  const { rig } = entry;
  const link = <a href={href(sitePaths.rig(entry.id))}>{entry.title}</a>;
  return (
    <article
      class="rig-summary"
      data-water={rig.water}
      data-depths={rig.depthsMm.map((depth) => Math.round(depth)).join(" ")}
      data-method={rig.pattern.kind}
      data-level={entry.level}
      data-catch={kindsCaught(library, entry).join("|")}
    >
      {level === 2 ? <h2>{link}</h2> : <h3>{link}</h3>}
      <p>{rig.purpose}</p>
      <RigMarks view={view} entry={entry} />
    </article>
  );
}

function unique<T>(values: readonly T[]): T[] {
  return [...new Set(values)];
}
