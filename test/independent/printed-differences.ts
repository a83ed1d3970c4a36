import type { classify, Judgement, judge } from "../../src/entries/severity";
import { printedCase } from "./printed-cases";
import { printedJudgement } from "./printed-judge";
import { seeded } from "./seeded";

function answerOf(ask: () => Judgement): Judgement | Error {
  try {
    return ask();
  } catch (error) {
    return error as Error;
  }
}

/** Judges so many random readings by the library and by the printed tables; gives those that differ, in words. */
export function printedDifferences(
  library: { classify: typeof classify; judge: typeof judge },
  count: number,
  seed = 15,
): string[] {
  const r = seeded(seed);
  const differences: string[] = [];
  for (let i = 0; i < count; i++) {
    const { by, id, words, rows, zones, reading, speedHertz, rpm } = printedCase(r);
    const written = `${reading.numeral} ${reading.as}${reading.hertz === undefined ? "" : ` at ${reading.hertz} Hz`}`;
    const expected = printedJudgement(reading, rows, speedHertz, rpm);
    const answer = answerOf(() =>
      by === "judge"
        ? library.judge(written, words)
        : library.classify(written, { scheme: id as "iso-10816-4", machine: words === "" ? {} : words }),
    );
    const want = `${id}: ${zones[expected.zone]}, worst ${zones[expected.worst]}, of ${zones.join("/")}`;
    const got =
      answer instanceof Error
        ? answer.message
        : `${answer.scheme}: ${answer.zone}, worst ${answer.worst}, of ${answer.zones.join("/")}`;
    if (got !== want) differences.push(`${by} ${written}, ${words}: ${got}; printed ${want}`);
  }
  return differences;
}
