import { VeladisError } from "../../core/index";

/** The option of the command that an option or parameter of the library comes from: `{ as: "--to" }`. */
export type OptionNames = Readonly<Record<string, string>>;

/**
 * A refusal of the library with the name of the option that it is about, since whoever types a command never sees the names
 * within; anything else as it is.
 */
export function toldOption(names: OptionNames, error: unknown): unknown {
  if (!(error instanceof VeladisError)) return error;
  const { code, option, parameter, expected, received, allowed, didYouMean } = error;
  const name = names[option ?? ""] ?? names[parameter ?? ""];
  if (name === undefined || expected.includes(name)) return error;
  return new VeladisError(code, {
    expected: `${name}: ${expected}`,
    received,
    ...(allowed !== undefined && { allowed }),
    ...(didYouMean !== undefined && { didYouMean }),
  });
}

/** The answer of the library to what options said; what it refuses is told as by {@link toldOption}. */
export function tellingOption<Value>(names: OptionNames, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    throw toldOption(names, error);
  }
}
