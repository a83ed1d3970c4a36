import { builtIn } from "./built-in";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "API 541",
  "shaft limit of induction motors, edition not named",
  "https://inertance.tistory.com/165",
  "read on a consultants' web page that lists the criteria of the main rotating machines: 37.5 um, one value for all speeds; whether the standard lowers it with speed is not told there",
);

/** API 541, form-wound induction motors, displacement of the shaft. */
// biome-ignore format: a row of a table is a line
export const api541Shaft = /* @__PURE__ */ builtIn({
  id: "api-541-shaft",
  kind: "acceptance",
  standard: "API 541",
  edition: "not stated",
  title: "Form-wound squirrel-cage induction motors: vibration of the shaft",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "form-wound squirrel-cage induction motors with hydrodynamic bearings, running test",
  machines: ["motor"],
  within: { condition: "new" },
  byContract: true,
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  notes: ["the standard may have lower limits at higher speeds: see the edition of the contract"],
  classes: () => [{ criteria: [{ as: "um pp", limits: { acceptance: 37.5 }, source: TABLE }] }],
});
