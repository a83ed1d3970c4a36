import { builtIn } from "./built-in";
import { quoted } from "./sources";

const TABLE = /* @__PURE__ */ quoted(
  "ISO 2373:1974",
  "its table of limits",
  "https://scribd.com/doc/231073359/Vibration-Severity-1",
  'read in a secondary table, "Vibration Severity", Table 3, which says it is based on ISO 2373',
);

/** ISO 2373:1974, factory test of electrical machines of shaft height 80 to 400 mm. */
// biome-ignore format: a row of a table is a line
export const iso2373Of1974 = /* @__PURE__ */ builtIn({
  id: "iso-2373-1974",
  kind: "acceptance",
  standard: "ISO 2373",
  edition: "1974",
  title: "Mechanical vibration of certain rotating electrical machinery with shaft heights between 80 and 400 mm",
  status: "withdrawn",
  statusNote: "withdrawn (from memory); second edition 1987",
  replacedBy: "IEC 60034-14",
  scope: "factory test of motors, freely suspended; grades normal (N), reduced (R) and special (S)",
  machines: ["motor", "generator"],
  within: { condition: "new", mounting: "free", frame: "IEC" },
  place: "housing",
  measuredOn: "bearing housings",
  band: [10, 1000],
  meanings: { grade: "the grade ordered: normal (N), reduced (R) or special (S)" },
  notes: ["the source prints 80-132-225-400 mm without saying which row owns 132 and 225; the row with the lower limit is taken"],
  classes: [
    { when: { grade: "normal", speed: { from: 600, to: 3600 }, shaftHeight: { from: 80, to: 132 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }] },
    { when: { grade: "normal", speed: { from: 600, to: 3600 }, shaftHeight: { above: 132, to: 225 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 2.8 }, source: TABLE }] },
    { when: { grade: "normal", speed: { from: 600, to: 3600 }, shaftHeight: { above: 225, to: 400 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 4.5 }, source: TABLE }] },
    { when: { grade: "reduced", speed: { from: 600, to: 1800 }, shaftHeight: { from: 80, to: 132 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 0.71 }, source: TABLE }] },
    { when: { grade: "reduced", speed: { from: 600, to: 1800 }, shaftHeight: { above: 132, to: 225 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.12 }, source: TABLE }] },
    { when: { grade: "reduced", speed: { from: 600, to: 1800 }, shaftHeight: { above: 225, to: 400 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }] },
    { when: { grade: "reduced", speed: { above: 1800, to: 3600 }, shaftHeight: { from: 80, to: 132 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.12 }, source: TABLE }] },
    { when: { grade: "reduced", speed: { above: 1800, to: 3600 }, shaftHeight: { above: 132, to: 225 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }] },
    { when: { grade: "reduced", speed: { above: 1800, to: 3600 }, shaftHeight: { above: 225, to: 400 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 2.8 }, source: TABLE }] },
    { when: { grade: "special", speed: { from: 600, to: 1800 }, shaftHeight: { from: 80, to: 132 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 0.45 }, source: TABLE }] },
    { when: { grade: "special", speed: { from: 600, to: 1800 }, shaftHeight: { above: 132, to: 225 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 0.71 }, source: TABLE }] },
    { when: { grade: "special", speed: { from: 600, to: 1800 }, shaftHeight: { above: 225, to: 400 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.12 }, source: TABLE }] },
    { when: { grade: "special", speed: { above: 1800, to: 3600 }, shaftHeight: { from: 80, to: 132 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 0.71 }, source: TABLE }] },
    { when: { grade: "special", speed: { above: 1800, to: 3600 }, shaftHeight: { above: 132, to: 225 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.12 }, source: TABLE }] },
    { when: { grade: "special", speed: { above: 1800, to: 3600 }, shaftHeight: { above: 225, to: 400 } }, criteria: [{ as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }] },
  ],
});
