import { parseNumeral, requireText, shown, splitNumeral, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";
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

/** The edges of a band in hertz: of `10-1000`, `10 to 1000 Hz` or `"10 Hz to 1 kHz"`; bare numbers are hertz. */
export function bandOption(value: string): [low: number, high: number] {
  const [low, high, ...more] = value.trim().split(/\s*(?:–|\.\.|\bto\b)\s*|(?<=[^eE])\s*-\s*/);
  if (low === undefined || high === undefined || more.length > 0) {
    throw new VeladisError("syntax", {
      expected: 'a band such as 10-1000 or "10 Hz to 1000 Hz"',
      received: shown(value),
    });
  }
  const unit = splitNumeral(high)[1] || "Hz";
  const hertzOf = (edge: string, which: string): number => {
    const [digits, own] = splitNumeral(edge);
    return digits === "" || own === ""
      ? parseNumeral(edge, `${which} edge of the band in Hz`) * frequency(`1 ${unit}`).hertz
      : frequency(edge).hertz;
  };
  return [hertzOf(low, "a lower"), hertzOf(high, "an upper")];
}

/** The digits option as a number. */
export function digitsOf(written: string): number {
  const digits = parseNumeral(written, "a number of significant digits");
  significant(1, digits);
  return digits;
}
