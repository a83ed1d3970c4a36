import { judge, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

/** The apparent power of a motor is what it takes in, and more than its shaft gives. Found in a trial; no source. */
describe("kVA", () => {
  it.each([
    "motor 430 kVA cos phi 0.7 1480 r/min",
    "motor 430 kVA",
    "pump 250 kVA 2980 r/min category II",
    "fan 4.2 kVA HVAC rigid",
    "compressor 2 MVA",
    "chiller 500 kVA",
  ])("of a machine that generates nothing is refused: %s", (line) => {
    const { code, expected } = refusalOf(() => judge("2 mm/s rms", line));
    expect([code, expected]).toEqual(["missing-fact", "the shaft power in kW; kVA is what the motor takes in"]);
  });

  it.each(["generator 500 kVA", "genset 500 kVA", "steam turbine generating set 5 MVA", "hydro set 5 MVA"])(
    "of a generator or a set is taken: %s",
    (line) => expect(parseMachine(line).power).toBeDefined(),
  );

  it("beside the rated power is no power: that is taken", () => {
    expect(parseMachine("motor 400 kW 500 kVA").power).toBe("400 kW");
  });

  it("as data says that words take it", () => {
    const { expected } = refusalOf(() => judge("2 mm/s rms", { type: "generator", power: "500 kVA" as "500 kW" }));
    expect(expected).toContain("in words");
  });
});

/** ISO 20816-8 has a table of its own for vertical compressors (from memory). */
describe("a reciprocating compressor that is no horizontal one", () => {
  it.each([
    "vertical reciprocating compressor 300 kW 740 r/min part frame",
    "reciprocating compressor, vertical, 300 kW 740 r/min part frame",
    "W-type reciprocating compressor 300 kW 740 r/min part frame",
    "V type reciprocating compressor 300 kW 740 r/min part frame",
    "reciprocating compressor L-type 300 kW 740 r/min part frame",
  ])("is refused: %s", (line) => {
    expect(refusalOf(() => judge("9 mm/s rms", line)).message).toContain("horizontal reciprocating compressor");
  });

  it.each([
    "horizontal reciprocating compressor 300 kW 740 r/min part frame",
    "reciprocating compressor 300 kW 740 r/min part frame, direction vertical",
    "reciprocating compressor 300 kW 740 r/min part frame, read vertically",
  ])("but not by the direction of a reading: %s", (line) => {
    expect(parseMachine(line).type).toBe("reciprocating compressor");
  });
});
