/** Each rule of the audit by a case that it finds and the nearest one that it does not; the arithmetic is written beside it. */
import { type AuditCode, auditPlant, parsePlant } from "veladis/plant";
import { describe, expect, it } from "vitest";
import { auditRules } from "../../src/plant/index";
import { type Cells, plantOf } from "./lists";

const on = "2026-11-28";
const codesOf = (cells: Cells) => auditPlant(plantOf(cells), { on }).findings.map(({ code }) => code);

const noBaseline = { baseline: "", "baseline date": "", "baseline count": "", "baseline deviation": "" };
const noCheck = { "check date": "", known: "", "as found": "", "as left": "", "checked by": "" };
const ofTable = { limits: "", "limits source": "" };
const motor = { ...ofTable, kind: "motor", nameplate: "in service", "start-up s": "3", "trip delay s": "3" };

/** By rule: what it finds, and what it just does not. */
const cases: Readonly<Record<Exclude<AuditCode, "tag twice" | "left in doubt">, readonly [found: Cells, near: Cells]>> =
  {
    // 1.25 x 7.1 = 8.875, the cap of ISO 10816-1 and ISO 20816-1, from memory
    "trip above ceiling": [{ trip: "9 mm/s rms" }, { trip: "8.8 mm/s rms" }],
    "trip above the maker's ceiling": [{ ceiling: "6.8 mm/s rms" }, { ceiling: "7 mm/s rms" }],
    "trip above zone C": [{ trip: "7.2 mm/s rms" }, { trip: "7 mm/s rms" }],
    "no setpoint": [{ alarm: "", trip: "" }, { trip: "" }],
    "no trip": [{ trip: "" }, {}],
    "no alarm": [{ alarm: "" }, {}],
    "trip not latching": [{ latching: "no" }, { latching: "yes" }],
    // 1.25 x 4.5 = 5.625, the cap of ISO 10816-3, from memory
    "alarm above ceiling": [{ alarm: "5.63 mm/s rms" }, { alarm: "5.62 mm/s rms" }],
    "alarm above the maker's ceiling": [
      { alarm: "5.6 mm/s rms", ceiling: "5.4 mm/s rms" },
      { alarm: "5.6 mm/s rms", ceiling: "5.6 mm/s rms" },
    ],
    "loop does not carry the alarm": [{ loop: "5.6 to 12 mm/s rms" }, { loop: "5 to 12 mm/s rms" }],
    "loop does not show the baseline": [{ loop: "3 to 12 mm/s rms" }, { loop: "2.6 to 12 mm/s rms" }],
    "limits not known": [
      { ...ofTable, power: "" },
      { ...ofTable, power: "132 kW" },
    ],
    "baseline above zone C": [{ baseline: "7.2 mm/s rms" }, { baseline: "7.1 mm/s rms" }],
    // common practice, no source
    "long alarm delay": [{ "alarm delay s": "61" }, { "alarm delay s": "60" }],
    "long off-delay": [{ "off-delay s": "301" }, { "off-delay s": "300" }],
    // 5.6 less 3 is the baseline of 2.6
    "never clears at the baseline": [{ hysteresis: "3 mm/s rms" }, { hysteresis: "2.9 mm/s rms" }],
    // twice the start-up of 8 s, common practice, no source
    "trip held back too long": [{ "start inhibit s": "17" }, { "start inhibit s": "16" }],
    // API 670, from memory: 2 or 3
    "multiplier above usual": [{ multiplier: "3.1 times for 8 s" }, { multiplier: "3 times for 8 s" }],
    // 2 x 7 = 14
    "multiplied trip out of reach": [
      { multiplier: "2 times for 8 s", loop: "0 to 13.9 mm/s rms", ceiling: "" },
      { multiplier: "2 times for 8 s", loop: "0 to 14 mm/s rms", ceiling: "" },
    ],
    // 7.6 and 7.5 of 8 are 5 and 6.25 % low
    "left out of tolerance": [{ "as left": "7.5 mm/s rms" }, { "as left": "7.6 mm/s rms" }],
    "found out of tolerance": [{ "as found": "7.5 mm/s rms" }, { "as found": "7.6 mm/s rms" }],
    "checked outside the band": [{ known: "8 mm/s rms at 12 Hz" }, { known: "8 mm/s rms at 12.7 Hz" }],
    // a fifth of 7 is 1.4
    "checked far below the trip": [
      { known: "1.3 mm/s rms at 40 Hz", "as found": "1.3 mm/s rms", "as left": "1.3 mm/s rms" },
      { known: "1.4 mm/s rms at 40 Hz", "as found": "1.4 mm/s rms", "as left": "1.4 mm/s rms" },
    ],
    "trip at the baseline": [{ baseline: "7 mm/s rms" }, { baseline: "6.9 mm/s rms" }],
    "alarm at the baseline": [{ baseline: "5.6 mm/s rms" }, { baseline: "5.5 mm/s rms" }],
    "alarm not below trip": [{ alarm: "7 mm/s rms" }, { alarm: "6.8 mm/s rms" }],
    "loop does not carry the trip": [{ loop: "0 to 6.9 mm/s rms" }, { loop: "0 to 7 mm/s rms" }],
    // 7 is a third of 21
    "loop wastes its span": [{ loop: "0 to 22 mm/s rms" }, { loop: "0 to 21 mm/s rms" }],
    "loop of another quantity": [{ loop: "0 to 5 g rms" }, { loop: "0 to 1 in/s pk" }],
    // 1485 r/min are 24.75 Hz; 19 x 1.26 = 23.94, 20 x 1.26 = 25.2
    "band does not hold 1x": [{ band: "25 Hz to 1000 Hz" }, { band: "24 Hz to 1000 Hz" }],
    "band edge at 1x": [{ band: "20 Hz to 1000 Hz" }, { band: "19 Hz to 1000 Hz" }],
    "words not understood": [{ nameplate: "BV-3 in service, foo" }, { nameplate: "BV-3 in service" }],
    // steps of 0.2
    "setpoint not held": [{ trip: "6.9 mm/s rms" }, { trip: "6.8 mm/s rms" }],
    "date after the audit": [{ "check date": "2026-11-29" }, { "check date": "2026-11-28" }],
    "limits do not fit": [
      { ...ofTable, table: "iso-10816-7-2009" },
      { ...ofTable, table: "iso-14694-2003" },
    ],
    "limits from memory": [{ ...ofTable, table: "iso-14694-2003" }, {}],
    "limits without a source": [{ "limits source": "" }, {}],
    "several tables": [
      { ...motor, power: "" },
      { ...motor, power: "400 kW" },
    ],
    "facts assumed": [
      { ...ofTable, place: "" },
      { ...ofTable, place: "housing" },
    ],
    "facts set aside": [
      { ...ofTable, kind: "pump", nameplate: "category I in service", support: "rigid" },
      { ...ofTable, kind: "pump", nameplate: "category I in service", support: "" },
    ],
    "no baseline": [noBaseline, {}],
    "baseline of another quantity": [{ baseline: "30 um pp", "baseline deviation": "" }, {}],
    "baseline in another unit": [{ baseline: "0.1 in/s pk" }, {}],
    "baseline of zero": [{ baseline: "0 mm/s rms" }, { baseline: "0.1 mm/s rms" }],
    "baseline of few readings": [{ "baseline count": "9" }, { "baseline count": "10" }],
    "trip delay above coast-down": [{ "coast-down s": "8" }, { "coast-down s": "9" }],
    // 10 s at most for a fan: common practice, no source
    "long trip delay": [{ "trip delay s": "11" }, { "trip delay s": "10" }],
    "start-up not ridden out": [{ "start-up s": "9" }, { "start-up s": "8" }],
    // 8 % of 5.6 are 0.448
    "hysteresis within the spread": [
      { "baseline deviation": "0.225 mm/s rms" },
      { "baseline deviation": "0.223 mm/s rms" },
    ],
    "never checked": [noCheck, {}],
    "check overdue": [{ "check date": "2025-11-27" }, { "check date": "2025-11-28" }],
    "sensor failure unseen": [{ "sensor fault": "hold" }, { "sensor fault": "alarm" }],
    "wire failure unseen": [{ contact: "normally closed" }, { contact: "normally open" }],
    "power failure unseen": [{ coil: "normally de-energised" }, { coil: "normally energised" }],
    "relay failure unseen": [{ coil: "normally de-energised" }, { coil: "normally energised" }],
  };

