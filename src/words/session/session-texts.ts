import type { Root, RootContent } from "mdast";
import { emergencyBody, weatherBody } from "./emergency-text.ts";
import { feedBody } from "./feed-text.ts";
import { catchBody, registerBody } from "./forms-text.ts";
import { kitBody } from "./kit-text.ts";
import { readyBody } from "./ready-text.ts";
import { riskBody } from "./risk-text.ts";
import { runBody } from "./run-sheet-text.ts";
import type { SessionContext } from "./session-context.ts";

/** One sheet of a session's pack, or one part of its page. */
export interface SessionText {
  readonly id: "run" | "ready" | "emergency" | "weather" | "risk" | "kit" | "feed" | "register" | "catch";
  readonly title: string;
  readonly summary: string;
  readonly body: Root;
  /** On paper it stands on the back of the sheet before it. */
  readonly isOnBack: boolean;
  /** It is nothing but lines to write on. */
  readonly isForm: boolean;
}

type Part = (context: SessionContext) => readonly RootContent[];

const parts: { readonly [Id in SessionText["id"]]: Part } = {
  run: runBody,
  ready: readyBody,
  emergency: emergencyBody,
  weather: weatherBody,
  risk: riskBody,
  kit: kitBody,
  feed: feedBody,
  register: registerBody,
  catch: catchBody,
};

const forms: readonly SessionText["id"][] = ["register", "catch"];
const onBacks: readonly SessionText["id"][] = ["ready", "weather"];

/** The sheets of a session's pack, in the order in which they are needed. */
export function sessionTexts(context: SessionContext): readonly SessionText[] {
  return (Object.keys(parts) as SessionText["id"][]).map((id) => ({
    id,
    title: context.words(`session.${id}.title`),
    summary: context.words(`session.${id}.summary`),
    body: { type: "root", children: [...parts[id](context)] },
    isOnBack: onBacks.includes(id),
    isForm: forms.includes(id),
  }));
}
