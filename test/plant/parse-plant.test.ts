import fc from "fast-check";
import { VeladisError } from "veladis";
import { parsePlant, plantColumns } from "veladis/plant";
import { describe, expect, it } from "vitest";
import { plantOf, sound, tableOf } from "./lists";

const refusal = (act: () => unknown): VeladisError => {
  try {
    act();
  } catch (error) {
    if (VeladisError.is(error)) return error;
    throw error;
  }
  throw new Error("not refused");
};
const heading = (...own: string[]) => parsePlant({ heading: ["tag", "kind", ...own], rows: [] });

describe("headings", () => {
  it("are read without regard to case, order, blanks, underscores and hyphens", () => {
    const { machines } = parsePlant({
      heading: ["TRIP_DELAY_S", "Kind", "coast down [s]", "  tag ", "Start-Up S"],
      rows: [["8", "fan", "90", "LU-01", "3"]],
    });
    expect(machines).toMatchObject([
      { tag: "LU-01", tripDelay: 8, coastDown: 90, startUp: 3, machine: { type: "fan" } },
    ]);
  });

  it("of one's own are kept with their cells", () => {
    const { machines, ownColumns } = parsePlant({
      heading: ["tag", "kind", "room", "", "__proto__"],
      rows: [["LU-01", "fan", " K2 ", "", "x"]],
    });
    expect(ownColumns).toEqual(["room", "column 4", "__proto__"]);
    expect(Object.entries(machines[0]?.own ?? {})).toEqual([
      ["room", "K2"],
      ["__proto__", "x"],
    ]);
  });

  it.each([
    ["trip dely s", "trip delay s"],
    ["trip delay ms", "trip delay s"],
    ["trip delay", "trip delay s"],
    ["trip (mm/s rms)", "trip"],
    ["interval years", "interval months"],
    ["power kW", "power"],
    ["speed rpm", "speed"],
    ["base line", "baseline"],
    ["checkdate", "check date"],
    // a word of its own, which one has to say
    ["vendor", "sensor"],
  ])("%s is nearly %s, and refused with it", (one, near) => {
    const error = refusal(() => heading(one));
    expect(error.code).toBe("unknown-option");
    expect(error.didYouMean).toContain(near);
    expect(parsePlant({ heading: ["tag", "kind", one], rows: [] }, { own: [one] }).ownColumns).toEqual([one]);
  });

  it.each(["room", "site", "criticality", "trip reason", "owner", "serial no", "area", "notes", "maker"])(
    "%s is one's own",
    (one) => {
      expect(heading(one).ownColumns).toEqual([one]);
    },
  );

  it.each([
    ["a column twice", () => heading("Trip", "trip"), "syntax"],
    ["one's own twice", () => heading("room", "Room"), "syntax"],
    ["no kind", () => parsePlant({ heading: ["tag"], rows: [] }), "missing-fact"],
    ["nothing at all", () => parsePlant({ heading: [], rows: [] }), "missing-fact"],
    ["own, of the list", () => parsePlant({ heading: ["tag", "kind"], rows: [] }, { own: ["trip"] }), "unknown-option"],
    ["own, not there", () => parsePlant({ heading: ["tag", "kind"], rows: [] }, { own: ["rom"] }), "unknown-option"],
  ])("%s is refused", (_, act, code) => {
    expect(refusal(act).code).toBe(code);
  });
});

