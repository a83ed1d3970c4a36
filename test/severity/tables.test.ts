import { readdirSync, readFileSync } from "node:fs";
import * as exported from "veladis/severity";
import {
  builtInSchemes,
  type Criterion,
  classify,
  defineScheme,
  limitsFor,
  type Scheme,
  type SchemeId,
  type SchemeInput,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { namesOf } from "../../src/severity/limit";
import {
  api610BySpeed,
  api617BySpeed,
  contractBySpeed,
  knownBy,
  pumpCeilings,
  severityLimits,
  shaftBySpeed,
} from "../references/severity-limits";

const all: readonly Scheme[] = builtInSchemes;
const folder = new URL("../../src/severity/schemes/", import.meta.url);
/** Schemes whose limits fall with speed, held against recomputed values below. */
const bySpeed = ["iso-7919-3-2009", "iso-7919-4-2009", "iso-20816-3-2022-shaft", "iso-20816-4-2018-shaft"] as const;
const acceptanceBySpeed = ["api-617-8th-shaft", "api-610-11th-shaft"] as const;

function criterionFor(scheme: string, machine: string, as: string) {
  const found = limitsFor({ scheme: scheme as SchemeId, machine: machine === "" ? {} : machine });
  const own = found.find((one) => one.as === as);
  if (own === undefined) throw new Error(`${scheme} has no limits in ${as} for ${machine}`);
  return own;
}

describe("the shipped tables", () => {
  it("are one a file, each exported and registered", () => {
    const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));
    const ids = files.flatMap((name) => {
      const [, constant] =
        /export const (\w+) = \/\* @__PURE__ \*\/ builtIn\(/.exec(readFileSync(new URL(name, folder), "utf8")) ?? [];
      if (constant === undefined) return [];
      const scheme = (exported as unknown as Record<string, Scheme>)[constant];
      expect(scheme, `${name} exports ${constant}`).toBeDefined();
      expect(all).toContain(scheme);
      return [scheme?.id];
    });
    expect(ids.length).toBe(all.length);
    const helpers = [
      "built-in.ts",
      "course-handbook.ts",
      "fan-categories.ts",
      "flat-table.ts",
      "index.ts",
      "shaft-law.ts",
      "generator-of-set.ts",
      "sources.ts",
      "tables.ts",
    ];
    expect(files.length - ids.length).toBe(files.filter((name) => helpers.includes(name)).length);
    expect(new Set(ids).size).toBe(all.length);
  });

  it("all have a second copy in the references", () => {
    const known = [
      ...new Set([
        ...Object.keys(severityLimits),
        ...bySpeed,
        ...acceptanceBySpeed,
        ...contractBySpeed.map(([id]) => id),
      ]),
    ].sort();
    expect(known).toEqual(all.map(({ id }) => id).sort());
  });

  it.each(Object.entries(severityLimits))("%s equals the copy keyed by hand", (id, rows) => {
    const scheme = all.find((one) => one.id === id) as Scheme;
    const seen = new Set<Criterion>();
    for (const [machine, as, limits, known] of rows) {
      const own = criterionFor(id, machine, as);
      const values = namesOf(scheme).map((name) => own.limits[name]?.value ?? null);
      expect(values, `${machine} ${as}`).toEqual(limits);
      const flags = Object.values(own.limits).map(({ provenance }) => provenance);
      const letters = [...known].map((letter) => knownBy[letter as keyof typeof knownBy]);
      expect(flags, `${machine} ${as}`).toEqual(letters);
      for (const one of scheme.classes) {
        for (const criterion of one.criteria) {
          const mine = Object.values(criterion.limits).filter((value) => value !== null);
          const wanted = limits.filter((value) => value !== null);
          if (criterion.as === as && mine.join() === wanted.join()) seen.add(criterion);
        }
      }
    }
    const shipped = new Set(scheme.classes.flatMap(({ criteria }) => criteria));
    expect(seen.size, "every shipped criterion has a row in the copy").toBe(shipped.size);
  });

  it.each(pumpCeilings)("ISO 10816-7 prints ceilings for alarm and trip: %s", (machine, alarm, trip) => {
    const [velocity, slow] = limitsFor({ scheme: "iso-10816-7-2009", machine });
    expect(velocity?.ceilings).toMatchObject({ alarm, trip, verified: false });
    expect(slow?.ceilings).toMatchObject({ alarm: 100, trip: 160, verified: false });
  });

  it.each(bySpeed)("%s falls with the root of the speed", (scheme) => {
    for (const [speed, ...limits] of shaftBySpeed) {
      if (speed < 3000 && /-4-/.test(scheme)) continue;
      const [own] = limitsFor({ scheme, machine: { speed: `${speed} r/min` } });
      expect(own?.as).toBe("um pp");
      expect(own?.verified).toBe(false);
      Object.values(own?.limits ?? {}).forEach(({ value }, i) => {
        expect(Math.abs(value - (limits[i] as number)), `${speed} r/min`).toBeLessThanOrEqual(0.05);
      });
    }
  });

  it("API 617 and API 610 shaft limits equal the recomputed ones", () => {
    for (const [speed, limit] of api617BySpeed) {
      const [own] = limitsFor({ scheme: "api-617-8th-shaft", machine: { speed: `${speed} r/min` }, as: "um pp" });
      expect(Math.abs((own?.limits.acceptance?.value as number) - limit)).toBeLessThanOrEqual(0.05);
    }
    for (const [speed, overall, discrete] of api610BySpeed) {
      const [whole] = limitsFor({
        scheme: "api-610-11th-shaft",
        machine: { speed: `${speed} r/min`, content: "overall" },
      });
      const [part] = limitsFor({
        scheme: "api-610-11th-shaft",
        machine: { speed: `${speed} r/min`, content: "subsynchronous" },
      });
      expect(Math.abs((whole?.limits.acceptance?.value as number) - overall)).toBeLessThanOrEqual(0.05);
      expect(Math.abs((part?.limits.acceptance?.value as number) - discrete)).toBeLessThanOrEqual(0.05);
    }
  });

  it.each(contractBySpeed)("%s, %s: falls with the root of the speed, in %s", (scheme, machine, as, limit, known) => {
    const own = criterionFor(scheme, machine, as).limits.acceptance;
    expect(Math.abs((own?.value as number) - limit)).toBeLessThanOrEqual(as === "um pp" ? 0.05 : 0.002);
    expect(own?.provenance).toBe(knownBy[known]);
  });

  // R. X. Perez and A. P. Conkey, Troubleshooting Rotating Machinery, p. 171, Fig. 13.1 (based on ISO 7919-3)
  it("the textbook's 6 mil at 3600 r/min is in zone C", () => {
    expect(classify("6 mil pp", { scheme: "iso-7919-3-2009", machine: "motor 3600 r/min" }).zone).toBe("C");
  });

  it("pass their own checks, and go to JSON and back unchanged", () => {
    for (const scheme of all) {
      const text = JSON.stringify(scheme);
      expect(JSON.stringify(defineScheme(JSON.parse(text) as SchemeInput)), scheme.id).toBe(text);
    }
  });

  it("say where every limit comes from, the page where it was read, and what replaced a withdrawn edition", () => {
    for (const scheme of all) {
      if (scheme.status === "withdrawn") expect(scheme.replacedBy, scheme.id).toBeTruthy();
      expect(scheme.statusNote).not.toBe("");
      for (const { source, limitSources, ceilings } of scheme.classes.flatMap(({ criteria }) => criteria)) {
        for (const one of [source, ...Object.values(limitSources ?? {}), ...(ceilings ? [ceilings.source] : [])]) {
          expect(one?.where, scheme.id).toBeTruthy();
          expect(one?.note, scheme.id).toBeTruthy();
          if (one !== undefined && /printed|quoted|reported/.test(one.provenance))
            expect(one.page, scheme.id).toMatch(/^http|, .*manual .*, Table /);
          else expect(one?.note, scheme.id).toMatch(/not checked/);
        }
      }
    }
  });

  it("are frozen to the last limit", () => {
    const frozen = (value: unknown): boolean =>
      typeof value !== "object" || value === null || (Object.isFrozen(value) && Object.values(value).every(frozen));
    for (const scheme of all) expect(frozen(scheme), scheme.id).toBe(true);
  });
});

