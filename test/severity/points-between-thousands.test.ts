import { describe, expect, it } from "vitest";
import { parseMachine } from "../../src/entries/severity";
import { refusalOf } from "../refusals/refusal-of";

/** A point parts thousands in half of Europe, and decimals in the other half. Common practice, no source. */
describe("a number whose point may stand between thousands", () => {
  it.each([
    ["fan 1.000 kW 1480 r/min", '"1000 kW", or "1 kW"'],
    ["fan 2.250 kW 1480 r/min", '"2250 kW", or "2.25 kW"'],
    ["fan 1.125 kW 1480 r/min", '"1125 kW", or "1.1250 kW"'],
    ["fan 90 kW 1.480 r/min", '"1480 r/min", or "1.48 r/min"'],
    ["fan 900 to 1.200 kW 1480 r/min", '"1200 kW", or "1.2 kW"'],
  ])("is refused: %s", (line, readings) => {
    const { code, message } = refusalOf(() => parseMachine(line));
    expect(code).toBe("not-a-number");
    expect(message).toContain(readings);
    // what the refusal offers is read
    for (const [, reading = ""] of readings.matchAll(/"(.*?)"/g)) {
      const written = line.replace(/[\d.]*\.\d{3} (kW|r\/min)/, reading);
      if (!line.includes(" to ")) expect(() => parseMachine(written)).not.toThrow();
    }
  });

  it("and is read where it cannot", () => {
    expect(parseMachine("fan 0.750 kW").power).toBe("0.750 kW");
    expect(() => parseMachine("fan 7.5 kW 1480 r/min")).not.toThrow();
    expect(() => parseMachine("fan 1000.250 kW")).not.toThrow();
  });
});
