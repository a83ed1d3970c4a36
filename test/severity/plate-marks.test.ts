import { judge, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";

describe("marks of a nameplate", () => {
  it.each([
    ["motor 90 kW/2980 r/min", { power: "90 kW", speed: { hertz: 2980 / 60 } }],
    ["motor 2980 r/min / 90 kW", { power: "90 kW", speed: { hertz: 2980 / 60 } }],
    ["motor 90 kW S/N 4711 2980 r/min", { power: "90 kW", speed: { hertz: 2980 / 60 } }],
    ["motor serial no. 4711, 90 kW", { power: "90 kW" }],
    ["motor 3~ 90 kW", { power: "90 kW" }],
    ["motor 90 kW class F", { power: "90 kW" }],
    ["motor 90 kW rigid ISO 10816-3", { power: "90 kW", support: "rigid" }],
    ["motor 90 kW flexible DIN EN 10816-3:2009", { power: "90 kW", support: "flexible" }],
    ["diesel generating set 500 kW point on generator", { part: "generator" }],
    ["diesel generating set 500 kW, reading at the engine", { part: "engine" }],
    ["fan 4 kW rigid/rigid", {}],
  ])("%s", (line, facts) => {
    expect(parseMachine(line)).toMatchObject(facts);
    expect(parseMachine(line)).not.toHaveProperty("class");
  });

  it("what says no fact is named", () => {
    const words = (line: string) => parseMachine(line).notUnderstood?.map(({ word }) => word);
    expect(words("motor 3~ 90 kW class F, S/N 4711, rigid ISO 10816-3")).toEqual([
      "3~",
      "class F",
      "S/N 4711",
      "ISO 10816-3",
    ]);
  });

  it.each([
    ["pump 2x45 kW", '"45 kW" where it is one of 2, "90 kW" where they are one'],
    ["pump 2 x 45 kW", '"45 kW" where it is one of 2, "90 kW" where they are one'],
    ["motor 90 kW rigid/flexible", 'one support, "rigid" or "flexible"'],
    ["motor 90 kW flexible / rigid", 'one support, "flexible" or "rigid"'],
    ["motor 90 kW/75 kW", "one power"],
    ["motor 1480/980 r/min", '"1480 r/min" or "980 r/min": give one'],
    ["motor 90 kW 50 Hz / 60 Hz", "one line frequency"],
    ["motor 3~90 kW", "facts of a machine said plainly"],
    ["motor ~90 kW", "facts of a machine said plainly"],
  ])("%s is refused, with how to write it", (line, expected) => {
    expect(() => parseMachine(line)).toThrow(expected);
  });

  it("a kind behind a word that is not understood is told how to write", () => {
    expect(() => judge("4 mm/s rms", "roof exhaust fan 4 kW")).toThrow(
      'write "exhaust fan, roof" if "roof exhaust fan"',
    );
    expect(parseMachine("exhaust fan, roof, 4 kW").type).toBe("fan");
  });

  it("limits that fall with a speed nobody gave say that it is missing", () => {
    const cautions = (line: string) => judge("80 um pp", line).cautions.join();
    expect(cautions("motor shaft")).toMatch(/the running speed is missing, and decides/);
    expect(cautions("motor, shaft, 2980 r/min")).not.toMatch(/missing/);
  });
});