describe("ISO 10816-6, from memory", () => {
  // the relation of the three columns: crossover frequencies 10 Hz and 250 Hz
  it("has triples that agree with d = v/(2 pi 10 Hz) and a = v 2 pi 250 Hz within 0.6 %", () => {
    const triples = (["iso-10816-6-1995", "iso-10816-6-1995-grades"] as const).flatMap((id) =>
      (all.find((one) => one.id === id) as Scheme).classes.map(({ criteria }) =>
        Object.fromEntries(criteria.map(({ as, limits }) => [as, limits as Record<string, number>])),
      ),
    );
    expect(triples.length).toBe(8);
    let count = 0;
    for (const triple of triples) {
      for (const [name, v] of Object.entries(triple["mm/s rms"] ?? {})) {
        const d = triple["um rms"]?.[name] as number;
        const a = triple["m/s2 rms"]?.[name] as number;
        expect(Math.abs((d * 2 * Math.PI * 10) / 1000 / v - 1)).toBeLessThan(0.006);
        expect(Math.abs((a * 1000) / (2 * Math.PI * 250) / v - 1)).toBeLessThan(0.006);
        count++;
      }
    }
    expect(count).toBe(7 * 2 + 11);
  });
});

describe("ISO 14694 and ANSI/AMCA 204, harmonised (read on the authority page of AMCA 204)", () => {
  it("agree to the rounding of their units, since the lower of both judges in both", () => {
    const apart: string[] = [];
    for (const [ours, theirs] of [
      ["iso-14694-2003", "ansi-amca-204-05"],
      ["iso-14694-2003-acceptance", "ansi-amca-204-05-acceptance"],
    ] as const) {
      for (const category of ["BV-1", "BV-2", "BV-3", "BV-4", "BV-5"]) {
        for (const support of ["rigid", "flexible"] as const) {
          const machine = { category, support };
          const iso = limitsFor({ scheme: ours, machine }).find(({ as }) => as === "mm/s pk");
          const [amca] = limitsFor({ scheme: theirs, machine, as: "mm/s pk" });
          for (const [name, { value }] of Object.entries(iso?.limits ?? {})) {
            const other = amca?.limits[name]?.value as number;
            if (Math.abs(value - other) > 0.1) apart.push(`${category} ${support} ${name}`);
          }
        }
      }
    }
    expect(apart).toEqual([]);
  });
});

