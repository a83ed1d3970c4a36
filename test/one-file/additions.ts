import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Something a contributor adds, as DEVELOPERS.md tells: the edits, and the files that they may touch. */
export interface Addition {
  readonly what: string;
  readonly files: readonly string[];
  readonly make: (repo: string) => void;
}

/** Puts lines behind the first place where the text is found. */
function insert(path: string, behind: string, lines: string): void {
  const text = readFileSync(path, "utf8");
  const at = text.indexOf(behind);
  if (at < 0) throw new Error(`${path} has no ${behind}`);
  const end = text.indexOf("\n", at + behind.length) + 1;
  writeFileSync(path, text.slice(0, end) + lines + text.slice(end));
}

/** Adds a first row to each of two tables in one file. */
function rows(file: string, tables: Readonly<Record<string, string>>): (repo: string) => void {
  return (repo) => {
    for (const [name, row] of Object.entries(tables)) insert(join(repo, file), `export const ${name}`, `  ${row}\n`);
  };
}

const UNITS = "src/units/catalogue.ts";
const DETECTORS = "src/detectors/catalogue.ts";
const FREQUENCIES = "src/frequency/catalogue.ts";
const REFERENCES = "src/reading/references.ts";
const SCHEME = "src/severity/schemes/heating-works-fans.ts";
const SCHEMES = "src/severity/schemes/tables.ts";

/** The line by which a scheme becomes part of the library, wherever it stands. */
const schemeLine = 'export { heatingWorksFans } from "./heating-works-fans";\n';

/** The list of the tables without the scheme, as a contributor leaves it who forgets the export. */
export function forgetExport(repo: string): void {
  const path = join(repo, SCHEMES);
  writeFileSync(path, readFileSync(path, "utf8").replace(schemeLine, ""));
}

/** All but the knot are invented for the test. */
export const additions: readonly Addition[] = [
  {
    what: "a unit",
    files: [UNITS],
    // the knot: 1852 m an hour, exactly (NIST SP 811, Appendix B.8)
    make: rows(UNITS, {
      units: 'kn: { quantity: "velocity", num: 463, den: 900, also: ["knt"], spoken: ["knot", "knots"] },',
      unitFacts: 'kn: { name: "knot", source: SI },',
    }),
  },
  {
    what: "a detector",
    files: [DETECTORS],
    // mean of the positive half waves alone; of a signal without a mean, half that of its magnitude
    make: rows(DETECTORS, {
      detectors: 'half: { spoken: ["halfaverage"], num: 1, den: 1, pi: -1, rootTwo: 0 },',
      detectorFacts:
        'half: { name: "half-wave average", ofSamples: (wave) => averageOf(Array.from(wave, (one) => Math.max(one, 0))), ofSums: ({ sizes, count }) => sizes / count / 2, source: AVERAGE },',
    }),
  },
  {
    what: "a unit of frequency",
    files: [FREQUENCIES],
    make: rows(FREQUENCIES, {
      frequencyUnits: '"deg/s": { num: 1, den: 360, also: ["dps"], spoken: ["degrees/s"] },',
      frequencyUnitFacts: '"deg/s": { name: "degree per second", source: ROTATION },',
    }),
  },
  {
    what: "a reference of decibel levels",
    files: [REFERENCES],
    make: rows(REFERENCES, {
      levelReferences: '"works velocity": { value: 5, unit: "nm/s" },',
      levelReferenceSources: '"works velocity": { title: "Works rule 3, invented", provenance: "memory" },',
    }),
  },
  {
    what: "a severity table",
    files: [SCHEME, SCHEMES],
    make: (repo) => {
      writeFileSync(
        join(repo, SCHEME),
        `import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";

const RULE = { title: "Works rule 12, invented", where: "page 3", note: "not checked", provenance: "memory" } as const;

/** Works rule 12, fans of the invented heating works. */
export const heatingWorksFans = /* @__PURE__ */ builtIn({
  id: "heating-works-fans",
  kind: "zones",
  standard: "Works rule 12",
  edition: "2025",
  title: "Fans of the heating works",
  status: "current",
  statusNote: "invented",
  scope: "fans of the heating works",
  place: "housing",
  measuredOn: "bearing housings",
  band: [10, 1000],
  classes: () => flatTable({
    machine: ["support"],
    columns: [{ as: "mm/s rms", limits: ["A/B", "B/C", "C/D"], source: RULE }],
    rows: [["flexible", 2, 4, 6]],
  }),
});
`,
      );
      appendFileSync(join(repo, SCHEMES), schemeLine);
    },
  },
];
