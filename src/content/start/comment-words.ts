import { englishForms, type FormWords } from "../schema/json-schema.ts";

/** How new files are worded in a language. */
export interface CommentWords {
  /** What a key means, from what it does in English. */
  note(english: string): string;
  /** What a file says at first, the same. */
  atFirst(english: string): string;
  /** Asks for a value of a form. */
  write(form: string): string;
  readonly mayBeLeftOut: string;
  readonly form: FormWords;
}

export const english: CommentWords = {
  note: (said) => said,
  atFirst: (said) => said,
  write: (form) => `Write ${form}.`,
  mayBeLeftOut: "May be left out.",
  form: englishForms,
};
