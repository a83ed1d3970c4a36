import fc from "fast-check";
import { VeladisError } from "veladis";
import { judge, type Machine, machineNotes, parseMachine, zoneWord } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { machineTypes } from "../../src/severity/machine-types";
import { factWords, kindMarks, noFacts, qualifiers, vagueNames } from "../../src/severity/machine-words";
import { refusalOf } from "../refusals/refusal-of";

/** What a line is read as; the code of the refusal where it is refused. */
function kindOf(line: string): string | undefined {
  try {
    return parseMachine(line).type ?? "none";
  } catch (error) {
    if (error instanceof VeladisError) return error.code;
    throw error;
  }
}

// what the trade calls these machines: common practice, no source
// biome-ignore format: a row of a table is a line
const anyOrder: [line: string, kind: Machine["type"]][] = [
  ["wind turbine generator", "wind turbine"],
  ["compressor, reciprocating", "reciprocating compressor"],
  ["compressor recip", "reciprocating compressor"],
  ["compressor, piston", "reciprocating compressor"],
  ["compressor, screw", "screw compressor"],
  ["air compressor screw", "screw compressor"],
  ["blower, lobe", "lobe blower"],
  ["fan, cooling tower", "cooling tower drive"],
  ["motor for cooling tower fan", "cooling tower drive"],
  ["turbine, steam", "steam turbine"],
];

