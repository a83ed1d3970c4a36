import { describe, expect, it } from "vitest";
import { evaluateLine, newSession } from "../../src/entries/mathjs";
import { convert, convertAmplitude, converter, format } from "../../src/index";
import { madeOf } from "../../src/reading/index";

// peak = crest factor x RMS: the definition, used so by the FTA manual, 2018 (PPV over RMS of 4 for passing trucks)
const crestFactor = 4;

describe("a stated crest factor", () => {
  it.each([
    [2, "g rms", "g pk", 8],
    [2, "g rms", "g pp", 16],
    [8, "g pk", "g rms", 2],
    [16, "g pp", "g rms", 2],
    // the inch is 25.4 mm exactly: NIST SP 811, Appendix B.8
    [2, "in/s rms", "mm/s pk", 203.2],
    [2, "in/s rms", "mm/s pp", 406.4],
    [203.2, "mm/s pk", "in/s rms", 2],
    [406.4, "mm/s pp", "in/s rms", 2],
    [2, "in/s pk", "mm/s rms", 12.7],
    [2, "in/s pp", "mm/s rms", 6.35],
    [12.7, "mm/s rms", "in/s pk", 2],
  ])("%d %s is %s %d", (value, from, to, expected) => {
    const answer = convert(value, from as "g rms", to as "g pk", { crestFactor });
    expect(answer).toBeCloseTo(expected, 12);
    expect(converter(from as "g rms", to as "g pk", { crestFactor })(value)).toBe(answer);
  });

  it("changes nothing where peak and RMS do not meet", () => {
    expect(convert(3, "g pk", "g pp", { crestFactor })).toBe(6);
    expect(convert(3, "g pp", "g pk", { crestFactor })).toBe(1.5);
    expect(convert(3, "in/s rms", "mm/s rms", { crestFactor })).toBe(convert(3, "in/s rms", "mm/s rms"));
    expect(convert(25.4, "mm/s pk", "in/s pk", { crestFactor })).toBe(1);
    expect(convertAmplitude("3 g pk", "g pp", { crestFactor })).not.toHaveProperty("crestFactor");
  });

  it("is 1 for a square wave, the least there is", () => {
    expect(convert(3, "g rms", "g pk", { crestFactor: 1 })).toBe(3);
    expect(() => convert(3, "g rms", "g pk", { crestFactor: 1 - 2 ** -53 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it("is told with the answer it was used for", () => {
    expect(convertAmplitude("2 g rms", "g pk", { crestFactor })).toMatchObject({
      value: 8,
      assumed: ["crest-factor"],
      crestFactor,
    });
  });
});

describe("without one", () => {
  it("peak, RMS and average are those of a sine", () => {
    for (const [from, to] of [
      ["g pk", "g avg"],
      ["g avg", "g pp"],
      ["g rms", "g avg"],
      ["g pk", "g rms"],
      ["g rms", "g pp"],
    ] as const) {
      const answer = convertAmplitude(`1 ${from}`, to);
      expect(answer.assumed, `${from} to ${to}`).toEqual(["sine"]);
      expect(answer).not.toHaveProperty("crestFactor");
    }
    expect(convertAmplitude("1 g pk", "g pp").assumed).toEqual([]);
    expect(convertAmplitude("1 g avg", "mg avg").assumed).toEqual([]);
  });
});

describe("on the way back", () => {
  const there = convertAmplitude("2 g rms", "g pk", { crestFactor });

  it.each([
    ["g rms", 2],
    ["g pp", 16],
    ["m/s2 rms", 2 * 9.80665],
  ])("8 g pk by a crest factor of 4 in %s is %d", (to, expected) => {
    expect(there.value).toBe(8);
    expect(convertAmplitude(there, to).value).toBeCloseTo(expected, 12);
    expect(convertAmplitude(JSON.parse(JSON.stringify(there)), to).value).toBeCloseTo(expected, 12);
    expect(convertAmplitude(there, to).assumed).toEqual(["crest-factor"]);
  });

  it("is kept in the calculator, through a number times it and a sum of its own kind", async () => {
    const session = newSession();
    const said = async (line: string) => (await evaluateLine(line, session)).text;
    await said("a = 2 g rms with crest factor 4 to g pk");
    expect(await said("a to g rms")).toBe("2.00 g rms  (crest factor 4)");
    expect(await said("2 * a to g rms")).toBe("4.00 g rms  (crest factor 4)");
    // a reading with itself needs no phase
    expect(await said("a + a to g rms")).toBe("4.00 g rms  (crest factor 4)");
    // of a sum with a wave whose own is unknown nobody knows it
    expect(await said("a + 1 g pk")).toBe(
      "9.00 g pk  (crest factors, one frequency, in phase; root sum of squares 8.06)",
    );
    expect(await said("a + 1 g pk to g rms")).toBe(
      "6.36 g rms  (crest factors, one frequency, in phase, sine; root sum of squares 5.70)",
    );
  });

  it("is lost where waves are put together that have nothing to do with one another", async () => {
    const session = newSession();
    await evaluateLine("a = 2 g rms with crest factor 4 to g pk", session);
    await evaluateLine("b = a to g rms", session);
    const { value } = await evaluateLine("rss(b, b)", session);
    expect(value).not.toHaveProperty("crestFactor");
    expect(madeOf([there, there], { does: "sum", value: 16, type: "g pk" }).crestFactor).toBe(4);
  });

  it("goes no further than its quantity", () => {
    const velocity = convertAmplitude({ ...there, hertz: 25 }, "mm/s pk");
    expect(velocity).not.toHaveProperty("crestFactor");
    expect(format(convertAmplitude(velocity, "mm/s rms"))).toBe("353 mm/s rms");
  });
});
