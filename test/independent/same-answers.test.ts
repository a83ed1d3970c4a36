import fc from "fast-check";
import { units } from "veladis";
import { describe, expect, it } from "vitest";
import { inWords, someNameplate } from "../severity/nameplates";
import {
  type Asked,
  byArray,
  byCalculator,
  byCompiled,
  byLibrary,
  bySql,
  byTable,
  hasOneLadder,
  type Said,
} from "./six-ways";

/** No source: six ways of one library are held against one another, not against the world. */
const SEED = 20_261_126;
const CASES = 150;

const detectors = ["rms", "pk", "pp", "avg"] as const;
/** A common size of each quantity, in SI units. */
const scale = { displacement: 30e-6, velocity: 3e-3, acceleration: 3 } as const;

const someType = fc.tuple(
  fc.constantFrom("mm/s", "mm/s", "in/s", "um", "um", "mil", "m/s2", "g"),
  fc.constantFrom(...detectors),
);

/** A type of the same quantity, to which a reading is converted without a frequency. */
const otherOf = (unit: string) =>
  fc.tuple(
    fc.constantFrom(...Object.keys(units).filter((one) => units[one as "g"].quantity === units[unit as "g"].quantity)),
    fc.constantFrom(...detectors),
  );

const someAsked: fc.Arbitrary<Asked> = fc
  .tuple(someNameplate, someType, fc.double({ min: -2, max: 2.5, noNaN: true }), fc.boolean())
  .chain(([plate, [unit, detector], size, isByScheme]) => {
    const { quantity, num, den } = units[unit as "g"];
    return fc.record({
      value: fc.constant((((scale[quantity] * den) / num) * Math.exp(size)).toPrecision(4)),
      as: fc.constant(`${unit} ${detector}`),
      hertz: fc.constantFrom(undefined, undefined, undefined, 10, 25),
      machine: fc.constant(inWords(plate)),
      scheme: fc.constant(isByScheme ? "the first that judges" : undefined),
      to: otherOf(unit).map((type) => type.join(" ")),
    });
  });

/** Random cases, of which at most a fifth are refused; a scheme is one of those that judge the machine. */
async function cases(): Promise<Asked[]> {
  const found: Asked[] = [];
  let refused = 0;
  for (const asked of fc.sample(someAsked, { seed: SEED, numRuns: 4 * CASES })) {
    const first = await byLibrary({ ...asked, scheme: undefined });
    if ("refused" in first && ++refused > CASES / 5) continue;
    const isByScheme = asked.scheme !== undefined && !("refused" in first);
    found.push({ ...asked, scheme: isByScheme ? first.schemes[0] : undefined });
    if (found.length === CASES) break;
  }
  return found;
}

/** What was said, with the number that is wanted where it differs by rounding only. */
const rounded = (said: Said, number: number): Said =>
  "refused" in said ? said : { ...said, number: Math.abs(said.number / number - 1) < 1e-13 ? number : said.number };

describe("library, compiled, array, calculator, SQL and table", () => {
  it(`agree on zone, worst, number, assumption and what was not judged in ${CASES} random cases`, async () => {
    const all = await cases();
    const table = await byTable(all);
    const counts = { judged: 0, refused: 0, open: 0, unjudged: 0, ladders: 0 };
    for (const [i, asked] of all.entries()) {
      const want = await byLibrary(asked);
      if ("refused" in want) counts.refused++;
      else {
        counts.judged++;
        if (want.zone !== want.worst) counts.open++;
        if (want.rests.some((text) => text.startsWith("not judged"))) counts.unjudged++;
      }
      // zones of several names: the library tells them apart, a compiled judge asks for the facts that decide
      const isLadder = "refused" in want || hasOneLadder(asked);
      if (!isLadder) counts.ladders++;
      const ways = { byCompiled, byArray, byCalculator, bySql, byTable: async () => table[i] as Said };
      const number = "refused" in want ? 0 : want.number;
      for (const [way, ask] of Object.entries(ways)) {
        if (!isLadder && way !== "byCalculator") {
          expect.soft(await ask(asked)).toEqual({ refused: "missing-fact" });
          continue;
        }
        expect.soft({ way, asked, said: rounded(await ask(asked), number) }).toEqual({ way, asked, said: want });
      }
    }
    // the cases are worth asking: most are judged, many leave worse open, some leave a criterion out, some are refused
    expect(counts.judged).toBeGreaterThan(CASES / 2);
    expect(counts.open).toBeGreaterThan(CASES / 10);
    expect(counts.unjudged).toBeGreaterThan(0);
    expect(counts.ladders).toBeLessThan(CASES / 20);
    expect(counts.refused).toBeGreaterThan(CASES / 20);
  });
});
