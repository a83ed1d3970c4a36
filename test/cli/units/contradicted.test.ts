import { describe, expect, it } from "vitest";
import {
  type ColumnTold,
  contradicted,
  requireHeadingAgrees,
  timeUnitSaid,
  typeTold,
} from "../../../src/cli/delimited/heading-agrees";
import { headingSays } from "../../../src/cli/delimited/heading-says";
import { rowUnitsRefusal } from "../../../src/cli/delimited/row-units";
import { besideUnits, headingsOf, unitBelow } from "../../../src/cli/delimited/units-row";

const plain = { decimalComma: false } as const;
const off = { decimalComma: false, fileUnits: "none" } as const;

const refusal = (act: () => unknown): unknown => {
  try {
    return act();
  } catch (error) {
    return [(error as { code: string }).code, (error as Error).message];
  }
};

const times: ColumnTold = { by: "", isTime: true };
const speeds: ColumnTold = { by: "", frequency: "r/min" };
const decibels = typeTold("", "dB re 1e-9 m/s");
const bare: ColumnTold = { by: "", unit: "mm/s" };
const taken: ColumnTold = { by: "", unit: "g", isWaveform: "taken" };
const toldSamples: ColumnTold = { by: "", unit: "g", isWaveform: "told" };
const rms = typeTold("", "mm/s rms");
const peak = typeTold("", "mm/s true pk");

// common practice, no source: what a heading and an option can say of one column
describe("what is told against a heading", () => {
  it("a type tells unit and detector, a level its reference", () => {
    expect(rms).toStrictEqual({ by: "", unit: "mm/s", detector: "rms" });
    expect(decibels).toStrictEqual({ by: "", level: "dB re 1e-9 m/s" });
  });

  // biome-ignore format: a row of a table is a line
  it.each<[string, ColumnTold, string, string | undefined]>([
    ["the same type", rms, "v [mm/s rms]", undefined],
    ["another unit", rms, "v [in/s]", "in/s"],
    ["another quantity's unit", rms, "x [um]", "um"],
    ["another detector", rms, "v [mm/s pk]", "mm/s pk"],
    ["a peak, for a true one", peak, "v [mm/s pk]", undefined],
    ["an RMS, for a true peak", peak, "v [mm/s rms]", "mm/s rms"],
    ["a true peak, for a peak", typeTold("", "mm/s pk"), "v [mm/s true pk]", "mm/s true pk"],
    ["a detector where none is told", bare, "v [mm/s pk]", undefined],
    ["no detector", rms, "v [mm/s]", undefined],
    ["two detectors, one of them", rms, "peak or rms [mm/s]", undefined],
    ["two detectors, none of them", typeTold("", "mm/s pp"), "peak or rms [mm/s]", "peak"],
    ["a quantity", rms, "velocity", undefined],
    ["another quantity", rms, "acceleration", "acceleration"],
    ["two quantities, one of them", rms, "velocity from acceleration", undefined],
    ["two quantities, none of them", typeTold("", "um pp"), "velocity from acceleration", "velocity"],
    ["a quantity of nothing told", { by: "" }, "velocity", undefined],
    ["a signal", rms, "ch1 mV", "mV"],
    ["a frequency", rms, "v [Hz]", "Hz"],
    ["a time", rms, "v [s]", "s"],
    ["what may be the lowest", rms, "v [min]", undefined],
    ["what may be a letter", rms, "v [h]", undefined],
    ["a level", rms, "v [dB re 1e-9 m/s]", "dB re 1e-9 m/s"],
    ["decibels", rms, "v [dB]", "dB"],
    ["an axis", rms, "time", "time"],
    ["another axis", rms, "frequency", "frequency"],
    ["decibels without a reference", decibels, "L [dB]", undefined],
    ["the same reference", decibels, "L [dB re 1e-9 m/s]", undefined],
    ["the same reference in another unit", decibels, "L [dB re 1 nm/s]", undefined],
    ["the same reference in a longer unit", decibels, "L [dB re 1e-6 mm/s]", undefined],
    ["1e-9 of a longer unit", decibels, "L [dB re 1e-9 mm/s]", "dB re 1e-9 mm/s"],
    ["another reference", decibels, "L [dB re 1e-8 m/s]", "dB re 1e-8 m/s"],
    ["a reference of another quantity", decibels, "L [dB re 1e-9 m]", "dB re 1e-9 m"],
    ["a unit, for a level", decibels, "L [mm/s]", "mm/s"],
    ["a quantity, for a level", decibels, "velocity", undefined],
    ["another quantity, for a level", decibels, "acceleration", "acceleration"],
    ["the RMS of a level", decibels, "L RMS", undefined],
    ["the peak of a level", decibels, "L peak", "peak"],
    ["speeds", speeds, "n [r/min]", undefined],
    ["other speeds", speeds, "n [Hz]", "Hz"],
    ["a rate, for speeds", speeds, "v [mm/s]", "mm/s"],
    ["a length, for speeds", speeds, "n [m]", undefined],
    ["a level, for speeds", speeds, "L [dB]", "dB"],
    ["a quantity, for speeds", speeds, "velocity", undefined],
    ["the axis of frequencies", speeds, "frequency", undefined],
    ["the axis of times, for speeds", speeds, "time", "time"],
    ["a time, for speeds", speeds, "n [s]", undefined],
    ["times", times, "t [s]", undefined],
    ["a unit, for times", times, "t [mm/s]", "mm/s"],
    ["a level, for times", times, "t [dB]", "dB"],
    ["a frequency, for times", times, "t [Hz]", "Hz"],
    ["the axis of times", times, "time", undefined],
    ["the axis of frequencies, for times", times, "frequency", "frequency"],
    ["a quantity, for times", times, "velocity", "velocity"],
    ["a trend, of levels", rms, "trend", undefined],
    ["a trend, for samples", taken, "trend", "trend"],
    ["a trend, for samples that are told", toldSamples, "trend", undefined],
    ["a detector, for samples", taken, "a [g pk]", "g pk"],
    ["a detector, for samples that are told", toldSamples, "a [g pk]", undefined],
    ["a unit, for samples", taken, "a [g]", undefined],
    ["another unit, for samples", toldSamples, "a [m/s2]", "m/s2"],
  ])("%s", (_, told, heading, written) => expect(contradicted(told, headingSays(heading))?.written).toBe(written));
});

