import { type ParseArgsConfig, parseArgs } from "node:util";
import { shown, VeladisError } from "../core/index";

type Options = NonNullable<ParseArgsConfig["options"]>;

/**
 * Options and positional arguments of a command.
 *
 * @throws {@link VeladisError} `unknown-option` with the options there are
 */
export function parsedArguments<const O extends Options>(args: readonly string[], options: O) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new VeladisError("unknown-option", {
      expected: "options this command has, and texts that begin with a dash behind --",
      received: shown(error.message.split(". ")[0]),
      allowed: Object.keys(options).map((name) => `--${name}`),
    });
  }
}
