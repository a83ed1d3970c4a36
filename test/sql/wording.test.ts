import { defineScheme, type SchemeInput } from "veladis/severity";
import { machinesToSql, schemeToSql, toSql } from "veladis/sql";
import { holdWording } from "../refusals/hold-wording";

const graded = (name: string) =>
  defineScheme({
    ...{ id: "site-rule", kind: "grades", standard: "Site rule", grades: [name, "rough"] },
    classes: [
      { criteria: [{ as: "mm/s rms", limits: { [name]: 2 }, source: { title: "rule", provenance: "memory" } }] },
    ],
  } as SchemeInput);
const query = (where: unknown) => toSql("in/s pk", "mm/s rms", where as Parameters<typeof toSql>[2]);

const zoned = (id: string) =>
  defineScheme({
    ...{ id, kind: "zones", standard: "Site rule" },
    classes: [
      { criteria: [{ as: "mm/s rms", limits: { "A/B": 2 }, source: { title: "rule", provenance: "memory" } }] },
    ],
  } as SchemeInput);
const pump = { name: "P-11", machine: "pump 90 kW category II 2980 r/min" };
const byRow = { from: "um pp", as: "mm/s rms", at: { column: "speed", unit: "r/min" } };
const many = (machines: unknown, more: object = {}) =>
  machinesToSql(machines as never, { table: "trend", column: "v", from: "mm/s rms", ...more } as never);
/** The refusal of one machine of a list, which stands in the answer. */
const refusedOf = (machines: unknown, more: object) => {
  for (const { error } of many(machines, more).refused) throw error;
};

holdWording("sql", {
  "column, a number": () => query({ column: 7 }),
  "frequency, too low for its factor": () => toSql("g pk", "mm/s rms", { column: "v", at: { hertz: 5e-324 } }),
  "frequency, no unit": () => toSql("g pk", "mm/s rms", { column: "v", at: { column: "n" } as never }),
  "frequency, a text for the order": () =>
    toSql("g pk", "mm/s rms", { column: "v", at: { column: "n", unit: "r/min", order: "2" } as never }),
  "no place for the values": () => query({}),
  "two places for the values": () => query({ column: "reading", expression: "raw / 1000" }),
  "an empty expression": () => query({ expression: " " }),
  "no names": () => query({ column: [] }),
  "a name that is no text": () => query({ column: ["plant", 7] }),
  "an empty name": () => query({ column: "" }),
  "a name with a control character": () => query({ column: "a\u0000b" }),
  "a name that Spark would put a variable into": () => query({ column: "$".concat("{HOME}"), dialect: "spark" }),
  "a grade with a control character": () =>
    schemeToSql(graded("good\u0000bad") as never, {}, { column: "v", from: "mm/s rms" }),
  "an answer that is none": () =>
    schemeToSql("iso-10816-7-2009", "pump 250 kW category I", {
      column: "v",
      from: "mm/s rms",
      answer: "best" as never,
    }),
  "an option there is none of": () => query({ column: "reading", crestfactor: 4 }),
  "an engine there is none of": () => query({ column: "reading", dialect: "duck" as never }),
  "machines, none": () => many([]),
  "machines, no list": () => many("pump"),
  "machines, words alone": () => many(["pump"]),
  "machines, a part there is none of": () => many([{ ...pump, tag: "P" }]),
  "machines, a name that is no text": () => many([{ ...pump, name: 7 }]),
  "machines, an empty name": () => many([{ ...pump, name: "" }]),
  "machines, a name twice": () => many([pump, pump]),
  "machines, a name with a control character": () => many([{ ...pump, name: "P\u0000" }]),
  "machines, no reading type": () => many([pump], { from: undefined }),
  "machines, a type to judge in without a frequency": () => many([pump], { as: "mm/s rms" }),
  "machines, no list of schemes": () => many([pump], { schemes: "iso-10816-7-2009" }),
  "machines, two frequencies": () => refusedOf([{ ...pump, at: "50 Hz" }], { at: "25 Hz" }),
  "machines, a displacement of housing or shaft": () => refusedOf([pump], byRow),
  "machines, an id of a scheme with a control character": () => many([pump], { schemes: [zoned("site\u0000rule")] }),
});
