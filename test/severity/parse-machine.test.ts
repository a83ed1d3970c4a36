import fc from "fast-check";
import { VeladisError } from "veladis";
import { judge, type Machine, machineNotes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { facts } from "../../src/severity/facts";
import { machineFacts } from "../../src/severity/machine-facts";
import { hedges } from "../../src/severity/machine-hedges";
import { factWords, fillers, noFacts, qualifiers, sizes } from "../../src/severity/machine-words";
import { refusalOf } from "../refusals/refusal-of";

const known = (line: string) => ({ ...machineFacts(line) });
const words = (line: string) => machineNotes(line).notUnderstood.map(({ word }) => word);

/** The trade's words and the facts they say; common practice, no source. */
// biome-ignore format: a row of a table is a line
const phrases: [line: string, facts: object, taken?: boolean][] = [
  ["ID fan", { type: "fan" }],
  ["FD fan", { type: "fan" }],
  ["induced draft fan", { type: "fan" }],
  ["Induced-Draught Fan", { type: "fan" }],
  ["induced-draught-fan", { type: "fan" }],
  ["forced draft fan", { type: "fan" }],
  ["axial fan", { type: "fan" }],
  ["radial fan", { type: "fan" }],
  ["centrifugal fan", { type: "fan" }],
  ["fin-fan", { type: "fan" }],
  ["fin fan", { type: "fan" }],
  ["exhaust fan", { type: "fan" }],
  ["supply fan", { type: "fan" }],
  ["axial blower", { type: "fan" }, true],
  ["FD blower", { type: "fan" }, true],
  ["vertical pump", { type: "pump" }],
  ["horizontal centrifugal pump", { type: "pump" }],
  ["submersible pump", { type: "pump" }],
  ["slurry pump", { type: "pump" }],
  ["boiler feed pump", { type: "pump" }],
  ["boiler-feed-water pump", { type: "pump" }],
  ["circulation pump", { type: "pump" }],
  ["vertical circulating pump", { type: "pump" }],
  ["condensate pump", { type: "pump" }],
  ["booster pump", { type: "pump" }],
  ["in-line pump", { type: "pump" }],
  ["inline pump", { type: "pump" }],
  ["rotodynamic pump", { type: "pump" }],
  ["screw compressor", { type: "screw compressor" }],
  ["rotary screw compressor", { type: "screw compressor" }],
  ["oil-flooded screw compressor", { type: "screw compressor" }],
  ["screw air compressor", { type: "screw compressor" }],
  ["compressor, screw compressor", { type: "screw compressor" }],
  ["rotary lobe blower", { type: "lobe blower" }],
  ["Roots blower", { type: "lobe blower" }],
  ["turbo compressor", { type: "compressor" }],
  ["centrifugal compressor", { type: "compressor" }],
  ["recip compressor", { type: "reciprocating compressor" }],
  ["reciprocating compressor", { type: "reciprocating compressor" }],
  ["horizontal piston compressor", { type: "reciprocating compressor" }],
  ["chiller", { type: "compressor" }, true],
  ["centrifugal chiller", { type: "centrifugal chiller" }],
  ["steam turbine", { type: "steam turbine" }],
  ["gas turbine", { type: "gas turbine" }],
  ["steam turbine generator", { type: "steam turbine" }, true],
  ["hydro turbine", { type: "hydro set" }],
  ["water turbine", { type: "hydro set" }],
  ["vertical Francis turbine", { type: "hydro set" }],
  ["Kaplan turbine", { type: "hydro set" }],
  ["Pelton turbine", { type: "hydro set" }],
  ["Francis", { type: "hydro set" }, true],
  ["diesel engine", { type: "reciprocating engine" }],
  ["gas engine", { type: "reciprocating engine" }],
  ["genset", { type: "reciprocating generating set" }, true],
  ["diesel genset", { type: "reciprocating generating set" }, true],
  ["diesel generating set", { type: "reciprocating generating set" }],
  ["emergency diesel generating set", { type: "reciprocating generating set" }],
  ["gas engine generating set", { type: "reciprocating generating set" }],
  ["gas engine driven generating set", { type: "reciprocating generating set" }],
  ["generating set, diesel engine", { type: "reciprocating generating set" }, true],
  ["generating set diesel", { type: "reciprocating generating set" }, true],
  ["diesel, generating set", { type: "reciprocating generating set" }, true],
  ["generating set driven by diesel", { type: "reciprocating generating set" }, true],
  ["water chiller", { type: "compressor" }, true],
  ["generating set driven by gas engine", { type: "reciprocating generating set" }, true],
  ["reciprocating generating set", { type: "reciprocating generating set" }],
  ["hydro generating set", { type: "hydro set" }, true],
  ["steam turbine generating set", { type: "steam turbine" }, true],
  ["gas turbine generating set", { type: "gas turbine" }, true],
  ["shaft relative", { place: "shaft" }],
  ["shaft-relative", { place: "shaft" }],
  ["shaft absolute", { place: "shaft" }],
  ["relative shaft vibration", { place: "shaft" }],
  ["motor relative shaft vibration", { type: "motor", place: "shaft" }],
  ["gearbox", { type: "gear drive" }],
  ["gear unit", { type: "gear drive" }],
  ["speed reducer", { type: "gear drive" }],
  ["cooling tower fan", { type: "cooling tower drive" }],
  ["cooling tower gearbox", { type: "cooling tower drive" }],
  ["cooling-tower motor", { type: "cooling tower drive" }],
  ["turbo-generator", { type: "generator" }, true],
  ["turbogenerator", { type: "generator" }, true],
  ["alternator", { type: "generator" }],
  ["induction motor", { type: "motor" }],
  ["electric motor", { type: "motor" }],
  ["synchronous motor", { type: "motor" }],
  ["vertical induction motor", { type: "motor" }],
  ["pump motor", { type: "motor" }, true],
  ["NEMA motor", { type: "motor", frame: "NEMA" }],
  ["proximity probe", { place: "shaft" }, true],
  ["proximity probes", { place: "shaft" }, true],
  ["prox probe", { place: "shaft" }, true],
  ["eddy current probe", { place: "shaft" }, true],
  ["eddy-current probes", { place: "shaft" }, true],
  ["shaft probe", { place: "shaft" }],
  ["bearing housing", { place: "housing" }],
  ["on the bearing cap", { place: "housing" }, true],
  ["casing", { place: "housing" }, true],
  ["on the pedestal", { place: "housing" }, true],
  ["on springs", { support: "flexible" }, true],
  ["mounted on springs", { support: "flexible" }, true],
  ["mounting on springs", { support: "flexible" }, true],
  ["on isolators", { support: "flexible" }, true],
  ["spring mounted", { support: "flexible" }, true],
  ["spring-mounted", { support: "flexible" }, true],
  ["on resilient mounts", { support: "flexible" }, true],
  ["on a concrete block", { support: "rigid" }, true],
  ["concrete foundation", { support: "rigid" }, true],
  ["grouted", { support: "rigid" }, true],
  ["support rigid", { support: "rigid" }],
  ["new", { condition: "new" }],
  ["newly installed", { condition: "new" }],
  ["acceptance test", { condition: "new" }, true],
  ["commissioning", { condition: "new" }, true],
  ["in service", { condition: "in service" }],
  ["in-service", { condition: "in service" }],
  ["in operation", { condition: "in service" }],
  ["existing", { condition: "in service" }, true],
  ["place: shaft", { place: "shaft" }],
];

/** Numbers with their units. */
// biome-ignore format: a row of a table is a line
const numbers: [line: string, facts: object][] = [
  ["900 to 1800 r/min", { speed: [900, 1800] }],
  ["900-1800 rpm", { speed: [900, 1800] }],
  ["900 – 1800 rpm", { speed: [900, 1800] }],
  ["900 … 1800 r/min", { speed: [900, 1800] }],
  ["900...1800 r/min", { speed: [900, 1800] }],
  ["15 Hz to 1800 rpm", { speed: [900, 1800] }],
  ["1,000 to 1,800 rpm", { speed: [1000, 1800] }],
  ["1,800 rpm", { speed: 1800 }],
  ["1 800 rpm", { speed: 1800 }],
  ["1\u00a0800 rpm", { speed: 1800 }],
  ["1\u2009800 rpm", { speed: 1800 }],
  ["1\u202f800 rpm", { speed: 1800 }],
  ["1'800 rpm", { speed: 1800 }],
  ["1480 1/min", { speed: 1480 }],
  ["1480 min⁻¹", { speed: 1480 }],
  ["1480 min-1", { speed: 1480 }],
  ["1480/min", { speed: 1480 }],
  ["1480 rpm.", { speed: 1480 }],
  ["1480 revolutions per minute", { speed: 1480 }],
  ["shaft speed 1480 rpm", { speed: 1480 }],
  ["1480 rpm - 90 kW", { speed: 1480, power: 90 }],
  ["1'200 kW", { power: 1200 }],
  ["1\u2009200 kW", { power: 1200 }],
  ["100 hp", { power: 74.56998715822702 }],
  ["50 to 400 kW", { power: [50, 400] }],
  ["50-400 kW", { power: [50, 400] }],
  ["between 50 and 400 kW", { power: [50, 400] }],
  ["from 50 to 400 kW", { power: [50, 400] }],
  ["900 kW to 1.2 MW", { power: [900, 1200] }],
  ["75 to 90 kW, 500 kVA", { power: [75, 90] }],
  ["between 1000 and 1480 r/min", { speed: [1000, 1480] }],
  ["P=90 kW n=980 r/min", { power: 90, speed: 980 }],
  ["P = 90 kW, n = 900 to 1800 r/min", { power: 90, speed: [900, 1800] }],
  // 75 kW is the preferred metric size beside 100 hp: common practice, no source
  ["100 hp 75 kW", { power: 74.56998715822702 }],
  ["75 kW (100 hp)", { power: 74.56998715822702 }],
  ["100 PS 75 kW", { power: 73.549875 }],
  ["1485 r/min 24.75 Hz", { speed: 1485 }],
  ["24.8 Hz 1485 r/min", { speed: 1485 }],
  ["motor 50 Hz", { type: "motor" }],
  ["generator 60 Hz", { type: "generator" }],
  ["genset 50 Hz", { type: "reciprocating generating set" }],
  ["pump 50 Hz", { type: "pump", speed: 3000 }],
  ["motor 49 Hz", { type: "motor", speed: 2940 }],
  ["100 bhp", { power: 74.56998715822702 }],
  ["100 PS", { power: 73.549875 }],
  ["500 kVA", { power: [350, 500] }],
  ["2.5 MVA", { power: [1750, 2500] }],
  ["500 kVA cos phi 0.9", { power: 450 }],
  ["cos phi 0,9, 500 kVA", { power: 450 }],
  ["500 kVA power factor of 0.85", { power: 425 }],
  ["500 kVA, cos \u03c6 = 0.9", { power: 450 }],
  ["500 kVA 0.9 PF", { power: 450 }],
  ["500 kVA p.f. 1", { power: 500 }],
  ["genset 500 kVA", { type: "reciprocating generating set", power: 400 }],
  ["genset 500 kVA pf 1", { type: "reciprocating generating set", power: 500 }],
  ["500 kVA 400 kW cos phi 0.9", { power: 400 }],
  ["500 kVA 400 kW", { power: 400 }],
  ["400 kW, 500 kVA", { power: 400 }],
  ["2-pole 50 Hz", { speed: 3000 }],
  ["4 pole 60 Hz", { speed: 1800 }],
  ["6P 50Hz", { speed: 1000 }],
  ["60 Hz, 8 poles", { speed: 900 }],
  ["mains 50 Hz 4-pole", { speed: 1500 }],
  ["4-pole", { speed: [1500, 1800] }],
  ["4-pole 50/60 Hz", { speed: [1500, 1800] }],
  ["4-pole 1485 rpm", { speed: 1485 }],
  ["4-pole 1485 rpm 50 Hz", { speed: 1485 }],
  ["4-pole 50 Hz 1500 rpm", { speed: 1500 }],
  ["4-pole 60 Hz 1620 rpm", { speed: 1620 }],
  ["4-pole 50 Hz, 300 to 1500 rpm", { speed: [300, 1500] }],
  ["1485 rpm 50 Hz", { speed: 1485 }],
  ["50 Hz", { speed: 3000 }],
  ["24.75 Hz, 1485 rpm", { speed: 1485 }],
  ["280M", { shaftHeight: 280, frame: "IEC" }],
  ["132S", { shaftHeight: 132, frame: "IEC" }],
  ["315L", { shaftHeight: 315, frame: "IEC" }],
  ["315MLB", { shaftHeight: 315, frame: "IEC" }],
  ["motor 280m", { type: "motor", shaftHeight: 280, frame: "IEC" }],
  ["frame 280S", { shaftHeight: 280, frame: "IEC" }],
  ["frame: 280", { shaftHeight: 280, frame: "IEC" }],
  ["IEC 280M", { shaftHeight: 280, frame: "IEC" }],
  ["IEC frame 315", { shaftHeight: 315, frame: "IEC" }],
  ["frame size 315", { shaftHeight: 315, frame: "IEC" }],
  ["frame 280 mm", { shaftHeight: 280, frame: "IEC" }],
  ["H 280", { shaftHeight: 280, frame: "IEC" }],
  ["H280", { shaftHeight: 280, frame: "IEC" }],
  ["H 280 mm", { shaftHeight: 280, frame: "IEC" }],
  ["H 280 in service", { shaftHeight: 280, frame: "IEC", condition: "in service" }],
  ["shaft height 280", { shaftHeight: 280, frame: "IEC" }],
  ["shaft height 0.28 m", { shaftHeight: 280, frame: "IEC" }],
  ["11 in motor", { type: "motor", shaftHeight: 279.4, frame: "NEMA" }],
  ["shaft height 11 in, in service", { shaftHeight: 279.4, frame: "NEMA", condition: "in service" }],
  ["shaft height 11 in", { shaftHeight: 279.4, frame: "NEMA" }],
  // NEMA MG 1, dimension D: the first two digits are four times the height in inches; from memory
  ["445T", { shaftHeight: 279.4, frame: "NEMA" }],
  ["frame 286T", { shaftHeight: 177.8, frame: "NEMA" }],
  ["NEMA 324TS", { shaftHeight: 203.2, frame: "NEMA" }],
  ["NEMA frame 445", { shaftHeight: 279.4, frame: "NEMA" }],
  ["frame 445", { shaftHeight: 279.4, frame: "NEMA" }],
  ["NEMA 56", { shaftHeight: 88.9, frame: "NEMA" }],
  ["frame NEMA 280 mm", { shaftHeight: 280, frame: "NEMA" }],
  ["height 2.5 m", { height: 2.5 }],
  ["height of 8 ft", { height: 2.4384 }],
  ["natural 65 Hz, 50 Hz, 1490 r/min", { naturalFrequency: 65, speed: 1490, support: "rigid" }],
];

/** Labels as the tables hold them, without quotation marks. */
// biome-ignore format: a row of a table is a line
const labels: [line: string, facts: object][] = [
  ["class between bearings, horizontal pump", { class: "between bearings", type: "pump" }],
  ["class vertically suspended content overall", { class: "vertically suspended", content: "overall" }],
  ["class low end rigid", { class: "low end", support: "rigid" }],
  ["part location 1 1480 rpm", { part: "location 1", speed: 1480 }],
  ["part location 1 800 rpm", { part: "location 1", speed: 800 }],
  ["part cylinder lateral 600 rpm", { part: "cylinder lateral", speed: 600 }],
  ["part other main bearings group 4", { part: "other main bearings", group: "4" }],
  ["part nacelle and tower at 15 rpm", { part: "nacelle and tower", speed: 15 }],
  ["part rotor bearing, in service", { part: "rotor bearing", condition: "in service" }],
  ["part gearbox band high", { part: "gearbox", band: "high" }],
  ["part generator wind turbine", { part: "generator", type: "wind turbine" }],
  ['part "cylinder (rod)" new', { part: "cylinder (rod)", condition: "new" }],
  ["part cylinder (rod) new", { part: "cylinder (rod)", condition: "new" }],
  ["group 2 in service", { group: "2", condition: "in service" }],
  ["group 2,300 kW", { group: "2", power: 300 }],
  ["class III NDE", { class: "III" }],
  ["category BV 3 NDE", { category: "BV 3" }],
  ["grade A motor", { grade: "A", type: "motor" }],
  ["test works NDE", { test: "works NDE" }],
  ["test 90 kW", { power: 90 }],
  ["mounting rigid", { mounting: "rigid" }],
  ["category II", { category: "II" }],
  ["cat. II", { category: "II" }],
  ["cat 2 90 kW", { category: "2", power: 90 }],
  ["motor 90 cat.II", { type: "motor", category: "II" }],
  ["gr. 2 rigid", { group: "2", support: "rigid" }],
  ["cl. II", { class: "II" }],
  ["cat. BV-3", { category: "BV-3" }],
];

describe("words of the trade", () => {
  it.each(phrases)("%s", (line, facts, taken = false) => {
    expect(known(line)).toEqual(facts);
    const { assumedFacts: assumed, notUnderstood } = machineNotes(line);
    expect(notUnderstood).toEqual([]);
    expect(assumed).toHaveLength(taken ? 1 : 0);
    if (taken) expect(assumed[0]).toMatch(/^(?:type|place|support|condition) .*: for "/);
  });

  it("every phrase of the table says its fact, in capitals and with hyphens too", () => {
    for (const [fact, label, plain, taken] of factWords) {
      for (const phrase of [...plain, ...taken]) {
        for (const written of [phrase, phrase.toUpperCase(), phrase.replaceAll(" ", "-")]) {
          expect(known(written)[fact], written).toBe(label);
        }
      }
    }
  });

  it("every word that may stand before a kind of machine leaves it what it is", () => {
    for (const [kind, list] of qualifiers) {
      const type = kind === "" ? "motor" : kind;
      for (const word of list) {
        const named = (sizes as readonly string[]).includes(word) && { notUnderstood: [{ word, didYouMean: [] }] };
        expect(parseMachine(`${word} ${type}`), word).toEqual({ type, ...named });
        if (kind !== "")
          expect(machineNotes(word.split(" ").length === 1 ? `NDE ${word}` : "NDE").assumedFacts).toEqual([]);
      }
    }
  });

  it("words that only lead on change nothing", () => {
    for (const [leads, list] of fillers) {
      for (const filler of list)
        if (leads === "") expect(parseMachine(`${filler} 90 kW`), filler).toEqual({ power: "90 kW" });
    }
    for (const word of noFacts) expect(parseMachine(word), word).toEqual({ notUnderstood: [{ word, didYouMean: [] }] });
    for (const line of ["motor driven pump", "motor-driven pump"]) expect(known(line)).toEqual({ type: "pump" });
    expect(machineNotes("steam turbine driven pump")).toEqual({
      assumedFacts: ['driver "steam turbine": named, not judged'],
      notUnderstood: [],
    });
  });

  it("what is said outright is not named as taken, whatever comes first", () => {
    expect(machineNotes("grouted rigid").assumedFacts).toEqual([]);
    expect(machineNotes("rigid grouted").assumedFacts).toEqual([]);
    expect(machineNotes("springs, isolators").assumedFacts).toEqual([
      'support flexible: for "isolators" and "springs"',
    ]);
  });
});

describe("numbers of a nameplate", () => {
  it.each(numbers)("%s", (line, facts) => {
    const read = known(line);
    expect(Object.keys(read).sort()).toEqual(Object.keys(facts).sort());
    for (const [fact, value] of Object.entries(facts)) {
      const own = read[fact as keyof typeof read];
      if (typeof value === "string") expect(own).toBe(value);
      else [value].flat().forEach((one, i) => void expect([own].flat()[i]).toBeCloseTo(one, 9));
    }
  });

  it("what was assumed is named", () => {
    const assumed = (line: string) => machineNotes(line).assumedFacts.join("; ");
    const slower = "the synchronous speed; the shaft of an induction motor turns a few per cent slower";
    expect(assumed("500 kVA")).toBe("power 350 to 500 kW: 500 kVA at a power factor of 0.7 to 1, which was not given");
    expect(assumed("500 kVA cos phi 0.9")).toBe("power 450 kW: 500 kVA at cos phi 0.9");
    expect(assumed("diesel generating set 500 kVA")).toBe(
      "power 400 kW: 500 kVA at an assumed power factor of 0.8, at which sets are rated",
    );
    expect(machineNotes("400 kW cos phi 0.9").notUnderstood).toEqual([{ word: "cos phi 0.9", didYouMean: [] }]);
    expect(assumed("500 kVA 400 kW")).toBe("");
    expect(assumed("4-pole 50 Hz")).toBe(`speed 1500 r/min: 4-pole at 50 Hz, ${slower}`);
    expect(assumed("4-pole")).toBe(`speed 1500 to 1800 r/min: 4-pole at 50 or 60 Hz, which was not given, ${slower}`);
    expect(assumed("motor 50 Hz")).toBe("50 Hz: taken for the line frequency; state the speed");
    expect(assumed("pump 50 Hz")).toBe("speed 3000 r/min: for \"50 Hz\", taken for the shaft's and not the line's");
    expect(assumed("1485 rpm 50 Hz")).toBe("line frequency 50 Hz: not the shaft's");
    expect(assumed("1 800 rpm")).toBe('speed 1800 r/min: for "1 800 rpm", taken for one number');
    expect(assumed("1,800 rpm")).toBe("");
  });
});

describe("labels", () => {
  it.each(labels)("%s", (line, facts) => {
    const read = known(line);
    for (const [fact, value] of Object.entries(facts)) {
      const own = read[fact as keyof typeof read];
      if (typeof value === "number") expect(own).toBeCloseTo(value, 9);
      else expect(own).toBe(value);
    }
    expect(Object.keys(read).sort()).toEqual(Object.keys(facts).sort());
  });
});

describe("what is not understood", () => {
  // biome-ignore format: a row of a table is a line
  const aside: [line: string, said: [word: string, ...didYouMean: string[]][]][] = [
    ["motr 90 kW", [["motr", "motor"]]],
    ["mtoor 90 kW", [["mtoor", "motor"]]],
    ["rigd", [["rigd", "rigid"]]],
    ["magnificent pump", [["magnificent pump"]]],
    ["magnificent, pump", [["magnificent"]]],
    ["P-101A DE NDE #3 pump", [["P-101A"], ["DE"], ["NDE"], ["#3"]]],
    ["overhauled motor, repaired", [["repaired"]]],
    ["1485 rmp", [["1485 rmp", "1485 rpm"]]],
    ["90 foo", [["90 foo"]]],
    ["motor 90", [["90"]]],
    ["motor 90, rigid", [["90"]]],
    ["motor 90 rigid", [["90"]]],
    ["motor 90 group 2", [["90"]]],
    ["400 V 178 A", [["400 V"], ["178 A"]]],
    ["4-20 mA", [["4-20 mA"]]],
    ["natural 20 to 30 Hz", [["natural 20 to 30 Hz"]]],
    ["natural frequency between 20 and 30 Hz", [["natural frequency between 20 and 30 Hz"]]],
    ["3-pole", [["3-pole"]]],
    ["ID 90 kW", [["ID", "ID fan"]]],
    ["pump axial", [["axial", "axial fan", "axial pump", "axial compressor"]]],
    ["turbine", [["turbine", "steam turbine", "steam turbine set", "gas turbine"]]],
    ["boiler pump", [["boiler pump", "boiler-feed pump"]]],
    ["motor 2 m off the floor", [["2 m", "height 2 m", "shaft height 2 m"], ["off"], ["floor"]]],
    ["motor 3 in boiler house", [["3 in"], ["boiler", "boiler-feed pump"], ["house"]]],
    ["DE H", [["DE"], ["H"]]],
    ["frame 999", [["999"]]],
    ["frame 280X", [["280X"]]],
    ["IEC 445T", [["IEC"]]],
    ["line 3", [["line"], ["3"]]],
    ["supply", [["supply", "supply fan"]]],
    ["group", [["group"]]],
    ["hollow shaft motor", [["hollow shaft"]]],
  ];

  it.each(aside)("%s", (line, said) => {
    const found = machineNotes(line).notUnderstood.map(({ word, didYouMean }) => [word, ...didYouMean]);
    expect(found).toEqual(said);
  });

  it("is near to nothing silly", () => {
    for (const word of ["site", "main", "north", "tank", "house", "spare", "total", "DE", "new1"]) {
      for (const near of machineNotes(word).notUnderstood.flatMap(({ didYouMean }) => didYouMean)) {
        expect(near[0]?.toLowerCase(), word).toBe(word[0]);
      }
    }
  });
});

describe("a word that belongs to something else", () => {
  // biome-ignore format: a row of a table is a line
  const aside: [line: string, facts: object, ...words: string[]][] = [
    ["motor 90 kW flexible pipe", { type: "motor", power: 90 }, "flexible pipe"],
    ["fan 90 kW rigid water hose", { type: "fan", power: 90 }, "rigid water hose"],
    ["new bearing, motor", { type: "motor" }, "new bearing"],
    ["pump flexible gear coupling", { type: "pump" }, "flexible gear coupling"],
    ["rigid hollow shaft pump", { type: "pump" }, "rigid hollow shaft"],
    ["rigid, pipe", { support: "rigid" }, "pipe"],
    ["rigid P-101A", { support: "rigid" }, "P-101A"],
    ["rigid NDE", { support: "rigid" }, "NDE"],
    ["rigid (new)", { support: "rigid", condition: "new" }],
    ["rigid No. 2", { support: "rigid" }, "No. 2"],
    ["rigid, motor driven pump", { support: "rigid", type: "pump" }],
    ["rigid group 2", { support: "rigid", group: "2" }],
    ["shaft vibration, flexible mounting", { place: "shaft", support: "flexible" }],
    ["vacuum pump 90 kW", { power: 90 }, "vacuum pump"],
    ["plunger pump", {}, "plunger pump"],
    ["screw pump", {}, "screw pump"],
    ["heat pump", {}, "heat pump"],
    ["screw process blower", {}, "screw process blower"],
    ["air motor", {}, "air motor"],
    ["vacuum hot-water pump", {}, "vacuum hot-water pump"],
    ["positive displacement pump", {}, "positive", "displacement pump"],
    ["vacuum motor driven pump", {}, "vacuum motor driven pump"],
    ["P-101A pump", { type: "pump" }, "P-101A"],
    // a diameter is no shaft height, which makes the limits of a group
    ["motor, shaft diameter 400 mm, rigid", { type: "motor", support: "rigid" }, "shaft diameter 400 mm"],
    ["motor, diameter of the shaft 400 mm", { type: "motor" }, "diameter of the shaft 400 mm"],
    ["motor, shaft diameter (400 mm)", { type: "motor" }, "shaft diameter (400 mm"],
    ["motor, shaft 400 mm diameter, rigid", { type: "motor", support: "rigid" }, "shaft 400 mm diameter"],
    ["motor 400 mm diameter shaft", { type: "motor" }, "400 mm diameter shaft"],
    ["motor \u00d8 400 mm", { type: "motor" }, "\u00d8 400 mm"],
    ["motor 280 mm bore", { type: "motor" }, "280 mm bore"],
    ["motor, pulley 400 mm", { type: "motor" }, "pulley 400 mm"],
    ["motor, shaft diameter 80 mm, 280M", { type: "motor", shaftHeight: 280, frame: "IEC" }, "shaft diameter 80 mm"],
    ["pump No 2 90 kW", { type: "pump", power: 90 }, "No 2"],
    ["main cooling water pump", { type: "pump" }],
    ["standby lube oil pump B", { type: "pump" }, "B"],
    ["district heating network pump", { type: "pump" }],
    ["combustion air fan, north", { type: "fan" }, "north"],
    ["make-up air fan", { type: "fan" }],
    ["flue-gas fan", { type: "fan" }],
    ["old LP return pump", { type: "pump" }],
  ];

  it.each(aside)("%s", (line, facts, ...said) => {
    expect(known(line)).toEqual(facts);
    expect(words(line)).toEqual(said);
  });

  // without new the machine would be judged as in service, without shaft on its housing
  it.each([
    ["pump 90 kW 2980 r/min new premium", "new premium", '"new, premium"', "new"],
    ["new from site, pump", "new from", '"new, from"', "new"],
    ["pump new boiler house", "new boiler", '"new, boiler"', "new"],
    ["fan 90 kW, shaft kiln", "shaft kiln", '"shaft, kiln"', "shaft"],
    ["pump new-premium", "new-premium", '"new, premium"', "new"],
    ["New standby foo", "New standby foo", '"New, standby foo"', "New"],
    ["gear drive, parallel shaft", "parallel shaft", '"parallel, shaft"', "shaft"],
  ])("%s may be meant either way: both are named", (line, received, apart, word) => {
    const { code, message } = refusalOf(() => parseMachine(line));
    expect(code).toBe("syntax");
    const said = word === "shaft" ? "the reading was taken on the shaft" : "the machine is new";
    expect(message).toContain(`${apart} where ${said}; without "${word}" where `);
    expect(message).toContain(`"${received}"`);
  });

  // the limits of the shaft are wider than those of the housing
  it.each([
    ["pump 90 kW at the shaft 2980 r/min", "90 kW at the shaft", '"90 kW, shaft"', '"shaft power 90 kW"'],
    ["pump with 90 kW at shaft", "90 kW at shaft", '"90 kW, shaft"', '"shaft power 90 kW"'],
    ["pump 90 kW absorbed at shaft", "90 kW absorbed at shaft", '"90 kW, shaft"', '"shaft power 90 kW"'],
    ["pump 90 kW (shaft)", "90 kW shaft", '"90 kW, shaft"', '"shaft power 90 kW"'],
    ["fan 90 kW on the shaft", "90 kW on the shaft", '"90 kW, shaft"', '"shaft power 90 kW"'],
    ["fan 90 kW shaft", "90 kW shaft", '"90 kW, shaft"', '"shaft power 90 kW"'],
    ["fan shaft 90 kW", "shaft 90 kW", '"shaft, 90 kW"', '"shaft power 90 kW"'],
    ["motor 280 mm at shaft", "280 mm at shaft", '"280 mm, shaft"', '"shaft height 280 mm"'],
    ["pump 90 kW, shaft at 2980 r/min", "shaft at 2980 r/min", '"shaft, 2980 r/min"', '"shaft speed 2980 r/min"'],
  ])("%s is a place or a number of the shaft: refused", (line, received, place, number) => {
    const { code, message } = refusalOf(() => parseMachine(line));
    expect(code).toBe("syntax");
    expect(message).toContain(`${place} where the reading was taken on the shaft; ${number} where it is the `);
    expect(message).toContain(`received "${received}"`);
    expect(known(`motor, ${number.slice(1, -1)}`)).not.toHaveProperty("place");
    expect(known(`motor, ${place.slice(1, -1)}`)).toHaveProperty("place", "shaft");
  });

  it.each([
    "pump 90 kW, 2980 r/min, shaft",
    "pump 90 kW, shaft",
    "pump 90 kW 2980 r/min shaft",
    "pump 90 kW place shaft",
    "pump place: shaft 90 kW",
    "pump (90 kW) (2980 r/min) shaft",
    "pump 90 kW, reading at the shaft",
    "pump 90 kW shaft probes",
  ])("%s is a place", (line) => {
    expect(known(line)).toMatchObject({ power: 90, place: "shaft" });
  });

  it("the ways out of it say what they say", () => {
    expect(known("pump new, premium")).toEqual({ type: "pump", condition: "new" });
    expect(known("pump premium")).toEqual({ type: "pump" });
    expect(known("fan shaft, kiln")).toEqual({ type: "fan", place: "shaft" });
    for (const thing of ["bearing", "oil filter", "seals", "impeller", "gear coupling"])
      expect(known(`pump new ${thing}`), thing).toEqual({ type: "pump" });
    expect(known("pump shaft diameter")).not.toHaveProperty("place");
    for (const line of ["pump new installation", "pump, new from works", "new-machine, pump"])
      expect([known(line).condition, machineNotes(line).assumedFacts.length], line).toEqual(["new", 1]);
  });

  it("a support is left open, with how to say it: both are judged by the lower limits", () => {
    for (const [line, words, apart] of [
      ["fan 90 kW flexible kiln", "flexible kiln", "flexible, kiln"],
      ["fan flexible rolling bearings", "flexible rolling", "flexible, rolling"],
      ["fan flexible bakery", "flexible bakery", "flexible, bakery"],
    ] as const) {
      expect(known(line)).not.toHaveProperty("support");
      expect(machineNotes(line).notUnderstood[0]).toEqual({ word: words, didYouMean: [apart] });
    }
    const rank = (zone: string) => "ABCD".indexOf(zone);
    for (const level of [1, 2, 3, 4, 6, 8]) {
      const zone = (support: string) => judge(`${level} mm/s rms`, `fan 90 kW 1480 r/min ${support}`).worst;
      for (const support of ["flexible", "rigid"])
        expect(rank(zone(`${support} kiln`))).toBeGreaterThanOrEqual(rank(zone(support)));
    }
  });

  it("so that no fail becomes a zone", () => {
    const pump = "pump 90 kW 2980 r/min";
    expect(judge("3.4 mm/s rms", `${pump} new`).zone).toBe("fail");
    for (const words of ["new, premium", "brand-new", "new installation", "new from works", "newly installed premium"])
      expect(judge("3.4 mm/s rms", `${pump} ${words}`).zone, words).toBe("fail");
    expect(refusalOf(() => judge("3.4 mm/s rms", `${pump} new premium`)).code).toBe("syntax");
  });
});

describe("hedges", () => {
  const refusal = (line: string) => {
    try {
      return parseMachine(line);
    } catch (error) {
      if (error instanceof VeladisError) return error;
      throw error;
    }
  };

  it.each([
    ["pump up to 250 kW", "up"],
    ["pump < 250 kW", "<"],
    ["pump ~250 kW", "~"],
    ["pump 250 kW?", "?"],
    ["pump 250 kW max.", "max"],
    ["pump approx.250 kW", "approx"],
    ["pump 250 or 300 kW", "or"],
    ["pump from 250 kW", "from"],
    ["pump 250 kW to 8 V", "to"],
    ["pump not on springs", "not"],
    ["pump non-rigid", "non"],
    ["pump isn't rigid", "isn't"],
    ["pump group not 2", "not"],
    ["pump group 2?", "?"],
    ["pump no 90 kW", "no"],
    ["pump no 280M", "no"],
    ["motor 2 m above ground", "above"],
    ["semi rigid", "semi"],
    ["rigid maybe", "maybe"],
    ["¬rigid", "¬"],
    ["between 50 kW", "between"],
    ["50 or 60 Hz", "or"],
    ["90 kW ± 5 %", "±"],
  ])("%s", (line, word) => {
    const error = refusal(line);
    expect(error).toBeInstanceOf(VeladisError);
    expect((error as VeladisError).code).toBe("syntax");
    expect((error as VeladisError).message).toContain(`"${word}" in `);
    expect((error as VeladisError).message).toContain('"900 to 1800 r/min" or "50 to 400 kW"');
  });

  it("before or after any fact of any nameplate they refuse it all, but for a range", () => {
    const marks = ["?", "~", "<", ">", "<=", ">=", "≤", "≥", "±", "at most", "at least", "ca.", "up to", "less than"];
    const facts = [
      ...["pump", "motor", "90 kW", "100 hp", "500 kVA", "50 to 400 kW", "1485 r/min", "900 to 1800 r/min", "50 Hz"],
      ...["4-pole", "frame 280S", "280M", "rigid", "on springs", "shaft", "proximity probes", "new", "in service"],
      ...["group 2", "class III", "cat. II", "BV-3", "part location 1", "natural 65 Hz", "height 2.5 m", "grade A"],
    ];
    const hedge = fc.constantFrom(...hedges, ...hedges.map((word) => word.toUpperCase()), ...marks);
    const glue = fc.constantFrom(" ", "  ", ", ", " (");
    const some = fc.uniqueArray(fc.constantFrom(...facts), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(some, hedge, glue, fc.nat(), fc.boolean(), (said, word, between, place, isBefore) => {
        const at = place % said.length;
        const line = said.map((fact, i) => {
          if (i !== at) return fact;
          return isBefore ? `${word}${between}${fact}` : `${fact}${between}${word}`;
        });
        expect(refusal(line.join(" ")), line.join(" ")).toBeInstanceOf(VeladisError);
      }),
      { numRuns: 3000 },
    );
  });
});

describe("what contradicts is refused with both named", () => {
  // biome-ignore format: a row of a table is a line
  const refused: [line: string, code: string, ...says: string[]][] = [
    ["motor 90 kW 80 kW", "syntax", "one power", '"90 kW" and "80 kW"'],
    ["pump, fan", "syntax", "one type", '"pump" and "fan"'],
    ["rigid on springs", "syntax", "one support", '"rigid" and "springs"'],
    ["housing, prox probes", "syntax", "one place", '"housing" and "prox probes"'],
    ["1480 rpm 1485 rpm", "syntax", "one speed", '"1480 rpm" and "1485 rpm"'],
    ["50 Hz 60 Hz", "syntax", "one speed", '"50 Hz" and "60 Hz"'],
    ["4-pole 50 Hz 60 Hz", "syntax", "one line frequency", '"50 Hz" and "60 Hz"'],
    ["100 hp 80 kW", "syntax", "one power", '"100 hp" and "80 kW"'],
    ["75 kW 76 kW", "syntax", "one power", '"75 kW" and "76 kW"'],
    ["75 kW 100 hp 76 kW", "syntax", "one power", '"75 kW" and "76 kW"'],
    ["50 to 400 kW 90 kW", "syntax", "one power", '"50 to 400 kW" and "90 kW"'],
    ["24 Hz 1485 rpm", "syntax", "one speed", '"24 Hz" and "1485 rpm"'],
    ["400 to 50 kW", "out-of-range", "a range of powers from the lowest to the highest", '"400 to 50 kW"'],
    ["500 kVA, 300 to 600 kW", "syntax", "power, no higher than the apparent power"],
    ["2-pole 4-pole", "syntax", "one number of poles", '"2-pole" and "4-pole"'],
    ["445T 280 mm", "syntax", "one shaftHeight", '"445T" and "280 mm"'],
    ["500 kVA 600 kW", "syntax", "power, no higher than the apparent power", '"600 kW" and "500 kVA"'],
    ["500 kVA 600 kVA", "syntax", "one apparent power", '"500 kVA" and "600 kVA"'],
    ["4-pole 2980 rpm", "out-of-range", "1350 to 1500 r/min at 50 Hz, 1620 to 1800 r/min at 60 Hz", '"4-pole" and "2980 rpm"'],
    ["4-pole 50 Hz 1780 rpm", "out-of-range", "1350 to 1500 r/min at 50 Hz", '"4-pole" and "1780 rpm"'],
    ["1800 to 900 rpm", "out-of-range", "from the lowest to the highest", '"1800 to 900 rpm"'],
    ["900 to 900 rpm", "out-of-range", "from the lowest to the highest", '"900 to 900 rpm"'],
    ["1,480 kW", "not-a-number", '"1480 kW", or "1.48 kW"', '"1,480 kW"'],
    ["24,750 Hz", "not-a-number", '"24750 Hz", or "24.75 Hz"', '"24,750 Hz"'],
    ["pump 1 480 kW", "not-a-number", '"1480 kW", or "480 kW" behind the number 1', '"1 480 kW"'],
    ["7,5 kW", "not-a-number", "no comma", '"7,5"'],
    ["motor 280 m", "out-of-range", 'a frame size is written in one, as in "280M"', "280000 mm"],
    ["motor 1 mm", "out-of-range", "20 to 3000 mm", "1 mm"],
    ["pump 280M", "out-of-range", "motor or generator", "pump with a shaft height of 280 mm"],
    ["280 mm, fan", "out-of-range", "motor or generator", "fan with a shaft height of 280 mm"],
    [" ;, ", "syntax", "a machine such as"],
  ];

  it.each(refused)("%s", (line, code, ...says) => {
    let error: unknown;
    try {
      machineFacts(line);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(VeladisError);
    expect((error as VeladisError).code).toBe(code);
    for (const words of says) expect((error as VeladisError).message).toContain(words);
  });

  it("the same said twice is none", () => {
    expect(known("pump, centrifugal pump")).toEqual({ type: "pump" });
    expect(known("24.75 Hz 1485 rpm")).toEqual({ speed: 1485 });
    expect(known("280M, shaft height 28 cm")).toEqual({ shaftHeight: 280, frame: "IEC" });
    expect(known("group II, group 2").group).toBe("II");
  });
});

describe("a size without a number", () => {
  it("is named wherever it stands, and the machine stays what it is", () => {
    for (const [line, size, facts] of [
      ["small pump 300 kW", "small", { type: "pump", power: 300 }],
      ["large fan 45 kW", "large", { type: "fan", power: 45 }],
      ["tiny pump 5.5 kW", "tiny", { type: "pump", power: 5.5 }],
      ["Big centrifugal pump", "Big", { type: "pump" }],
      ["vertical large pump", "large", { type: "pump" }],
      ["medium-sized pump 90 kW", "medium-sized", { type: "pump", power: 90 }],
      ["pump 300 kW small", "small", { type: "pump", power: 300 }],
      ["small power 90 kW", "small", { power: 90 }],
      ["group 2 large", "large", { group: "2" }],
      ["large hydro generating set 5 MW", "large", { type: "hydro set", power: 5000 }],
    ] as const) {
      expect(known(line), line).toEqual(facts);
      expect(words(line), line).toEqual([size]);
    }
    expect(words("small large pump")).toEqual(["small", "large"]);
    // still of another kind than pump
    expect([known("vacuum large pump"), words("vacuum large pump")]).toEqual([{}, ["vacuum large pump"]]);
  });
});

describe("a generating set", () => {
  it("with the driver behind is of its kind, and is judged", () => {
    const line = "generating set diesel 400 kW 1500 r/min";
    expect(machineNotes(line)).toMatchObject({
      assumedFacts: ['type reciprocating generating set: for "generating set" and "diesel"'],
      notUnderstood: [],
    });
    expect(judge("2 mm/s rms", line).zone).toBe(judge("2 mm/s rms", "diesel generating set 400 kW 1500 r/min").zone);
    // gas may be a turbine, and a diesel pump is none
    for (const other of ["generating set gas 400 kW", "generating set, diesel fire pump"])
      expect(known(other).type, other).not.toBe("reciprocating generating set");
  });

  it("is of no kind until a word says which: steam, gas and hydro sets are called so too", () => {
    for (const line of ["generating set", "generating set 5 MW", "emergency, generating set"]) {
      expect(known(line)).not.toHaveProperty("type");
      expect(machineNotes(line).notUnderstood.find(({ word }) => word === "generating set")?.didYouMean).toEqual([
        "steam turbine generating set",
        "hydro generating set",
        "diesel generating set",
      ]);
    }
  });
});

describe("the order of phrases", () => {
  // biome-ignore format: a row of a table is a line
  const nameplates = [
    ["vertical induction motor", "frame 280S", "4-pole", "50 Hz", "on springs", "category II", "new", "part location 1"],
    ["genset", "500 kVA", "1,500 rpm", "50 Hz", "in operation", "concrete block", "class 5"],
    ["ID fan", "250 kW", "900 to 1490 r/min", "BV-3", "on the bearing cap", "natural 65 Hz", "height 2.5 m"],
    ["class between bearings", "boiler feed pump", "1.2 MW", "2980 min⁻¹", "proximity probes", "region preferred", "test works"],
    ["motor", "100 hp", "NEMA 324TS", "1785 rpm", "60 Hz", "4 pole", "grade A", "mounting free"],
  ];
  const strange = fc.constantFrom("P-101A", "NDE", "#3", "magnificent", "IP55", "overhauled", "400 V", "dU/dt", "motr");
  const plain = ({ assumedFacts: assumed = [], notUnderstood: _, ...facts }: Machine) => ({ facts, assumed });

  it("says the same machine, and words that say nothing change no fact wherever they stand", () => {
    const shuffled = fc
      .constantFrom(...nameplates)
      .chain((said) =>
        fc.tuple(
          fc.constant(said),
          fc.shuffledSubarray(said, { minLength: said.length }),
          fc.array(fc.tuple(strange, fc.nat({ max: said.length }))),
        ),
      );
    fc.assert(
      fc.property(shuffled, ([said, mixed, junk]) => {
        const line = [...mixed];
        for (const [word, place] of junk) line.splice(place, 0, word);
        if (line.join(", ").length > 300) return;
        expect(plain(parseMachine(line.join(", ")))).toEqual(plain(parseMachine(said.join(", "))));
        expect(words(line.join(", ")).sort()).toEqual(junk.map(([word]) => word).sort());
      }),
      { numRuns: 2000 },
    );
  });

  it("a fact is stated once, whatever the words: no phrase says two labels of one", () => {
    for (const line of nameplates) {
      for (const name of Object.keys(machineFacts(line.join(", ")))) expect(Object.keys(facts)).toContain(name);
    }
  });
});