describe("a heading that contradicts", () => {
  const check = (heading: string, told: ColumnTold, as: typeof plain | typeof off = plain) =>
    refusal(() => requireHeadingAgrees(["x", heading], 1, { ...told, by: "--from" }, as));
  const expected =
    "expected what is told as the heading of the column says it, or --file-units none where the heading is wrong, ";

  it("is refused with both, and with what it says where that is not all of it", () => {
    expect(check(" v [mm/s rms]", rms)).toBeUndefined();
    expect(check(" v [in/s] ", rms)).toEqual([
      "unknown-option",
      `${expected}received --from, and the heading "v [in/s]" of column 2, which says "in/s"`,
    ]);
    expect(check(" in/s ", rms)).toEqual([
      "unknown-option",
      `${expected}received --from, and the heading "in/s" of column 2`,
    ]);
    expect(check("v [in/s]", rms, off)).toBeUndefined();
  });

  // common practice, no source
  // biome-ignore format: a row of a table is a line
  it.each<[signal: string, refused: string[], read: string[]]>([
    ["mV", ["V pk", "level (V)", "v [V]", "A", "V", "in uA", "level, V", "level uV", "load %", "out (%)", "volts", "Volt", "Volts pk", "VOLTS", "level in Volt", "kV", "kV pk", "Kilovolts", "V RMS", "Vdc", "Ampere", "Amp\u00e8res", "milliampere", "pct", "Percent", "per cent", "Prozent", "level pct"], ["Millivolt", "milli volts", "mV RMS", "Voltage", "v", "Vacuum pump", "Volta works", "level (mV)", "mV", "DE V", "DE V (mV)", "Fan A", "millivolts", "level"]],
    ["mA", ["level (mV)", "V pk", "A", "uA", "in A", "%", "out [%]", "volts", "percent", "Volt", "Voltage", "kV", "Ampere", "Ampere rms", "pct", "level percent"], ["Milliampere", "milliamp\u00e8res", "v", "amplitude", "mA", "4-20 mA", "DE A (mA)", "Motor A", "milliamps"]],
    ["%", ["mA", "V", "level (V)"], ["%", "level %", "percent", "per cent"]],
    ["per", ["mA"], ["%", "per cent"]],
    ["V", ["mV", "level [mA]", "uV"], ["V pk", "[V]", "volts", "level (V)"]],
  ])("a signal in %s and a heading in another unit of one", (signal, refused, read) => {
    const codes = (headings: string[]) => headings.map((heading) => [heading, (check(heading, { by: "--from", signal }) as string[] | undefined)?.[0]]);
    expect(codes(refused)).toEqual(refused.map((heading) => [heading, "unknown-option"]));
    expect(codes(read)).toEqual(read.map((heading) => [heading, undefined]));
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["a [g pk]", "--waveform"], ["peak", "--waveform"], ["trend", "--waveform"], ["a [m/s2 pk]", "--file-units none"],
    ["a [Hz]", "--file-units none"], ["a [s]", "--file-units none"], ["a [dB]", "--file-units none"], ["time", "--file-units none"],
  ])("what is no sample says where to go: %s", (heading, option) => {
    const [code, message] = check(heading, taken) as string[];
    expect(code).toBe("unknown-option");
    expect(message).toContain("expected samples of the waveform in the unit that is told, one instant a row; ");
    expect(message).toContain(`bandOverall of veladis/signal; ${option} where `);
  });

  it("samples in another unit, or as a signal, are samples all the same", () => {
    for (const heading of ["a [m/s2]", "a [mV]"]) expect((check(heading, taken) as string[])[1]).toContain(expected);
  });

  it("a column of times says its unit", () => {
    const unit = (heading: string, asked?: { by: string; unit: "s" | "ms" }, as: typeof plain | typeof off = plain) =>
      refusal(() => timeUnitSaid(["x", heading], 1, asked, as));
    const asked = { by: "--time-unit ms", unit: "ms" } as const;
    expect([unit("t [ms]"), unit("t"), unit("t [ms]", asked), unit("t", asked)]).toEqual([
      ...["ms", undefined, "ms", "ms"],
    ]);
    expect(unit("t [s]", asked, off)).toBeUndefined();
    expect(unit("t [s]", asked)).toEqual([
      "unknown-option",
      `${expected}received --time-unit ms, and the heading "t [s]" of column 2, which says "s"`,
    ]);
    expect(unit("t [s], ms")).toEqual([
      "unknown-option",
      `${expected}received one unit of time, and the heading "t [s], ms" of column 2, which says "ms"`,
    ]);
    expect(unit("v [mm/s]")).toEqual([
      "unknown-option",
      `${expected}received a column of times, and the heading "v [mm/s]" of column 2, which says "mm/s"`,
    ]);
  });
});

