import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { currentLoop, formatVoltage, sensor } from "../../src/entries/sensor";
import { convertAmplitude, format, parseAmplitude, VeladisError } from "../../src/index";
import { codeOf } from "../refusals/refusal-of";

describe("sensor", () => {
  it.each([
    ["100 mV/g", "1 g pk", "mV pk", 100],
    ["10.2 mV/(m/s2)", "10 m/s2 rms", "mV rms", 102],
    ["500 mV/(in/s)", "0.3 in/s pk", "V pk", 0.15],
    ["20 mV/(mm/s)", "4.5 mm/s rms", "mV rms", 90],
    ["200 mV/mil", "2 mil pp", "mV pp", 400],
    ["7.87 V/mm", "0.1 mm pp", "V pp", 0.787],
    ["8 mV/µm", "10 um pp", "mV pp", 80],
    ["100 mV per g", "1 g rms", "uV rms", 1e5],
    ["50 uV/(mm/s)", "2 mm/s rms", "µV rms", 100],
    ["100 mV/g", "9.80665 m/s2 pk", "mV rms", 100 / Math.SQRT2],
  ])("%s reads %s as %s: %d", (sensitivity, reading, as, expected) => {
    expect(sensor(sensitivity).voltage(reading, as as "mV pk").value).toBeCloseTo(expected, 9);
  });

  it("goes there and back, also across quantities at a frequency", () => {
    const accelerometer = sensor("100 mV/g");
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        (x, hertz) => {
          const at = { at: { hertz } };
          const volts = accelerometer.voltage(`${x} in/s pk`, "mV rms", at);
          const back = accelerometer.reading(volts, "in/s pk", at);
          expect(back.assumed).toEqual(["one-frequency", "sine"]);
          return Math.abs(back.value - x) <= 1e-13 * x;
        },
      ),
    );
  });

  it("takes parsed readings, and the frequency they carry", () => {
    const probe = sensor("200 mV/mil");
    // 2 * 0.2 in/s / (2 pi 1180 / 60) is 3.23705 mil peak-to-peak
    expect(formatVoltage(probe.voltage(parseAmplitude("0.2 in/s pk at 1180 r/min"), "mV pp"), 4)).toBe("647.4 mV pp");
    expect(probe.unit).toBe("mil");
    expect(Object.isFrozen(probe)).toBe(true);
  });

  // g is 9.80665 m/s2 and the inch 25.4 mm exactly: NIST SP 811, Appendix B.8
  it.each([
    ["10 mV/(m/s2)", "mV/g", 98.0665],
    ["98.0665 mV/g", "V/(m/s2)", 0.01],
    ["20 mV/(mm/s)", "mV/(in/s)", 508],
    ["508 mV/(in/s)", "uV/(mm/s)", 20_000],
    ["100 mV/g", "mV/(ft/s2)", (100 * 0.3048) / 9.80665],
    ["100 mV/(ft/s2)", "mV/g", (100 * 9.80665) / 0.3048],
  ])("%s is in %s: %d", (stated, per, expected) => {
    expect(sensor(stated).sensitivity(per) / expected).toBeCloseTo(1, 14);
  });

  const padded = (start: string, end: string, length: number): string => start.padEnd(length - end.length) + end;
  it("reads its texts with spaces about and within them", () => {
    const own = sensor("  100   mV  /  g ");
    expect(own.sensitivity(" mV / g ")).toBe(100);
    expect(own.sensitivity("V per  g")).toBe(0.1);
    expect(own.reading(" 100   mV   rms ", "g rms").value).toBe(1);
    expect(own.voltage("1 g rms", " mV   rms " as "mV rms").value).toBe(100);
  });

  it("reads texts of up to 80 characters", () => {
    const own = sensor(padded("100", "mV/g", 80));
    expect(own.sensitivity(padded("mV/", "g", 80))).toBe(100);
    expect(own.reading(padded("100 mV", "rms", 80), "g rms").value).toBe(1);
    expect([
      codeOf(() => sensor(padded("100", "mV/g", 81))),
      codeOf(() => own.sensitivity(padded("mV/", "g", 81))),
      codeOf(() => own.reading(padded("100 mV", "rms", 81), "g rms")),
    ]).toEqual(["syntax", "syntax", "syntax"]);
  });

  it("refuses a text with a part missing as a whole", () => {
    for (const written of ["100", "mV/g", "100 mV/", "100 /g"]) {
      expect(() => sensor(written)).toThrow(expect.objectContaining({ code: "syntax" }));
    }
    expect(() => sensor("100")).toThrow(expect.objectContaining({ received: '"100"' }));
    const own = sensor("100 mV/g");
    expect(codeOf(() => own.reading("mV", "g pk"))).toBe("syntax");
    expect(codeOf(() => own.reading("mV rms", "g pk"))).toBe("syntax");
    expect(codeOf(() => own.reading("70 mV rms\npk", "g pk"))).toBe("syntax");
    expect(codeOf(() => own.reading("70 mV rms pk", "g pk"))).toBe("unknown-detector");
    expect(codeOf(() => own.reading("70 kV rms", "g pk"))).toBe("unknown-unit");
  });

  it("refuses what is no text", () => {
    const own = sensor("100 mV/g");
    for (const bad of [undefined, null, 5, ["mV/g"]] as never[]) {
      expect(codeOf(() => own.sensitivity(bad))).toMatch(/^(missing-option|wrong-type)$/);
    }
    for (const bad of [undefined, null, 5] as never[]) {
      expect(codeOf(() => own.reading(bad, "g pk"))).toBe(bad == null ? "missing-option" : "wrong-type");
    }
  });
});

