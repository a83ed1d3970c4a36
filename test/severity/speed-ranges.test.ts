import { judge, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

/** The synchronous speed is 120 f / p (IEC 60034-1, from memory). Found in a trial; no other source. */
describe("poles and a range", () => {
  it.each([
    ["fan 400 kW 16-pole 25 to 50 Hz flexible", "187.5 to 375 r/min"],
    ["fan 400 kW 25 to 50 Hz 16 poles", "187.5 to 375 r/min"],
    ["motor 132 kW 4-pole 20 to 60 Hz", "600 to 1800 r/min"],
  ])("of the line's frequency: the shaft's speed is asked for: %s", (line, range) => {
    const { code, expected } = refusalOf(() => parseMachine(line));
    expect(code).toBe("syntax");
    expect(expected).toContain(range);
  });

  it.each([
    "motor 132 kW 20 to 60 Hz",
    "motor 20 Hz to 60 Hz 132 kW",
    "generator 2 MW 25 to 50 Hz",
    "motor 132 kW 16-pole, mains 25 to 50 Hz",
  ])("a range of line frequency is no shaft speed: %s", (line) => {
    const { code, expected } = refusalOf(() => judge("2 mm/s rms", line));
    expect([code, expected.includes("r/min")]).toEqual(["syntax", true]);
  });

  it.each(["12-pole 1200 to 3600 r/min", "motor 4-pole 50 Hz 600 to 1800 r/min", "2-pole 3000 to 4500 rpm"])(
    "of speeds that the poles never reach is refused: %s",
    (line) => expect(refusalOf(() => parseMachine(line)).code).toBe("out-of-range"),
  );

  it.each([
    ["motor 4-pole 600 to 1800 r/min", { from: { hertz: 10 }, to: { hertz: 30 } }],
    ["fan 400 kW 20 to 25 Hz", { from: { hertz: 20 }, to: { hertz: 25 } }],
    ["motor 4-pole 50 Hz 1480 r/min", { hertz: 1480 / 60 }],
    ["motor 4-pole 50 to 60 Hz", { from: { hertz: 25 }, to: { hertz: 30 } }],
  ])("that it can be is taken: %s", (line, speed) => {
    expect(parseMachine(line).speed).toEqual(speed);
  });
});
