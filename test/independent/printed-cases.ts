import { type Row, severityLimits } from "../references/severity-limits";
import { detectorOf, orderOf, unitsOfOrder, type Written, zonesOf } from "./printed-judge";
import type { Seeded } from "./seeded";

/** Tables that are no zones A to D, and what their steps are called. */
const kinds: Readonly<Record<string, string>> = {
  "iso-10816-7-2009-acceptance": "acceptance",
  "iso-14694-2003": "operation",
  "iso-14694-2003-acceptance": "acceptance",
  "ansi-amca-204-05": "operation",
  "ansi-amca-204-05-acceptance": "acceptance",
  "iso-10816-6-1995-grades": "grades",
  "lr-recip-guidance": "acceptance",
  "iec-60034-14-2003": "acceptance",
  "iso-2373-1974": "acceptance",
  "nema-mg1-7-table-7-1": "acceptance",
  "nema-mg1-20.52-old": "acceptance",
  "api-610": "acceptance",
  "api-541": "acceptance",
  "api-541-shaft": "acceptance",
  "api-611": "acceptance",
  "api-619-5th": "acceptance",
  "api-673-3rd": "acceptance",
  "api-673-3rd-shaft": "acceptance",
  "asme-nfpa-20-pumps": "acceptance",
  "ansi-hi-9.6.4-2009-slow": "acceptance",
  "compressor-handbook-rule": "grades",
  "lr-generating-sets": "grades",
  "vdi-3836-2012": "grades",
  "gear-housing-handbook": "grades",
  "chiller-maker-sheet": "grades",
  "motor-maker-alarms": "grades",
  "recip-compressor-maker": "grades",
};
/** ISO 10816-6:1995 Table 1, severity grades; the others in the words of the guide. */
const gradeNames: Readonly<Record<string, readonly string[]>> = {
  "iso-10816-6-1995-grades": "1.1 1.8 2.8 4.5 7.1 11 18 28 45 71 112 180".split(" ").map((grade) => `grade ${grade}`),
  "compressor-handbook-rule": ["smooth", "between smooth and rough", "rough"],
  "lr-generating-sets": [
    "no damage expected with standard designs",
    "to be agreed: assess structure and components",
    "special designs only",
  ],
  "vdi-3836-2012": ["zone I", "zone II", "zone III"],
  "gear-housing-handbook": ["smooth", "acceptable", "marginal", "rough", "extremely rough: immediate shutdown"],
  "chiller-maker-sheet": ["fair or better", "slightly rough", "rough", "beyond rough"],
  "motor-maker-alarms": ["below alarm", "alarm", "trip"],
  "recip-compressor-maker": ["first level", "second level", "third level", "above all levels"],
};

/** ISO 10816-7:2009 prints the displacement of slow pumps beside the velocity of the same category and power. */
const velocityOfSlow: Readonly<Record<string, string>> = {
  "category I 90 kW 600 r/min": "category I 200 kW",
  "category II 900 kW 300 r/min": "category II 201 kW",
};
const alsoFor = (id: string, machine: string): string | undefined =>
  id === "iso-10816-7-2009-acceptance" ? machine.replace("90 kW 500 r/min", "200 kW") : velocityOfSlow[machine];

/** Machines whose printed limits follow from their words: what to write, and the table and rows that are theirs. */
interface Plate {
  readonly words: string;
  readonly id: string;
  readonly row: string;
  readonly rpm?: number;
}

const supports = ["rigid", "flexible"] as const;
const motor =
  (kilowatts: number, group: 1 | 2, more = "") =>
  (r: Seeded): Plate => {
    const [support, rpm] = [r.oneOf(supports), r.oneOf([740, 985, 1485, 2980])];
    const type = r.oneOf(["motor", "generator"]);
    const words = `${type} ${kilowatts} kW${more} ${rpm} r/min ${support}, in service, housing`;
    return { words, id: "iso-20816-3-2022", row: `group ${group} ${support}`, rpm };
  };
const pump =
  (kilowatts: number, edge: number) =>
  (r: Seeded): Plate => {
    const category = r.oneOf(["I", "II"]);
    const rpm = r.oneOf([980, 1485, 2980]);
    const words = `pump ${kilowatts} kW ${rpm} r/min category ${category}, in service, housing`;
    return { words, id: "iso-10816-7-2009", row: `category ${category} ${edge} kW`, rpm };
  };
const fixed = (words: string, id: string, row: string, rpm?: number) => (): Plate => ({
  words,
  id,
  row,
  ...(rpm !== undefined && { rpm }),
});

