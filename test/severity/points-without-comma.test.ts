import { describe, expect, it } from "vitest";
import { parsePoints } from "../../src/entries/severity";
import { refusalOf } from "../refusals/refusal-of";

/** A reading must not become part of the name of the next point. Found in a trial; no source. */
describe("points without a comma between them", () => {
  it.each([
    "DE-H 9.9 DE-V 2.2 mm/s rms",
    "DE-H 9 DE-V 2.2 mm/s rms",
    "DE-H 9.9 mm/s rms DE-V 2.2 mm/s rms",
    "DE-H 9 mm/s rms DE-V 2.2 mm/s rms",
    "DE-H 9.9 / DE-V 2.2 mm/s rms",
    "DE-H 9/DE-V 2.2 mm/s rms",
    "A 4.9 B 2.2 mm/s rms",
    "A 4 B 2.2 mm/s rms",
    "DE-H 9.9\nDE-V 2.2 mm/s rms",
    "DE-H 9\nDE-V 2.2 mm/s rms",
    "DE-A 1.1, DE-H 9.9 DE-V 2.2, NDE-H 2 mm/s rms",
  ])("are refused: %j", (text) => {
    const { code, expected } = refusalOf(() => parsePoints(text));
    expect([code, expected.startsWith("a comma, or a semicolon")]).toEqual(["syntax", true]);
  });

  it.each([
    ["bearing 1 H 2.2 mm/s rms", "bearing 1 H"],
    ["motor 2 DE 2.2 mm/s rms", "motor 2 DE"],
    ["DE 1 9 mm/s rms", "DE 1"],
    ["P-101A DE-H: 2.2 mm/s rms", "P-101A DE-H"],
  ])("but a name may hold a number: %s", (text, name) => {
    expect(parsePoints(text)[0]?.point).toBe(name);
  });
});
