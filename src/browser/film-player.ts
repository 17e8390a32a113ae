import { last } from "../core/lists.ts";
import { filmScreen } from "./film-screen.ts";
import { type FilmSource, sentFilm } from "./film-source.ts";
import { stageOf } from "./film-stage.ts";
import { inOwnFrame } from "./own-frame.ts";
import { dataOf, partWithin } from "./page-parts.ts";

/** Share of the pace that "slower" plays at. */
const slowShare = 0.25;

interface Player {
  /** Goes to one of its steps. */
  goTo(step: number): void;
  /** Plays another film from where it is; its parts are numbered as those of the one before. */
  take(source: FilmSource): void;
}

/**
 * Puts the player of a film in place of its strip. Nothing moves until somebody asks.
 *
 * @param source what it plays: what the page was sent unless told otherwise
 * @param step where it begins
 */
export function startFilm(film: HTMLElement, source?: FilmSource, step = 0): Player {
  const { content } = partWithin<HTMLTemplateElement>(film, "template");
  const player = document.importNode(partWithin<HTMLElement>(content, ".film-player"), true);
  let played = source ?? sentFilm(content);
  const stage = stageOf(partWithin(player, ".film-moving"), (place, tag) => played.part(place, tag));
  let screen = filmScreen(player, played, stage);
  const slider = partWithin<HTMLInputElement>(player, "input");
  const caption = partWithin(player, ".film-caption");
  const button = (does: string) => partWithin<HTMLButtonElement>(player, `[data-does=${does}]`);
  const [play, slower] = [button("play"), button("slower")];
  const [playWords, pauseWords] = [play.textContent ?? "", dataOf(play, "other")];
  const isSlow = () => slower.getAttribute("aria-pressed") === "true";
  const head = playHead({
    endS: () => last(screen.startsS),
    pace: () => (isSlow() ? slowShare : 1),
    show: (atS, runs) => screen.show(atS, runs),
    readySoon: (atS) => void screen.readySoon(atS),
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
  const goTo = (value: string) => head.goTo(screen.timeOf(value));
  slider.addEventListener("input", () => goTo(slider.value));
  goTo(String(step));
  film.dataset.plays = "";
  film.append(player);
  return {
    goTo: (to) => goTo(String(to)),
    take: (another) => {
      played = another;
      screen = filmScreen(player, another, stage);
      head.stay();
    },
  };
}

interface PlayHead {
  readonly endS: () => number;
  /** Seconds of the film to a second. */
  readonly pace: () => number;
  /** Does one of what there is to show of a time, and says whether there was any. */
  readonly show: (atS: number, runs: boolean) => boolean;
  /** Makes ready, between the frames, what the moment of a time and the one after it are shown with. */
  readonly readySoon: (atS: number) => void;
  readonly changed: (runs: boolean) => void;
}

/** Where a film is, and what moves it. However quick it is drawn through, what is shown at last is where it stands. */
function playHead({ endS, pace, show, readySoon, changed }: PlayHead) {
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
    if (isAsked) return;
    isAsked = true;
    inOwnFrame(frame);
    readySoon(atS);
  };
  const frame = (nowMs: number) => {
    isAsked = false;
    if (runs) atS = Math.min(endS(), atS + (pace() * (nowMs - (beforeMs ?? nowMs))) / 1000);
    beforeMs = nowMs;
    if (show(atS, runs) || (runs && atS < endS())) ask();
    else if (runs) run(false);
  };
  return {
    atS: () => atS,
    startOrStop: () => {
      if (!runs && atS >= endS()) atS = 0;
      run(!runs);
      ask();
    },
    goTo: (timeS: number) => {
      atS = Math.min(endS(), Math.max(0, timeS));
      if (runs) run(false);
      ask();
    },
    /** Shows what there is by now where it is. */
    stay: () => {
      atS = Math.min(endS(), atS);
      ask();
    },
  };
}