describe("cells", () => {
  it("every column's example is read, and stands in the machine", () => {
    const { machines, refused } = plantOf({});
    expect(refused).toEqual([]);
    const text = JSON.stringify(machines[0]);
    for (const name of Object.keys(plantColumns)) if (sound[name] === "") expect(text).not.toContain(`"${name}"`);
    expect(machines[0]).toMatchObject({
      ...{ tag: "LU-01", line: 2, startUp: 8, coastDown: 90, sensor: "100 mV/g", tripDelay: 8, interval: 12 },
      limits: { "B/C": { value: 4.5 }, "C/D": { value: 7.1, unit: "mm/s" }, source: "maker's manual, section 6" },
      settings: { hysteresis: "8 %", latching: true, contact: "normally open", sensorFault: "alarm" },
      band: { lowest: { hertz: 10 }, highest: { hertz: 1000 } },
      baseline: { level: { value: 2.6 }, date: "2026-02-16", count: 14, deviation: { value: 0.2 } },
      check: { date: "2026-03-10", known: { value: 8, hertz: 40 }, asFound: { value: 7.9 }, by: "shift B" },
      tolerance: "5 %",
    });
  });

  it("an empty cell is not known", () => {
    const [machine] = parsePlant({ heading: ["tag", "kind", "trip", "band"], rows: [["A", "fan", " ", ""]] }).machines;
    expect(machine).toEqual({
      tag: "A",
      line: 2,
      cells: { tag: "A", kind: "fan" },
      machine: { type: "fan" },
      settings: {},
      device: {},
      own: {},
    });
  });

  it.each([
    ["trip", "7 mm/s", "missing-detector"],
    ["trip", "7", "missing-unit"],
    ["trip", "0 mm/s rms", "not-positive"],
    ["trip delay s", "8 s", "not-a-number"],
    ["trip delay s", "-1", "negative"],
    ["trip delay s", "7,1", "not-a-number"],
    ["baseline count", "7.5", "out-of-range"],
    ["interval months", "0", "out-of-range"],
    ["interval months", "99999999999", "out-of-range"],
    ["check date", "2026-02-30", "out-of-range"],
    ["check date", "30.03.2026", "missing-option"],
    ["check date", "last spring", "syntax"],
    ["speed", "1485", "syntax"],
    ["speed", "132 kW", "syntax"],
    ["power", "132 kW 1485 r/min", "syntax"],
    ["power", "132 kw foo", "syntax"],
    ["support", "on Monday", "syntax"],
    ["latching", "perhaps", "unknown-option"],
    ["contact", "open", "unknown-option"],
    ["sensor", "100 mV", "syntax"],
    ["loop", "20 mm/s rms", "syntax"],
    ["band", "1000 Hz to 10 Hz", "out-of-range"],
    ["hysteresis", "8", "missing-unit"],
    ["hysteresis", "120 %", "out-of-range"],
    ["hysteresis", "8 bananas", "syntax"],
    ["limits", "7.1, 4.5 mm/s rms", "out-of-range"],
    ["limits", "7.1 mm/s rms", "syntax"],
    ["table", "iso-14694-2003", "out-of-range"],
    ["multiplier", "0.5 times for 3 s", "out-of-range"],
    ["multiplier", "twice", "syntax"],
    ["tag", "", "missing-fact"],
    ["kind", "", "missing-fact"],
  ])("%s: %j is refused by line and column, and nothing of its row is taken", (column, cell, code) => {
    const { machines, refused } = plantOf({ tag: "A", [column]: cell }, { tag: "B" });
    expect(machines.map(({ tag }) => tag)).toEqual(["B"]);
    expect(refused).toMatchObject([{ line: 2, code }]);
    // of two that contradict each other either may be named
    expect([column, "limits"]).toContain(refused[0]?.column);
  });

  it("a table that there is none of gets the nearest", () => {
    const { refused } = plantOf({ limits: "", "limits source": "", table: "iso-14694-2004" });
    expect(refused).toMatchObject([{ column: "table", code: "unknown-option" }]);
    expect(refused[0]?.message).toContain("iso-14694-2003");
  });

  it.each([
    ["a second power", { nameplate: "110 kW" }],
    ["a second speed", { nameplate: "BV-3, 2980 r/min" }],
    ["another kind", { nameplate: "pump" }],
  ])("%s in the nameplate contradicts its column", (_, cells) => {
    expect(plantOf(cells).refused).toMatchObject([{ column: "nameplate", code: "syntax" }]);
  });

  it("what says nothing without another cell is refused, so that it is not passed over", () => {
    const { refused } = plantOf({ limits: "", "limits source": "maker", "check date": "", baseline: "" });
    expect(refused.map(({ column }) => column)).toEqual([
      ...["limits source", "baseline date", "baseline count", "baseline deviation"],
      ...["known", "as found", "as left", "checked by"],
    ]);
  });

  it("an unknown kind stands where limits of the maker do", () => {
    expect(plantOf({ kind: "crusher" }).machines[0]?.machine.notUnderstood).toMatchObject([{ word: "crusher" }]);
    const { refused } = plantOf({ kind: "pmup", limits: "", "limits source": "" });
    expect(refused[0]?.message).toContain("did you mean pump");
  });

  it("a torn row is refused by its line, the others are read", () => {
    const table = { heading: ["tag", "kind"], rows: [["A", "fan"], ["B"], ["C", "fan"]], lines: [4, 7, 9] };
    const { machines, refused } = parsePlant(table);
    expect(machines.map(({ tag, line }) => [tag, line])).toEqual([
      ["A", 4],
      ["C", 9],
    ]);
    expect(refused).toMatchObject([{ line: 7, tag: "", code: "length-mismatch" }]);
  });
});

