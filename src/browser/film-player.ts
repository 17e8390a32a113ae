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
  /** Does one of what there is to show of a time, and says whether there was any. */
  readonly show: (atS: number) => boolean;
  readonly changed: (runs: boolean) => void;
}

/** Where a film is, and what moves it. However quick it is drawn through, what is shown at last is where it stands. */
function playHead({ endS, pace, show, changed }: PlayHead) {
  let atS = 0;
  let runs = false;
  let isAsked = false;
  let beforeMs: number | undefined;
  const run = (on: boolean) => {
    runs = on;
    beforeMs = undefined;
    changed(on);
  };
  const ask = () => {
    isAsked = true;
    requestAnimationFrame(frame);
  };
  const frame = (nowMs: number) => {
    isAsked = false;
    if (runs) atS = Math.min(endS, atS + (pace() * (nowMs - (beforeMs ?? nowMs))) / 1000);
    beforeMs = nowMs;
    const hasShown = show(atS);
    if (hasShown || (runs && atS < endS)) ask();
    else if (runs) run(false);
  };
  return {
    atS: () => atS,
    startOrStop: () => {
      if (!runs && atS >= endS) atS = 0;
      run(!runs);
      if (!isAsked) ask();
    },
    goTo: (timeS: number) => {
      atS = Math.min(endS, Math.max(0, timeS));
      if (runs) run(false);
      if (isAsked) return;
      isAsked = true;
      show(atS);
      // A finger's move is told within a frame, whose turn is taken by now.
      requestAnimationFrame(ask);
    },
  };
}
