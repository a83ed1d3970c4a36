import { builtIn } from "./built-in";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "API 541",
  "limit of induction motors, edition not named",
  "https://inertance.tistory.com/165",
  "read on a consultants' web page that lists the criteria of the main rotating machines: 1.77 mm/s RMS, which of a sine is 2.5 mm/s peak (2.5 over root 2 is 1.768); 0.1 in/s peak would be 1.80 mm/s RMS, so the metric form was converted",
);

/** API 541, form-wound induction motors, velocity on the bearing housing. */
// biome-ignore format: a row of a table is a line
export const api541 = /* @__PURE__ */ builtIn({
  id: "api-541",
  kind: "acceptance",
  standard: "API 541",
  edition: "not stated",
  title: "Form-wound squirrel-cage induction motors: vibration on the bearing housing",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "form-wound squirrel-cage induction motors, running test",
  machines: ["motor"],
  within: { condition: "new" },
  byContract: true,
  place: "housing",
  measuredOn: "bearing housings",
  band: null,
  classes: () => [{ criteria: [{ as: "mm/s rms", limits: { acceptance: 1.77 }, source: TABLE }] }],
});
