import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const words = ["simulate", "--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--from", "mm/s rms"];
const simulate = [...words, "--delay", "2", "--timer-resets", "threshold", "--latching"];
const plain = (text: string): string => text.replace(/[ \n]+/g, " ");

async function run(rows: readonly string[], ...more: readonly string[]) {
  const { out, err, code } = await veladis([...simulate, ...more], `time,level\n${rows.join("\n")}\n`);
  return { out: plain(out), err: plain(err), code };
}

describe("times count from the first row", () => {
  const history = ["1000,3", "1010,12", "1020,3", "1600,3"];

  it("which is said, with what the file has beside each time and each command", async () => {
    const { out } = await run(history, "--commands", "reset at 500");
    expect(out).toContain("over 600.0 s from 1000 s in the file");
    expect(out).toContain("12 1012 s trip");
    expect(out).toContain("commands reset at 500 s (1500 s in the file)");
    expect(out).toContain("times in s from the first row, which is at 1000 s in the file; so are those of commands");
    expect(out).toContain("no reading for 9.67 min from 20 s (1020 s in the file)");
    const data = JSON.parse((await veladis([...simulate, "--json"], `time,level\n${history.join("\n")}\n`)).out);
    expect(data).toMatchObject({ begins: "1000 s", timesCountFrom: "the first row", events: [{ clock: "1012 s" }] });
  });

  it("a command on the clock of the file is refused, with its time from the first row", async () => {
    const { err, code } = await run(history, "--commands", "reset at 1500");
    expect(code).toBe(2);
    expect(err).toContain(
      "commands between 0 s and 600 s: their times are in s from the first row, which is at 1000 s",
    );
    expect(err).toContain("one at 1500 s, which in the file is 500 s from the first row");
    const dated = await run(["2026-03-04 08:00:00,3", "2026-03-04 08:10:00,3"], "--commands", "reset at 28800");
    expect(dated.err).toContain("from the first row, which is at 2026-03-04 08:00:00 received: one at 28800 s");
    expect((await run(history, "--commands", "reset at 08:15:00")).err).toContain("in s from the first row");
  });

  it("minutes of a heading are told in s", async () => {
    const { out } = await veladis(simulate, "t [min],level\n10,3\n11,12\n12,3\n");
    expect(plain(out)).toContain("over 120.0 s from 600 s in the file");
  });

  it("from 0 s on nothing stands beside them", async () => {
    const { out } = await run(["0,3", "10,12", "20,3"]);
    expect(out).not.toContain("in the file");
    expect(out).toContain("times in s from the first row, which is at 0 s; so are those of commands");
  });
});

describe("times of day without a date", () => {
  it("are read, and pass midnight forwards", async () => {
    const { out, err } = await run(["23:59:50,3", "23:59:55,12", "00:00:05,3", "00:00:10,3"]);
    expect(err).toContain(
      "times: times of day, without a date: midnight is passed once (line 4), and a gap of a day or more does not show; the first is 23:59:50",
    );
    expect(out).toContain("4 levels over 20.00 s from 23:59:50");
    expect(out).toContain("7 23:59:57 trip");
    expect((await run(["23:59:50,3", "23:59:59,12", "00:00:05,3", "00:00:10,3"])).out).toContain(
      "11 00:00:01 +1 d trip",
    );
  });

  it("with AM and PM too", async () => {
    const { out } = await run(["11:59:50 AM,3", "12:00:00 PM,12", "12:00:05 PM,3"]);
    expect(out).toContain("3 levels over 15.00 s from 11:59:50");
    expect((await run(["11:59 PM,3", "12:00 AM,12"])).out).toContain("2 levels over 60.00 s from 23:59:00");
  });

  it("that fall by less than half a day are refused", async () => {
    expect((await run(["08:00:10,3", "08:00:05,12"])).err).toContain("times that never fall, row below row");
  });

  it("that no clock shows, or that may be minutes and seconds, are refused with how to write them", async () => {
    expect((await run(["24:00:00,3"])).err).toContain("a time from 00:00:00 to below 24:00:00");
    expect((await run(["08:15,3", "08:16,3"])).err).toContain("a time of day with its seconds such as 08:15:00");
    expect((await run(["2026-03-04 08:00:00,3", "08:00:05,3"])).err).toContain("times written as the first one");
    expect((await run(["08:00:00,3"], "--times", "seconds")).err).toContain("a time in s, as --times seconds says");
  });

  it("in the first row are no heading", async () => {
    expect((await veladis(simulate, "08:00:00,3\n08:00:05,3\n")).err).toContain("--header-line 1");
  });
});
