/**
 * Readings with an uncertainty in the calculator. Sums of independent inputs by JCGM 100:2008, 5.1.2: the root of the
 * sum of squares of the standard uncertainties, each times its derivative; a bound over root 3 by 4.3.7. Conversions by
 * definition: 1 in = 25.4 mm, peak of a sine = root 2 times RMS.
 */
import { describe, expect, it } from "vitest";
import { newSession, respond, type Session } from "../../src/repl/index";

const said = async (line: string, session: Session = newSession()): Promise<string> => {
  const response = await respond(line, session);
  return response === "exit" ? "exit" : response.text;
};

const u = "u = 4.9 ± 0.3 mm/s rms (k=2) at 25 ± 0.5 Hz";
const pump = '"pump 90 kW 2980 r/min category II"';

describe("a reading with ± in the calculator", () => {
  it.each([
    // 0.3 * 1.4142 / 25.4 = 0.0167
    ["u to in/s pk", "0.273 ± 0.017 in/s pk (k=2)  (sine)"],
    ["1.5 * u", "7.35 ± 0.45 mm/s rms (k=2) at 25 ± 0.58 Hz (k=2)"],
    // one reading with itself: twice its uncertainty
    ["u + u", "9.80 ± 0.60 mm/s rms (k=2) at 25 ± 0.58 Hz (k=2)"],
    // 0.3 * 4.9 / 5.292 = 0.278
    ["rss(u, 2 mm/s rms)", "5.29 ± 0.28 mm/s rms (k=2)  (uncorrelated)"],
    ["u + 10 %", "5.39 ± 0.33 mm/s rms (k=2) at 25 ± 0.58 Hz (k=2)"],
    // 0.3 / 2 = 0.15
    ["u / (2 mm/s rms)", "2.45 ± 0.15 (k=2)"],
    ["v = 0.25 in/s pk ± 5 % (k=2)", "v = 0.250 ± 0.013 in/s pk (k=2)"],
    ["v = 4.9 +/- 0.3 mm/s rms", "v = 4.90 ± 0.35 mm/s rms (k=2)"],
    ["v = 95 ± 0.5 dB re 1e-9 m/s (k=2)", "v = 95.00 ± 0.50 dB re 1e-9 m/s (k=2)"],
  ])("%s", async (line, prints) => {
    const session = newSession();
    await said(u, session);
    expect(await said(line, session)).toBe(prints);
  });

  // root of 0.3^2 + 0.4^2 = 0.5
  it("in a difference of two, whose uncertainties go together by their squares", async () => {
    expect(await said("v = 5 ± 0.3 mm/s rms (k=2) - 2 ± 0.4 mm/s rms (k=2)")).toMatch(
      /^v = 3\.00 ± 0\.50 mm\/s rms \(k=2\) /,
    );
  });

  it.each([
    "4.90 ± 0.30 mm/s rms (k=2) at 25 Hz (1500 r/min)  (sine)",
    "4.90 ± 0.30 mm/s rms (k=2) at 25 ± 0.58 Hz (k=2)  (one frequency, sine)",
    "0.273 ± 0.017 in/s pk (k=2)  (sine)",
    "4.90 ± 0.30 mm/s rms (k=2) (above range)",
    "95.00 ± 0.58 dB re 1e-9 m/s (k=2)",
    "4.90 mm/s rms, 95 % within 0.248 to 9.56",
  ])("is read back as it is printed: %s", async (text) => {
    expect(await said(`v = ${text}`)).toBe(`v = ${text}`);
    expect(await said(`v = max(${text})`)).toBe(`v = ${text}`);
  });

  it("is judged by the guard band: the worst zone that the interval touches", async () => {
    const session = newSession();
    await said(u, session);
    const text = await said(`judge(u, ${pump})`, session);
    expect(text).toMatch(/^zone C, .*: 4\.90 ± 0\.30 mm\/s rms/);
    expect(text).toContain("\n  within 4.60 to 5.20 mm/s rms (U = 0.300, k = 2): B, C\n");
    expect(text).toContain("by the best value zone B\n");
    expect(await said(`judge(4.9 mm/s rms, ${pump})`)).toMatch(/^zone B/);
  });

  it.each([
    ["4.9 ± 0.3", "missing-unit"],
    ["4.9 ± -0.3 mm/s rms", "negative"],
    ["4.9 ± 5.3 mm/s rms", "out-of-range"],
    ["4.9 mm/s rms ± x", "syntax"],
    ["4.9 ± 0.3 mm/s rms (k=0.5)", "out-of-range"],
    ["a = 4.9 ± 0.3 mm/s rms (k=2) = 3", "syntax"],
  ])("is refused: %s", async (line, code) => {
    await expect(said(line)).rejects.toMatchObject({ code });
  });
});

