import { type ConvertedAmplitude, convertAmplitude } from "../amplitude/index";
import { parseNumeral, requireText, VeladisError } from "../core/index";
import { type Amplitude, type Assumption, isUncertain } from "../reading/index";
import { type RatioOf, uncertainText, uncertaintyOf } from "../uncertainty/index";
import { bounds, requireBounds } from "./bounds";
import { refuseCommandLine } from "./command-line";
import { loadEngine } from "./engine";
import { explanationText } from "./explained";
import { kept } from "./kept";
import { numberText } from "./reading-words";
import { checkedSession, newSession, type Session } from "./session";
import { type Line, splitLine } from "./split-line";
import { amplitude, behind, behindAmplitude, isAmplitude, isLevelDifference, type Value, valueText } from "./value";
import { Walker } from "./walk";

/** What a line came to. */
export interface Answer {
  /** The value of the expression; with targets, the first converted amplitude. */
  readonly value: Value;
  /** The amplitudes in the types behind "to", in order. */
  readonly converted: readonly ConvertedAmplitude[];
  /** The variable it was assigned to. */
  readonly name?: string;
  /** The reading, when the line is nothing but one. */
  readonly written?: Amplitude;
  /** The answer as it is printed; behind "explain", the arithmetic that led to it. */
  readonly text: string;
}

/** The value of an expression, and what the amplitudes had assumed that it compared. */
interface Evaluated {
  readonly value: Value;
  readonly compared: readonly Assumption[];
  /** Whether the ± of readings that led to it is left out. */
  readonly isBare?: boolean;
  /** The value as a ratio of two readings with ±. */
  readonly ratio?: RatioOf | undefined;
}

const LEFT_OUT = "  (by best values: the ± of the readings is left out)";

/** A ratio with its ±: `0.980 ± 0.064 (k=2)`. */
function ratioText(ratio: RatioOf): string {
  const known = uncertaintyOf(ratio);
  return known.expanded === 0 ? valueText(ratio.value) : uncertainText(known).replace(/ (?=[ ,])/g, "");
}

function answerText(
  { explains }: Line,
  { value, compared, isBare = false, ratio }: Evaluated,
  converted: readonly ConvertedAmplitude[],
): string {
  if (explains) return explanationText(converted.length === 0 ? value : converted);
  const isLeft = isBare || (isLevelDifference(value) && isUncertain(value.history ?? []));
  const told = isLeft ? LEFT_OUT : "";
  if (typeof value === "boolean") return `${value}${behind({ assumed: compared })}${told}`;
  if (ratio !== undefined) return ratioText(ratio);
  if (converted.length === 0) return `${valueText(value)}${told}`;
  return converted.map((one) => `${numberText(one)}${behindAmplitude(one)}`).join("\n");
}

/** The value of an expression that is one reading or one variable, for which mathjs need not be loaded. */
function plainValue({ expression, literals }: Line, variables: ReadonlyMap<string, Value>): Value | undefined {
  return literals.get(expression) ?? variables.get(expression);
}

async function evaluated(line: Line, session: Session): Promise<Evaluated> {
  const plain = plainValue(line, session.variables);
  if (plain !== undefined) {
    return { value: plain, compared: [], isBare: session.bare?.has(line.expression) === true };
  }
  session.engine ??= await loadEngine();
  const { parse } = session.engine;
  const all = new Map<string, Value>([...session.variables, ...line.literals]);
  try {
    const walker = new Walker(session.engine, all, session.schemes, session.bare);
    const root = parse(line.expression);
    const value = walker.valueOf(root);
    return { value, compared: walker.compared, isBare: walker.isBare, ratio: walker.ratioOf(root) };
  } catch (error) {
    if (error instanceof VeladisError) throw error;
    // what mathjs or the stack refuses: its words name placeholders, so only the place is told
    const place = (error as { char?: number }).char;
    throw new VeladisError("syntax", {
      expected: "an expression that can be read and evaluated",
      received:
        place === undefined ? "one that cannot be" : `one that breaks off or goes wrong near character ${place}`,
    });
  }
}

