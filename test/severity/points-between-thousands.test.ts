import { describe, expect, it } from "vitest";
import { parseMachine } from "../../src/entries/severity";
import { refusalOf } from "../refusals/refusal-of";

/** A point parts thousands in half of Europe, and decimals in the other half. Common practice, no source. */
describe("a number whose point may stand between thousands", () => {
  it.each([
    ["fan 1.000 kW 1480 r/min", '"1000 kW", or "1 kW"'],
    ["fan 2.250 kW 1480 r/min", '"2250 kW", or "2.25 kW"'],
    ["fan 1.125 kW 1480 r/min", '"1125 kW", or "1.1250 kW"'],
    ["fan 90 kW 1.480 r/min", '"1480 r/min", received'],
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

  it.each([
    ["pump 1,000 kW", '"1000 kW", or "1 kW", received'],
    ["pump 1,480 kW", '"1480 kW", or "1.48 kW", received'],
    ["pump 1,485 kW", '"1485 kW", or "1.4850 kW", received'],
    ["pump 90 kW 1.485 rpm", '"1485 r/min", received'],
    ["pump 1,234,567 W", '"1234567 W", received'],
  ])("offers only what is read: %s", (line, says) => {
    const { message } = refusalOf(() => parseMachine(line));
    expect(message).toContain(`read one way: ${says}`);
    for (const [, reading = ""] of says.matchAll(/"(.*?)"/g)) {
      expect(() => parseMachine(`pump ${reading}`), reading).not.toThrow();
    }
  });

  it("and is read where a space cannot part two numbers", () => {
    expect(parseMachine("pump 1 000 kW").power).toBe("1000 kW");
    expect(parseMachine("pump 1\u2009480 kW").power).toBe("1480 kW");
  });

  it("and is read where it cannot", () => {
    expect(parseMachine("fan 0.750 kW").power).toBe("0.750 kW");
    expect(() => parseMachine("fan 7.5 kW 1480 r/min")).not.toThrow();
    expect(() => parseMachine("fan 1000.250 kW")).not.toThrow();
  });
});
