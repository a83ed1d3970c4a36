import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "API 673 3rd ed., 2014",
  "Vibration Limit for Fans, bearing housing",
  "https://inertance.tistory.com/52?category=851980",
  "read on a consultants' web page that lays the table out; mm/s and in/s stand side by side; printed as less than, so a reading at the limit itself does not pass by the print",
);

/** API 673 3rd edition, centrifugal fans in the maker's shop, velocity on the bearing housing. */
// biome-ignore format: a row of a table is a line
export const api673 = /* @__PURE__ */ builtIn({
  id: "api-673-3rd",
  kind: "acceptance",
  standard: "API 673",
  edition: "3rd, 2014",
  title: "Centrifugal fans for petroleum, chemical and gas industry services: vibration limits on the bearing housing",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "centrifugal fans in the maker's shop, at maximum continuous speed and any flow of the envelope; not for axial, air-cooler, cooling-tower and ventilation fans",
  machines: ["fan"],
  within: { condition: "new", test: "works" },
  byContract: true,
  place: "housing",
  measuredOn: "bearing housings of the fan",
  band: null,
  meanings: { content: "overall (printed: unfiltered), or of one discrete frequency (printed: filtered); a broadband reading is overall", units: "the column of the contract: the table prints mm/s and in/s side by side and not in ratio 25.4" },
  notes: ["at trip speed at most 150 % of the vibration at maximum continuous speed"],
  classes: () => flatTable({
    machine: ["content", "units"],
    columns: [{ as: "mm/s rms", limits: ["acceptance"], source: TABLE }, { as: "in/s rms", limits: ["acceptance"], source: TABLE }],
    rows: [
      //                         mm/s rms  in/s rms
      ["overall",  "metric",     2.8,      null],
      ["overall",  "customary",  null,     0.11],
      ["discrete", "metric",     1.8,      null],
      ["discrete", "customary",  null,     0.07],
    ],
  }),
});
