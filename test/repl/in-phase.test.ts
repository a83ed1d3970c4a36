/**
 * Readings put together in phase: frequency, most and least, percentages, and how their answers read back. Sums and
 * ratios are plain arithmetic (common practice, no source).
 */
import { describe, expect, it } from "vitest";
import { newSession, respond, type Session } from "../../src/repl/index";

const said = async (line: string, session: Session = newSession()): Promise<string> => {
  const response = await respond(line, session);
  return response === "exit" ? "exit" : response.text;
};

const pump = '"pump 90 kW 2980 r/min category II housing"';

describe("a frequency that one of several readings says stays with the result", () => {
  it("of a sum, so that its verdict is that of a reading at this frequency", async () => {
    const session = newSession();
    expect(await said("x = 60 um pp at 100 Hz + 0 um pp", session)).toMatch(
      /^x = 60\.0 um pp at 100 Hz .*one frequency/,
    );
    const [headline] = (await said(`judge(x, ${pump})`, session)).split(":");
    expect(headline).toBe((await said(`judge(60 um pp at 100 Hz, ${pump})`)).split(":")[0]);
    expect(headline).toMatch(/^zone D/);
  });

  it("of a difference, so that another one is refused", async () => {
    await expect(said('at(40 um pp at 50 Hz - 6 um pp, "100 Hz")')).rejects.toMatchObject({ code: "out-of-range" });
    await expect(said("40 um pp - 6 um pp at 50 Hz + 1 um pp at 60 Hz")).rejects.toMatchObject({
      code: "wrong-frequency",
    });
  });

  it("of a mean, which says that it takes one frequency; not of a root sum of squares, which takes none", async () => {
    expect(await said("2 * mean(1 um pp, 2 um pp at 50 Hz)")).toBe("3.00 um pp at 50 Hz (3000 r/min)  (one frequency)");
    expect(await said("rss(3 um rms, 4 um rms at 50 Hz)")).toBe("5.00 um rms  (uncorrelated)");
  });
});

describe("a difference as it is printed", () => {
  it("is read back, alone and within an expression with a type behind it", async () => {
    const printed = await said("40 um pp - 6 um pp");
    expect(printed).toBe("34.0 um pp  (one frequency, in phase; up to 46.0 with a phase between them)");
    const session = newSession();
    expect(await said(`p = ${printed}`, session)).toBe("p = 34.0 um pp  (one frequency, in phase)");
    expect(await said(`2 * ${printed} to mil pp`, session)).toBe("2.68 mil pp  (one frequency, in phase)");
  });

  it("does not let another to into brackets", async () => {
    await expect(said("(34 um pp to mil pp)")).rejects.toMatchObject({ code: "syntax" });
  });
});

describe("one reading that comes in twice needs no phase to itself", () => {
  it.each([
    ["base + base", "4.00 mm/s rms"],
    ["1.1 * base + base", "4.20 mm/s rms"],
    ["base - base / 4", "1.50 mm/s rms"],
    ["max(list) + max(list)", "6.00 mm/s rms"],
    ["base + 3 mm/s rms", "5.00 mm/s rms  (one frequency, in phase; root sum of squares 3.61)"],
  ])("%s", async (line, prints) => {
    const session = newSession();
    await said("base = 2 mm/s rms", session);
    await said("list = [3 mm/s rms]", session);
    expect(await said(line, session)).toBe(prints);
  });

  it("but two frequencies told of it are refused", async () => {
    const session = newSession();
    await said("base = 2 mm/s rms", session);
    await expect(said('at(base, "25 Hz") + at(base, "50 Hz")', session)).rejects.toMatchObject({
      code: "wrong-frequency",
    });
  });
});

describe("a percentage behind a plus or a minus is a scale", () => {
  it.each([
    ["base + 10 %", "2.20 mm/s rms"],
    ["base - 10 %", "1.80 mm/s rms"],
    ["2 mm/s rms + 10 %", "2.20 mm/s rms"],
    ["5 + 10 %", "5.5"],
    ["6 dB + 10 %", "6.6 dB"],
    ["explain base - 10 %", "2 mm/s rms\n2 mm/s rms x 0.9 = 1.8 mm/s rms  (- 10 %)"],
  ])("%s", async (line, prints) => {
    const session = newSession();
    await said("base = 2 mm/s rms", session);
    expect(await said(line, session)).toBe(prints);
  });

  it("of more than the whole is refused", async () => {
    await expect(said("2 mm/s rms - 110 %")).rejects.toMatchObject({ code: "negative" });
  });
});

describe("a verdict on a difference", () => {
  it.each([
    ["40 um pp - 6 um pp at 50 Hz", /caution: a difference in phase is the least .* up to 46\.0 um pp /],
    ["1.1 * (40 um pp - 6 um pp)", /caution: a difference in phase is the least .* up to 50\.6 um pp /],
    [
      "34.0 um pp (one frequency, in phase; up to 46.0 with a phase between them)",
      /caution: .* up to 46\.0 with a phase/,
    ],
    ["max(40 um pp - 6 um pp, 2 um pp)", /caution: .*: one went into this reading, which may be more/],
  ])("%s names the most that it can be", async (reading, caution) => {
    expect(await said(`judge(${reading}, ${pump})`)).toMatch(caution);
  });

  it("has the caution in its data, and no verdict on a sum has it", async () => {
    const response = await respond(`judge(40 um pp - 6 um pp, ${pump})`, newSession());
    const { answer } = response as { answer: { value: { data: { cautions: string[] } } } };
    expect(answer.value.data.cautions[0]).toContain("46.0 um pp");
    expect(await said(`judge(40 um pp + 6 um pp, ${pump})`)).not.toContain("difference in phase");
  });
});