describe("what cannot carry the ± of its readings", () => {
  const left = "  (by best values: the ± of the readings is left out)";

  // root of (0.3 / 4.9)^2 + (2 * 0.02 / root 3)^2 = 0.0654, times 0.98
  it("says so, and a ratio alone carries it", async () => {
    const session = newSession();
    await said("x = 4.9 ± 0.3 mm/s rms (k=2)", session);
    await said("y = 5 ± 2 % mm/s rms", session);
    await said("z = 5 mm/s rms", session);
    for (const [line, prints] of [
      ["x/y", "0.980 ± 0.064 (k=2)"],
      ["last * 2", `1.96${left}`],
      ["r = (x) / y", "r = 0.980 ± 0.064 (k=2)"],
      ["r", `0.98${left}`],
      ["r + 1", `1.98${left}`],
      ["x / x", "1"],
      ["log10(x / y)", `-0.00877392${left}`],
      ["sqrt(x / y)", `0.989949${left}`],
      ["x > y", `false${left}`],
      ["3 mm/s rms < x < y", `true${left}`],
      ["value(x)", `4.9${left}`],
      ["z / z", "1"],
      ["z > 2 mm/s rms", "true"],
      ["r = 2", "r = 2"],
      ["r + 1", "3"],
    ] as const) {
      expect(await said(line, session), line).toBe(prints);
    }
    expect(await said("change(x, y)", session)).toMatch(/left out\)$/);
    expect(await said("95 ± 0.5 dB re 1e-9 m/s - 90 dB re 1e-9 m/s", session)).toMatch(/left out\)$/);
  });
});

describe("how an uncertainty is meant", () => {
  it.each([
    ["v = 4.9 ± 0.3 mm/s rms k=2", "v = 4.90 ± 0.30 mm/s rms (k=2)"],
    ["v = 4.9 ± 0.3 mm/s rms, k = 2 at 25 Hz", "v = 4.90 ± 0.30 mm/s rms (k=2) at 25 Hz (1500 r/min)"],
    ["v = 4.9 ± 0.3 mm/s rms (k = 2)", "v = 4.90 ± 0.30 mm/s rms (k=2)"],
    ["v = 4.9 ± 0.3 (k=2) mm/s rms", "v = 4.90 ± 0.30 mm/s rms (k=2)"],
    ["v = 4.9 ± 0.3 mm/s rms (2σ)", "v = 4.90 ± 0.30 mm/s rms (k=2)"],
    ["v = 4.9 ± 0.3 mm/s rms (2 sigma)", "v = 4.90 ± 0.30 mm/s rms (k=2)"],
    // 2 / 1.96 of it
    ["v = 4.9 ± 0.3 mm/s rms (95 %)", "v = 4.90 ± 0.31 mm/s rms (k=2)"],
    ["v = max(4.9 ± 0.3 mm/s rms (95%), 2 mm/s rms)", "v = 4.90 ± 0.31 mm/s rms (k=2)"],
  ])("is read: %s", async (line, prints) => {
    expect((await said(line)).replace(/ {2}\(.*/, "")).toBe(prints);
  });

  it("is refused with the form to write where it is not known", async () => {
    await expect(said("v = 4.9 ± 0.3 mm/s rms (99 %)")).rejects.toThrow(/written \(k=2\), \(2 sigma\) or \(95 %\)/);
    await expect(said("v = 4.9 ± 0.3 mm/s rms (k=2, k=3)")).rejects.toMatchObject({ code: "syntax" });
    await expect(said("v = 4.9 ± 0.3 mm/s rms = 3")).rejects.toMatchObject({ code: "syntax" });
  });
});
