import { parseNumeral, requireText, shown, VeladisError } from "../../core/index";
import { significant } from "../../reading/index";
import type { OptionRow, OptionRows, Word } from "./option-row";

/**
 * The value of an option that the command cannot do without.
 *
 * @throws {@link VeladisError} `missing-option` with the option's example and line of help
 */
export function requireOption<
  Said extends { readonly values: object; readonly options: OptionRows },
  Name extends keyof Said["options"] & string,
>({ values, options }: Said, name: Name): Word<Said["options"][Name]> {
  const value: unknown = values[name as never];
  const { example, help } = options[name] as OptionRow;
  const expected = `--${name} such as ${example}: ${help}`;
  if (value !== undefined) return requireText(value as string, expected) as Word<Said["options"][Name]>;
  throw new VeladisError("missing-option", { expected, received: "nothing" });
}

/** The parts of an option that lists several, at its commas. */
export function parts(value: string): string[] {
  return value
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

/** The reading types of `--to`, none if it was not given; each is checked where it is used. */
export function targetsOf(to: string | undefined): string[] {
  return to === undefined ? [] : to.split(",").map((target) => target.trim());
}

/** Both ends of an option such as `"10 Hz to 1000 Hz"`. */
export function ends(value: string, what: string): [string, string] {
  const [low, high, ...more] = value.split(/\s+to\s+/);
  if (low !== undefined && high !== undefined && more.length === 0) return [low.trim(), high.trim()];
  throw new VeladisError("syntax", { expected: what, received: shown(value) });
}

/** The digits option as a number. */
export function digitsOf(written: string): number {
  const digits = parseNumeral(written, "a number of significant digits");
  significant(1, digits);
  return digits;
}
