/** A frequency that is told twice: the reading says one, and another stands beside it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountOf, sineFrequency } from "../../src/amplitude/index";
import { baseline, checkAgainstKnown, proposeSetpoints, storedSetpoint } from "../../src/entries/protection";
import { currentLoop, sensor } from "../../src/entries/sensor";
import { convertAmplitude, equivalents, format, type ReadingType } from "../../src/index";

const refused = expect.objectContaining({ code: "out-of-range", expected: expect.stringContaining("50 Hz") });
const reading = "2 mm/s rms at 50 Hz";

const places: Record<string, (at: "25 Hz" | "3000 r/min") => unknown> = {
  convertAmplitude: (at) => convertAmplitude(reading, "um pp", { at }),
  "convertAmplitude within a quantity": (at) => convertAmplitude(reading, "in/s pk", { at }),
  equivalents: (at) => equivalents(reading, { at }),
  "voltage of a sensor": (at) => sensor("100 mV/g").voltage(reading, "mV rms", { at }),
  "current of a loop": (at) => currentLoop("0 to 25 mm/s rms").current(reading, { at }),
  "reading of a loop whose range says one": (at) =>
    currentLoop("0 to 25 mm/s rms at 50 Hz").reading(12, "um rms", { at }),
  amountOf: (at) => amountOf(reading, `80 um pk at ${at}`),
  baseline: (at) => baseline([reading, reading, reading], { as: "mm/s rms", at }),
  storedSetpoint: (at) => storedSetpoint(reading, { step: "0.1 mm/s rms" }, at),
};

describe("a frequency told twice", () => {
  it.each(Object.entries(places))("%s takes the same one and refuses another", (_, place) => {
    expect(() => place("3000 r/min")).not.toThrow();
    expect(() => place("25 Hz")).toThrow(refused);
  });

  it("by the known level and by what the device shows", () => {
    const check = (known: string, indicated: string) => checkAgainstKnown({ known, indicated, tolerance: "5 %" });
    expect(() => check("8 mm/s rms at 50 Hz", "7.9 mm/s rms at 40 Hz")).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(check("8 mm/s rms at 40 Hz", "7.9 mm/s rms at 2400 r/min").verdict).toBe("pass");
    // one that the device alone says serves
    expect(check("8 mm/s rms", "7.9 mm/s rms at 40 Hz").indicated.hertz).toBe(40);
  });

  it("is the same within float noise of 2^-23, and the reading's own stays", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e5, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (hertz, off) => {
          const at = { hertz: hertz * (1 + off * 2 ** -23) };
          const one = { ...convertAmplitude("2 mm/s rms", "mm/s rms"), hertz };
          const noise = Math.abs(off) < 0.999;
          if (!noise && Math.abs(off) < 1.001) return;
          if (noise) expect(convertAmplitude(one, "um pp", { at }).hertz).toBe(hertz);
          else expect(() => convertAmplitude(one, "um pp", { at })).toThrow(/one frequency/);
        },
      ),
    );
  });

  it("never gives another answer than the reading by itself", () => {
    const types: ReadingType[] = ["mm/s rms", "um pp", "g pk", "mil pp"];
    const hz = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(fc.constantFrom(...types), fc.constantFrom(...types), hz, hz, (from, to, own, told) => {
        const written = `3 ${from} at ${own} Hz`;
        const both = () => convertAmplitude(written, to, { at: `${told} Hz` }).value;
        if (own === told) expect(both()).toBe(convertAmplitude(written, to).value);
        else expect(both).toThrow(expect.objectContaining({ code: "out-of-range" }));
      }),
    );
  });

  it("is none where the frequency is what is asked for", () => {
    expect(sineFrequency("5 mm pp at 50 Hz", "6 g pk at 20 Hz")).toBe(sineFrequency("5 mm pp", "6 g pk"));
  });

  it("is none for the speed of a machine, which serves readings that say none", () => {
    const asked = (written: string) =>
      proposeSetpoints({
        baseline: written,
        limits: { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the circulation pump" },
        machine: "pump 1500 r/min",
        device: { step: "0.1 mm/s rms" },
      }).baseline;
    const of = (hz: number) => convertAmplitude(`18 um rms at ${hz} Hz`, "mm/s rms").value;
    expect(format(of(50), "mm/s rms")).not.toBe(format(of(25), "mm/s rms"));
    expect([asked("18 um rms"), asked("18 um rms at 50 Hz")]).toEqual([of(25), of(50)]);
  });
});
