import fc from "fast-check";
import {
  classify,
  defineMachineKind,
  judge,
  limitsFor,
  machineTypes,
  parseMachine,
  selectSchemes,
  severityToolkit,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

const source = { title: "Hollowmere site rule 9, invented", provenance: "memory" } as const;
const mill = { name: "pellet mill", also: ["Pelletiser"], judgedAs: "gear drive", source } as const;
const kit = severityToolkit({ machineKinds: [mill] });

const withoutFacts = (answer: object) => ({ ...answer, assumedFacts: undefined, judgements: undefined });
const outcome = (act: () => object) => {
  try {
    return withoutFacts(act());
  } catch (error) {
    return refusalOf(() => {
      throw error;
    }).code;
  }
};

describe("a kind of machine of one's own", () => {
  it("is judged as the kind that it names, in words and as data, whatever is known besides", () => {
    const kinds = Object.keys(machineTypes) as (keyof typeof machineTypes)[];
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.integer({ min: 1, max: 200 }),
        fc.constantFrom("", " rigid", " on springs"),
        fc.constantFrom("", " 90 kW", " 400 kW"),
        fc.constantFrom("", " 1480 r/min"),
        (judgedAs, tenths, ...said) => {
          const own = severityToolkit({ machineKinds: [{ ...mill, judgedAs }] });
          const facts = said.join("");
          const reading = `${tenths / 10} mm/s rms`;
          const wanted = outcome(() => judge(reading, `${judgedAs}${facts}`));
          expect(outcome(() => own.judge(reading, `Pellet-Mill${facts}`))).toEqual(wanted);
          const data = { ...parseMachine(facts.trim() || "rigid"), type: "pelletiser" as "pellet mill" };
          expect(outcome(() => own.judge(reading, data))).toEqual(
            outcome(() => judge(reading, { ...data, type: judgedAs })),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  it("is named first among what was taken", () => {
    const told = 'type gear drive: for "pellet mill", a kind of your own (Hollowmere site rule 9, invented)';
    expect(kit.judge("2 mm/s rms", "pellet mill 160 kW 1480 r/min").assumedFacts[0]).toBe(told);
    expect(kit.parseMachine("160 kW pelletiser").assumedFacts).toEqual([told]);
    expect(kit.parseMachine("pump 90 kW")).toEqual(parseMachine("pump 90 kW"));
    expect(() => judge("2 mm/s rms", "pellet mill 160 kW")).toThrow();
  });

  it("is judged by the schemes that it names, unless others are given", () => {
    const schemes = ["iso-10816-3-2009"] as const;
    const own = severityToolkit({ machineKinds: [{ ...mill, judgedAs: "fan", schemes }] });
    const line = "400 kW 1480 r/min rigid";
    const wanted = judge("3 mm/s rms", `fan ${line}`, { schemes });
    expect(own.judge("3 mm/s rms", `pellet mill ${line}`).judgements.map(({ scheme }) => scheme)).toEqual(schemes);
    expect(own.judge("3 mm/s rms", `pellet mill ${line}`).zone).toBe(wanted.zone);
    const others = { schemes: ["iso-20816-3-2022"] } as const;
    expect(own.judge("3 mm/s rms", `pellet mill ${line}`, others).scheme).toBe("iso-20816-3-2022");
  });

  it("is known to classify, limitsFor and selectSchemes", () => {
    const own = severityToolkit({ machineKinds: [{ ...mill, judgedAs: "fan" }] });
    const [scheme, line] = ["iso-10816-3-2009", "400 kW 1480 r/min rigid"] as const;
    const machine = { type: "pellet mill", power: "400 kW", support: "rigid" } as const;
    expect(own.classify("3 mm/s rms", { scheme, machine }).zone).toBe(
      classify("3 mm/s rms", { scheme, machine: { ...machine, type: "fan" } }).zone,
    );
    expect(own.limitsFor({ scheme, machine: `pellet mill ${line}` })[0]?.limits).toEqual(
      limitsFor({ scheme, machine: `fan ${line}` })[0]?.limits,
    );
    const ids = (selection: ReturnType<typeof selectSchemes>) => selection.candidates.map((one) => one.scheme);
    expect(ids(own.selectSchemes(`pellet mill ${line}`))).toEqual(ids(selectSchemes(`fan ${line}`)));
  });

  it("keeps the facts that hold for every machine of it, and refuses their contrary", () => {
    const own = severityToolkit({ machineKinds: [{ ...mill, facts: { support: "rigid" } }] });
    expect(own.parseMachine("pellet mill 160 kW").support).toBe("rigid");
    expect(own.parseMachine("pellet mill 160 kW rigid").support).toBe("rigid");
    const refused = refusalOf(() => own.parseMachine("pellet mill 160 kW on springs"));
    expect([refused.code, refused.parameter, refused.fact]).toEqual(["out-of-range", "machine", "support"]);
  });

  it("stays a word within quotation marks and within another word", () => {
    expect(kit.parseMachine('fan 90 kW part "pellet mill"').type).toBe("fan");
    expect(kit.parseMachine("fan 90 kW, pelletisers").type).toBe("fan");
  });

  it.each([
    ["a built-in name", { name: "pump" }, "out-of-range", "name"],
    ["a built-in spelling", { name: "Boiler-Feed Pump" }, "out-of-range", "name"],
    ["a part of a built-in name", { name: "roots" }, "out-of-range", "name"],
    ["another name that is built in", { also: ["gearbox"] }, "out-of-range", "also"],
    ["a name with a fact in it", { name: "rigid press" }, "out-of-range", "name"],
    ["one name twice", { also: ["Pellet-mill"] }, "out-of-range", "also"],
    ["digits", { name: "mill 2" }, "syntax", "name"],
    ["a kind there is none of", { judgedAs: "gear driv" }, "unknown-option", "judgedAs"],
    ["nothing that it is judged as", { judgedAs: undefined }, "missing-option", "judgedAs"],
    ["a type among its facts", { facts: { type: "pump" } }, "unknown-option", "facts"],
  ])("is refused with %s", (_, changed, code, option) => {
    const refused = refusalOf(() => defineMachineKind({ ...mill, ...changed } as never));
    expect([refused.code, refused.parameter, refused.option]).toEqual([code, "kind", option]);
  });

  it("two kinds of one name make no toolkit, and a line with two kinds is refused", () => {
    const twice = refusalOf(() => severityToolkit({ machineKinds: [mill, mill] }));
    expect([twice.code, twice.parameter, twice.option]).toEqual(["out-of-range", "parts", "machineKinds"]);
    const two = severityToolkit({ machineKinds: [mill, { ...mill, name: "shredder", also: [] }] });
    expect(refusalOf(() => two.parseMachine("pellet mill shredder 90 kW")).fact).toBe("type");
    expect(refusalOf(() => two.parseMachine("pellet mill pump 90 kW")).code).toBe("syntax");
  });
});
