/**
 * Lloyd's Register, Ship Vibration and Noise Guidance Notes, chapter 7, 1.3: broadband severity is valid where the
 * running value is more than three times that with the machine stopped, else narrow bands are needed.
 */

import { parseAmplitude } from "veladis";
import {
  checkBackground,
  classify,
  judge,
  judgePoints,
  parsePoints,
  supportOf,
  supportRule,
  unknownSupportRule,
} from "veladis/severity";
import { rssDifference } from "veladis/signal";
import { parseUncertain } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { withBackground } from "../../src/severity/background";
import { veladis } from "../cli/in-process";

const pump = "pump 90 kW 2980 r/min category II";

/** Rows of a table with the reading at rest, as they come out. */
async function judged(csv: string, ...more: readonly string[]) {
  const args = ["table", "--column", "v", "--from", "mm/s rms", "--machine", pump, "--scheme", "iso-10816-7-2009"];
  return veladis([...args, ...more], csv);
}

describe("a table with the readings with the machine stopped", () => {
  it("of each row: the zone as it was, NOT RELIABLE beside it and in the summary", async () => {
    const csv = "v,at rest\n4.1,0.4\n4.1,2\n4.1,0.02 in/s pk\n4.1,\n";
    const { out, err, code } = await judged(csv, "--background-column", "at rest");
    expect(code).toBe(0);
    const rows = out.trimEnd().split("\n").slice(1);
    expect(rows.map((row) => row.split(",")[2])).toEqual(["B", "B", "B", "B"]);
    expect(rows[0]).toContain("background: more than 3 times the reading at rest");
    expect(rows[1]).toContain("NOT RELIABLE: background too high: not more than 3 times the reading at rest");
    expect(rows[2]).toContain("background: more than 3 times");
    expect(rows[3]).toContain("background: no reading at rest in this row");
    expect(err).toMatch(/zones +B 3, B \(NOT RELIABLE\) 1/);
  });

  it("one for all, and agrees row for row with judge", async () => {
    const values = ["1.19", "1.2", "1.21", "4.1"];
    const { out } = await judged(`v\n${values.join("\n")}\n`, "--background", "0.4 mm/s rms");
    const doubts = out
      .trimEnd()
      .split("\n")
      .slice(1)
      .map((row) => row.includes("NOT RELIABLE"));
    const alone = values.map((v) => judge(`${v} mm/s rms`, pump, { background: "0.4 mm/s rms" }).background?.valid);
    expect(doubts).toEqual(alone.map((valid) => !valid));
  });

  it("is refused where nothing is judged, where both are told, and where its heading says another unit", async () => {
    const csv = "v,rest in/s\n4.1,0.4\n";
    const alone = await veladis(
      ["table", "--column", "v", "--from", "mm/s rms", "--to", "in/s rms", "--background", "1 mm/s rms"],
      csv,
    );
    expect([alone.code, alone.err]).toEqual([2, expect.stringContaining("without them nothing is judged")]);
    const both = await judged(csv, "--background", "1 mm/s rms", "--background-column", "2");
    expect([both.code, both.err]).toEqual([2, expect.stringContaining("one of --background and --background-column")]);
    const other = await judged(csv, "--background-column", "2");
    expect([other.code, other.err.replace(/\n\s*/g, " ")]).toEqual([
      2,
      expect.stringContaining("a reading at rest in mm/s rms"),
    ]);
  });
});

