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
