import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { currentLoop, format, formatVoltage, parseAmplitude, sensor } from "../../src/index";

describe("sensor", () => {
  it.each([
    ["100 mV/g", "1 g pk", "mV pk", 100],
    ["10.2 mV/(m/s2)", "10 m/s2 rms", "mV rms", 102],
    ["500 mV/(in/s)", "0.5 in/s pk", "V pk", 0.25],
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
    expect(formatVoltage(probe.voltage(parseAmplitude("0.4 in/s pk at 1800 r/min"), "mV pp"), 4)).toBe("848.8 mV pp");
    expect(probe.unit).toBe("mil");
    expect(Object.isFrozen(probe)).toBe(true);
  });
});

describe("currentLoop", () => {
  const loop = currentLoop("0 to 25.4 mm/s rms");

  it.each([
    [4, 0, "in range"],
    [12, 12.7, "in range"],
    [20, 25.4, "in range"],
    [20.5, 26.19375, "in range"],
    [3.9, 0, "below range"],
    [3.6, 0, "below range"],
    [20.51, 26.19375, "above range"],
    [21, 26.19375, "above range"],
  ])("%d mA reads %d mm/s, %s", (current, value, state) => {
    const reading = loop.reading(current);
    expect(reading.value).toBeCloseTo(value, 12);
    expect(reading.state).toBe(state);
  });

  it("gives the current for a reading in any unit, clipped to what a loop measures", () => {
    expect(loop.current("1 in/s rms")).toEqual({ milliamperes: 20, state: "in range" });
    expect(loop.current("0 mm/s rms").milliamperes).toBe(4);
    expect(loop.current("100 mm/s rms")).toEqual({ milliamperes: 20.5, state: "above range" });
    expect(loop.current("1 g pk at 60 Hz").milliamperes).toBeCloseTo(4 + (16 * 18.394) / 25.4, 3);
  });

  it("has a range that starts above zero, or in another unit", () => {
    const shifted = currentLoop("5 to 25 mm/s rms");
    expect(shifted.reading(4).value).toBe(5);
    expect(shifted.reading(3.7)).toMatchObject({ value: 5, state: "below range" });
    expect(shifted.current("1 mm/s rms")).toEqual({ milliamperes: 3.8, state: "below range" });
    expect(format(currentLoop("0 in/s rms to 25.4 mm/s rms").reading(20))).toBe("25.4 mm/s rms");
    expect(format(currentLoop("0 to 2 in/s pk").reading(12, "mm/s rms"))).toBe("18.0 mm/s rms");
  });

  it("takes the limits of another loop", () => {
    const tight = currentLoop("0 to 10 g pk", { lowFault: 3.9, lowest: 4, highest: 20, highFault: 20.1 });
    expect(() => tight.reading(3.8)).toThrow(expect.objectContaining({ code: "sensor-fault" }));
    expect(tight.current("11 g pk")).toEqual({ milliamperes: 20, state: "above range" });
  });
});
