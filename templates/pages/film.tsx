import type { Say } from "./page-words.ts";
import type { CaptionedPicture } from "./view.ts";

/** A film as a page has it: its strip as SVG, and for its player what stays, the parts that move, and where they are when. */
export interface PageFilm {
  readonly title: string;
  readonly description: string;
  readonly viewBox: string;
  /** What the clock says, with a gap for the seconds; none where its moments are steps of a person. */
  readonly clock?: string;
  /** From when on it says whole seconds. */
  readonly wholeFromS?: number;
  readonly strip: readonly CaptionedPicture[];
  /** Marks of SVG. */
  readonly still: string;
  readonly parts: readonly string[];
  /** What its slider is called where it is drawn through by hand. */
  readonly slider?: string;
  /** The steps of a knot that the player ties, as JSON. */
  readonly tied?: string;
  readonly moments: readonly PageMoment[];
}

interface PageMoment {
  readonly timeS?: number;
  readonly caption: string;
  /** The caption as a voice says it, where it reads otherwise. */
  readonly said?: string;
  readonly poses: string;
}

interface FilmPartProps {
  readonly film: PageFilm;
  readonly say: Say;
  /** Address of the page where a reader drives it, where there is one. */
  readonly tryIt?: string | undefined;
}

/**
 * A film: a strip of its chosen moments, and what the page's script plays it with. Without a script, with reduced motion
 * and on paper the strip is what there is.
 */
export function FilmPart({ film, say, tryIt }: FilmPartProps) {
  return (
    <figure class="film" data-unsearched="">
      <div class="film-strip">
        <StripFrames strip={film.strip} />
      </div>
      <template>
        <Player film={film} say={say} />
        <raw-html html={`<svg class="film-parts">${film.parts.join("")}</svg>`} />
        {film.tied !== undefined && <p class="film-tied">{film.tied}</p>}
        <ol>
          {film.moments.map(({ timeS, caption, said, poses }) => (
            <li data-time={timeS} data-said={said} data-poses={poses}>
              {caption}
            </li>
          ))}
        </ol>
      </template>
      {tryIt !== undefined && (
        <p class="film-try">
          <a href={tryIt}>{say("try.link")}</a>
        </p>
      )}
    </figure>
  );
}

/** The chosen moments side by side. */
export function StripFrames({ strip }: Pick<PageFilm, "strip">) {
  return strip.map(({ svg, caption }) => (
    <figure class="picture">
      <raw-html html={svg} />
      <figcaption>{caption}</figcaption>
    </figure>
  ));
}

/** What a reader plays it with. Its buttons are found by what they do. */
function Player({ film, say }: { readonly film: PageFilm; readonly say: Say }) {
  const { title, description, viewBox, still, clock, wholeFromS, slider } = film;
  return (
    <section class="film-player" aria-label={title}>
      <div class="film-picture" role="img" aria-label={description}>
        <raw-html
          html={`<svg viewBox="${viewBox}" fill="none" aria-hidden="true">${still}<g class="film-moving"></g></svg>`}
        />
      </div>
      <p class="film-caption" aria-live="polite" />
      <div class="film-time">
        <input
          type="range"
          min="0"
          aria-label={slider ?? say(clock === undefined ? "film.step" : "film.time")}
        />
        {clock !== undefined && (
          <span class="film-clock" aria-hidden="true" data-words={clock} data-whole={wholeFromS} />
        )}
      </div>
      <div class="film-buttons">
        <button type="button" data-does="play" data-other={say("film.pause")}>
          {say("film.play")}
        </button>
        <button type="button" data-does="back">
          {say("film.back")}
        </button>
        <button type="button" data-does="on">
          {say("film.forward")}
        </button>
        <button type="button" data-does="slower" aria-pressed="false">
          {say("film.slower")}
        </button>
      </div>
    </section>
  );
}
