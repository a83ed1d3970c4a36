import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const EQUATION_1 = /* @__PURE__ */ reported(
  "API 672 5th ed.",
  "Equation (1)",
  "https://aircombat82.tistory.com/entry/%EC%A7%84%EB%8F%99%EA%B8%B0%EC%A4%80",
  "read on a web page that quotes the clause with two pinions worked out, 34 um at 6838 r/min and 30 um at 8792; a consultants' page prints the cap of 40 um too; 1.5 mil is 38.1 um",
);

/** API 672 5th edition, packaged integrally geared centrifugal air compressors, displacement of the pinion shafts. */
// biome-ignore format: a row of a table is a line
export const api672Shaft = /* @__PURE__ */ builtIn({
  id: "api-672-5th-shaft",
  kind: "acceptance",
  standard: "API 672",
  edition: "5th",
  title: "Packaged, integrally geared centrifugal air compressors: vibration of the pinion shafts",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "integrally geared centrifugal air compressors, mechanical running test",
  machines: ["compressor"],
  within: { condition: "new" },
  byContract: true,
  place: "shaft",
  measuredOn: "the pinion shaft against its bearing housing",
  band: null,
  meanings: { units: "the column of the contract: 40 um and 1.5 mil stand side by side and are not in ratio 25.4" },
  notes: ["root(12 000/n) mil peak-to-peak, at most 40 um (1.5 mil), run-out included: nothing is subtracted; n in r/min, of the pinion"],
  classes: () => flatTable({
    machine: ["units", "speed"],
    columns: [{ as: "um pp", limits: ["acceptance"], source: EQUATION_1 }, { as: "mil pp", limits: ["acceptance"], source: EQUATION_1 }],
    rows: [
      //                  um pp                             mil pp
      ["metric",    {},   { rootOf: 7741920, atMost: 40 },  null],
      ["customary", {},   null,                             { rootOf: 12000, atMost: 1.5 }],
    ],
  }),
});