describe("the rules of the audit", () => {
  it("find nothing where all is known and well", () => {
    const audit = auditPlant(plantOf({}), { on });
    expect([audit.findings, audit.notChecked]).toEqual([[], []]);
  });

  it("are all here", () => {
    expect([...Object.keys(cases), "tag twice", "left in doubt"].sort()).toEqual(Object.keys(auditRules).sort());
  });

  it.each(Object.entries(cases))("%s", (code, [found, near]) => {
    expect(codesOf(found)).toContain(code);
    expect(codesOf(near)).not.toContain(code);
  });

  it("tag twice, on both rows; blanks and case part no tags", () => {
    const { findings } = auditPlant(plantOf({ tag: "LU-01" }, { tag: "lu-01 " }, { tag: "LU-02" }), { on });
    expect(findings.map(({ code, line }) => [code, line])).toEqual([
      ["tag twice", 2],
      ["tag twice", 3],
    ]);
    expect(findings[0]?.what).toContain("lines 2 and 3");
  });

  it.each([
    // contact open while healthy: a broken wire is not seen; the same contact without power: a loss of power is not seen
    ["normally open", "normally energised", []],
    ["normally closed", "normally energised", ["wire failure unseen"]],
    ["normally open", "normally de-energised", ["wire failure unseen", "power failure unseen", "relay failure unseen"]],
    ["normally closed", "normally de-energised", ["power failure unseen", "relay failure unseen"]],
  ])("what a %s contact with a %s coil hides (common practice, no source)", (contact, coil, unseen) => {
    expect(codesOf({ contact, coil })).toEqual(unseen);
  });

  it("the rider of a start-up may be an inhibit or a multiplier", () => {
    const code = "start-up not ridden out";
    expect(codesOf({ "start-up s": "20" })).toContain(code);
    expect(codesOf({ "start-up s": "20", "start inhibit s": "20" })).not.toContain(code);
    expect(codesOf({ "start-up s": "20", multiplier: "2 times for 20 s" })).not.toContain(code);
  });

  it("a multiplier of 1.01 rides out no start-up, and ten times for an hour is told thrice", () => {
    expect(codesOf({ "start-up s": "20", multiplier: "1.01 times for 20 s" })).toContain("start-up not ridden out");
    expect(codesOf({ multiplier: "10 times for 3600 s", ceiling: "", loop: "0 to 20 mm/s rms" })).toEqual([
      ...["trip held back too long", "multiplier above usual", "multiplied trip out of reach"],
    ]);
  });

  it("a start inhibit of an hour is found where the time of the start-up is not known", () => {
    expect(codesOf({ "start-up s": "", "start inhibit s": "3600" })).toContain("trip held back too long");
    expect(codesOf({ "start-up s": "", "start inhibit s": "60" })).not.toContain("trip held back too long");
  });

  it("a trip that says its frequency is held against the limits at that frequency, and at running speed", () => {
    // 1.25 x 7.1 mm/s rms at 150 Hz are 1.25 x 7.1 x 2 root 2 / (2 pi 150) = 26.6 um pp; at 24.75 Hz 161.4 um pp
    const most = (1.25 * 7.1 * 2 * Math.SQRT2 * 1000) / (2 * Math.PI * 150);
    expect(most).toBeCloseTo(26.6, 1);
    const bare = { step: "", lowest: "", highest: "", ceiling: "", loop: "", alarm: "", baseline: "" };
    const trip = (text: string) =>
      codesOf({ ...bare, "baseline date": "", "baseline count": "", "baseline deviation": "", trip: text });
    expect(trip("26.7 um pp at 150 Hz")).toContain("trip above ceiling");
    expect(trip("26.5 um pp at 150 Hz")).not.toContain("trip above ceiling");
    expect(trip("162 um pp at 10 Hz")).toContain("trip above ceiling");
  });

  it("a device left 40 % low: its trip comes late, and from what the list says it is told at how much", () => {
    const low = { known: "5 mm/s rms at 40 Hz", "as found": "3 mm/s rms", "as left": "3 mm/s rms" };
    const { findings } = auditPlant(plantOf(low), { on });
    // 7 x 5 / 3 = 11.67
    expect(findings.find(({ code }) => code === "left out of tolerance")).toMatchObject({
      severity: "error",
      what: expect.stringMatching(/40\.0 % low.* comes at 11\.67 mm\/s rms.*trips late/),
    });
  });

  it("left in doubt: as left beyond the range of its loop", () => {
    const plant = plantOf({});
    const machines = plant.machines.map((one) => ({
      ...one,
      check: { ...one.check, asLeft: { ...one.check?.asLeft, state: "above range" } },
    }));
    const { findings } = auditPlant({ ...plant, machines } as never, { on });
    expect(findings.map(({ code }) => code)).toEqual(["left in doubt"]);
  });

  it("a compressor without its part: a trip of 22 mm/s is held against nothing, which is an error", () => {
    const found = auditPlant(
      plantOf({ ...ofTable, kind: "reciprocating compressor", nameplate: "in service", trip: "22 mm/s rms" }),
      { on },
    );
    expect(found.findings.find(({ code }) => code === "limits not known")).toMatchObject({
      severity: "error",
      what: expect.stringContaining("not known: part: "),
    });
  });

  it("a check at the end of a long month is due at the end of a short one", () => {
    const month = { "check date": "2026-08-31", "interval months": "1" };
    const overdue = (day: string) => auditPlant(plantOf(month), { on: day }).findings.map(({ code }) => code);
    expect(overdue("2026-09-30")).toEqual([]);
    expect(overdue("2026-10-01")).toEqual(["check overdue"]);
  });
});