describe("currentLoop", () => {
  const loop = currentLoop("0 to 25.4 mm/s rms");

  it.each([
    [4, 0, "in range"],
    [12, 12.7, "in range"],
    [20, 25.4, "in range"],
    [20.49, 26.177875, "in range"],
    [20.5, 26.19375, "above range"],
    [3.8, 0, "below range"],
    [3.9, 0, "below range"],
    [3.61, 0, "below range"],
    [20.51, 26.19375, "above range"],
    [20.99, 26.19375, "above range"],
  ])("%d mA reads %d mm/s, %s", (current, value, state) => {
    const reading = loop.reading(current);
    expect(reading.value).toBeCloseTo(value, 12);
    expect(reading.state).toBe(state);
  });

  // NAMUR NE 43 (from memory): failure is signalled at 3.6 mA and less, at 21 mA and more
  it.each([3.6, Math.fround(3.6), 3.6 * (1 + 2 ** -24), 3.5, 0, -1, 21, 21 * (1 - 2 ** -24), 22])(
    "%d mA is a fault",
    (current) => {
      expect(() => loop.reading(current)).toThrow(expect.objectContaining({ code: "sensor-fault" }));
    },
  );

  it("says its state wherever it is written, and keeps it on every way", () => {
    const [low, high] = [loop.reading(3.7), loop.reading(20.9)];
    expect([low, high, loop.reading(12)].map((one) => format(one))).toEqual([
      "0 mm/s rms (below range)",
      "26.2 mm/s rms (above range)",
      "12.7 mm/s rms",
    ]);
    expect(format(convertAmplitude(high, "dB re 1 nm/s"))).toBe("148.4 dB re 1 nm/s (above range)");
    expect(convertAmplitude(high, "in/s pk").state).toBe("above range");
    expect(format(JSON.parse(JSON.stringify(high)))).toBe(format(high));
    // to volts and back, and into another loop
    const probe = sensor("20 mV/(mm/s)");
    const volts = probe.voltage(high, "mV rms");
    expect(volts.state).toBe("above range");
    expect(probe.reading(JSON.parse(JSON.stringify(volts)), "in/s rms").state).toBe("above range");
    expect(probe.voltage("2 mm/s rms", "mV rms")).not.toHaveProperty("state");
    const wider = currentLoop("0 to 100 mm/s rms");
    expect([wider.current(high).state, wider.current(low).state]).toEqual(["above range", "below range"]);
  });

  it("gives the current for a reading in any unit, clipped to what a loop measures", () => {
    expect(loop.current("1 in/s rms")).toMatchObject({ milliamperes: 20, state: "in range" });
    expect(loop.current("0 mm/s rms").milliamperes).toBe(4);
    expect(loop.current("100 mm/s rms")).toMatchObject({ milliamperes: 20.5, state: "above range" });
    expect(loop.current("1 g pk at 60 Hz").milliamperes).toBeCloseTo(4 + (16 * 18.394) / 25.4, 3);
  });

  it("has a range that starts above zero, or in another unit", () => {
    const shifted = currentLoop("5 to 25 mm/s rms");
    expect(shifted.reading(4).value).toBe(5);
    expect(shifted.reading(3.7)).toMatchObject({ value: 5, state: "below range" });
    expect(shifted.current("1 mm/s rms")).toMatchObject({ milliamperes: 3.8, state: "below range" });
    expect(format(currentLoop("0 in/s rms to 25.4 mm/s rms").reading(20))).toBe("25.4 mm/s rms");
    expect(format(currentLoop("0 to 2 in/s pk").reading(12, "mm/s rms"))).toBe("18.0 mm/s rms");
  });

  it("takes the limits of another loop", () => {
    const tight = currentLoop("0 to 10 g pk", { lowFault: 3.9, lowest: 4, highest: 20, highFault: 20.1 });
    expect(() => tight.reading(3.8)).toThrow(expect.objectContaining({ code: "sensor-fault" }));
    expect(tight.current("11 g pk")).toMatchObject({ milliamperes: 20, state: "above range" });
  });

  it("reads a range with spaces about and within it, and a start with a type of its own", () => {
    for (const range of [
      " 0 to 25.4 mm/s rms",
      "0   to   25.4 mm/s rms ",
      "0\tto\n25.4 mm/s rms",
      "0mm/s_rms to 25.4 mm/s rms",
      "0.0e0 to 2.54e1 mm/s rms",
      "+0 to 1 in/s rms",
    ]) {
      expect(currentLoop(range).reading(12, "mm/s rms").value, range).toBeCloseTo(12.7, 12);
    }
  });

  it("tells the to of a range from that of a detector", () => {
    for (const range of [
      "0 to 250 um peak to peak",
      "0 um peak to peak to 250 um peak to peak",
      "0 um zero to peak to .25 mm peak to peak",
      "-0 to +250 um peak to peak",
    ]) {
      expect(format(currentLoop(range).reading(12, "um pp")), range).toBe("125 um pp");
    }
  });

  it.each([
    ["0 to 10 to 25 mm/s rms", "syntax"],
    ["0 to mm/s rms", "syntax"],
    ["0 um peak to peak", "syntax"],
    ["0 to -25 mm/s rms", "negative"],
    ["0to25 mm/s rms", "syntax"],
    ["5 to 5 mm/s rms", "out-of-range"],
    ["0 to 0 mm/s rms", "out-of-range"],
    ["25.4 mm/s rms to 1 in/s rms", "out-of-range"],
    ["60 dB re 1 nm/s to 1 mm/s rms", "out-of-range"],
    ["0 to 25", "missing-unit"],
  ])("refuses the range %j as %s", (range, code) => {
    expect(() => currentLoop(range)).toThrow(expect.objectContaining({ code }));
  });

  it("reads a range of 200 characters, and no endless one", () => {
    const range = (length: number): string => `0 to 25.4${" ".repeat(length - 17)}mm/s rms`;
    expect(currentLoop(range(200)).reading(20).value).toBe(25.4);
    // white space counts once, so that a range of many words alone is endless
    expect(() => currentLoop(`0 to 25.4 mm/s ${"x".repeat(300)} rms`)).toThrow(
      expect.objectContaining({ code: "syntax" }),
    );
  });

  it("takes limits that meet the range exactly, and none that meet the fault", () => {
    const bare = currentLoop("0 to 16 g pk", { lowFault: 3.99, lowest: 4, highest: 20, highFault: 20.01 });
    expect(bare.reading(4)).toMatchObject({ value: 0, state: "in range" });
    expect(bare.reading(19.99)).toMatchObject({ state: "in range" });
    // a signal that ends at 20 mA is at its end there: the vibration may be higher
    expect(bare.reading(20)).toMatchObject({ value: 16, state: "above range" });
    for (const wrong of [{ lowFault: 4 }, { highFault: 20 }]) {
      const limits = { lowFault: 3.99, lowest: 4, highest: 20, highFault: 20.01, ...wrong };
      expect(() => currentLoop("0 to 16 g pk", limits)).toThrow(expect.objectContaining({ code: "out-of-range" }));
    }
  });

  it.each([
    ["lowest below the fault", { lowFault: 3.81 }],
    ["lowest above 4 mA", { lowest: 4.01 }],
    ["highest under 20 mA", { highest: 19.99 }],
    ["highest above the fault", { highFault: 20.49 }],
  ])("refuses limits of which only one is out of order: %s", (_, wrong) => {
    const limits = { lowFault: 3.6, lowest: 3.8, highest: 20.5, highFault: 21 };
    expect(() => currentLoop("0 to 1 g pk", limits)).not.toThrow();
    expect(() => currentLoop("0 to 1 g pk", { ...limits, ...wrong })).toThrow(
      expect.objectContaining({ code: "out-of-range", received: Object.values({ ...limits, ...wrong }).join(", ") }),
    );
  });

  it("refuses limits that no current reaches", () => {
    for (const [name, bad] of [
      ["lowFault", Number.NEGATIVE_INFINITY],
      ["highFault", Number.POSITIVE_INFINITY],
      ["highest", Number.NaN],
    ] as const) {
      const limits = { lowFault: 3.6, lowest: 3.8, highest: 20.5, highFault: 21, [name]: bad };
      expect(() => currentLoop("0 to 1 g pk", limits), name).toThrow(VeladisError);
    }
  });
});
