import { defineScheme, type SchemeInput } from "veladis/severity";
import { schemeToSql, toSql } from "veladis/sql";
import { holdWording } from "../refusals/hold-wording";

const graded = (name: string) =>
  defineScheme({
    ...{ id: "site-rule", kind: "grades", standard: "Site rule", grades: [name, "rough"] },
    classes: [
      { criteria: [{ as: "mm/s rms", limits: { [name]: 2 }, source: { title: "rule", provenance: "memory" } }] },
    ],
  } as SchemeInput);
const query = (where: unknown) => toSql("in/s pk", "mm/s rms", where as Parameters<typeof toSql>[2]);

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
  "a name that Spark would put a variable into": () => query({ column: "$".concat("{HOME}"), quotes: "backtick" }),
  "a grade with a control character": () =>
    schemeToSql(graded("good\u0000bad") as never, {}, { column: "v", from: "mm/s rms" }),
  "an answer that is none": () =>
    schemeToSql("iso-10816-7-2009", "pump 250 kW category I", {
      column: "v",
      from: "mm/s rms",
      answer: "best" as never,
    }),
  "an option there is none of": () => query({ column: "reading", crestfactor: 4 }),
  "quotes that are none": () => query({ column: "reading", quotes: "backticks" }),
});