describe("a reading with the machine stopped", () => {
  it("admits a broadband verdict above three times itself, not at three times", () => {
    expect(checkBackground("3.01 mm/s rms", "1 mm/s rms").valid).toBe(true);
    expect(checkBackground("3 mm/s rms", "1 mm/s rms").valid).toBe(false);
    expect(checkBackground("2.1 mm/s rms", "0.7 mm/s rms").valid).toBe(false);
    expect(checkBackground("1 mm/s rms", "0 mm/s rms")).toMatchObject({ valid: true, ratio: Number.POSITIVE_INFINITY });
    expect(checkBackground("0 mm/s rms", "0 mm/s rms").valid).toBe(false);
    // 0.02 in/s peak is 0.359 mm/s RMS as of a sine
    expect(checkBackground("4.1 mm/s rms", "0.02 in/s pk").ratio).toBeCloseTo(11.41, 1);
    expect(() => checkBackground("3 mm/s rms", "10 um rms")).toThrow(/frequency/);
  });

  it("leaves the zone as it is, and says first and loudly where it is too high", () => {
    const plain = judge("4.1 mm/s rms", pump);
    const quiet = judge("4.1 mm/s rms", pump, { background: "0.4 mm/s rms" });
    const loud = judge("4.1 mm/s rms", pump, { background: "2 mm/s rms" });
    expect([quiet.zone, loud.zone]).toEqual([plain.zone, plain.zone]);
    expect("background" in plain).toBe(false);
    expect(quiet.background?.valid).toBe(true);
    expect(loud.background?.source.provenance).toBe("quoted");
    expect(loud.cautions[0]).toMatch(/^BACKGROUND TOO HIGH: the reading is 2\.05 times that at rest.*narrow band$/);
    expect(loud.cautions.slice(1)).toEqual(plain.cautions);
  });

  it("too high stands in the headline of each judgement, and nothing of it is verified", () => {
    const loud = judge("4.1 mm/s rms", pump, { background: "2 mm/s rms" });
    expect(loud.headline).toMatch(/, NOT RELIABLE: background too high$/);
    expect(loud.judgements.map(({ headline }) => headline)).toEqual(loud.judgements.map(() => loud.headline));
    expect([loud.verified, ...loud.judgements.map(({ verified }) => verified)]).not.toContain(true);
    // a verdict by limits that were confirmed rests on the rule, which was read as quoted, where that rule decides
    const confirmed = { provenance: "confirmed", verified: true, headline: "zone B", cautions: [] } as const;
    const reading = [parseAmplitude("4.1 mm/s rms")];
    expect(withBackground(confirmed, reading, "2 mm/s rms")).toMatchObject({ provenance: "quoted", verified: false });
    expect(withBackground(confirmed, reading, "0.4 mm/s rms")).toMatchObject({
      provenance: "confirmed",
      verified: true,
    });
  });

  it("takes the frequency of the reading, where it has none of its own", () => {
    // 10 um rms at 50 Hz is 2 pi 50 0.010 = 3.14 mm/s rms
    expect(checkBackground("31.4 mm/s rms at 50 Hz", "10 um rms").ratio).toBeCloseTo(9.995, 2);
    expect(checkBackground("31.4 mm/s rms", "10 um rms at 50 Hz").ratio).toBeCloseTo(9.995, 2);
    expect(judge("4.1 mm/s rms at 49.67 Hz", pump, { background: "10 um pp" }).background?.valid).toBe(true);
  });

  it("is one for all points, or one for each", () => {
    const points = "DE-H 3.1, NDE-H 7 mm/s rms";
    const own = judgePoints(points, pump, { background: "DE-H 0.4, NDE-H 3 mm/s rms" });
    expect(own.points.map(({ verdict }) => verdict.background?.valid)).toEqual([true, false]);
    expect(own.headline).toMatch(/, NOT RELIABLE: background too high at NDE-H$/);
    const one = judgePoints(points, pump, { background: "2 mm/s rms" });
    expect(one.headline).toMatch(/, NOT RELIABLE: background too high at DE-H$/);
    const all = judgePoints(points, pump, { background: "4 mm/s rms" });
    expect(all.headline).toMatch(/zone \w, NOT RELIABLE: background too high$/);
    const parsed = judgePoints(points, pump, { background: parsePoints("de-h 0.4, nde-h 3 mm/s rms") });
    expect(parsed.headline).toBe(own.headline);
    expect(() => judgePoints(points, pump, { background: "DE-H 0.4 mm/s rms" })).toThrow(/none for NDE-H/);
    expect(() => judgePoints(points, pump, { background: "DE-H 0.4, NDE-H 1, DE-A 1 mm/s rms" })).toThrow(/de-?a/i);
    expect(judgePoints(points, pump, { background: "0.4 mm/s rms" }).headline).not.toMatch(/NOT/);
  });

  it("is taken by overall too", async () => {
    const file = ["overall", "docs/examples/fan-bearing.csv", "--rate", "2560", "--unit", "g"];
    const machine = ["--machine", "fan 132 kW 1485 r/min rigid BV-3"];
    const told = async (...more: string[]) => (await veladis([...file, ...more])).out.replace(/\s+/g, " ");
    expect(await told(...machine, "--background", "2 mm/s rms")).toContain("NOT RELIABLE: background too high");
    expect(await told(...machine, "--background", "0.4 mm/s rms")).not.toContain("NOT RELIABLE");
    expect((await veladis([...file, "--background", "2 mm/s rms"])).err).toContain(
      "--machine, --scheme or --limits beside",
    );
  });

  it("is taken by classify and by points too", () => {
    const options = { scheme: "iso-10816-7-2009", machine: pump, background: "2 mm/s rms" } as const;
    expect(classify("4.1 mm/s rms", options).background?.valid).toBe(false);
    const { points } = judgePoints("DE-H 3.1, NDE-H 7 mm/s rms", pump, { background: "2 mm/s rms" });
    expect(points.map(({ verdict }) => verdict.background?.valid)).toEqual([false, true]);
  });
});

