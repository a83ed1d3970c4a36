import { VeladisError } from "../../../src/index";

/** The levels of a text, parted by spaces; a decimal comma is refused, as everywhere, and so is what no level can be. */
export function levelList(text) {
  return text.split(/\s+/).map((word) => {
    const number = /^\+?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(word) ? Number(word) : Number.NaN;
    if (Number.isFinite(number)) return number;
    throw new VeladisError("not-a-number", {
      expected: "Levels: numbers of zero or more with a point for decimals, parted by spaces, such as 2.6 2.7 9.4",
      received: word === "" ? "nothing" : JSON.stringify(word),
    });
  });
}

/** A time in seconds, with or without its unit; minutes are taken too. */
export function secondsOf(text, field) {
  const [, digits, unit = "s"] = /^\s*(\d+(?:\.\d*)?|\.\d+)\s*(ms|s|min)?\s*$/.exec(text) ?? [];
  if (digits !== undefined) return (Number(digits) * { ms: 1, s: 1000, min: 60_000 }[unit]) / 1000;
  throw new VeladisError("syntax", {
    expected: `${field}: a time such as 8, "8 s" or "2 min", with a point for decimals and without ±`,
    received: JSON.stringify(text),
  });
}
