import { equivalents } from "../amplitude/index";
import { type Amplitude, type Assumption, isUncertain, union } from "../reading/index";
import { evaluateLine } from "./evaluate-line";
import { helpText } from "./help";
import { hasOpenBracket } from "./open-bracket";
import { numberText } from "./reading-words";
import type { Session } from "./session";
import { behind, valueText } from "./value";

/** What the calculator says to a line, or that it ends. */
export type Response = { readonly text: string; readonly answer?: unknown } | "exit";

/** A reading that was only written down, in the everyday units: a row a unit, with what the row assumed. */
function equivalentsText(reading: Amplitude): string {
  const width = isUncertain(reading.history ?? []) ? 32 : 16;
  return equivalents(reading)
    .map(({ rms, pk, pp }) => {
      const row = [rms, pk, pp];
      const assumed = row.reduce<readonly Assumption[]>((all, one) => union(all, one.assumed), []);
      return `${row.map((one) => numberText(one).padEnd(width)).join("")}${behind({ ...reading, assumed }).trim()}`.trimEnd();
    })
    .join("\n");
}

/** A list of the variables with their values. */
function namesText({ variables }: Session): string {
  if (variables.size === 0) return "no variables yet";
  return [...variables].map(([name, value]) => `${name} = ${valueText(value).split("\n")[0]}`).join("\n");
}

/**
 * The response to a line: a word of the calculator (`help`, `names`, `exit`), a remark, or a line to evaluate.
 *
 * @throws {@link VeladisError} as {@link evaluateLine} and {@link helpText}
 */
export async function respond(line: string, session: Session): Promise<Response> {
  if (isExit(line)) return "exit";
  const [, word, topic] = /^\s*(help|names)(?:\s+(\S+))?\s*$/i.exec(line) ?? [];
  switch (word?.toLowerCase()) {
    case "help":
      return { text: helpText(topic) };
    case "names":
      return { text: namesText(session) };
  }
  if (line.trim() === "" || line.trimStart().startsWith("#")) return { text: "" };
  const answer = await evaluateLine(line, session);
  if (answer.written !== undefined) return { text: equivalentsText(answer.written), answer };
  return { text: answer.name === undefined ? answer.text : `${answer.name} = ${answer.text}`, answer };
}

/** Whether a line is the word that ends the calculator, also where an unfinished line goes on. */
export function isExit(line: string): boolean {
  return /^\s*(exit|quit)(\s+\S+)?\s*$/i.test(line);
}

/** Whether a line breaks off: within brackets or quotes, or behind an operator. */
export function isUnfinished(line: string): boolean {
  const bare = line.replace(/"[^"]*"/g, "text");
  return bare.includes('"') || hasOpenBracket(line) || /([-+*/^,=]|\bto)\s*$/.test(bare);
}
