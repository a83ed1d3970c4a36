import { builtIn } from "./built-in";
import { flatTable } from "./flat-table";
import { quoted } from "./sources";

const MANUAL = /* @__PURE__ */ quoted(
  "VDI 3836",
  "group 3, resilient, frequency range A",
  "https://easymanua.ls/sabroe/sab-233-s/manual?p=101",
  "read in Johnson Controls Denmark, SABROE Engineering manual SAB 193-233-283 S A-frame, 008831 en 2022.02, p. 101, 6.15.1, which names no edition; the maker itself accepts to 11.2 mm/s",
);

/** VDI 3836:2012, screw compressors and rotary lobe blowers; one row of it, as a maker quotes it. */
// biome-ignore format: a row of a table is a line
export const vdi3836Of2012 = /* @__PURE__ */ builtIn({
  id: "vdi-3836-2012",
  kind: "grades",
  standard: "VDI 3836",
  edition: "2012",
  title: "Measurement and evaluation of mechanical vibration of screw-type compressors and Roots blowers - Addition to DIN ISO 10816-3",
  status: "guide",
  statusNote: "a guideline of an engineers' association; title page read, whether it is in force was not checked",
  scope: "screw compressors and rotary lobe blowers; of its four groups only group 3 on a resilient support, in frequency range A, is held here",
  machines: ["screw compressor", "lobe blower"],
  place: "housing",
  measuredOn: "not seen",
  band: null,
  ask: ["group", "support", "band"],
  meanings: {
    group: "the group of VDI 3836, which has four; what each of them is for was not seen: ask the maker",
    band: "the frequency range of VDI 3836; its ends in Hz were not seen",
  },
  grades: ["zone I", "zone II", "zone III"],
  notes: ["three zones of its own, not zones A to D of ISO 10816-3 and ISO 20816-3"],
  classes: () => flatTable({
    machine: ["group", "support", "band"],
    columns: [{ as: "mm/s rms", limits: ["zone I", "zone II"], source: MANUAL }],
    rows: [
      //                      I/II II/III
      ["3", "flexible", "A",  10,  15],
    ],
  }),
});