function remember({ name }: Line, value: Value, session: Session, isBare: boolean): void {
  const { variables } = session;
  if (name !== undefined && !variables.has(name) && variables.size >= bounds.variables) {
    throw new VeladisError("out-of-range", {
      expected: `at most ${bounds.variables} variables`,
      received: "one more",
    });
  }
  const one = kept(value);
  const bare = new Set(session.bare);
  for (const known of name === undefined ? ["last"] : ["last", name]) {
    if (isBare && typeof value === "number") bare.add(known);
    else bare.delete(known);
  }
  session.bare = bare;
  variables.set("last", one);
  if (name !== undefined) variables.set(name, one);
}

/**
 * The answer to a line of the calculator: a reading, or an expression over readings, numbers and variables.
 *
 * `[name =] <expression> [with crest factor <number>] [to <type>, <type> ...]`, or `explain` before an expression for
 * the arithmetic behind its answer. An amplitude keeps what was assumed and the steps through all of it.
 *
 * Safe on lines from strangers: arithmetic, comparisons, lists and calls of listed functions are evaluated, everything
 * else is refused by its kind; length, nesting, size and result are bounded. mathjs is loaded when the first expression
 * needs it, in an instance of its own.
 *
 * @param line - at most 500 characters
 * @param session - the variables; a new one if not given
 * @throws {@link VeladisError} for everything that is refused, and nothing else
 * @example
 * ```ts
 * import { evaluateLine, newSession } from "veladis/mathjs";
 *
 * const session = newSession();
 * (await evaluateLine("rss(2.1 mm/s rms, 0.8 mm/s rms)", session)).text; // => "2.25 mm/s rms  (uncorrelated)"
 * (await evaluateLine("last / 2 to in/s rms, in/s pk", session)).text;
 * // => "0.0442 in/s rms  (uncorrelated)\n0.0626 in/s pk  (uncorrelated, sine)"
 * (await evaluateLine("explain 2 mm/s rms * 1.5", session)).text;
 * // => "2 mm/s rms\n2 mm/s rms x 1.5 = 3 mm/s rms"
 * await evaluateLine("2 mm/s rms + 3 mm/s pk"); // throws wrong-detector
 * await evaluateLine("import('fs')"); // throws unknown-option
 * ```
 */
export async function evaluateLine(line: string, session: Session = newSession()): Promise<Answer> {
  checkedSession(session);
  try {
    return await answered(line, session);
  } catch (error) {
    // whatever a part of the line refuses, it is in the line
    throw VeladisError.is(error) ? Object.assign(error, { parameter: "line" }) : error;
  }
}

async function answered(line: string, session: Session): Promise<Answer> {
  requireBounds(requireText(line, 'a line such as "2 * 4.1 mm/s rms to in/s pk"'));
  const names = new Set(session.variables.keys());
  refuseCommandLine(line, names);
  const parts = splitLine(line, names);
  const outcome = await evaluated(parts, session);
  const { value } = outcome;
  const crest = parts.crestFactor;
  if (crest !== undefined && parts.targets.length === 0) {
    throw new VeladisError("missing-option", {
      expected: 'a reading type after "to", which the crest factor serves',
      received: "nothing",
    });
  }
  const options = crest === undefined ? {} : { crestFactor: parseNumeral(crest, "a crest factor") };
  const converted = parts.targets.map((target) =>
    convertAmplitude(amplitude(value, "an amplitude to convert"), target, options),
  );
  const said = answerText(parts, outcome, converted);
  remember(
    parts,
    converted.length === 1 ? (converted[0] as ConvertedAmplitude) : value,
    session,
    outcome.isBare === true,
  );
  const plain = parts.name === undefined && converted.length === 0 && !parts.explains;
  const literal = plain ? parts.literals.get(parts.expression) : undefined;
  const written = literal !== undefined && isAmplitude(literal) ? literal : undefined;
  return {
    value: converted[0] ?? value,
    converted,
    ...(parts.name !== undefined && { name: parts.name }),
    ...(written !== undefined && { written }),
    text: said,
  };
}