describe("rules for supports", () => {
  it("carry their sources", () => {
    // motor maker's manual, 7.4.3.2: at least 25 % above the excitation, in that direction
    expect(supportOf("62.5 Hz", "50 Hz")).toBe("rigid");
    expect([supportRule, unknownSupportRule].map(({ source }) => source.provenance)).toEqual(["quoted", "quoted"]);
    // the class society: not classified, then rigid
    expect(judge("3 mm/s rms", "motor 200 kW 1485 r/min").assumedFacts.join()).toMatch(/support rigid: not given/);
  });
});

describe("a background of readings with an uncertainty", () => {
  const rest = parseUncertain("1.3 ± 0.3 mm/s rms (k=2)");

  it("is held by the upper end of the one and the lower end of the other, in library and command alike", async () => {
    const { valid, ratio, text } = checkBackground("4.5 mm/s rms", rest);
    expect(ratio).toBeCloseTo(4.5 / 1.3, 12);
    expect(valid).toBe(false);
    expect(text).toContain("3.46 times that at rest, at least 2.81 times with the reading at the lower");
    expect(checkBackground("4.5 mm/s rms", "1.3 mm/s rms").valid).toBe(true);
    expect(checkBackground(parseUncertain("4.5 ± 0.7 mm/s rms (k=2)"), "1.3 mm/s rms").valid).toBe(false);
    expect(checkBackground(parseUncertain("4.9 ± 0.05 mm/s rms (k=2)"), rest).valid).toBe(true);
    const judged = judge("4.5 mm/s rms", pump, { background: rest });
    expect(judged.headline).toContain("NOT RELIABLE");
    for (const [reading, at] of [
      ["4.5 mm/s rms", "1.3 ± 0.3 mm/s rms (k=2)"],
      ["4.5 ± 0.7 mm/s rms (k=2)", "1.3 mm/s rms"],
    ] as const) {
      const { out } = await veladis(["judge", reading, "--machine", pump, "--background", at]);
      expect(out).toContain("NOT RELIABLE");
    }
  });

  it("counts the frequency by which it was converted, and levels in dB", () => {
    const running = parseUncertain("4.5 mm/s rms at 25 ± 2 Hz");
    expect(checkBackground("4.5 mm/s rms at 25 Hz", "23.6 um pp").valid).toBe(true);
    expect(checkBackground(running, "23.6 um pp").valid).toBe(false);
    expect(checkBackground("130 dB re 1 nm/s", parseUncertain("117 ± 6 dB re 1 nm/s (k=2)")).valid).toBe(false);
    expect(checkBackground("130 dB re 1 nm/s", parseUncertain("117 ± 3 dB re 1 nm/s (k=2)")).valid).toBe(true);
  });

  it("is not known where more was done to a reading than to multiply it", () => {
    const both = rssDifference(rest, "0.5 mm/s rms");
    expect(checkBackground("40 mm/s rms", both)).toMatchObject({ valid: false });
    expect(checkBackground("40 mm/s rms", both).text).toContain("not known how many");
  });
});
