import { describe, expect, it } from "vitest";
import { TimeColumn, type TimesWritten } from "../../../src/cli/input/time-column";
import { dateText, writtenDate } from "../../../src/cli/input/written-date";

function column(cells: readonly string[], asked?: TimesWritten, decimalComma = false) {
  const times = new TimeColumn(asked, decimalComma);
  // the header is line 1
  for (const [i, cell] of cells.entries()) times.add(cell, i + 2);
  return times.read();
}

const seconds = (cells: readonly string[], asked?: TimesWritten, decimalComma = false) => [
  ...column(cells, asked, decimalComma).times,
];
const clock = (cell: string) => dateText(writtenDate(cell)?.at["day-first"] ?? Number.NaN);

describe("a date", () => {
  it.each([
    ["2026-03-04 17:07:11", "2026-03-04 17:07:11"],
    ["2026-03-04T17:07", "2026-03-04 17:07:00"],
    ["2026-03-04", "2026-03-04 00:00:00"],
    ["2024-02-29 23:59:59.25", "2024-02-29 23:59:59.250"],
    ["2026-03-04 17:07:11,5", "2026-03-04 17:07:11.500"],
    ["2026-03-04T17:07:11Z", "2026-03-04 17:07:11"],
    ["2026-03-04T17:07:11+02:00", "2026-03-04 15:07:11"],
    ["2026-03-04T17:07:11-0530", "2026-03-04 22:37:11"],
    ["31/12/2026 9:05", "2026-12-31 09:05:00"],
    ["31.12.2026 09:05:06.5", "2026-12-31 09:05:06.500"],
    ["31-12-2026", "2026-12-31 00:00:00"],
    // common practice of the 12-hour clock: 12 AM is midnight, 12 PM is noon
    ["31/12/2026 12:00:01 AM", "2026-12-31 00:00:01"],
    ["31/12/2026 12:30 pm", "2026-12-31 12:30:00"],
    ["31/12/2026 11:59:59 PM", "2026-12-31 23:59:59"],
  ])("%s is %s", (cell, text) => {
    expect(clock(cell)).toBe(text);
  });

  // the Gregorian calendar: 1900 is no leap year, 2000 is one
  it.each([
    "2026-02-30 12:00:00",
    "2026-02-29",
    "1900-02-29",
    "2026-04-31",
    "2026-13-01",
    "2026-00-10",
    "2026-03-00",
    "2026-03-04 24:00:00",
    "2026-03-04 12:60:00",
    "2026-03-04 12:00:60",
    "2026-03-04 12:00:00+15:00",
    "30/02/2026",
    "31.04.2026 10:00",
    "13/13/2026",
    "04/03/2026 13:00 PM",
    "04/03/2026 0:10 AM",
    "04/03/26",
    "04.03.26 10:00",
  ])("%s is refused", (cell) => {
    expect(() => writtenDate(cell)).toThrow();
  });

  it("of 29 February 2000 is one", () => expect(clock("2000-02-29")).toBe("2000-02-29 00:00:00"));

  it.each(["noon", "March 4 2026", "20260304", "12:00:05", "4.3", "2026/03/04", "03/04.2026"])("%s is none", (cell) => {
    expect(writtenDate(cell)).toBeUndefined();
  });

  it("agrees with the engine's own calendar on every day of 400 years", () => {
    const wrong: string[] = [];
    for (let day = Date.UTC(1900, 0, 1); day < Date.UTC(2300, 0, 1); day += 86_400_000) {
      const iso = new Date(day).toISOString().slice(0, 10);
      const [year, month, dayOfMonth] = iso.split("-");
      const isSame =
        writtenDate(iso)?.at["day-first"] === day * 1000 &&
        writtenDate(`${dayOfMonth}.${month}.${year}`)?.at["day-first"] === day * 1000 &&
        writtenDate(`${month}/${dayOfMonth}/${year}`)?.at["month-first"] === day * 1000;
      if (!isSame) wrong.push(iso);
    }
    expect(wrong).toEqual([]);
  });
});

describe("times of a column", () => {
  it("are in seconds from the first, without the noise of large numbers", () => {
    expect(seconds(["0", "0.5", "2"])).toEqual([0, 0.5, 2]);
    expect(seconds(["2026-03-04 10:00:00.0", "2026-03-04 10:00:00.1", "2026-03-04 10:00:00.3"])).toEqual([0, 0.1, 0.3]);
    expect(seconds(["1772618400.0", "1772618400.1", "1772618400.3"])).toEqual([0, 0.1, 0.3]);
    expect(seconds(["0,5", "1,25"], undefined, true)).toEqual([0, 0.75]);
  });

  it("say what zone the first has", () => {
    expect(column(["2026-03-04T10:00:00+01:00"]).begins).toEqual({ seconds: 1772614800, zone: "+01:00", by: "date" });
    expect(column(["5"]).begins).toEqual({ seconds: 5, zone: "", by: "file" });
    expect(column(["0"]).begins).toBeUndefined();
  });

  it.each([
    [["2026-03-04 10:00:00", "12"]],
    [["12", "2026-03-04 10:00:00"]],
    [["2026-03-04 10:00:00", "2026-03-04 10:00:01Z"]],
    [["2026-03-04 10:00:00", "2026-03-05"]],
    [["2026-03-14 10:00:00", "14/03/2026 10:00:01"]],
    [["14/03/2026 10:00:00", "14.03.2026 10:00:01"]],
    [["14/03/2026 10:00:00", "14/03/2026 10:00:01 AM"]],
  ])("in mixed forms are refused: %j", (cells) => {
    expect(() => column(cells)).toThrow(/times written as the first one, ".*" at line 2, received ".*" at line 3/);
  });

  it("that are equal are told, those that fall refused with their lines", () => {
    expect(column(["0", "1", "1", "2", "2", "2"]).told.equal).toEqual({ rows: 3, lines: [4, 6, 7] });
    expect(() => column(["0", "5", "4", "6", "1"])).toThrow(
      "times that never fall, row below row, received 2 rows before the row above: lines 4, 6",
    );
  });
});

