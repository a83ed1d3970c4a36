/** What a bundle takes of the package: no more than it uses. Needs the built `dist/`. */
import { readFileSync, writeFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { root } from "../examples/fences";
import { bundled, entries, gzipped } from "./bundles";

/** Size of a bundle of one import, minified and gzipped, and the public tables that it brings. */
interface Weight {
  readonly bytes: number;
  readonly holds: readonly string[];
}

type Weights = Record<string, Record<string, Weight>>;

const noted = `${root}/test/references/bundle-sizes.json`;

/** What a user may rely on, in bytes; `npm run size` holds convert to 5 KiB. */
const promised: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  veladis: { parseAmplitude: 6528, format: 8192, converter: 7296 },
  "veladis/sensor": { sensor: 12_928, currentLoop: 12_928 },
  "veladis/severity": { iso10816Part3Of2009: 2368, parseMachine: 27_136, defineScheme: 11_008 },
  "veladis/protection": { TripLogic: 20_736, checkAgainstKnown: 23_552, baseline: 18_432 },
  "veladis/signal": { overall: 12_672, spectrum: 11_456, windows: 1536 },
  "veladis/chart": { severityBar: 16_576, spectrumChart: 17_408 },
  "veladis/mathjs": { registerAmplitudes: 18_048, newSession: 896 },
  "veladis/sql": { toSql: 10_240 },
  // judging by a scheme of one's own
  "veladis/own": { exactZone: 8192 },
};

/** All strings within a table; with its keys, where asked for. */
function stringsIn(value: unknown, keys = false): string[] {
  if (typeof value === "string") return [value];
  if (typeof value !== "object" || value === null) return [];
  return [...(keys ? Object.keys(value) : []), ...Object.values(value).flatMap((inner) => stringsIn(inner, keys))];
}

/**
 * A text by which each public table is known in a bundle: its longest that no other table has, among those that a
 * minifier leaves as they are. Tables of short words have none.
 */
function marksOf(tables: ReadonlyMap<string, unknown>): Map<string, string> {
  const texts = new Map([...tables].map(([name, table]) => [name, stringsIn(table, true).join("\n")]));
  const marks = new Map<string, string>();
  for (const [name, table] of tables) {
    const [longest] = stringsIn(table)
      .filter((text) => text.length > 9 && /^[\w .,:;/()-]+$/.test(text))
      .filter((text) => [...texts].every(([other, all]) => other === name || !all.includes(text)))
      .sort((a, b) => b.length - a.length);
    if (longest !== undefined) marks.set(name, longest);
  }
  return marks;
}

const modules = new Map<string, Record<string, unknown>>();
const measured: Weights = {};
let known: Weights = {};
let marks: Map<string, string>;
/** Names of the single tables of limits, which `builtInSchemes` holds together. */
let schemes: string[];

beforeAll(async () => {
  // with a dollar in front is what other files of the package take from `veladis`, and nobody else is promised
  for (const [entry, path] of entries) {
    const names = Object.entries((await import(path)) as object).filter(([name]) => !name.startsWith("$"));
    modules.set(entry, Object.fromEntries(names));
  }
  const all = [...modules.values()].flatMap((module) => Object.entries(module));
  const { builtInSchemes } = modules.get("veladis/severity") as { builtInSchemes: readonly unknown[] };
  schemes = all.filter(([, value]) => builtInSchemes.includes(value)).map(([name]) => name);
  const tables = all.filter(([name, value]) => typeof value === "object" && name !== "builtInSchemes");
  marks = marksOf(new Map(tables));
  const codes = [...modules].flatMap(([entry, module]) =>
    Object.keys(module).map((name) => [`${entry} ${name}`, `export { ${name} } from "${entry}";`] as const),
  );
  for (const [key, text] of await bundled(Object.fromEntries(codes))) {
    const [entry, name] = key.split(" ") as [string, string];
    const held = [...marks].filter(([, mark]) => text.includes(mark)).map(([table]) => table);
    const holds = schemes.every((scheme) => held.includes(scheme))
      ? [...held.filter((table) => !schemes.includes(table)), "builtInSchemes"]
      : held;
    measured[entry] = { ...measured[entry], [name]: { bytes: gzipped(text), holds: holds.sort() } };
  }
  if (process.env.NOTE_SIZES !== undefined) {
    const rows = Object.entries(measured).map(([entry, weights]) => {
      const lines = Object.entries(weights).map(([name, one]) => `    ${JSON.stringify(name)}: ${JSON.stringify(one)}`);
      return `  ${JSON.stringify(entry)}: {\n${lines.join(",\n")}\n  }`;
    });
    writeFileSync(noted, `{\n${rows.join(",\n")}\n}\n`);
  }
  known = JSON.parse(readFileSync(noted, "utf8")) as Weights;
});

