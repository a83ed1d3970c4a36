import { VeladisError } from "../../../src/index";

/** The numbers of a text, parted by spaces; a decimal comma is refused, as everywhere. */
export function numberList(text) {
  return text.split(/\s+/).map((word) => {
    const number = Number(word);
    if (word !== "" && Number.isFinite(number)) return number;
    throw new VeladisError("not-a-number", {
      expected: "numbers with a point for decimals, parted by spaces",
      received: JSON.stringify(word),
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
