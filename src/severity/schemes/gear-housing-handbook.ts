import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { quoted } from "./sources";

const BOOK = /* @__PURE__ */ quoted(
  "Practical Machinery Management for Process Plants: Major Process Equipment Maintenance and Repair",
  "p. 265, Table 6-2",
  "https://digilib.universitaspertamina.ac.id/ebook/Practical%20Machinery%20Management%20for%20Process%20Plants%20:%20Major%20Process%20Equipment%20Maintenance%20and%20Repair/files/basic-html/page285.html",
  "read on the page of a library copy",
);

/** A handbook's rule for gear housings, high-speed and low-speed, in/s peak on bearing caps. */
// biome-ignore format: a row of a table is a line
export const gearHousingHandbook = /* @__PURE__ */ builtIn({
  id: "gear-housing-handbook",
  kind: "grades",
  standard: "Practical Machinery Management",
  edition: "undated copy",
  title: "Gear units: housing vibration on bearing caps, high-speed and low-speed",
  status: "guide",
  statusNote: "a rule of a handbook",
  scope: "gear units; by its own words not applicable to other types of machinery",
  machines: ["gear drive"],
  place: "housing",
  measuredOn: "bearing caps of the gear unit",
  band: null,
  peakMeans: "open",
  meanings: { class: "high-speed: such as gear units of API 613; low-speed: drives of extruders and reciprocating machinery" },
  grades: ["smooth", "acceptable", "marginal", "rough", "extremely rough: immediate shutdown"],
  notes: ["the page says peak and leaves open whether true peak or 1.414 times RMS, and in which band"],
  classes: () => flatTable({
    machine: ["class"],
    columns: [{ as: "in/s pk", limits: ["smooth", "acceptable", "marginal", "rough"], source: BOOK }],
    rows: [
      //             smooth acceptable marginal rough
      ["high-speed", 0.1,   0.2,       0.3,     0.5],
      ["low-speed",  0.2,   0.3,       0.4,     0.6],
    ],
  }),
});