describe("a speed that varies is taken on the safe side", () => {
  const varied = { speed: "900 to 1500 r/min" };

  it("a displacement against limits of velocity: by the highest speed, where they allow the least", () => {
    // 1.25 x 7.1 mm/s rms at 25 Hz: 1.25 x 7.1 x 2 root 2 / (2 pi 25) = 159.8 um pp; at 15 Hz 266 um pp
    const most = (1.25 * 7.1 * 2 * Math.SQRT2 * 1000) / (2 * Math.PI * 25);
    expect(most).toBeCloseTo(159.8, 1);
    const shaft = {
      ...varied,
      step: "",
      lowest: "",
      highest: "",
      ceiling: "",
      loop: "",
      alarm: "",
      baseline: "30 um pp",
    };
    const trip = (um: number) => codesOf({ ...shaft, "baseline deviation": "", trip: `${um} um pp` });
    expect(trip(159.9)).toContain("trip above ceiling");
    expect(trip(159.7)).not.toContain("trip above ceiling");
  });

  it("a band must hold both ends", () => {
    expect(codesOf({ ...varied, band: "16 Hz to 1000 Hz" })).toContain("band does not hold 1x");
    expect(codesOf({ ...varied, band: "10 Hz to 24 Hz" })).toContain("band does not hold 1x");
    expect(codesOf({ ...varied, band: "10 Hz to 1000 Hz" })).toEqual([]);
  });
});