/** Each follows the scope of its standard: see the sources in test/references/severity-limits.ts. */
const plates: readonly ((r: Seeded) => Plate)[] = [
  pump(90, 200),
  pump(200, 200),
  pump(250, 201),
  motor(400, 1),
  motor(55, 2),
  motor(132, 1, " 355 mm"),
  motor(132, 2, " 280 mm"),
  (r) => {
    const power = { "BV-1": 0.1, "BV-2": 3, "BV-3": 132, "BV-4": 100, "BV-5": 11 } as const;
    const [category, support] = [r.oneOf(Object.keys(power) as (keyof typeof power)[]), r.oneOf(supports)];
    const id = r.oneOf(["iso-14694-2003", "iso-14694-2003-acceptance"]);
    const state = id.endsWith("acceptance") ? "new" : "in service";
    return {
      words: `fan ${power[category]} kW ${category} 1485 r/min ${support}, ${state}, housing`,
      id,
      row: `${category} ${support}`,
    };
  },
  fixed("motor 5.5 kW 1485 r/min rigid, in service, housing", "iso-10816-1-1995-annexB", "class I"),
  fixed("gear drive 400 kW 1485 r/min rigid, in service, housing", "iso-10816-1-1995-annexB", "class III"),
  fixed("steam turbine 200 MW 3000 r/min, in service, housing", "iso-20816-2-2017", "generator 3600 r/min"),
  fixed("generator 200 MW 1500 r/min, in service, housing", "iso-20816-2-2017", "steam turbine 1500 r/min"),
  fixed("gas turbine 200 MW 3000 r/min, in service, housing", "iso-20816-2-2017", "gas turbine 3000 r/min"),
  fixed("gas turbine 10 MW 9000 r/min, in service, housing", "iso-10816-4", "gas turbine"),
  fixed("hydro set 10 MW 300 r/min group 1, in service, housing", "iso-10816-5-2000", "group 1", 300),
  fixed("hydro set 10 MW 500 r/min group 3, in service, housing", "iso-10816-5-2000", "group 3", 500),
  (r) => {
    const one = r.whole(1, 7);
    const words = `reciprocating engine 500 kW 1500 r/min class ${one}, in service, housing`;
    return { words, id: "iso-10816-6-1995", row: `class ${one}`, rpm: 1500 };
  },
  (r) => {
    const row = `part ${r.oneOf(["foundation", "frame", "dampers", "piping"])}`;
    return { words: `reciprocating compressor 600 r/min ${row}, in service, housing`, id: "iso-20816-8-2018", row };
  },
  (r) => {
    const row = `grade A mounting free ${r.oneOf([132, 280, 281])} mm`;
    return { words: `motor 55 kW 1485 r/min ${row}, new, housing`, id: "iec-60034-14-2003", row, rpm: 1485 };
  },
  (r) => {
    const speed = r.oneOf([1500, 1800, 3000, 3600]);
    const words = `steam turbine 200 MW ${speed} r/min, in service, shaft`;
    return {
      words,
      id: "iso-20816-2-2017-shaft",
      row: `${speed % 1800 === 0 ? "generator" : "steam turbine"} ${speed} r/min`,
    };
  },
];

const rowsOf = (id: string, machine: string): Row[] =>
  (severityLimits[id] as readonly Row[]).filter(([name]) => name === machine || name === alsoFor(id, machine));

/** A reading and a machine, and where to look in the printed tables. */
export interface PrintedCase {
  readonly by: "classify" | "judge";
  readonly id: string;
  readonly words: string;
  readonly rows: readonly Row[];
  readonly zones: readonly string[];
  readonly reading: Written;
  readonly speedHertz?: string;
  /** Where the limits are over the root of the speed: that speed. */
  readonly rpm?: number;
}

/** Near a limit, at it, on the edges of its tolerance, or anywhere. */
function numeral(r: Seeded, limit: number): string {
  const near = [1, 1, 1 + 1e-7, 1 + 1.3e-7, 1 - 1e-9, 1.001, 0.999, 1 + 1e-5];
  const value = r.chance(0.5) ? limit * r.oneOf(near) : limit * r.between(0.02, 20);
  const digits = r.oneOf([2, 3, 5, 9, 15]);
  return String(Number(value.toPrecision(digits)));
}

/** The value of a limit in another type, in floats: only to choose readings about it. */
const roughly: Readonly<Record<string, number>> = {
  m: 1,
  mm: 1e-3,
  um: 1e-6,
  cm: 0.01,
  in: 0.0254,
  ft: 0.3048,
  mil: 2.54e-5,
  g: 9.80665,
};
const lengthOf = (unit: string): number => roughly[unit.replace(/\/s2?$/, "")] as number;
const detected: Readonly<Record<string, number>> = { rms: 1, pk: Math.SQRT2, pp: 2 * Math.SQRT2, avg: 0.9003 };
const size = (as: string): number => {
  const [unit = "", detector = ""] = as.split(" ");
  return lengthOf(unit) / (detected[detector] as number);
};

