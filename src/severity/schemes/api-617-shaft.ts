import { builtIn } from "./built-in";
import { memory } from "./sources";

const TEST = /* @__PURE__ */ memory(
  "API 617 8th ed.",
  "mechanical running test",
  "not checked against a printed copy; API 612, 613 and 672 are alike",
);

/** API 617 8th edition, shaft vibration in the mechanical running test. */
// biome-ignore format: a row of a table is a line
export const api617Shaft = /* @__PURE__ */ builtIn({
  id: "api-617-8th-shaft",
  kind: "acceptance",
  standard: "API 617",
  edition: "8th",
  title: "Axial and centrifugal compressors and expander-compressors: mechanical running test",
  status: "current",
  statusNote: "edition in force not checked",
  scope: "compressors, and by the sister standards special-purpose steam turbines and gear drives, in the mechanical running test",
  machines: ["compressor", "steam turbine", "gear drive"],
  within: { condition: "new" },
  place: "shaft",
  measuredOn: "the shaft against its bearing housing",
  band: null,
  notes: [
    "the smaller of 1.0 mil and root(12 000/n) mil peak-to-peak, n in r/min",
    "some editions and machine types stop at 50 um (2 mil) in place of 25.4 um: check the edition of the contract",
    "run-out is subtracted separately, up to 25 % of the limit or 6.4 um",
  ],
  classes: [
    { when: { speed: {} }, criteria: [{ as: "mil pp", limits: { acceptance: { rootOf: 12000, atMost: 1 } }, source: TEST }] },
  ],
});
