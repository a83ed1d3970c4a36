import { shown, VeladisError } from "../core/index";
import { detectors } from "../detectors/index";
import { frequencyUnits } from "../frequency/index";
import { levelReferences } from "../reading/index";
import { builtInSchemes } from "../severity/index";
import { units } from "../units/index";
import { bounds } from "./bounds";
import { functions, numberFunctions } from "./functions";
import { topics } from "./help";
import { checkedSession, type Session } from "./session";
import { knownNames } from "./walk";

/** Words that a line can begin with, besides names and readings. */
const COMMANDS = ["explain ", "help", "names", "exit"];

/** Functions with the bracket that follows them, and constants. */
const callable = /* @__PURE__ */ (() => [
  ...[...Object.keys(functions), ...numberFunctions].map((name) => `${name}(`),
  "pi",
  "tau",
])();

/** What could stand where the last word of the line stands. */
function candidates(written: string, { variables }: Session): readonly string[] {
  const before = written.replace(/^\s*explain\b/i, "");
  if (/^\s*help\s/.test(before)) return [...Object.keys(topics), ...knownNames];
  if ((before.match(/"/g)?.length ?? 0) % 2 === 1) return builtInSchemes.map(({ id }) => id);
  if (/\b(at|@)\s+[\d.]+x?\s*([\d.]+\s+)?$/.test(before)) return Object.keys(frequencyUnits);
  if (/\bre\s+$/i.test(before)) return Object.keys(levelReferences);
  const types = [...Object.keys(units), ...Object.keys(detectors), "dB re "];
  if (/(\d\s+|\bto\s+|,\s*)$/.test(before)) return [...types, ...variables.keys(), ...callable];
  const words = ["at ", "to ", "with crest factor "];
  return [
    ...(written.trim() === "" ? COMMANDS : before.trim() === "" ? [] : words),
    ...variables.keys(),
    ...callable,
    ...types,
  ];
}

/**
 * The ways in which the last word of a line can go on, and that word.
 *
 * Units and detectors behind a number, units of frequency behind `at`, schemes within quotes, and everywhere the names
 * of variables, functions and constants.
 *
 * @param line - the line as far as it is typed
 * @returns the words that fit, and the part of the line that they stand for
 * @example
 * ```ts
 * import { completions, newSession } from "veladis/mathjs";
 *
 * completions("3 mm/s r", newSession()); // => [["rms", "round(", "rss(", "rssDifference("], "r"]
 * ```
 */
export function completions(line: string, session: Session): [found: string[], word: string] {
  checkedSession(session);
  if (typeof line !== "string") {
    throw new VeladisError("wrong-type", {
      expected: "the line as far as it is typed",
      received: shown(line),
      parameter: "line",
    });
  }
  if (line.length > bounds.length) return [[], ""];
  const word = /[^\s(,"[*+<>=]*$/.exec(line)?.[0] ?? "";
  const before = line.slice(0, line.length - word.length);
  const found = candidates(before, session).filter((one) => one.toLowerCase().startsWith(word.toLowerCase()));
  return [[...new Set(found)].sort(), word];
}