describe("a word behind a kind of machine", () => {
  it.each(anyOrder)("%s", (line, kind) => {
    expect(kindOf(line)).toBe(kind);
    expect(machineNotes(line).assumedFacts.join()).toMatch(/^type .*: for "/);
  });

  // biome-ignore format: a row of a table is a line
  it.each([
    ["pump turbine", "turbine", "hydro set"],
    ["generator, turbine", "turbine", "gas turbine"],
    ["generator, turbine driven", "turbine", "hydro set"],
    ["generator, gas", "gas", "gas turbine"],
    ["generator engine driven", "engine", "reciprocating generating set"],
    ["fire pump, diesel", "diesel", "reciprocating engine"],
    ["compressor 4 cylinders", "4 cylinders", "reciprocating compressor"],
    ["pump, piston", "piston", "reciprocating compressor"],
    ["pump, vacuum", "vacuum", "screw compressor"],
    ["pump, blower", "blower", "lobe blower"],
    ["motor, wind", "wind", "wind turbine"],
  ])("%s is refused, with the kinds that it may be", (line, word, kind) => {
    const { code, message, didYouMean } = refusalOf(() => parseMachine(line));
    expect(code).toBe("syntax");
    expect(message).toContain(`"${word}" beside `);
    expect(didYouMean).toContain(kind);
  });

  it.each([
    ["generator 5 MW 1500 r/min rigid, driven by gas turbine", "gas turbine"],
    ["generator 2 MW 1500 r/min, diesel driven", "diesel"],
    ["generator, diesel, 2 MW", "diesel"],
    ["generator driven by a diesel", "diesel"],
    ["generator, diesel engine", "diesel engine"],
    ["gas engine driven generator", "gas engine"],
    ["generator hydro", "hydro"],
    ["generator driven by water turbine", "water turbine"],
    ["generator driven by a gas turbine", "gas turbine"],
    ["generator, steam turbine driven", "steam turbine"],
  ])("a generator becomes no milder when its driver is told: %s", (line, driver) => {
    const { code, message } = refusalOf(() => parseMachine(line));
    expect(code).toBe("missing-fact");
    expect(message).toContain(`"generating set driven by ${driver}" for the set`);
    expect(parseMachine(`generating set driven by ${driver}`).type).not.toBe("generator");
  });

  it("is no fact of a driver: what cannot be driven, or cannot drive, is refused", () => {
    for (const line of [
      "motor, gas engine driven",
      "motor driven by diesel engine",
      "fan driven by pump",
      "pump driven",
    ])
      expect(refusalOf(() => parseMachine(line)).code, line).toBe("syntax");
  });

  it("names each kind of which it could make another", () => {
    const marks = kindMarks.flatMap(([words]) => words.map((word) => word.toLowerCase()));
    const neutral = qualifiers.flatMap(([, words]) => words.flatMap((word) => word.toLowerCase().split(/[\s-]/)));
    const kinds = [
      ...Object.keys(machineTypes),
      "turbocompressor",
      "gearbox",
      "alternator",
      "chiller",
      "blower",
      "genset",
    ];
    const single = kinds.filter((name) => !/\s/.test(name));
    // what stands in a name and says nothing alone
    const idle = [
      "unit",
      "set",
      "drive",
      "reducer",
      "speed",
      "machine",
      "generating",
      "gen",
      "jet",
      "tunnel",
      "type",
      "draught",
      "twin",
      "single",
      "cooled",
      "iec",
      "nema",
      "rotary",
      "refrigeration",
    ];
    const names = [
      ...Object.entries(machineTypes).flatMap(([type, { also }]) => [type, ...also]),
      ...factWords.flatMap(([fact, , plain, taken]) => (fact === "type" ? [...plain, ...taken] : [])),
    ];
    const words = new Set(names.flatMap((name) => name.toLowerCase().split(/[\s-]/)));
    const known = [...marks, ...neutral, ...single, ...idle];
    expect([...words].filter((word) => !known.includes(word) && kindOf(word) === "none")).toEqual(["displacement"]);
  });
});

describe("what drives a machine, and what it is for", () => {
  // biome-ignore format: a row of a table is a line
  it.each([
    ["pump driven by motor", "pump", 'driver "motor"'],
    ["pump, driven by a steam turbine, 90 kW", "pump", 'driver "steam turbine"'],
    ["steam turbine driven pump", "pump", 'driver "steam turbine"'],
    ["diesel-driven pump", "pump", 'driver "diesel"'],
    ["pump motor driven", "pump", 'driver "motor"'],
    ["pump, driver: diesel engine", "pump", 'driver "diesel engine"'],
    ["pump coupled to diesel engine", "pump", 'driver "diesel engine"'],
    ["generator, VFD driven", "generator", 'driver "VFD"'],
    ["motor for pump", "motor", 'for "pump"'],
    ["for the boiler feed pump, motor", "motor", 'for "boiler feed pump"'],
  ])("%s", (line, kind, named) => {
    expect(kindOf(line)).toBe(kind);
    expect(machineNotes(line)).toMatchObject({ assumedFacts: [`${named}: named, not judged`], notUnderstood: [] });
    expect(judge("4 mm/s rms", `${line}, 90 kW 1480 r/min`).assumedFacts).toContain(`${named}: named, not judged`);
  });

  it.each([
    ["fan 400 kW 1480 r/min driven by motor on springs", "driven by motor", "springs"],
    ["pump driven by motor 220 kW, 2980 r/min category II", "driven by motor", "220 kW"],
    ["pump driven by motor (220 kW), category II", "driven by motor", "220 kW"],
    ["pump driven by motor Acme category II", "driven by motor", "category II"],
    ["220 kW motor driven pump", "motor driven", "220 kW"],
    ["fan, on springs motor driven", "motor driven", "springs"],
    ["motor for fan on springs", "for fan", "springs"],
  ])("a fact beside the name of the other machine is not taken for the one that is judged: %s", (line, other, fact) => {
    const { code, message } = refusalOf(() => parseMachine(line));
    expect(code).toBe("syntax");
    expect(message).toContain(`a comma between "${other}" and "${fact}"`);
  });

  it("a comma or the name of the machine parts its facts from the other machine", () => {
    expect(parseMachine("fan driven by motor, on springs")).toMatchObject({ type: "fan", support: "flexible" });
    expect(parseMachine("motor driven pump 90 kW")).toMatchObject({ type: "pump", power: "90 kW" });
    expect(parseMachine("motor 220 kW for fan")).toMatchObject({ type: "motor", power: "220 kW" });
  });

  // a reciprocating compressor may vibrate more by ISO 20816-8 than any other by ISO 20816-3
  it.each([
    "centrifugal compressor 800 kW, reciprocating engine driven, rigid part frame",
    "compressor 800 kW centrifugal, gas engine driven, rigid",
    "compressor, centrifugal 800 kW driven by reciprocating engine, rigid",
    "compressor 800 kW, reciprocating diesel driven, rigid",
    "piston engine driven compressor 800 kW rigid",
  ])("a driver that reciprocates makes no reciprocating compressor: %s", (line) => {
    expect(kindOf(line)).toBe("compressor");
    expect(judge("8 mm/s rms", `${line} 1500 r/min`).worst).toBe("D");
  });

  it("a centrifugal compressor is none of another build", () => {
    for (const line of ["centrifugal compressor, piston", "compressor, centrifugal, screw", "turbo compressor, lobe"])
      expect(kindOf(line), line).toBe("syntax");
  });

  it("is no end of a machine, and no room", () => {
    for (const words of ["driven end", "drive end", "engine room", "turbine hall"])
      expect([kindOf(`pump ${words}`), machineNotes(`pump ${words}`).notUnderstood[0]?.word]).toEqual(["pump", words]);
    expect(kindOf("rigid driven end pump")).toBe("pump");
  });
});

describe("a gear drive by its arrangement", () => {
  it.each([
    "parallel-shaft gearbox 200 kW",
    "parallel shaft gear unit 200 kW",
    "right angle gear 200 kW hollow shaft",
    "right-angle gear reducer 200 kW",
  ])("%s", (line) => {
    expect(parseMachine(line)).toMatchObject({ type: "gear drive", power: "200 kW" });
    expect(parseMachine(line)).not.toHaveProperty("place");
  });
});

describe("a place or a neighbour", () => {
  // a generating set with a reciprocating engine may vibrate more by ISO 8528-9 than a generator by ISO 20816-3
  it.each([
    ["diesel hall generator 500 kW", "diesel hall"],
    ["compressor 90 kW reciprocating bay", "reciprocating bay"],
    ["compressor 90 kW, screw compressor building", "screw compressor building"],
  ])("%s: makes no machine", (line, place) => {
    const { code, message, didYouMean } = refusalOf(() => parseMachine(line));
    expect(code).toBe("syntax");
    expect(message).toContain(`the line without "${place}"`);
    expect(didYouMean).toHaveLength(2);
  });

  it.each([
    "generator 500 kW in diesel hall rigid",
    "generator 500 kW, diesel pump house, rigid",
    "generator 500 kW (diesel building)",
    "generator 500 kW diesel engine room",
    "generator 500 kW, diesel hall, diesel building",
    "generator 500 kW beside diesel engine",
    "diesel engine 500 kW, generator house",
  ])("%s: makes no set of a generator", (line) => {
    expect(refusalOf(() => parseMachine(line))).toMatchObject({ code: "missing-fact", fact: "type" });
  });

  it.each([
    ["diesel generator 500 kW pump house", "reciprocating generating set"],
    ["diesel generator house 500 kW", "reciprocating generating set"],
    ["gas engine generator 1 MW engine house", "reciprocating generating set"],
    ["gas engine generator engine room", "reciprocating generating set"],
    ["gas engine generator in gas engine hall", "reciprocating generating set"],
    ["steam turbine generator 5 MW turbine hall", "steam turbine"],
    ["generating set driven by diesel engine, engine hall", "reciprocating generating set"],
    ["screw compressor, compressor house", "screw compressor"],
    ["pump station 90 kW", "pump"],
    ["pump 90 kW pump station", "pump"],
    ["boiler feed pump house", "pump"],
    ["main plant air compressor 200 kW", "compressor"],
    ["cooling tower fan 75 kW, cooling tower area", "cooling tower drive"],
  ])("%s leaves the machine what it is", (line, kind) => {
    expect(kindOf(line)).toBe(kind);
  });
});

describe("a name of several kinds", () => {
  it.each(vagueNames.flatMap(([names, mayBe]) => names.map((name) => [name, mayBe] as const)))("%s", (name, mayBe) => {
    const { code, didYouMean, message } = refusalOf(() => judge("4 mm/s rms", `${name} 400 kW 1500 r/min`));
    expect(code).toBe("missing-fact");
    expect(didYouMean).toEqual(mayBe);
    expect(message).toContain(`"${name}" may be several`);
    for (const one of mayBe) expect(parseMachine(one).type, one).toBeDefined();
  });

  it("a blower is no fan in silence", () => {
    expect(parseMachine("blower 90 kW").type).toBeUndefined();
    expect(() => parseMachine("fan, blower")).not.toThrow();
    expect(() => judge("4 mm/s rms", { type: "blower" as "fan", power: "90 kW" })).toThrow(/kind of machine/);
  });
});

describe("the order of words", () => {
  const names = [
    ...Object.entries(machineTypes).flatMap(([type, { also }]) => [type, ...also]),
    ...factWords.flatMap(([fact, , plain, taken]) => (fact === "type" ? [...plain, ...taken] : [])),
    ...vagueNames.flatMap(([words]) => words),
    ...["diesel driven pump", "generating set driven by gas engine", "steam turbine driven compressor", "pump turbine"],
    ...["motor driven pump", "vertical diesel driven fire pump", "gas compressor gas engine driven", "vacuum pump"],
    ...["screw pump", "plunger pump", "gear pump", "turbine pump", "steam engine", "air cooled screw chiller"],
  ];
  const facts = ["400 kW", "1500 r/min", "rigid", "category I", "housing", "new", "natural 65 Hz", "P-101A", "NDE"];
  const ranks: readonly string[] = ["A", "AB", "B", "C", "D"];

  /** The worst zone; undefined where it is refused. */
  const worstOf = (line: string): { kind: string; worst: string; setAside: readonly string[] } | undefined => {
    try {
      const { kind, worst, setAside } = judge("4 mm/s rms", line);
      return { kind, worst, setAside };
    } catch (error) {
      if (error instanceof VeladisError) return undefined;
      throw error;
    }
  };

  it("never makes a verdict milder: it is refused, or the machine is the same", () => {
    let same = 0;
    let refused = 0;
    const mixed = fc
      .tuple(fc.constantFrom(...names), fc.subarray(facts, { maxLength: 4 }), fc.boolean())
      .chain(([name, said, isWhole]) => {
        const parts = [...(isWhole ? [name] : name.split(/[\s-]/)), ...said];
        return fc.tuple(
          fc.constant([name, ...said].join(", ")),
          fc.shuffledSubarray(parts, { minLength: parts.length }),
          fc.array(fc.constantFrom(" ", ", "), { minLength: parts.length, maxLength: parts.length }),
        );
      });
    fc.assert(
      fc.property(mixed, ([line, parts, glue]) => {
        const other = parts.map((part, i) => `${part}${glue[i]}`).join("");
        const [kind, shuffled] = [kindOf(line), kindOf(other)];
        if (shuffled === "syntax" || shuffled === "missing-fact" || shuffled === "none") {
          refused++;
          return;
        }
        const told = `${line} | ${other}`;
        expect(shuffled, told).toBe(kind);
        const [plain, verdict] = [worstOf(line), worstOf(other)];
        if (verdict === undefined) return;
        if (plain === undefined) {
          // what makes the line one to refuse stands behind a word that is not understood here, and is named
          expect(verdict.setAside.join(), told).toContain("not understood");
          return;
        }
        same++;
        expect(verdict.kind, told).toBe(plain.kind);
        expect(zoneWord("zones", verdict.worst)).toBeTruthy();
        if (verdict.kind === "zones")
          expect(ranks.indexOf(verdict.worst), told).toBeGreaterThanOrEqual(ranks.indexOf(plain.worst));
      }),
      { numRuns: 4000 },
    );
    // refusing more cannot pass it
    expect(same).toBeGreaterThan(500);
    expect(refused).toBeLessThan(3000);
  });

  it("of words that say nothing is free", () => {
    expect(noFacts.every((word) => kindOf(`pump ${word}`) === "pump")).toBe(true);
  });
});
