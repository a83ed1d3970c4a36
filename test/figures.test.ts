import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./examples/fences";
import { tracked } from "./one-file/copy";
import { practiceCheck, practiceStep, practiceStroke, practiceTrip } from "./references/common-practice";

const REFERENCE = "test/references/common-practice.ts";

/** Text that people read or write: no records, and no JSON but that of the examples. */
const read =
  /^(README|CHANGELOG|DEVELOPERS)\.md$|^docs\/examples\/.*\.json$|^(src|docs|bench|test)\/.*\.(css|js|md|mjs|py|snap|svg|ts|txt)$/;
const texts = new Map(
  tracked()
    .filter((path) => read.test(path))
    .map((path) => [path, readFileSync(join(root, path), "utf8")]),
);

/** A number however many zeros end it: 0.4, 0.40, 0.400. */
const number = (value: number | string): string => {
  const written = String(Number.parseFloat(String(value)));
  const zeros = written.includes(".") ? "0*" : "(?:\\.0+)?";
  return `(?<![\\d.])${written.replace(".", "\\.")}${zeros}(?![\\d]|\\.\\d)`;
};
/** A number and its unit; of a reading without its detector. */
const amount = (text: string): string => {
  const [value = "", unit = ""] = text.split(" ");
  return `${number(value)} ?${unit}`;
};
const delay = `(?:${number(practiceTrip.delay)} ?(?:s\\b|seconds)|delay\\W{1,4}${number(practiceTrip.delay)})`;
const [lowest = "", highest = ""] = practiceStroke.frequencies.split(" to ");

/** Patterns that stand on one line, or at most two lines apart. */
const figures: Readonly<Record<string, readonly [string, string?]>> = {
  "the known level and its speed": [amount(practiceCheck.known), `\\b${practiceCheck.speed}\\b`],
  "the indicated level": [amount(practiceCheck.indicated)],
  "the indicated level beside the known one": [number(practiceCheck.indicated), amount(practiceCheck.known)],
  "the threshold": [amount(practiceTrip.threshold)],
  "the reset level": [number(practiceTrip.resetsBelow)],
  "the hysteresis and the delay": [amount(practiceTrip.hysteresis), delay],
  "the step": [`(?:\\bsteps?\\b.{0,20}${amount(practiceStep.step)}|${amount(practiceStep.step)}.{0,20}\\bsteps?\\b)`],
  "the frequencies of a shaker": [`${amount(lowest)}.{0,20}${amount(highest)}`],
  "the stroke of a shaker": [amount(practiceStroke.displacement)],
};

const holds = (text: string, one: RegExp, other: RegExp): boolean => {
  const lines = text.split("\n");
  return lines.some((line, i) => one.test(line) && lines.slice(Math.max(0, i - 2), i + 3).some((at) => other.test(at)));
};

/** Lower-case words of a length in the texts, by what they hash to. */
const digestOf = (word: string): string => createHash("sha256").update(word).digest("hex");
const filesWith = (digest: string, length: number): string[] => {
  const word = new RegExp(`(?<![a-z])[a-z]{${length}}(?![a-z])`, "g");
  const known = new Map<string, boolean>();
  const matches = (found: string): boolean => {
    if (!known.has(found)) known.set(found, digestOf(found) === digest);
    return known.get(found) === true;
  };
  return [...texts].flatMap(([path, text]) => ((text.toLowerCase().match(word) ?? []).some(matches) ? [path] : []));
};

describe("figures of common practice are check values in one file, and nowhere an example", () => {
  it.each(Object.entries(figures))("%s", (_, [one, other = ""]) => {
    const patterns = [new RegExp(one, "i"), new RegExp(other, "i")] as const;
    const found = [...texts].filter(([, text]) => holds(text, ...patterns)).map(([path]) => path);
    expect(found).toEqual([REFERENCE]);
  });
});

describe("a source is cited by its document", () => {
  it("not by the electronic edition of a classification society's rules, which no file names", () => {
    expect(filesWith(digestOf("hysteresis"), 10)).toContain("README.md");
    expect(filesWith("0260e8c65f4b2a6704389dcd8be83268317e863acf9dda9b287e90ac71586f02", 10)).toEqual([]);
  });
});