describe("what cannot be checked", () => {
  it("of a row with tag and kind alone every rule that needs more is told with what it needs", () => {
    const rowOf = (kind: string) => parsePlant({ heading: ["tag", "kind"], rows: [["LU-01", kind]] });
    const audit = auditPlant(rowOf("pump"), { on });
    expect(audit.findings.map(({ code }) => code)).toEqual([
      ...["no setpoint", "no baseline", "never checked", "limits from memory", "several tables", "facts assumed"],
    ]);
    const said = new Set([...audit.findings, ...audit.notChecked].map(({ code }) => code));
    // what these look for is in the row itself
    expect(Object.keys(auditRules).filter((code) => !said.has(code as AuditCode))).toEqual([
      ...["no trip", "no alarm", "alarm above the maker's ceiling", "loop does not carry the alarm"],
      ...["tag twice", "words not understood", "date after the audit", "limits do not fit"],
      ...["limits not known", "limits without a source", "facts set aside", "long alarm delay", "long off-delay"],
      ...["trip held back too long", "multiplier above usual", "multiplied trip out of reach"],
    ]);
    const ofFan = auditPlant(rowOf("fan"), { on }).notChecked.find(({ code }) => code === "limits from memory");
    expect(ofFan?.because).toBe("not known: power: the rated power in kW; speed: the running speed in r/min");
    for (const { because } of audit.notChecked) expect(because).toMatch(/^not known: /);
  });

  it("without the day of the audit nothing is said of what is overdue, and that is told", () => {
    const { findings, notChecked } = auditPlant(plantOf({ "check date": "2020-01-01" }));
    expect(findings).toEqual([]);
    expect(notChecked).toEqual([
      { tag: "LU-01", line: 2, code: "date after the audit", because: "not known: the day of the audit" },
      { tag: "LU-01", line: 2, code: "check overdue", because: "not known: the day of the audit" },
    ]);
  });

  it("across quantities without a speed", () => {
    const { notChecked } = auditPlant(plantOf({ speed: "", baseline: "30 um pp", "baseline deviation": "" }), { on });
    expect(notChecked.filter(({ code }) => code === "alarm at the baseline")).toMatchObject([
      { because: "not known: the running speed, by which one quantity becomes another" },
    ]);
  });
});

