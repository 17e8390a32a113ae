import { expect, test } from "vitest";
import { makeSearch } from "../../src/browser/find-sections.ts";
import type { SearchEntry } from "../../src/model/search-entry.ts";
import { realSiteFiles } from "./real-site.ts";

const files = await realSiteFiles();
const script = [...files].find(([path]) => /assets\/search-index\./.test(path))![1];
const [entries, synonyms] = new Function(`${script}; return [dotdownSearch, dotdownSynonyms];`)() as [
  SearchEntry[],
  string[][],
];
const search = await makeSearch(entries, synonyms);
const firstThree = (question: string) =>
  search(question)
    .slice(0, 3)
    .map(({ entry }) => entry.address);

/** What beginners type, and the section or page that has the answer. Common practice, no source. */
const questions: readonly (readonly [question: string, answer: string])[] = [
  ["lightning", "safety.html#wires-weather-and-water"],
  ["is lead legal", "safety.html#lead-and-other-shot"],
  ["drown", "safety.html#deep-water"],
  ["somebody fell in", "safety.html#deep-water"],
  ["hook in finger", "safety.html#hooks-and-eyes"],
  ["hook stuck in skin", "safety.html#hooks-and-eyes"],
  ["power lines", "safety.html#wires-weather-and-water"],
  ["who do I call in an emergency", "safety.html#whom-to-ring"],
  ["phone number", "safety.html#whom-to-ring"],
  ["rats", "safety.html#germs-in-the-water"],
  ["sunburn", "safety.html#heat-cold-and-sun"],
  ["ticks", "safety.html#ticks-and-plants-that-burn"],
  ["thin ice", "safety.html#wires-weather-and-water"],
  ["can I wade", "safety.html#deep-water"],
  ["do I need a licence", "safety.html#rules-first"],
  ["fishing permit", "safety.html#rules-first"],
  ["close season", "safety.html#rules-first"],
  ["weed and mud on net", "safety.html#clean-up-for-the-waters-sake"],
  ["swivel", "knots.html#loop-to-loop"],
  ["float keeps going under", "what-the-float-says.html#the-float-sinks"],
  ["float lies flat", "what-the-float-says.html#the-float-lies-flat"],
  ["float too high", "what-the-float-says.html#the-float-stands-too-tall"],
  ["float drifts", "what-the-float-says.html#the-float-drifts-with-the-wind"],
  ["line tangles", "what-the-float-says.html#the-hook-length-tangles"],
  ["small bites nothing there", "what-the-float-says.html#quick-little-dips"],
  ["maggots come back empty", "what-the-float-says.html#maggots-come-back"],
  ["hold back the float", "what-the-float-says.html#the-float-dives"],
  ["no bites", "lessons/when-it-goes-wrong.html#no-bites"],
  ["missed bites", "lessons/bites-and-the-strike.html"],
  ["when do I strike", "lessons/bites-and-the-strike.html"],
  ["how to find the depth", "lessons/find-the-depth.html"],
  ["plumb the depth", "lessons/find-the-depth.html#plumb-the-depth"],
  ["how to tie a hook", "lessons/tie-the-hook-length.html"],
  ["knot for a loop", "lessons/first-knots.html#the-loop"],
  ["wet the knot", "lessons/first-knots.html"],
  ["what is a telltale", "lessons/telltales-and-lift-bites.html"],
  ["what is bulk shot", "lessons/shotting-patterns.html"],
  ["locking shot", "glossary.html"],
  ["which shot sizes", "lessons/split-shot.html"],
  ["how to cast", "lessons/casting.html"],
  ["underarm cast", "lessons/casting.html#underarm-swing"],
  ["side cast", "lessons/casting.html#side-cast"],
  ["how to unhook a fish", "lessons/land-unhook-return.html"],
  ["disgorger", "lessons/land-unhook-return.html"],
  ["landing net", "lessons/the-tackle.html"],
  ["keepnet", "lessons/the-tackle.html"],
  ["maggots", "baits.html#maggot"],
  ["magots", "baits.html#maggot"],
  ["sweetcorn", "baits.html#sweetcorn"],
  ["bread", "baits.html#bread-flake"],
  ["worms", "baits.html#worm-piece"],
  ["how much feed", "lessons/feeding.html#how-much-for-a-session"],
  ["groundbait", "lessons/groundbait.html"],
  ["stick float", "floats.html#stick"],
  ["wagler", "rigs/straight-waggler"],
  ["pole or whip", "lessons/the-whip.html"],
  ["fill the reel", "lessons/fill-the-reel.html"],
  ["line strength for carp", "fish.html#carp"],
  ["what hook size", "lessons/hook-and-bait.html"],
  ["tench", "fish.html#tench"],
  ["perch", "fish.html#perch"],
  ["crucian", "fish.html#crucian-carp"],
  ["winter fishing", "lessons/winter.html"],
  ["slider float deep water", "floats.html#slider"],
  ["lift method", "rigs/lift-method.html"],
];

test("more than sixty questions of beginners find their section among the first three", () => {
  expect(questions.length).toBeGreaterThanOrEqual(60);
  const missed = questions.flatMap(([question, answer]) => {
    const found = firstThree(question);
    return found.some((address) => address.startsWith(answer)) ? [] : [{ question, answer, found }];
  });
  expect(missed).toEqual([]);
});

test("what is found is marked in the words around it", () => {
  const [first] = search("lightning");
  expect(
    first!
      .excerpt()
      .filter(({ marked }) => marked)
      .map(({ text }) => text.toLowerCase()),
  ).toContain("thunder");
  const text = first!
    .excerpt()
    .map((part) => part.text)
    .join("");
  expect(text.length).toBeLessThan(220);
});

test("a question of nothing but small words still finds nothing odd, and an unknown word nothing", () => {
  expect(search("")).toEqual([]);
  expect(search("xylophone")).toEqual([]);
});
