import fc from "fast-check";
import { convertAmplitude, format } from "veladis";
import { explain } from "veladis/explain";
import { currentLoop, isSignal, sensor, signalReading } from "veladis/sensor";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

describe("a signal as a reading", () => {
  // biome-ignore format: a row of a table is a line
  it.each<[signal: string, source: { sensor?: string; loop?: string } | undefined, reading: string]>([
    // a sensor of 100 mV/g gives 100 mV for 1 g: what its sensitivity means
    ["98 mV pk by 100 mV/g", undefined, "0.980 g pk"],
    ["0.098 V pk by 100 mV/g", undefined, "0.980 g pk"],
    ["70.71 mV rms", { sensor: "100 mV/g" }, "0.707 g rms"],
    ["1.5 V pp by 200 mV/mil", undefined, "7.50 mil pp"],
    // 4 mA is the start of the range and 20 mA its end: IEC 60381-1, from memory
    ["12 mA of 0 to 25.4 mm/s rms", undefined, "12.7 mm/s rms"],
    ["8 mA", { loop: "0 to 1 in/s pk" }, "0.250 in/s pk"],
    ["50 % of 0 to 1 in/s pk", undefined, "0.500 in/s pk"],
    ["25 percent", { loop: "0 to 20 mm/s rms" }, "5.00 mm/s rms"],
    ["0% of 0 to 20 mm/s rms", undefined, "0 mm/s rms"],
  ])("%s", (signal, source, reading) => {
    expect(isSignal(signal)).toBe(true);
    expect(format(signalReading(signal, source))).toBe(reading);
  });

  it("keeps the frequency, and converts by it", () => {
    const reading = signalReading("98 mV pk by 100 mV/g at 80 Hz");
    expect(reading.hertz).toBe(80);
    // 0.98 g x 9.80665 m/s2 / (2 pi 80 Hz), in inches
    const velocity = (0.98 * 9.80665) / (2 * Math.PI * 80) / 0.0254;
    expect(convertAmplitude(reading, "in/s pk").value).toBeCloseTo(velocity, 12);
    expect(signalReading("12 mA of 0 to 1 in/s pk @ 1500 r/min").hertz).toBe(25);
  });

  it("is the same as by the sensor and the loop themselves", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1000, noNaN: true }),
        fc.double({ min: 4, max: 20, noNaN: true }),
        (mv, ma) => {
          expect(signalReading(`${mv} mV rms by 10.2 mV/(m/s2)`).value).toBe(
            sensor("10.2 mV/(m/s2)").reading(`${mv} mV rms`, "m/s2 rms").value,
          );
          expect(signalReading(`${ma} mA of 0 to 50 mm/s rms`).value).toBe(
            currentLoop("0 to 50 mm/s rms").reading(ma).value,
          );
        },
      ),
    );
  });

  it("says of a share how it became the reading", () => {
    expect(explain(signalReading("50 % of 0 to 1 in/s pk")).text).toMatch(
      /^50 %\n50 % x 0\.16 = 8 mA .*\n8 mA \+ 4 = 12 mA\n12 mA /,
    );
  });

  it("keeps the state of a loop, and refuses a failed one", () => {
    expect(signalReading("3.8 mA of 0 to 1 in/s pk").state).toBe("below range");
    expect(signalReading("103 % of 0 to 1 in/s pk").state).toBe("in range");
    expect(signalReading("104 % of 0 to 1 in/s pk").state).toBe("above range");
    expect(refusalOf(() => signalReading("3.5 mA of 0 to 1 in/s pk")).code).toBe("sensor-fault");
  });

  // biome-ignore format: a row of a table is a line
  it.each<[signal: string, source: object | undefined, code: string]>([
    ["98 mV pk", undefined, "missing-option"],
    ["12 mA", undefined, "missing-option"],
    ["12 mA", { sensor: "100 mV/g" }, "missing-option"],
    ["98 mV pk by 100 mV/g", { sensor: "500 mV/(in/s)" }, "out-of-range"],
    ["98 mV by 100 mV/g", undefined, "syntax"],
    ["98 mV pk of 100 mV/g", undefined, "syntax"],
    ["12 mA by 0 to 1 in/s pk", undefined, "syntax"],
    ["12 mA rms of 0 to 1 in/s pk", undefined, "syntax"],
    ["12 mA of 100 mV/g", undefined, "syntax"],
    ["-98 mV pk by 100 mV/g", undefined, "negative"],
    ["98 ± 2 mV pk by 100 mV/g", undefined, "syntax"],
    ["4.9 mm/s rms", undefined, "syntax"],
    ["98 mV pk", { sensr: "100 mV/g" }, "unknown-option"],
  ])("%s %o is refused: %s", (signal, source, code) => {
    expect(refusalOf(() => signalReading(signal, source)).code).toBe(code);
  });

  it.each(["4.9 mm/s rms", "0.2 in/s pk", "4.9 m/s rms", "5 % higher", "1 mAh", "3 Vx", "mV", "12 mil pp"])(
    "%s is no signal",
    (text) => expect(isSignal(text)).toBe(false),
  );
});
