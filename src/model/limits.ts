/** The most that content may have of something. */
interface Limit {
  readonly most: number;
  /** What is counted, as a message says it. */
  readonly of: string;
  /** What to do about more. */
  readonly instead: string;
  /** Why there is an end, and why it lies there. */
  readonly reason: string;
}

/**
 * All limits of content. What goes beyond one is an error with its place before anything is made of it, so that no
 * content takes more than a gigabyte of memory, or twenty seconds for a page, on a slow machine. Each lies several times
 * beyond the largest that the shipped guide has.
 */
export const limits = {
  files: {
    most: 10_000,
    of: "files in the content",
    instead: "take out what is not of the guide",
    reason: "a federation of many clubs has five thousand rigs; a folder named by mistake has more",
  },
  contentBytes: {
    most: 20_000_000,
    of: "bytes in all files of the content",
    instead: "take out what is not of the guide",
    reason:
      "all of them are in memory at once, each about twenty times its size; five thousand rigs have half of this",
  },
  fileBytes: {
    most: 200_000,
    of: "bytes in the file",
    instead: "part it into several files",
    reason: "a lesson of an hour's reading has a third of this",
  },
  wordsBytes: {
    most: 600_000,
    of: "bytes in the file of words",
    instead: "take out the comments of those that are done",
    reason: "all words in letters of two bytes, each below its English, take half of this",
  },
  imageBytes: {
    most: 25_000_000,
    of: "bytes in the picture",
    instead: "save it smaller",
    reason: "a telephone's photo has a third of this",
  },
  picturesBytes: {
    most: 300_000_000,
    of: "bytes in all pictures",
    instead: "save some smaller, or take out what no text shows",
    reason: "all of them are in memory at once; a phone keeps what is made of them",
  },
  fontBytes: {
    most: 25_000_000,
    of: "bytes in the font",
    instead: "take one with fewer signs",
    reason: "fonts of all signs of Chinese have as much",
  },
  imagePixels: {
    most: 60_000_000,
    of: "pixels in the picture",
    instead: "save it smaller",
    reason: "a telephone's photo has fewer; each takes four bytes while it is made smaller",
  },
  svgSigns: {
    most: 1_000_000,
    of: "signs in the drawing",
    instead: "simplify it, or save it as PNG",
    reason: "a page with ten times this does not scroll",
  },
  nameSigns: {
    most: 60,
    of: "signs in the file's name",
    instead: "call it by fewer",
    reason: "with what stands before and behind it, a path stays below the 260 signs of older systems",
  },
  lineSigns: {
    most: 10_000,
    of: "signs in a line",
    instead: "break the line",
    reason: "no editor shows more, and nested marks in one line cost their square",
  },
  indent: {
    most: 80,
    of: "columns before the first sign of a line",
    instead: "nest less",
    reason: "each level costs all those below it again",
  },
  marksAbreast: {
    most: 10,
    of: "marks of quotes and lists at the start of a line",
    instead: "nest less",
    reason: "each level costs all those below it again, and a thousand end the reader's stack",
  },
  parts: {
    most: 1000,
    of: "parts between empty lines",
    instead: "part the text into several files",
    reason: "the longest text of the shipped guide has less than a twentieth of this",
  },
  marks: {
    most: 1000,
    of: "marks such as * and [ between two empty lines",
    instead: "write it with fewer marks, or part it by empty lines",
    reason: "pairing marks takes the square of their number",
  },
  entries: {
    most: 8000,
    of: "keys and entries in the file",
    instead: "part it into several files",
    reason: "to find keys that stand twice takes the square of their number",
  },
  brackets: {
    most: 20,
    of: "brackets within each other",
    instead: "nest less",
    reason: "a reader of nested brackets has a stack that ends; content has three levels",
  },
  aliases: {
    most: 100,
    of: "times that one anchor is repeated",
    instead: "write the values out, or part them into several files",
    reason: "aliases of aliases multiply: nine levels of nine are 400 million values",
  },
  depth: {
    most: 16,
    of: "levels within each other",
    instead: "nest less",
    reason: "a column has no room for more",
  },
  blockWords: {
    most: 1000,
    of: "words in one paragraph, cell or value",
    instead: "part it into paragraphs",
    reason: "a telephone shows about a hundred at once, and nobody reads ten screens without a break",
  },
  wordSigns: {
    most: 200,
    of: "signs without a space",
    instead: "break it by spaces",
    reason: "a column of paper holds about 55",
  },
  titleSigns: {
    most: 100,
    of: "signs in a title",
    instead: "say less in the title, and the rest in the text",
    reason: "a title stands in drawings and on cards too; the longest of the shipped guide has half of this",
  },
  sentenceWords: {
    most: 60,
    of: "words in a purpose, summary, aim or what a fish asks",
    instead: "say it in one sentence, and the rest in the text",
    reason:
      "it stands in lists, below headings and in what a search shows; the longest of the shipped guide has less than half of this",
  },
  blocks: {
    most: 1000,
    of: "paragraphs, list entries, headings and rows in one text",
    instead: "part the text into several files",
    reason: "the longest text of the shipped guide has less than a tenth of this",
  },
  tableRows: {
    most: 200,
    of: "rows in a table",
    instead: "part it into several tables",
    reason: "a page of paper has about thirty, and who scrolls through seven of them no longer sees the head",
  },
  tableColumns: {
    most: 12,
    of: "columns in a table",
    instead: "part it into several tables",
    reason: "a column of paper has room for about six",
  },
  tableCells: {
    most: 2400,
    of: "cells in the tables of one text",
    instead: "part the text into several files",
    reason: "one table of all its rows and columns has as many",
  },
  listEntries: {
    most: 2000,
    of: "entries in a list",
    instead: "take out what is not needed",
    reason: "a glossary of a whole trade has half of this",
  },
  pictures: {
    most: 50,
    of: "drawings and pictures in one text",
    instead: "part the text into several files",
    reason: "each is drawn for the page, and again for each paper: three hundred take four seconds",
  },
  depths: {
    most: 20,
    of: "depths of a rig, or paces",
    instead: "keep those that are fished",
    reason: "each takes a tenth of a second and two megabytes; a card has room for about five",
  },
  shotNames: {
    most: 20,
    of: "names of shot in a list of a rig",
    instead: "keep those that are pinched on",
    reason: "each is one more to place and to draw at each depth",
  },
  shotSizes: {
    most: 40,
    of: "sizes in a scale or a tub of shot",
    instead: "keep those that are sold",
    reason: "ways to make up a load multiply with each; the longest scale of the trade has about twenty",
  },
  profilePoints: {
    most: 200,
    of: "points of a float's profile",
    instead: "keep every other one",
    reason: "a float is summed up from one to the next for each place of the water's surface on it",
  },
  addressSigns: {
    most: 200,
    of: "signs in the address of the site",
    instead: "serve the guide at a shorter address",
    reason:
      "with a rig's page behind it, a code on a pocket card still has modules that a telephone can read",
  },
} as const satisfies Readonly<Record<string, Limit>>;

export type LimitName = keyof typeof limits;

/** The limit that a text has, by its path below the content folder. */
export const bytesLimit = (path: string) => (path.startsWith("words/") ? "wordsBytes" : "fileBytes");
