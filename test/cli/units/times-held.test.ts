import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

/** A sine of 12 Hz at these times, in rows of time and sample. */
function record(heading: string, times: readonly number[], written: (time: number) => string = String): string {
  return [heading, ...times.map((t) => `${written(t)},${(5.657 * Math.sin(75.4 * t)).toFixed(5)}`)].join("\n");
}

const even = Array.from({ length: 1024 }, (_, i) => i / 512);
const ask = async (csv: string, ...more: string[]) =>
  veladis(["overall", "--unit", "mm/s", "--column", "2", "--band", "10-100", "--rate", "512", ...more], `${csv}\n`);

describe("times beside --rate are held as with --time", () => {
  it("two rates whose mean is that told", async () => {
    const times = even.map((_, i) => (i < 512 ? i / 384 : 512 / 384 + (i - 512) / 768));
    const { code, err } = await ask(record("time (s),v", times));
    expect(code).toBe(2);
    expect(err).toMatch(/evenly spaced times in column 1 "time \(s\)".*--resample/s);
    expect(err).toMatch(/received: sample 513 off by 0\.33\d* s: steps of 0\.001302 to 0\.002604 s/);
    expect((await ask(record("t,v", times))).err).toContain("sample 513 off by");
    expect((await ask(record("0,0", times.slice(1)))).err).toContain("sample 513 off by");
  });

  it("that run backwards, stand still halfway, or have blocks of rows in the wrong order", async () => {
    const half = [...even.slice(512), ...even.slice(0, 512)];
    expect((await ask(record("time (s),v", [...even].reverse()))).err).toContain("row 2 of the samples with");
    expect((await ask(record("time (s),v", half))).err).toContain("row 513 of the samples with");
    const still = even.map((t) => (t > 0.5 && t < 1 ? 0.5 : t));
    expect((await ask(record("time (s),v", still))).err).toMatch(/sample 512 off by 0\.498 s/);
  });

  it("of which rows are lost, or that jitter by 30 %", async () => {
    const lost = even.filter((_, i) => i < 300 || i > 305);
    expect((await ask(record("time (s),v", lost))).err).toContain("off by");
    const jitter = even.map((t, i) => t + (0.3 / 512) * Math.sin(i * i));
    expect((await ask(record("time (s),v", jitter))).err).toContain("off by");
  });

  it("a row without a time is refused; --file-units none is told in the answer", async () => {
    const csv = record("time (s),v", even, (t) => (t === 1 ? "n/a" : `${t}`));
    expect((await ask(csv)).err).toContain('row 513 of the samples with "n/a"');
    const { code, out } = await ask(csv, "--file-units", "none");
    expect(code).toBe(0);
    expect(out).toContain("no column was looked at for times, as --file-units none says");
  });

  it("even ones, those of few digits, and times of day past midnight are answered", async () => {
    expect((await ask(record("time (s),v", even))).code).toBe(0);
    expect((await ask(record("time (s),v", even, (t) => t.toFixed(1)))).code).toBe(0);
    const clock = (t: number): string => new Date(86_399_500 + t * 1000).toISOString().slice(11, 23);
    expect((await ask(record("time,v", even, clock))).err).not.toContain("row ");
    // a direction, and no hours
    expect((await ask(record("acc h,v", [...even].reverse()))).code).toBe(0);
  });

  it("serial dates of a spreadsheet are told as what they may be", async () => {
    const { err } = await ask(record("time,v", even, (t) => `${46_085.5 + t / 86_400}`));
    expect(err).toMatch(/they may be serial dates of a spreadsheet, 0\.00195\d* s from row to row/);
  });
});

describe("--resample", () => {
  it("is refused across a hole of many steps, which is placed", async () => {
    const times = even.map((t, i) => (i < 512 ? t : t + 0.195));
    const args = ["overall", "--unit", "mm/s", "--column", "2", "--band", "0.5-1", "--resample"];
    const { code, err } = await veladis(args, `${record("time (s),v", times)}\n`);
    expect(code).toBe(2);
    expect(err).toContain("without a hole of more than 4 median steps of 0.001953 s");
    expect(err).toContain("received: 0.197 s behind sample 512, 0.998 s from the first");
  });
});
