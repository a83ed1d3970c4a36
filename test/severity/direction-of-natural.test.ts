import { VeladisError } from "veladis";
import { judge, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("a natural frequency of one direction", () => {
  it.each([
    "motor 200 kW 1480 r/min natural 18 Hz horizontally",
    "motor 200 kW 1480 r/min natural frequency 18 Hz horizontal",
    "motor 200 kW 1480 r/min horizontal natural frequency 18 Hz",
    "motor 200 kW 1480 r/min, axial natural 18 Hz",
  ])("is not taken for all of them: %s", (line) => {
    expect(() => judge("DE-V 4.2 mm/s rms", line)).toThrow(VeladisError);
    expect(() => parseMachine(line)).toThrow("give each direction a judgement of its own");
  });

  it.each([
    "vertical pump, 90 kW, 1480 r/min, natural 65 Hz",
    "motor 200 kW 1480 r/min natural 18 Hz, shaft horizontal",
  ])("is not meant by the direction of a shaft: %s", (line) => {
    expect(parseMachine(line).naturalFrequency).toBeDefined();
  });
});
