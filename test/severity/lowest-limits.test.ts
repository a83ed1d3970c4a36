import { type Criterion, classify, type MachineClass, type Scheme, selectSchemes } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { bySupport, siteRule, zonesIn } from "./own-scheme";

/** The support taken for a machine that does not say its own: of one class, of both for the lowest of each limit. */
function assumed(classes: readonly MachineClass[], parts: Partial<Scheme> = {}): unknown {
  const [candidate] = selectSchemes("fan 90 kW 2980 r/min", [siteRule("12", { ...parts, classes })]).candidates;
  return candidate?.machineClass?.support;
}

const velocity = (low: number, high: number): Criterion => zonesIn("mm/s rms", { "A/B": low, "B/C": high });
const displacement = (low: number, high: number): Criterion => zonesIn("um pp", { "A/B": low, "B/C": high });
const byLaw = (rootOf: number): Criterion => zonesIn("um pp", { "A/B": { rootOf }, "B/C": { rootOf: 4 * rootOf } });

const both = ["rigid", "flexible"];

describe("the lowest limits stand in for a fact not given", () => {
  // biome-ignore format: a row of a table is a line
  const comparisons: [what: string, rigid: Criterion[], flexible: Criterion[], support: string | string[] | undefined][] = [
    ["where every limit is lower", [velocity(1, 2)], [velocity(2, 4)], "rigid"],
    ["whichever class they are of", [velocity(2, 4)], [velocity(1, 2)], "flexible"],
    ["where none is higher", [velocity(1, 4)], [velocity(1, 2)], "flexible"],
    ["the first class's where all are alike", [velocity(1, 2)], [velocity(1, 2)], "rigid"],
    ["of both where one is higher and one lower", [velocity(1, 4)], [velocity(2, 3)], both],
    ["in every quantity", [velocity(1, 2), displacement(10, 20)], [velocity(2, 4), displacement(20, 40)], "rigid"],
    ["of both where they are lower in one quantity only", [velocity(1, 2), displacement(20, 40)], [velocity(2, 4), displacement(10, 20)], both],
    ["of both where one class limits a quantity more", [velocity(1, 2)], [velocity(2, 4), displacement(20, 40)], both],
    ["of both where the classes limit different quantities", [velocity(1, 2)], [displacement(20, 40)], both],
    ["of both where one class has a limit more", [velocity(1, 2)], [zonesIn("mm/s rms", { "A/B": 2, "B/C": 4, "C/D": 8 })], both],
    ["of both where the classes have limits of other names", [velocity(3, 4)], [zonesIn("mm/s rms", { "B/C": 3.5, "C/D": 9 })], both],
    ["in whatever order they are written", [zonesIn("mm/s rms", { "B/C": 4, "A/B": 1 })], [velocity(2, 5)], "rigid"],
    ["where both classes leave the first one open", [zonesIn("mm/s rms", { "A/B": null, "B/C": 2 })], [zonesIn("mm/s rms", { "A/B": null, "B/C": 4 })], "rigid"],
    ["of both where one class leaves one open", [zonesIn("mm/s rms", { "A/B": null, "B/C": 2 })], [velocity(2, 4)], both],
    ["where both fall with speed", [byLaw(9000)], [byLaw(12000)], "rigid"],
    ["not where one falls with speed", [displacement(1, 2)], [byLaw(12000)], undefined],
    ["not where the other falls with speed", [byLaw(12000)], [displacement(1, 2)], undefined],
  ];

  it.each(comparisons)("%s", (_, rigid, flexible, support) => {
    expect(assumed(bySupport(rigid, flexible))).toEqual(support);
  });

  it("limits that the standard leaves open in both classes are not compared", () => {
    const limits = (startUp: number, alarm: number): Criterion => ({
      ...velocity(1, 2),
      limits: { "start-up": startUp, alarm, shutdown: null },
    });
    expect(assumed(bySupport([limits(1, 2)], [limits(2, 4)]), { kind: "operation" })).toBe("rigid");
  });

  it("never for a fact that the table always asks for, whatever else is missing", () => {
    const classes = ["I", "II"].flatMap((category, i) =>
      bySupport([velocity(i + 1, i + 4)], [velocity(i + 2, i + 5)]).map(({ when, criteria }) => ({
        when: { category, ...when },
        criteria,
      })),
    );
    expect(assumed(classes)).toBe("rigid");
    expect(assumed(classes, { ask: ["category"] })).toBeUndefined();
  });

  it("a built-in table of fans takes the lowest category and support, and asks for them", () => {
    const { candidates } = selectSchemes("fan 90 kW, in service, housing");
    expect(candidates[0]).toMatchObject({
      scheme: "iso-14694-2003",
      status: "assumes",
      machineClass: { category: "BV-5", support: "rigid" },
    });
    expect(candidates[0]?.missing.map(({ fact }) => fact)).toEqual(["category", "support"]);
  });
});

describe("the class of a machine", () => {
  const classes: MachineClass[] = [
    { named: { class: "main" }, by: { power: { above: 100 } }, criteria: [velocity(2, 4)] },
    { named: { class: "auxiliary" }, by: { power: { to: 100 } }, criteria: [velocity(1, 2)] },
  ];

  it("is told by its labels, and by the facts that decide where it has none", () => {
    const told = (machine: string, own: readonly MachineClass[]) =>
      classify("1 mm/s rms", { scheme: siteRule("12", { classes: own }), machine }).machineClass;
    expect(told("class main", classes)).toEqual({ class: "main" });
    expect(told("90 kW", classes)).toEqual({ class: "auxiliary" });
    const unnamed = classes.map(({ by, criteria }) => ({ by, criteria }));
    expect(told("90 kW", unnamed as MachineClass[])).toEqual({ power: { to: 100 } });
    const rigid = classes.map((one) => ({ ...one, when: { support: "rigid" } }));
    expect(told("90 kW rigid", rigid)).toEqual({ class: "auxiliary", support: "rigid" });
  });
});
