import { type ParseArgsConfig, parseArgs } from "node:util";
import { requireChoice, shown, unknownOption, VeladisError } from "../../core/index";
import type { CommandPage, TextsRow } from "./command-page";
import type { OptionRow, OptionRows, ParsedOptions, Values } from "./option-row";

const OPTIONS = "options of this command, each with its value where it takes one";

type Options = NonNullable<ParseArgsConfig["options"]>;

function optionOf({ argument, default: value, several }: OptionRow): Options[string] {
  if (argument === undefined) return { type: "boolean", default: false };
  return {
    type: "string",
    ...(several && { multiple: true, default: [] }),
    ...(value !== undefined && { default: value }),
  };
}

/**
 * Refuses texts beside an option that says what to answer, since one of the two would be passed over.
 *
 * @throws {@link VeladisError} `unknown-option`
 */
export function requireAlone(option: string, texts: readonly string[]): void {
  if (texts.length === 0) return;
  throw new VeladisError("unknown-option", {
    expected: `--${option}, or a text in its place, not both`,
    received: texts.map(shown).join(" "),
  });
}

/** Refuses more texts than a command takes: beside options alone, a text is a slip such as a forgotten comma in a list. */
function requireTexts(texts: readonly string[], row: TextsRow | undefined, names: readonly string[]): void {
  if (texts.length <= (row === undefined ? 0 : (row.most ?? texts.length))) return;
  throw new VeladisError("unknown-option", {
    expected: row?.what ?? "options alone, with quotation marks about values of several words",
    received: texts.map(shown).join(" "),
    ...(row === undefined && { allowed: names }),
  });
}

/** What was given, one by one. */
interface Tokens {
  readonly tokens: readonly { readonly kind: string; readonly name?: string }[];
}

/** Refuses a value that is told twice: one of the two would be passed over. */
function requireOnce(tokens: Tokens["tokens"], options: OptionRows): void {
  const names = tokens.flatMap(({ kind, name }) => (kind === "option" && name !== undefined ? [name] : []));
  const twice = names.find((name, i) => {
    const row = options[name];
    return row?.argument !== undefined && !row.several && names.indexOf(name) !== i;
  });
  if (twice === undefined) return;
  throw new VeladisError("out-of-range", {
    expected: `--${twice} once: of two values one would be passed over`,
    received: `--${twice} ${names.filter((name) => name === twice).length} times`,
    option: twice,
  });
}

/** What the engine says of arguments that it cannot read, in our words. */
function refusalOf(sentence: string, names: readonly string[]): VeladisError {
  const unknown = /^Unknown option '(.*?)'/.exec(sentence)?.[1];
  if (unknown !== undefined)
    return unknownOption(unknown, names, `${OPTIONS}; a text that begins with a dash stands after --`);
  const option = /'(.*?)(?: <value>)?'/.exec(sentence)?.[1];
  const received = `${option} ${sentence.includes("does not take") ? "with a value" : "without its value"}`;
  return new VeladisError("syntax", { expected: OPTIONS, received });
}

/** What marks a value that begins with a minus, so that it is not read as an option; no argument holds it by itself. */
const VALUE = "\0";

/** A negative number, which no option is. */
function markedValue(argument: string): string {
  return /^-\.?\d/.test(argument) ? VALUE + argument : argument;
}

function unmarked<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(unmarked) as Value;
  return (typeof value === "string" && value.startsWith(VALUE) ? value.slice(VALUE.length) : value) as Value;
}

/**
 * Reads the arguments of a command by its page.
 *
 * @throws {@link VeladisError} `unknown-option` with the options there are, for a value that is not of a closed list and
 *   for texts too many, or `syntax` for a value missing or too many
 */
export function parsedArguments<Rows extends OptionRows>(
  args: readonly string[],
  { options, texts }: CommandPage<Rows>,
): ParsedOptions<Rows> {
  const names = Object.keys(options).map((name) => `--${name}`);
  const config = Object.fromEntries(Object.entries(options).map(([name, row]) => [name, optionOf(row)]));
  let parsed: ReturnType<typeof parseArgs> & Tokens;
  try {
    parsed = parseArgs({
      args: args.map(markedValue),
      options: config,
      allowPositionals: true,
      strict: true,
      tokens: true,
    });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw refusalOf(error.message.split(". ")[0] as string, [...names, "--help"]);
  }
  const positionals = parsed.positionals.map(unmarked);
  const read = Object.fromEntries(Object.entries(parsed.values).map(([name, value]) => [name, unmarked(value)]));
  requireOnce(parsed.tokens, options);
  requireTexts(positionals, texts, names);
  for (const [name, { values, help }] of Object.entries(options)) {
    const value = read[name];
    if (values !== undefined && value !== undefined) requireChoice(value, values, `--${name}, ${help}`);
  }
  return { values: read as Values<Rows>, texts: positionals, options };
}
