import { judge, machineNotes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

const motor = "motor 200 kW 1480 r/min";

/** A support told for one direction or point is not that of all. Found in a trial; no source. */
describe("a flexible support beside a direction or a point", () => {
  it.each([
    "axial flexible",
    "horizontal flexible",
    "flexible (axial)",
    "axial support flexible",
    "axial on springs",
    "flexible, axially",
    "flexible DE",
    "NDE flexible",
    "on springs axially",
    "flexible A",
    "A flexible",
    "flexible (A)",
    "flexible, A",
    "on springs A",
    "flexible H rigid V",
    "rigid V, flexible A",
    "axial, flexible",
    "flexible left",
    "flexible at top",
    "natural 10 Hz A",
    "natural 10 Hz DE",
    "flexible at coupling end",
    "flexible at far end",
    "flexible at ODE",
    "flexible at bearing 1",
    "flexible at one bearing",
    "flexible support bearing 2",
    "on springs at bearing 2",
    "flexible mounting at one end",
    "flexible support in 1 direction",
    "flexible 2 of 4 feet",
    "flexible 50 %",
    "flexible, V only",
    "partly flexible",
  ])("is never taken for all: %s", (words) => {
    const line = `${motor} ${words}`;
    let support: string | undefined;
    try {
      support = judge("2 mm/s rms", line).machineClass.support as string;
    } catch {
      expect(["syntax", "out-of-range"]).toContain(refusalOf(() => parseMachine(line)).code);
      return;
    }
    expect(support).toBe("rigid");
  });

  it.each([
    "spring mounted piping",
    "spring-mounted piping",
    "resiliently mounted silencer",
    "flexibly supported ducts",
  ])("is not said by a thing that is mounted so: %s", (words) => {
    const line = `${motor}, ${words}`;
    expect(parseMachine(line)).not.toHaveProperty("support");
    expect(machineNotes(line).notUnderstood).not.toEqual([]);
  });

  it.each([
    "vertical pump 90 kW, flexible",
    "flexible axial fan 400 kW",
    "axial fan 400 kW flexible",
    "spring mounted fan 90 kW",
    "fan 90 kW spring mounted",
    "fan spring mounted 90 kW",
    "fan spring mounted, 90 kW",
    "motor on springs, vertical induction motor",
    "a motor 90 kW, flexible",
    "left fan 90 kW flexible",
  ])("of the whole machine is taken: %s", (line) => expect(parseMachine(line).support).toBe("flexible"));
});
