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