/** A reading of a machine: of a quantity that its rows limit, or of another one, then with its frequency. */
function readingOf(r: Seeded, rows: readonly Row[]): Written {
  const row = r.oneOf(rows);
  const order = r.chance(0.75) ? orderOf(row[1]) : r.whole(0, 2);
  const known = rows.some(([, as]) => orderOf(as) === order);
  const hertz = !known || r.chance(0.4) ? String(Number(r.between(3, 900).toPrecision(r.whole(2, 5)))) : undefined;
  // where a standard prints a peak and an RMS column, the reading's own detector chooses: no other is judged here
  const columns = new Set(rows.map(([, as]) => detectorOf(as)));
  const sameQuantity = rows.filter(([, as]) => orderOf(as) === orderOf(row[1]));
  const detector = sameQuantity.length > 1 ? r.oneOf([...columns]) : r.oneOf(["rms", "pk", "pp", "avg"]);
  const as = `${r.oneOf(unitsOfOrder(order))} ${detector}`;
  const limit = r.oneOf(row[2].filter((one) => one !== null));
  const steps = orderOf(row[1]) - order;
  const omega = hertz === undefined ? 1 : 2 * Math.PI * Number(hertz);
  return {
    numeral: numeral(r, ((limit * size(row[1])) / size(as)) * omega ** -steps),
    as,
    ...(hertz !== undefined && { hertz }),
  };
}

const kindOf = (id: string): string => kinds[id] ?? "zones";

function caseOf(r: Seeded, by: PrintedCase["by"], plate: Plate): PrintedCase {
  const all = rowsOf(plate.id, plate.row);
  const reading = readingOf(r, all);
  const columns = all.filter(([, as]) => orderOf(as) === orderOf(all[0]?.[1] as string));
  const isColumned = new Set(columns.map(([, as]) => detectorOf(as))).size > 1;
  const rows = isColumned ? all.filter(([, as]) => detectorOf(as) === detectorOf(reading.as)) : all;
  const zones = zonesOf(kindOf(plate.id), rows[0] as Row, gradeNames[plate.id]);
  const speedHertz = plate.rpm === undefined ? undefined : String(plate.rpm / 60);
  return { by, id: plate.id, words: plate.words, rows, zones, reading, ...(speedHertz && { speedHertz }) };
}

const isCriterion = (id: string): boolean => id !== "iso-20816-1-2016-ranges";
const named: readonly Plate[] = Object.entries(severityLimits)
  .filter(([id]) => isCriterion(id))
  .flatMap(([id, rows]) => {
    const fast = id.startsWith("iso-10816-7") ? " 2980 r/min" : "";
    return [...new Set(rows.map(([machine]) => machine))].map((row): Plate => {
      const speed = / (\d+) r\/min/.exec(row)?.[1] ?? (fast ? "2980" : undefined);
      const words = (/r\/min/.test(row) ? row : row + fast) + (/7919|shaft/.test(id) ? " shaft" : "");
      return { words, id, row, ...(speed !== undefined && { rpm: Number(speed) }) };
    });
  });

/** ISO 7919-3:2009 Annex A and those that took it over, from memory: um peak-to-peak over the root of the speed. */
const overRoot: Row = ["", "um pp", [4800, 9000, 13_200], "mmm"];

function shaftCase(r: Seeded): PrintedCase {
  const id = r.oneOf(["iso-7919-3-2009", "iso-7919-4-2009", "iso-20816-3-2022-shaft", "iso-20816-4-2018-shaft"]);
  const rpm = r.whole(3000, 30_000);
  const by = r.oneOf(["classify", "judge"] as const);
  const asked = by === "classify" ? id : "iso-20816-3-2022-shaft";
  const words = by === "classify" ? `${rpm} r/min shaft` : `steam turbine 12 MW ${rpm} r/min, in service, shaft`;
  const unit = r.oneOf(unitsOfOrder(0));
  const as = `${unit} ${r.oneOf(["pp", "pk", "rms", "avg"])}`;
  const value = numeral(r, ((r.oneOf(overRoot[2]) as number) / Math.sqrt(rpm)) * (size("um pp") / size(as)));
  return {
    by,
    id: asked,
    words,
    rows: [overRoot],
    zones: zonesOf("zones", overRoot),
    reading: { numeral: value, as },
    rpm,
  };
}

/** The next case: most by a table that is named, others by what a nameplate says or by limits that fall with speed. */
export function printedCase(r: Seeded): PrintedCase {
  const which = r.next();
  if (which < 0.05) return shaftCase(r);
  return which < 0.7 ? caseOf(r, "classify", r.oneOf(named)) : caseOf(r, "judge", r.oneOf(plates)(r));
}
