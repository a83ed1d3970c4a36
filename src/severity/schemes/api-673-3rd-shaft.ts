import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "API 673 3rd ed., 2014",
  "Vibration Limit for Fans, shaft",
  "https://inertance.tistory.com/52?category=851980",
  "read on a consultants' web page that lays the table out; um and mil stand side by side and are rounded (2 mil is 50.8 um); printed as less than, so a reading at the limit itself does not pass by the print",
);

/** API 673 3rd edition, centrifugal fans with hydrodynamic bearings in the maker's shop, displacement of the shaft. */
// biome-ignore format: a row of a table is a line
export const api673Shaft = /* @__PURE__ */ builtIn({
  id: "api-673-3rd-shaft",
  kind: "acceptance",
  standard: "API 673",
  edition: "3rd, 2014",
  title: "Centrifugal fans for petroleum, chemical and gas industry services: vibration limits of the shaft",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "centrifugal fans with hydrodynamic bearings in the maker's shop, at maximum continuous speed and any flow of the envelope; not for axial, air-cooler, cooling-tower and ventilation fans",
  machines: ["fan"],
  within: { condition: "new", test: "works" },
  byContract: true,
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  meanings: { content: "overall (printed: unfiltered), or of one discrete frequency (printed: filtered); a broadband reading is overall", units: "the column of the contract: the table prints um and mil side by side and not in ratio 25.4" },
  notes: ["at trip speed at most 150 % of the vibration at maximum continuous speed"],
  classes: () => flatTable({
    machine: ["content", "units"],
    columns: [{ as: "um pp", limits: ["acceptance"], source: TABLE }, { as: "mil pp", limits: ["acceptance"], source: TABLE }],
    rows: [
      //                         um pp  mil pp
      ["overall",  "metric",     50,    null],
      ["overall",  "customary",  null,  2],
      ["discrete", "metric",     40,    null],
      ["discrete", "customary",  null,  1.6],
    ],
  }),
});