describe("serial dates", () => {
  // 46085 is 4 March 2026: 36526 is 1 January 2000 by ECMA-376, part 1, 18.17.4 (date system of 1900), from memory, and
  // 9559 days lie between
  const serial = ["46085.5", "46085.5000115741", "46085.5000231481"];

  it("are days since 30 December 1899, to the millisecond", () => {
    const { times, begins, told } = column(serial, "serial");
    expect([...times]).toEqual([0, 1, 2]);
    expect(begins?.seconds).toBe(Date.UTC(2026, 2, 4, 12) / 1000);
    expect(told).toMatchObject({ as: "serial dates", first: "46085.5", clock: "2026-03-04 12:00:00" });
    expect(column(["36526"], "serial").told.clock).toBe("2000-01-01 00:00:00");
    expect(seconds(["46085,5", "46085,75"], "serial", true)).toEqual([0, 21_600]);
  });

  it("are not seconds without a word: both readings are shown", () => {
    expect(() => column(serial)).toThrow(
      "--times seconds or --times serial, since these numbers may be either, received " +
        '"46085.5" at line 2: 46085.5 s, or as the serial date of a spreadsheet 2026-03-04 12:00:00',
    );
    expect(seconds(serial, "seconds")[1]).toBeCloseTo(1.15741e-5, 9);
  });

  it.each([
    [["20000", "20001"]],
    [["0", "46085"]],
    [["46085", "46130"]],
    [["79999", "80001"]],
    [["1772618400", "1772618401"]],
  ])("are not suspected in %j", (cells) => {
    expect(column(cells).told.as).toBe("seconds");
  });

  it.each(["60", "2958466", "2026-03-04", "noon"])("told to be such, %s is refused", (cell) => {
    expect(() => column([cell], "serial")).toThrow();
  });

  it("milliseconds since 1970, and dates in digits alone, are no seconds", () => {
    expect(() => column(["1772618400000", "1772618400100"])).toThrow(/milliseconds, or the digits of a date/);
    expect(() => column(["20260304120059", "20260304120100"])).toThrow(/milliseconds, or the digits of a date/);
    expect(seconds(["1772618400000", "1772618400100"], "seconds")).toEqual([0, 100]);
  });
});

describe("day or month first", () => {
  it("is refused where both fit, with both readings", () => {
    expect(() => column(["03/04/2026 10:00", "03/04/2026 10:01"])).toThrow(
      "--times day-first or --times month-first, since these dates may be either, received " +
        '"03/04/2026 10:00" at line 2: 2026-04-03 10:00:00, or 2026-03-04 10:00:00',
    );
  });

  it("is taken where a row proves it, and told", () => {
    const day = column(["12/04/2026 23:59:59", "13/04/2026 00:00:00"]);
    expect([...day.times]).toEqual([0, 1]);
    expect(day.told).toMatchObject({ as: "dates, day first", clock: "2026-04-12 23:59:59", provedBy: 3 });
    const month = column(["04/12/2026 11:59:59 PM", "04/13/2026 12:00:00 AM"]);
    expect([...month.times]).toEqual([0, 1]);
    expect(month.told).toMatchObject({ as: "dates, month first", provedBy: 3 });
  });

  it("is refused where rows prove both", () => {
    expect(() => column(["13/04/2026", "04/14/2026"])).toThrow(/dates of one order of day and month/);
  });

  it("does not matter where it is the same", () => {
    expect(seconds(["04/04/2026 10:00", "04/04/2026 10:01"])).toEqual([0, 60]);
  });

  it("may be told, and is then held to", () => {
    const cells = ["03/04/2026 10:00", "03/05/2026 10:00"];
    expect(seconds(cells, "month-first")).toEqual([0, 86_400]);
    expect(seconds(cells, "day-first")).toEqual([0, 30 * 86_400]);
    expect(() => column(["04/13/2026"], "day-first")).toThrow(/the day first such as 31\.03\.2026/);
    expect(() => column(["2026-04-13"], "day-first")).toThrow();
    expect(() => column(["12"], "month-first")).toThrow();
    expect(() => column(["04/13/2026"], "seconds")).toThrow(/a time in s/);
  });
});