describe("nothing that a bundle does not use stays in it", () => {
  it("no file of any entry does anything when it is loaded", async () => {
    const loads = [...entries.keys()].map((entry) => [entry, `import "${entry}";`]);
    for (const [entry, text] of await bundled(Object.fromEntries(loads), { sideEffects: true })) {
      expect(text, entry).toBe("");
    }
  });

  it("an import of nothing or of types alone leaves an empty bundle", async () => {
    const texts = await bundled({
      nothing: 'import {} from "veladis";',
      unused: 'import { convert } from "veladis"; import { classify } from "veladis/severity";',
      types: 'import type { Amplitude } from "veladis"; export type Reading = Amplitude;',
      "types among names": 'import { type Judgement } from "veladis/severity"; export type Known = Judgement;',
    });
    for (const [name, text] of texts) expect(text, name).toBe("");
  });

  it("the error class weighs the same whichever entry it comes from", () => {
    const sizes = [...entries.keys()].map((entry) => measured[entry]?.VeladisError?.bytes);
    // a byte or two of names that a minifier gives
    const all = sizes.map(Number);
    expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(2);
  });
});

describe("the tables that a name brings", () => {
  it("each table is known by a text of its own, and a bundle of it holds no other", () => {
    expect(marks.size).toBeGreaterThan(schemes.length + 15);
    for (const weights of Object.values(measured)) {
      for (const name of marks.keys()) if (weights[name]) expect(weights[name].holds, name).toEqual([name]);
    }
  });

  it("convert brings no names, sources, tables of limits nor error texts", () => {
    const holds = measured.veladis?.convert?.holds ?? ["nothing was measured"];
    expect(holds.filter((name) => !["units", "detectors", "frequencyUnits", "levelReferences"].includes(name))).toEqual(
      [],
    );
  });

  it.each(["veladis", "veladis/signal"])("no name of %s brings a table of limits", (entry) => {
    for (const [name, { holds }] of Object.entries(measured[entry] as Record<string, Weight>)) {
      expect(
        holds.filter((table) => table === "builtInSchemes" || schemes.includes(table)),
        name,
      ).toEqual([]);
    }
  });

  it.each([...entries.keys()])("%s: as noted", (entry) => {
    const tablesOf = (weights: Record<string, Weight> = {}) =>
      Object.fromEntries(Object.entries(weights).map(([name, { holds }]) => [name, holds]));
    expect(tablesOf(measured[entry])).toEqual(tablesOf(known[entry]));
  });
});

describe("the size of a single import, minified and gzipped", () => {
  it("npm run size counts all names of veladis, and those alone", () => {
    const rows = JSON.parse(readFileSync(`${root}/package.json`, "utf8"))["size-limit"] as Record<string, string>[];
    const counted = rows.find(({ name }) => name === "veladis")?.import?.match(/\w+/g);
    expect(counted?.sort()).toEqual(Object.keys(modules.get("veladis") ?? {}).sort());
  });

  it.each(Object.entries(promised))("%s: within what is promised", (entry, limits) => {
    for (const [name, limit] of Object.entries(limits)) {
      expect(measured[entry]?.[name]?.bytes, name).toBeLessThanOrEqual(limit);
    }
  });

  it.each([...entries.keys()])("%s: as noted, or little more", (entry) => {
    const grown = Object.entries(measured[entry] as Record<string, Weight>).flatMap(([name, { bytes }]) => {
      const before = known[entry]?.[name]?.bytes ?? 0;
      return bytes > before * 1.04 + 30 ? [`${name}: ${bytes} bytes, ${before} noted`] : [];
    });
    expect(grown, "NOTE_SIZES=1 npm test -- test/package/sizes.test.ts notes them anew").toEqual([]);
  });
});
