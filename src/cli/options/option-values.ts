import { numeral, shown, splitNumeral, text, VeladisError } from "../../core/index";
import { frequency } from "../../frequency/index";

/** The value of an option that the command cannot do without. */
export function needed(value: string | undefined, option: string, example: string): string {
  const expected = `--${option} such as ${example}`;
  if (value !== undefined) return text(value, expected);
  throw new VeladisError("missing-fact", { expected, received: "nothing" });
}

/** The number behind an option. */
export function numberOption(value: string, what: string): number {
  return numeral(value, what);
}

/** The parts of an option that lists several, at its commas. */
export function listed(value: string): string[] {
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
      ? numeral(edge, `${which} edge of the band in Hz`) * frequency(`1 ${unit}`).hertz
      : frequency(edge).hertz;
  };
  return [hertzOf(low, "a lower"), hertzOf(high, "an upper")];
}

/** Contact and coil of `"normally open, normally energised"`. */
export function relayOption(value: string): { contact: string; coil: string } {
  const [contact, coil] = listed(value);
  if (contact !== undefined && coil !== undefined) return { contact, coil };
  throw new VeladisError("syntax", {
    expected: '--relay with contact and coil, such as "normally open, normally energised"',
    received: shown(value),
  });
}
