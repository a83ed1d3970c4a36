import { type ParseArgsConfig, parseArgs } from "node:util";
import { shown, unknownOption, VeladisError } from "../../core/index";

const OPTIONS = "options of this command, each with its value where it takes one";

type Options = NonNullable<ParseArgsConfig["options"]>;

/**
 * Options of a command that takes nothing else: a text beside them would be a slip, such as a forgotten comma in a list.
 *
 * @throws {@link VeladisError} `unknown-option` with the options there are
 */
export function parsedOptions<const O extends Options>(args: readonly string[], options: O) {
  const { values, positionals } = parsedArguments(args, options);
  if (positionals.length === 0) return values;
  throw new VeladisError("unknown-option", {
    expected: "options alone, with quotation marks about values of several words",
    received: positionals.map(shown).join(" "),
    allowed: Object.keys(options).map((name) => `--${name}`),
  });
}

/**
 * Refuses texts beside an option that says what to answer, since one of the two would be passed over.
 *
 * @throws {@link VeladisError} `unknown-option`
 */
export function alone(option: string, positionals: readonly string[]): void {
  if (positionals.length === 0) return;
  throw new VeladisError("unknown-option", {
    expected: `--${option}, or a text in its place, not both`,
    received: positionals.map(shown).join(" "),
  });
}

/**
 * Options and positional arguments of a command.
 *
 * @throws {@link VeladisError} `unknown-option` with the options there are, or `syntax` for a value missing or too many
 */
export function parsedArguments<const O extends Options>(args: readonly string[], options: O) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    const allowed = Object.keys(options).map((name) => `--${name}`);
    const [sentence = ""] = error.message.split(". ");
    const unknown = /^Unknown option '(.*?)'/.exec(sentence)?.[1];
    if (unknown !== undefined)
      throw unknownOption(unknown, allowed, `${OPTIONS}; a text that begins with a dash stands after --`);
    const option = /'(.*?)(?: <value>)?'/.exec(sentence)?.[1];
    const received = `${option} ${sentence.includes("does not take") ? "with a value" : "without its value"}`;
    throw new VeladisError("syntax", { expected: OPTIONS, received });
  }
}
