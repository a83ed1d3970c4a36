import { type MachineClass, type Scheme, schemeById } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { type MachineRef, machineFacts } from "../../src/severity/machine-facts";
import { matchMachine } from "../../src/severity/match-machine";

const source = { title: "Site rule 12, invented", provenance: "memory" } as const;
const criteria = [{ as: "mm/s rms", limits: { "B/C": 4 }, source }] as const;

/** A table of the invented heating works, with these classes. */
function rule(...classes: Omit<MachineClass, "criteria">[]): Scheme {
  const own = { ...schemeById("iso-10816-3-2009"), machines: undefined, within: undefined, exclusions: undefined };
  const { machines: _, within: __, exclusions: ___, ...rest } = own;
  return { ...rest, id: "rule-12", classes: classes.map((one) => ({ ...one, criteria })) };
}

const asked = (scheme: Scheme, machine: MachineRef) =>
  matchMachine(scheme, machineFacts(machine)).missing.map(({ fact }) => fact);
const taken = (scheme: Scheme, machine: MachineRef) => matchMachine(scheme, machineFacts(machine)).assumed;
const chosen = (scheme: Scheme, machine: MachineRef) => matchMachine(scheme, machineFacts(machine)).chosen?.named;

const large = { power: { above: 300 }, shaftHeight: { from: 315 } };
const small = { power: { to: 300 }, shaftHeight: { below: 315 } };
const bySize = () => rule({ named: { group: "1" }, by: large }, { named: { group: "2" }, by: small });

describe("what is asked of a machine told by power or by shaft height", () => {
  it("is the shaft height of an electrical machine, the power of any other", () => {
    expect(asked(bySize(), "motor")).toEqual(["shaftHeight"]);
    expect(asked(bySize(), "fan")).toEqual(["power"]);
    expect(asked(bySize(), "fan")).toEqual(["power"]);
    expect(asked(bySize(), {})).toEqual(["power"]);
  });

  it("is nothing where one of them is known", () => {
    for (const machine of ["400 kW", "315 mm", "400 kW 315 mm", "motor 400 kW", "motor 315 mm", "fan 400 kW"])
      expect([machine, chosen(bySize(), machine)]).toEqual([machine, { group: "1" }]);
  });

  it("is asked also of classes without a name", () => {
    expect(asked(rule({ by: large }, { by: small }), {})).toEqual(["power"]);
  });

  it("is the one that a table has, where it has one only", () => {
    const byPower = rule({ named: { group: "1" }, by: { power: { above: 300 } } });
    const byHeight = rule({ named: { group: "1" }, by: { shaftHeight: { from: 315 } } });
    expect(asked(byPower, "motor 315 mm")).toEqual(["power"]);
    expect(asked(byHeight, "fan 400 kW")).toEqual(["shaftHeight"]);
  });
});

describe("what is asked of a machine that is named", () => {
  it("is the size as well while a part of the name is missing, and then no more", () => {
    const scheme = rule({ named: { group: "1", part: "gear" }, by: { power: { above: 300 } } });
    expect(asked(scheme, "group 1")).toEqual(["power"]);
    expect(asked(scheme, "group 1 part gear")).toEqual([]);
    expect(chosen(scheme, "group 1 part gear")).toEqual({ group: "1", part: "gear" });
  });

  it("is nothing where another part of the name speaks against the class", () => {
    const scheme = rule({ named: { group: "1", part: "gear" }, by: { power: { above: 300 } } });
    expect(matchMachine(scheme, machineFacts("group 2 400 kW"))).toMatchObject({ chosen: undefined, open: [] });
  });

  it("is the fact that a single class needs", () => {
    const scheme = rule({ when: { support: "rigid" } });
    expect(matchMachine(scheme, machineFacts({}))).toMatchObject({
      chosen: undefined,
      missing: [{ fact: "support", allowed: ["rigid"] }],
    });
    expect(asked(scheme, "rigid")).toEqual([]);
  });

  it("is no fact that a class only must not contradict", () => {
    const scheme = rule({ named: { group: "1" }, within: { speed: { to: 3600 } } });
    expect(matchMachine(scheme, machineFacts("group 1"))).toMatchObject({
      chosen: { named: { group: "1" } },
      missing: [],
    });
  });
});

describe("what is assumed of the size", () => {
  const POWER = "power in place of shaft height, which was not given";
  const HEIGHT = "shaft height given: the machine is taken for an electrical one";

  it("is said where the deciding one was not given", () => {
    expect(taken(bySize(), "motor 400 kW")).toEqual([POWER]);
    expect(taken(bySize(), "315 mm")).toEqual([HEIGHT]);
    expect(taken(bySize(), "400 kW 315 mm")).toEqual([HEIGHT]);
  });

  it.each(["motor", "motor 400 kW 315 mm", "motor 315 mm", "fan 400 kW", "400 kW"])("is nothing for %s", (machine) => {
    expect(taken(bySize(), machine)).toEqual([]);
  });

  it("is nothing for no fact at all, for a machine that is named, and for a table that asks one of the two", () => {
    expect(taken(bySize(), {})).toEqual([]);
    expect(taken(bySize(), "group 1 motor 400 kW")).toEqual([]);
    expect(taken(rule({ named: { group: "1" }, by: { power: { above: 300 } } }), "motor 400 kW")).toEqual([]);
    expect(taken(rule({ named: { group: "1" }, by: { shaftHeight: { from: 315 } } }), "315 mm")).toEqual([]);
  });

  it("is said where one of the classes left is told so, and while a part of its name is missing", () => {
    const mounted = rule(
      { when: { mounting: "rigid" }, named: { group: "1" }, by: large },
      { when: { mounting: "resilient" } },
    );
    expect(taken(mounted, "motor 400 kW")).toEqual([POWER]);
    const parts = rule({ named: { group: "1", part: "gear" }, by: large });
    expect(taken(parts, "group 1 motor 400 kW")).toEqual([POWER]);
  });
});

describe("a machine without a place in a table", () => {
  it.each(["motor 90 kW rigid 100 r/min", "motor 90 kW 315 mm group 2 rigid"])(
    "%s: has no class left and nothing is asked",
    (machine) => {
      const match = matchMachine(schemeById("iso-10816-3-2009"), machineFacts(machine));
      expect(match).toMatchObject({ chosen: undefined, open: [], missing: [] });
      expect(match.exclusion?.code).toBe("out-of-range");
    },
  );
});

describe("classes that a machine may share, as no checked table has them", () => {
  it("leave none chosen where it belongs to two", () => {
    const scheme = rule({ named: { group: "1" } }, { named: { group: "1" } });
    expect(matchMachine(scheme, machineFacts("group 1"))).toMatchObject({ chosen: undefined, missing: [] });
  });

  it("ask nothing of the other once one is chosen", () => {
    const scheme = rule({ named: { group: "1" } }, { when: { mounting: "resilient" } });
    expect(matchMachine(scheme, machineFacts("group 1"))).toMatchObject({
      chosen: { named: { group: "1" } },
      missing: [],
    });
  });
});