describe("units in a column of their own", () => {
  const told = { ...rms, by: "--from" };
  const refusalOf = (header: string[], rows: string[][], as: typeof plain | typeof off = plain, others?: number[]) => {
    const refused = rowUnitsRefusal(header, { read: [0], ...(others && { others }) }, told, as);
    return rows.map((cells) => refused(cells)?.message);
  };

  it.each(["unit", "Units", "detector", " DETECTORS "])("headed %s", (heading) => {
    const [same, empty, other] = refusalOf(
      ["v", heading],
      [
        ["1", "rms"],
        ["1", " "],
        ["1", " pk "],
      ],
    );
    expect([same, empty]).toEqual([undefined, undefined]);
    expect(other).toBe(
      `expected rows in one unit and detector, as --from tells; --file-units none passes over column 2, received "pk" in column 2 ${JSON.stringify(heading.trim())}`,
    );
  });

  it("or with a rate or a type in the first row", () => {
    for (const first of ["mm/s", " mm/s rms ", "mm/s"]) {
      const [, one, text] = refusalOf(
        ["v", "x"],
        [
          ["1", first],
          ["1", "in/s"],
          ["1", "what"],
        ],
      );
      expect(one).toContain('received "in/s" in column 2');
      expect(text).toContain('received "what" in column 2');
    }
    expect(
      refusalOf(
        ["v", "x"],
        [
          ["1", "g"],
          ["1", "in/s"],
        ],
      ),
    ).toEqual([undefined, undefined]);
    expect(
      refusalOf(
        ["v", "subunit"],
        [
          ["1", "m"],
          ["1", "in"],
        ],
      ),
    ).toEqual([undefined, undefined]);
    expect(
      refusalOf(
        ["v", "x"],
        [
          ["1", "rms"],
          ["1", "pk"],
        ],
      ),
    ).toEqual([undefined, undefined]);
    expect(refusalOf(["v", "x"], [["1", "g rms"]])[0]).toContain('received "g rms"');
  });

  it("but not where it was asked for, or --file-units none", () => {
    const rows = [["1", "in/s"]];
    expect(refusalOf(["v", "unit"], rows, plain, [1])).toEqual([undefined]);
    expect(refusalOf(["v", "unit"], rows, off)).toEqual([undefined]);
    expect(refusal(() => refusalOf(["v [in/s]", "unit"], rows))).toEqual(["unknown-option", expect.any(String)]);
    expect(refusalOf(["v [in/s]", "unit"], [], off)).toEqual([]);
  });

  it("how each row is read by its own is named", () => {
    const refused = rowUnitsRefusal(["v", "unit"], { read: [0], instead: "--unit-column; " }, told, plain);
    expect(refused(["1", "in/s"])?.message).toContain("as --from tells; --unit-column; --file-units none");
  });
});