describe("traps that stay apart", () => {
  it("C/D of 11.2, 11.0 and 11.8 belong to three different tables", () => {
    const cd = (scheme: SchemeId, machine: string) => limitsFor({ scheme, machine })[0]?.limits["C/D"]?.value;
    expect(cd("iso-10816-1-1995-annexB", "class III")).toBe(11.2);
    expect(cd("iso-10816-3-2009", "group 1 flexible")).toBe(11);
    expect(cd("iso-10816-2-2009", "3000 r/min")).toBe(11.8);
  });

  it("displacement columns are stored: none equals the velocity column at 10 Hz to the digit", () => {
    const [velocity, displacement] = limitsFor({ scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    const derived = ((velocity?.limits["B/C"]?.value as number) * 1000) / (2 * Math.PI * 10);
    expect(displacement?.limits["B/C"]?.value).toBe(57);
    expect(derived).toBeCloseTo(71.6, 1);
  });

  it("displacement is RMS in ISO 10816-3 and IEC 60034-14, peak-to-peak in ISO 10816-5 and -7, peak in LR", () => {
    const as = (id: string) =>
      (all.find((one) => one.id === id) as Scheme).classes.flatMap(({ criteria }) => criteria.map((one) => one.as));
    expect(as("iso-10816-3-2009")).toContain("um rms");
    expect(as("iec-60034-14-2003")).toContain("um rms");
    expect(as("iso-10816-5-2000")).toContain("um pp");
    expect(as("iso-10816-7-2009")).toContain("um pp");
    expect(as("lr-recip-guidance")).toContain("mm pk");
  });
});
