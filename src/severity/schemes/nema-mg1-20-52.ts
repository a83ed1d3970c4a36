import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { reported } from "./sources";

const TABLE = /* @__PURE__ */ reported(
  "NEMA MG 1-20.52",
  "its table of permissible vibration",
  "https://scribd.com/doc/231073359/Vibration-Severity-1",
  'read in a table of unknown making, "Vibration Severity", Table 4, which says it is based on NEMA MG 1-20.52',
);

/** NEMA MG 1-20.52 (old), large induction motors at no load, displacement peak-to-peak. */
// biome-ignore format: a row of a table is a line
export const nemaMg1Part20Old = /* @__PURE__ */ builtIn({
  id: "nema-mg1-20.52-old",
  kind: "acceptance",
  standard: "NEMA MG 1-20.52",
  edition: "old",
  title: "Permissible vibration for large induction motors",
  status: "withdrawn",
  statusNote: "superseded",
  replacedBy: "NEMA MG 1 Part 7",
  scope: "large induction motors at no load, to 4000 r/min",
  machines: ["motor"],
  within: { condition: "new", frame: "NEMA" },
  place: "housing",
  measuredOn: "bearing housings (from memory)",
  band: null,
  notes: ["between the speeds printed (999 and 1000, 1499 and 1500, 2999 and 3000 r/min) the lower limit is taken"],
  classes: () => flatTable({
    machine: ["speed"],
    columns: [{ as: "in pp", limits: ["acceptance"], source: TABLE }],
    rows: [
      // r/min                      in, peak-to-peak
      [{ above: 2999, to: 4000 },   0.001],
      [{ above: 1499, to: 2999 },   0.0015],
      [{ above: 999, to: 1499 },    0.002],
      [{ to: 999 },                 0.0025],
    ],
  }),
});