describe("a row of units below the header", () => {
  const shown = (rows: string[][]) => {
    const seen: unknown[] = [];
    const beside = besideUnits({
      header: (cells, _raw, _form, units) => void seen.push(["header", cells, units?.cells]),
      row: (cells, _raw, line) => void seen.push([line, ...cells]),
      refused: (_error, _raw, line) => void seen.push(["refused", line]),
    });
    beside.visitor.header(["a", "b"], "a,b", { separator: ",", lineEnd: "\n", mark: "", counted: "line" });
    rows.forEach((cells, i) => void beside.visitor.row(cells, cells.join(), i + 2));
    beside.end();
    return { seen, units: beside.units?.cells };
  };

  it.each([
    [["mm/s", "s"]],
    [["mm/s", ""]],
    [["[mm/s]", "-"]],
    [["(mm/s)", "---"]],
    [["{ mm/s }", "%"]],
    [["<mm/s>", " "]],
    [["mV", "°C"]],
    [["bar", "kW"]],
    [["rms", "m3/h"]],
    [["yyyy-mm-dd hh:mm:ss", "mm/s"]],
    [["dd.mm.yyyy", "Nm"]],
  ])("%j", (units) => {
    const { seen, units: found } = shown([units, ["1", "2"], ["3", "4"]]);
    expect(found).toEqual(units);
    expect(seen).toEqual([
      ["header", ["a", "b"], units],
      [3, "1", "2"],
      [4, "3", "4"],
    ]);
  });

  it.each([
    ["dashes alone", ["-", "--"], ["1", "2"]],
    ["nothing", ["", ""], ["1", "2"]],
    ["one that is none", ["mm/s", "pump"], ["1", "2"]],
    ["a number", ["mm/s", "1"], ["1", "2"]],
    ["above no number", ["mm/s", "s"], ["x", "y"]],
    ["above a unit", ["mm/s", "s"], ["1", "mm/s"]],
    ["above a number in another column", ["mm/s", ""], ["x", "1"]],
    ["above a number below a blank cell", ["mm/s", " "], ["x", "1"]],
    ["beside letters", ["mm/s", "°Cx"], ["1", "2"]],
    ["beside letters in front", ["mm/s", "x%"], ["1", "2"]],
  ])("is none: %s", (_, first, second) => {
    const { seen, units } = shown([first, second]);
    expect(units).toBeUndefined();
    expect(seen).toEqual([
      ["header", ["a", "b"], undefined],
      [2, ...first],
      [3, ...second],
    ]);
  });

  it.each(["1", "-1", "+1", ".5", ",5", "-,5", " 1 "])("above %j", (number) => {
    expect(
      shown([
        ["mm/s", ""],
        [number, "x"],
      ]).units,
    ).toEqual(["mm/s", ""]);
  });

  it("alone, or above a row that is refused, it is a row", () => {
    expect(shown([["mm/s", "s"]]).seen).toEqual([
      ["header", ["a", "b"], undefined],
      [2, "mm/s", "s"],
    ]);
    expect(shown([]).seen).toEqual([["header", ["a", "b"], undefined]]);
    // the row below the first alone decides
    expect(
      shown([
        ["1", "2"],
        ["mm/s", "s"],
        ["1", "2"],
      ]).units,
    ).toBeUndefined();
  });

  const row = (...cells: string[]) => ({ cells, raw: "", line: 2 });

  it("stands in brackets behind the headings", () => {
    const units = row("[mm/s]", "", " ms ", "rms");
    expect(headingsOf(["v ", "x", "t", "w"], units, plain)).toEqual(["v [mm/s]", "x", "t [ms]", "w [rms]"]);
    expect(headingsOf(["v"], undefined, plain)).toEqual(["v"]);
    expect(headingsOf(["v"], row("mm/s"), off)).toEqual(["v"]);
    expect([unitBelow(units, 0, plain), unitBelow(units, 1, plain), unitBelow(units, 0, off)]).toEqual([
      ...["mm/s", undefined, undefined],
    ]);
    expect(unitBelow(undefined, 0, plain)).toBeUndefined();
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["v [in/s]", "mm/s", "in/s"], ["peak", "mm/s rms", "peak"], ["acceleration", "mm/s", "acceleration"], ["t [s]", "ms", "s"],
    ["n [Hz]", "r/min", "Hz"], ["L [dB re 1e-8 m/s]", "dB re 1e-9 m/s", "dB re 1e-8 m/s"], ["v [mm/s]", "s", "mm/s"], ["peak", "rms", "peak"],
  ])("%s above %s: refused", (heading, unit, says) => {
    const told = refusal(() => headingsOf([heading], row(unit), plain)) as string[];
    expect(told[0]).toBe("unknown-option");
    expect(told[1]).toContain(`received ${JSON.stringify(unit)} in the row of units, line 2, and the heading`);
    expect(told[1]).toContain(says);
  });

  it.each([
    ["peak", "pk"],
    ["velocity", "mm/s"],
    ["t [ms]", "ms"],
    ["v [mm/s]", "rms"],
    ["v", "°C"],
    ["L [dB re 1e-9 m/s]", "dB"],
    ["peak and rms", "rms"],
  ])("%s above %s agree", (heading, unit) => {
    expect(headingsOf([heading], row(unit), plain)).toEqual([`${heading} [${unit}]`]);
  });
});
