import { judge, machineNotes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("a fact behind a word that is not understood", () => {
  it.each([
    ["fan 400 kW 1480 r/min beside flexible", "support", "flexible"],
    ["fan 400 kW 1480 r/min isolated from flexible", "support", "flexible"],
    ["fan 400 kW 1480 r/min isolated from the springs", "support", "springs"],
    ["fan 3 kW beside HVAC", "application", "HVAC"],
    ["pump 90 kW 2980 r/min other category II", "category", "category II"],
    ["fan 400 kW beside rigid category BV-3", "category", "category BV-3"],
  ])("%s is not taken, and named", (line, fact, words) => {
    expect(parseMachine(line)).not.toHaveProperty(fact);
    expect(machineNotes(line).notUnderstood.map(({ word }) => word)).toContain(words);
  });

  it("makes no verdict milder than without it", () => {
    const machine = "fan 400 kW 1480 r/min";
    for (const words of ["beside flexible", "isolated from flexible"])
      expect(judge("5 mm/s rms", `${machine} ${words}`).worst).toBe(judge("5 mm/s rms", machine).worst);
    expect(judge("5 mm/s rms", `${machine} flexible`).worst).not.toBe(judge("5 mm/s rms", machine).worst);
  });

  it("is taken behind a comma, a number, a kind of machine or a tag", () => {
    for (const line of [
      "fan Acme, flexible",
      "fan Acme 400 kW flexible",
      "horizontal fan flexible",
      "fan K-12 flexible",
    ])
      expect(parseMachine(line).support, line).toBe("flexible");
  });

  it("that contradicts another is refused, and so is new", () => {
    expect(() => parseMachine("fan flexible, beside rigid")).toThrow("one support in the description");
    expect(() => parseMachine("fan Acme new")).toThrow('"Acme, new" where the machine is new');
  });
});
