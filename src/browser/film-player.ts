import { last } from "../core/lists.ts";
import { filmScreen } from "./film-screen.ts";
import { type FilmSource, sentFilm } from "./film-source.ts";
import { dataOf, partWithin } from "./page-parts.ts";

/** Share of the pace that "slower" plays at. */
const slowShare = 0.25;

/**
 * Puts the player of a film in place of its strip. Nothing moves until somebody asks.
 *
 * @param source what it plays: what the page was sent unless told otherwise
 * @param step where it begins
 * @returns what goes to one of its steps
 */
export function startFilm(film: HTMLElement, source?: FilmSource, step = 0): (step: number) => void {
  const { content } = partWithin<HTMLTemplateElement>(film, "template");
  const player = document.importNode(partWithin<HTMLElement>(content, ".film-player"), true);
  const screen = filmScreen(player, source ?? sentFilm(content));
  const caption = partWithin(player, ".film-caption");
  const button = (does: string) => partWithin<HTMLButtonElement>(player, `[data-does=${does}]`);
  const [play, slower] = [button("play"), button("slower")];
  const [playWords, pauseWords] = [play.textContent ?? "", dataOf(play, "other")];
  const isSlow = () => slower.getAttribute("aria-pressed") === "true";
  const head = playHead({
    endS: last(screen.startsS),
    pace: () => (isSlow() ? slowShare : 1),
    show: screen.show,
    // Read out where it stands, not all the way there.
    changed: (runs) => {
      play.textContent = runs ? pauseWords : playWords;
      caption.setAttribute("aria-live", runs ? "off" : "polite");
    },
  });
  play.addEventListener("click", head.startOrStop);
  button("back").addEventListener("click", () =>
    head.goTo(screen.startsS.findLast((startS) => startS < head.atS() - 1e-6) ?? 0),
  );
  button("on").addEventListener("click", () =>
    head.goTo(screen.startsS.find((startS) => startS > head.atS() + 1e-6) ?? last(screen.startsS)),
  );
  slower.addEventListener("click", () => slower.setAttribute("aria-pressed", String(!isSlow())));
  screen.slider.addEventListener("input", () => head.goTo(screen.timeOfSlider()));
  screen.slide(step);
  film.dataset.plays = "";
  film.append(player);
  return screen.slide;
}

interface PlayHead {
  readonly endS: number;
  /** Seconds of the film to a second. */
  readonly pace: () => number;
  readonly show: (atS: number, runs?: boolean) => void;
  readonly changed: (runs: boolean) => void;
}

/** Where a film is, and what moves it. */
function playHead({ endS, pace, show, changed }: PlayHead) {
  let atS = 0;
  let request = 0;
  const stop = () => {
    cancelAnimationFrame(request);
    request = 0;
    changed(false);
    show(atS);
  };
  const start = () => {
    if (atS >= endS) atS = 0;
    changed(true);
    let beforeMs: number | undefined;
    const frame = (nowMs: number) => {
      atS = Math.min(endS, atS + (pace() * (nowMs - (beforeMs ?? nowMs))) / 1000);
      beforeMs = nowMs;
      if (atS >= endS) return stop();
      show(atS, true);
      request = requestAnimationFrame(frame);
    };
    request = requestAnimationFrame(frame);
  };
  return {
    atS: () => atS,
    startOrStop: () => (request ? stop() : start()),
    goTo: (timeS: number) => {
      atS = Math.min(endS, Math.max(0, timeS));
      stop();
    },
  };
}
