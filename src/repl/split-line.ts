import { shown, VeladisError } from "../core/index";
import { CREST_FACTOR, joinedPeaks } from "../sentence/index";
import { type Literal, literalsOf } from "./literals";
import { hasOpenBracket } from "./open-bracket";
import { knownNames } from "./walk";

/** A line of the calculator taken apart. */
export interface Line {
  /** Whether the arithmetic behind the answer is asked for in place of the answer. */
  readonly explains: boolean;
  /** The variable it assigns to. */
  readonly name: string | undefined;
  /** The expression, with each amplitude replaced by a name of its own. */
  readonly expression: string;
  /** The amplitudes and numbers of decibels by those names. */
  readonly literals: ReadonlyMap<string, Literal["value"]>;
  /** The expression as it was written. */
  readonly written: string;
  readonly crestFactor: string | undefined;
  /** Reading types behind "to". */
  readonly targets: readonly string[];
}

const form = {
  expected: 'an expression such as "2 * 4.1 mm/s rms to in/s pk", with one "=" before it and one "to" after it at most',
};

/** The word that asks for the arithmetic behind an answer. */
const EXPLAIN = /^\s*explain(?![A-Za-z0-9_])/i;

function checkedName(name: string): string {
  if (!name.startsWith("_") && ![...knownNames, "last"].includes(name) && !EXPLAIN.test(name)) return name;
  throw new VeladisError("unknown-option", {
    expected: "a name of your own, not that of a function, a constant or the last answer, and not beginning with _",
    received: shown(name),
  });
}

/** The text within the brackets, if they stand around the whole of it: `explain(a to mm/s rms)`. */
function unbracketed(text: string): string {
  const inner = /^\s*\((.*)\)\s*$/s.exec(text)?.[1];
  if (inner === undefined) return text;
  let depth = 0;
  for (const letter of inner.replace(/"[^"]*"?/g, "")) {
    if (letter === "(") depth++;
    else if (letter === ")" && --depth < 0) return text;
  }
  return inner;
}

/** The coverage factor of an uncertainty, whose sign assigns nothing. */
const COVERAGE = /\([^()=]*\bk\s*=[^()=]*\)|(?<=(?:±|\+\/[-\u2212])[^=]*)[\s,;]k\s*=(?!=)/gi;

/** Text in quotes, and what is printed behind a difference: a `to` within them is no conversion. */
const NOT_TO = /"[^"]*"?|\([^()]*;\s*up to \S+ with a phase between them\)/g;

/** The texts before and behind the first `to` that stands outside quotes and outside of what is printed behind a reading. */
function splitTargets(text: string): [before: string, behind: string | undefined] {
  const quoted = text.replace(NOT_TO, (string) => "_".repeat(string.length));
  const found = /\s+to(\s+|$)/i.exec(quoted);
  if (found === null) return [text, undefined];
  return [text.slice(0, found.index), text.slice(found.index + found[0].length)];
}

/** Refuses types for an assignment that a single name cannot hold. */
function requireTargets(name: string | undefined, targets: readonly string[]): void {
  if (name === undefined || targets.length < 2) return;
  throw new VeladisError("syntax", {
    expected: `one type behind "to" where a name is assigned, since a name holds one answer; convert ${name} to the others on lines of their own`,
    received: shown(targets.join(", ")),
  });
}

/** Refuses a `to` within an expression: types stand behind the whole of it. */
function requirePlaceOfTo(before: string, behind: string, line: string): void {
  if (!hasOpenBracket(before) && !/\s[+*<>]\s|\sto\s/i.test(behind)) return;
  throw new VeladisError("syntax", {
    expected:
      'one "to" at the end of a line, behind the whole expression and outside brackets; convert first, on a line of its own, as in c2 = c to g rms, then use c2',
    received: shown(line),
  });
}

/** The expression with each amplitude replaced by a name that no one can type. */
function replaced(text: string, literals: readonly Literal[]): string {
  let expression = "";
  let at = 0;
  literals.forEach(({ start, end }, i) => {
    expression += `${text.slice(at, start)} _${i} `;
    at = end;
  });
  return (expression + text.slice(at)).trim();
}

/**
 * The parts of a line: `[name =] <expression> [with crest factor <number>] [to <type>, <type> ...]`, or `explain` in
 * place of the name.
 *
 * @throws {@link VeladisError} `syntax`, `unknown-option` for a name that may not be assigned, and as {@link literalsOf}
 */
export function splitLine(line: string, variables: ReadonlySet<string>): Line {
  const assignment = /^\s*([A-Za-z_][A-Za-z0-9_]*)\s*=(?!=)/.exec(line);
  const name = assignment === null ? undefined : checkedName(assignment[1] as string);
  const explained = assignment === null ? EXPLAIN.exec(line) : null;
  const body = line.slice((assignment ?? explained)?.[0].length ?? 0);
  const [before, behind] = splitTargets(joinedPeaks(explained === null ? body : unbracketed(body)));
  if (behind !== undefined) requirePlaceOfTo(before, behind, line);
  const [written, crestFactor, ...more] = before.split(CREST_FACTOR) as [string, ...string[]];
  if (
    written.trim() === "" ||
    behind?.trim() === "" ||
    more.length > 0 ||
    /(^|[^=!<>])=([^=]|$)/.test(written.replace(COVERAGE, ""))
  ) {
    throw new VeladisError("syntax", { ...form, received: shown(line) });
  }
  if (/(^|[^A-Za-z0-9_])_/.test(written.replace(/"[^"]*"?/g, ""))) {
    throw new VeladisError("syntax", { expected: "a name that does not begin with _", received: shown(line) });
  }
  const targets = behind === undefined ? [] : behind.split(/,| and /).map((target) => target.trim());
  requireTargets(name, targets);
  const literals = literalsOf(written, variables);
  return {
    explains: explained !== null,
    name,
    written: written.trim(),
    expression: replaced(written, literals),
    literals: new Map(literals.map(({ value }, i) => [`_${i}`, value])),
    crestFactor,
    targets,
  };
}
