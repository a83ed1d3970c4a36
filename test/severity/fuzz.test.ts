import fc from "fast-check";
import { VeladisError } from "veladis";
import {
  builtInSchemes,
  changeFromBaseline,
  classifier,
  classify,
  defineScheme,
  limitsFor,
  type Scheme,
  selectSchemes,
} from "veladis/severity";
import { describe, it } from "vitest";

/** Runs what may refuse; anything thrown but a VeladisError fails the test. */
function mayRefuse(run: () => unknown): void {
  try {
    run();
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
  }
}

const anything = fc.anything({ withBigInt: true, withNullPrototype: true, maxDepth: 3 });
const someScheme = fc.constantFrom<Scheme>(...builtInSchemes);

/** Every path to a part of a value, `["classes", "0", "criteria"]`. */
function pathsOf(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, part]) => pathsOf(part, [...path, key]))];
}

/** A copy of the scheme with one part replaced. */
function replaced(scheme: Scheme, path: readonly string[], value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(scheme)) as Record<string, unknown>;
  if (path.length === 0) return value;
  const parent = path
    .slice(0, -1)
    .reduce<Record<string, unknown>>((part, key) => part[key] as Record<string, unknown>, copy);
  parent[path[path.length - 1] as string] = value;
  return copy;
}

describe("whatever is handed over, it is answered or refused as VeladisError", () => {
  it("schemes with any part replaced by anything", () => {
    fc.assert(
      fc.property(someScheme, fc.nat(), anything, (scheme, pick, value) => {
        const paths = pathsOf(scheme);
        const input = replaced(scheme, paths[pick % paths.length] as string[], value) as never;
        mayRefuse(() => {
          const own = defineScheme(input);
          selectSchemes("pump 90 kW 2980 r/min rigid", [own]);
          mayRefuse(() =>
            classify("1 mm/s rms", { scheme: own, machine: "90 kW rigid category I", assume: "lowest limits" }),
          );
        });
      }),
      { numRuns: 3000 },
    );
  });

  it("machines of anything", () => {
    const facts = ["type", "power", "speed", "shaftHeight", "support", "place", "group", "class", "category", "part"];
    const machine = fc.oneof(
      anything,
      fc.dictionary(
        fc.constantFrom(...facts),
        fc.oneof(anything, fc.constantFrom("pump", "90 kW", "rigid", "1500 r/min", "280 mm", "I", 2)),
      ),
    );
    fc.assert(
      fc.property(someScheme, machine, (scheme, given) => {
        mayRefuse(() => classify("1 mm/s rms at 25 Hz", { scheme, machine: given as never, assume: "lowest limits" }));
        mayRefuse(() => limitsFor({ scheme, machine: given as never }));
        mayRefuse(() => selectSchemes(given as never));
        mayRefuse(() => classifier(scheme, given as never, "mm/s rms"));
      }),
      { numRuns: 1500 },
    );
  });

  it("readings of anything", () => {
    const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
    fc.assert(
      fc.property(anything, anything, (now, before) => {
        mayRefuse(() => classify(now as never, table));
        mayRefuse(() => changeFromBaseline(now as never, before as never, table));
        mayRefuse(() => classifier(table.scheme, table.machine, now as never));
        mayRefuse(() => classify("1 mm/s rms", { ...table, scheme: now as never }));
        mayRefuse(() => classify("1 mm/s rms", now as never));
      }),
      { numRuns: 1500 },
    );
  });
});
