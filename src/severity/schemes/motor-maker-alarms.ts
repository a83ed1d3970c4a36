import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { quoted } from "./sources";

const MANUAL = /* @__PURE__ */ quoted(
  "WEG, Installation, operation and maintenance manual, squirrel cage motor, M line, vertical, 11371757",
  "p. 36, Table 6.1",
  "https://manualshive.com/ru/manual/weg/m-line-series/950693?page=36",
  "read on the page of a copy on a document site",
);

/** A maker's alarm and trip for large motors, by speed and frame; steps without a verdict, not a standard. */
// biome-ignore format: a row of a table is a line
export const motorMakerAlarms = /* @__PURE__ */ builtIn({
  id: "motor-maker-alarms",
  kind: "grades",
  standard: "a maker's manual for large motors",
  edition: "11371757",
  title: "Large vertical squirrel-cage motors of one maker: alarm and trip by speed and frame",
  status: "guide",
  statusNote: "one maker's settings, for that maker's motors",
  scope: "large vertical squirrel-cage motors of one maker, 600 to 3600 r/min, in operation",
  machines: ["motor"],
  within: { speed: { from: 600, to: 3600 } },
  place: "housing",
  measuredOn: "not seen",
  band: null,
  grades: ["below alarm", "alarm", "trip"],
  notes: ["between frames 560 and 630, which the table leaves open, the lower limits are taken"],
  classes: () => flatTable({
    machine: ["speed", "shaftHeight"],
    columns: [{ as: "mm/s rms", limits: ["below alarm", "alarm"], source: MANUAL }],
    rows: [
      //                                                    up to alarm, up to trip
      [{ from: 600, to: 1800 },   { below: 355 },            4.5, 7],
      [{ from: 600, to: 1800 },   { from: 355, below: 630 }, 4.5, 7],
      [{ from: 600, to: 1800 },   { from: 630 },             5.5, 8],
      [{ above: 1800, to: 3600 }, { below: 355 },            3.5, 5.5],
      [{ above: 1800, to: 3600 }, { from: 355, below: 630 }, 4.5, 6.5],
      [{ above: 1800, to: 3600 }, { from: 630 },             5.5, 7.5],
    ],
  }),
});
