import fc from "fast-check";
import { builtInSchemes, parseMachine, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { labelKey } from "../../src/severity/label";
import { type LabelName, labelled, wordLabels } from "../../src/severity/machine-words";
import { domain } from "../../src/severity/verdict";

const labels: readonly (readonly [LabelName, readonly string[]])[] = labelled.map((fact) => [
  fact,
  [...new Set((builtInSchemes as readonly Scheme[]).flatMap((scheme) => domain(scheme, fact).texts))],
]);

const isNumeral = (label: string) => /^(?:BV-)?(?:\d+|[IVX]+)$/.test(label);
const isKnown = (fact: LabelName, label: string) =>
  new RegExp(`^(?:${wordLabels[fact].join("|")})\\b`, "i").test(label);

describe("a label with two values", () => {
  it.each([
    "pump 90 kW 2980 r/min category II / I",
    "pump 90 kW 2980 r/min category II/I",
    "pump 90 kW 2980 r/min category II, I",
    "pump 90 kW 2980 r/min category II (I)",
    "pump 90 kW 2980 r/min category II I rigid",
    "pump 90 kW 2980 r/min cat. II/I",
    "fan 132 kW BV-3/BV-4",
    "fan 132 kW BV-3/4",
    "fan 132 kW BV-3 and 4",
    "motor group 1 / 2",
    "motor group 1-2",
    "motor class III, II",
    "motor class III to II",
    "gear drive grade A & B",
    "reciprocating compressor part cylinder rod, frame",
    "wind turbine part gearbox, generator",
    "motor mounting free/rigid",
  ])("%s is refused", (line) => {
    expect(() => parseMachine(line)).toThrow(/give one/);
  });

  it("names both", () => {
    expect(() => parseMachine("pump category II / I")).toThrow('"category II" or "category I": give one');
    expect(() => parseMachine("pump 90 kW (nominal 300)")).toThrow('"90 kW" or "300" with its unit: give one');
    for (const line of ["pump 90 kW (300)", "pump 90 kW / 300", "pump 90 kW, rated 300", "pump 2980 r/min (1480)"])
      expect(() => parseMachine(line), line).toThrow(/give one/);
  });

  it("is none where a fact, the same value, or another thing follows", () => {
    for (const [line, fact, value] of [
      ["pump category II, 2 pole", "category", "II"],
      ["pump category II / 2980 r/min", "category", "II"],
      ["pump category II (2)", "category", "II"],
      ["pump category II to ISO 10816-7", "category", "II"],
      ["motor group 2, 400 V, 3 ph", "group", "2"],
      ["pump category II, 1 of 2", "category", "II"],
      ["motor 1485 r/min mounting free, rigid", "mounting", "free"],
      ["fan BV-3 - V-belt", "category", "BV-3"],
      ["grade B, a motor", "grade", "B"],
      ["wind turbine part nacelle and tower", "part", "nacelle and tower"],
      ['own type, part "a/b", c', "part", "a/b"],
      ["compressor 90 kW (2 off)", "power", "90 kW"],
    ] as const) {
      expect(parseMachine(line)[fact], line).toBe(value);
    }
  });

  it("the words of all schemes are known", () => {
    for (const [fact, all] of labels) {
      for (const label of all) {
        expect(isNumeral(label) || /^[A-Z]$/.test(label) || isKnown(fact, label), `${fact} ${label}`).toBe(true);
      }
    }
  });

  it("is refused whatever parts the two and in whatever order", () => {
    const separators = [" / ", "/", ", ", " and ", " & ", " or ", " to ", "; ", " (", "|", " - "];
    const some = fc
      .constantFrom(...labels.filter(([, all]) => all.length > 1))
      .chain(([fact, all]) =>
        fc.tuple(fc.constant(fact), fc.shuffledSubarray([...all], { minLength: 2, maxLength: 2 })),
      );
    fc.assert(
      fc.property(some, fc.constantFrom(...separators), ([fact, [one = "", other = ""]], between) => {
        fc.pre(labelKey(one) !== labelKey(other) && isNumeral(one) === isNumeral(other));
        // rigid behind a comma is the support
        fc.pre(!(fact === "mounting" && other === "rigid" && /^[,; (-]*$/.test(between.replace("-", "/"))));
        expect(() => parseMachine(`${fact} ${one}${between}${other}`), `${fact} ${one}${between}${other}`).toThrow();
      }),
      { numRuns: 3000 },
    );
  });
});
