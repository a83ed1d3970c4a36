import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const CLAUSE = /* @__PURE__ */ reported(
  "API 612 7th ed.",
  "16.3.3.3",
  "https://inertance.tistory.com/48?category=851980",
  "read on a consultants' web page that quotes the clause: 25.4 um or the level computed from the maximum continuous speed, whichever is lower; non-synchronous vibration at most 20 % of it, from 0.05 to 8 times that speed; another page prints 120 % there, which looks like a misreading",
);

/** API 612 7th edition, special-purpose steam turbines, displacement of the shaft. */
// biome-ignore format: a row of a table is a line
export const api612Shaft = /* @__PURE__ */ builtIn({
  id: "api-612-7th-shaft",
  kind: "acceptance",
  standard: "API 612",
  edition: "7th",
  title: "Special-purpose steam turbines for petroleum, chemical and gas industry services: vibration of the shaft",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "special-purpose steam turbines, mechanical running test at maximum continuous speed",
  machines: ["steam turbine"],
  within: { condition: "new" },
  byContract: true,
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  meanings: { content: "overall, or one discrete non-synchronous frequency from 0.05 to 8 times the maximum continuous speed; a broadband reading is overall" },
  notes: ["the smaller of 1.0 mil and root(12 000/n) mil peak-to-peak, n the maximum continuous speed in r/min; non-synchronous 20 % of that"],
  classes: () => flatTable({
    machine: ["content", "speed"],
    columns: [{ as: "mil pp", limits: ["acceptance"], source: CLAUSE }],
    rows: [
      //                        mil pp
      ["overall",        {},    { rootOf: 12000, atMost: 1 }],
      ["nonsynchronous", {},    { rootOf: 480, atMost: 0.2 }],
    ],
  }),
});