describe("the answer", () => {
  it("has the worst first, then the order of the list, each finding with what, why, source and what would mend it", () => {
    const rows = [
      { tag: "A", "baseline count": "3" },
      { tag: "B", trip: "9 mm/s rms" },
      { tag: "C", "start-up s": "20" },
      { tag: "D", trip: "9 mm/s rms" },
    ];
    const { findings } = auditPlant(plantOf(...rows), { on });
    expect(findings.map(({ tag, severity }) => [tag, severity])).toEqual([
      ["B", "error"],
      ["D", "error"],
      ["C", "warning"],
      ["A", "note"],
    ]);
    for (const { what, why, mend, source } of findings) {
      expect([what, why, mend, source.title].every((text) => text.length > 3)).toBe(true);
    }
  });

  it("names the limits of each machine: of the row, or chosen by the nameplate", () => {
    const { limits } = auditPlant(
      plantOf({ tag: "A" }, { tag: "B", ...ofTable }, { tag: "C", ...ofTable, table: "iso-14694-2003" }),
    );
    expect(limits.map(({ tag, by, tables }) => [tag, by, ...tables])).toEqual([
      ["A", "limits", "maker's manual, section 6"],
      ["B", "nameplate", "iso-14694-2003 (ISO 14694:2003)"],
      ["C", "table", "iso-14694-2003 (ISO 14694:2003)"],
    ]);
  });

  it("says nothing of a row that was refused", () => {
    const audit = auditPlant(plantOf({ tag: "A", trip: "9" }, { tag: "B" }), { on });
    expect(audit.machines).toBe(1);
    expect(JSON.stringify([audit.findings, audit.notChecked, audit.limits])).not.toContain('"A"');
    expect(audit.refused).toMatchObject([{ tag: "A", line: 2, column: "trip", code: "missing-unit" }]);
  });
});