describe("how the cells are written", () => {
  const read = (cells: Readonly<Record<string, string>>, options: Parameters<typeof parsePlant>[1]) =>
    parsePlant(tableOf([{ tag: "A", kind: "fan", ...cells }]), options);

  it("a decimal comma, where it is told", () => {
    const cells = {
      trip: "7,2 mm/s rms",
      "trip delay s": "2,5",
      loop: "0 to 25,4 mm/s rms",
      power: "7,5 kW",
      limits: "4,5; 7,1 mm/s rms",
    };
    const { machines, refused } = read(cells, { decimal: "," });
    expect(refused).toEqual([]);
    expect(machines[0]).toMatchObject({
      ...{ trip: { value: 7.2 }, tripDelay: 2.5, loop: "0 to 25.4 mm/s rms", machine: { power: "7.5 kW" } },
      limits: { "C/D": { value: 7.1 } },
    });
    expect(read(cells, {}).refused.map(({ column }) => column)).toEqual([
      "power",
      "limits",
      "loop",
      "trip",
      "trip delay s",
    ]);
  });

  it("what may be thousands is refused with both readings", () => {
    expect(read({ speed: "1.480 r/min" }, { decimal: "," }).refused[0]?.message).toContain("1480");
  });

  it("the order of day and month, where it is told", () => {
    const cells = { "check date": "03.04.2026" };
    expect(read(cells, { dates: "day-first" }).machines[0]?.check?.date).toBe("2026-04-03");
    expect(read(cells, { dates: "month-first" }).machines[0]?.check?.date).toBe("2026-03-04");
    expect(read({ "check date": "31.03.2026" }, { dates: "month-first" }).refused).toMatchObject([
      { code: "out-of-range" },
    ]);
  });

  it("whatever stands in the cells, a row is read or refused, and keeps its place", () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom(...Object.values(plantColumns).map(({ example }) => example)));
    const row = fc.array(cell, {
      minLength: Object.keys(plantColumns).length,
      maxLength: Object.keys(plantColumns).length,
    });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 4 }), (rows) => {
        const { machines, refused } = parsePlant({ heading: Object.keys(plantColumns), rows });
        const lines = new Set([...machines, ...refused].map(({ line }) => line));
        expect([...lines].sort()).toEqual(rows.map((_, i) => i + 2));
        for (const { line } of machines) expect(refused.every((one) => one.line !== line)).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it("a tag with an invisible sign is refused: it would be a second machine", () => {
    const { machines, refused } = parsePlant({
      heading: ["tag", "kind"],
      rows: [
        ["LU-01", "fan"],
        ["LU\u200b-01", "fan"],
      ],
    });
    expect([machines.length, refused.map(({ line, column, code }) => [line, column, code])]).toEqual([
      1,
      [[3, "tag", "syntax"]],
    ]);
  });
});
