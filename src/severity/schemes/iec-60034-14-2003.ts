import { builtIn } from "./built-in";
import { quoted } from "./sources";

const TABLE = /* @__PURE__ */ quoted(
  "IEC 60034-14:2003",
  "Table 1",
  "https://manualshive.com/en/manual/vascat/id-series/3581372?page=17",
  "read in VASCAT, ID Motors Operation and Maintenance Manual CTT52 ed. 03, April 2019, p. 17, Table 8 (EN 60034-14); a MEZ motor sheet has the same 15 triples",
);

/** IEC 60034-14:2003, factory acceptance of rotating electrical machines. */
// biome-ignore format: a row of a table is a line
export const iec60034Part14Of2003 = /* @__PURE__ */ builtIn({
  id: "iec-60034-14-2003",
  kind: "acceptance",
  standard: "IEC 60034-14",
  edition: "2003",
  title: "Rotating electrical machines - Part 14: Mechanical vibration of certain machines with shaft heights 56 mm and higher - Measurement, evaluation and limits of vibration severity",
  status: "withdrawn",
  statusNote: "superseded; SIST EN 60034-14:2004 withdrawn 15 August 2023 (read in the iTeh record)",
  replacedBy: "IEC 60034-14:2018, whose table differs",
  scope: "factory acceptance of uncoupled d.c. and three-phase a.c. machines, to 50 MW and 15 000 r/min; no in-service criterion",
  machines: ["motor", "generator"],
  within: { power: { to: 50000 }, speed: { to: 15000 }, condition: "new", frame: "IEC" },
  place: "housing",
  measuredOn: "bearing housings",
  band: [10, 1000],
  meanings: { mounting: "free suspension or rigid mounting on the test bed", grade: "A: no special requirements, which applies when none was ordered; B: special requirements" },
  notes: [
    "grade A: no special vibration requirements; grade B: special requirements; grade B rigid has no value for 56 to 132 mm",
    "crossovers: displacement to velocity at 10 Hz, velocity to acceleration at 250 Hz",
    "sources write the shaft-height bounds as 56<=H<=132, 132<H<=280, H>280 or with <; the first is shipped",
  ],
  classes: [
    { when: { grade: "A", mounting: "free", shaftHeight: { from: 56, to: 132 } }, criteria: [{ as: "um rms", limits: { acceptance: 25 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.6 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 2.5 }, source: TABLE }] },
    { when: { grade: "A", mounting: "free", shaftHeight: { above: 132, to: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 35 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 2.2 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 3.5 }, source: TABLE }] },
    { when: { grade: "A", mounting: "free", shaftHeight: { above: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 45 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 2.8 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 4.4 }, source: TABLE }] },
    { when: { grade: "A", mounting: "rigid", shaftHeight: { from: 56, to: 132 } }, criteria: [{ as: "um rms", limits: { acceptance: 21 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.3 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 2 }, source: TABLE }] },
    { when: { grade: "A", mounting: "rigid", shaftHeight: { above: 132, to: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 29 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 2.8 }, source: TABLE }] },
    { when: { grade: "A", mounting: "rigid", shaftHeight: { above: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 37 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 2.3 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 3.6 }, source: TABLE }] },
    { when: { grade: "B", mounting: "free", shaftHeight: { from: 56, to: 132 } }, criteria: [{ as: "um rms", limits: { acceptance: 11 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 0.7 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 1.1 }, source: TABLE }] },
    { when: { grade: "B", mounting: "free", shaftHeight: { above: 132, to: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 18 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.1 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 1.7 }, source: TABLE }] },
    { when: { grade: "B", mounting: "free", shaftHeight: { above: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 29 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.8 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 2.8 }, source: TABLE }] },
    { when: { grade: "B", mounting: "rigid", shaftHeight: { above: 132, to: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 14 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 0.9 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 1.4 }, source: TABLE }] },
    { when: { grade: "B", mounting: "rigid", shaftHeight: { above: 280 } }, criteria: [{ as: "um rms", limits: { acceptance: 24 }, source: TABLE }, { as: "mm/s rms", limits: { acceptance: 1.5 }, source: TABLE }, { as: "m/s2 rms", limits: { acceptance: 2.4 }, source: TABLE }] },
  ],
});
