import {
  builtInSchemes,
  defineScheme,
  judge,
  type MachineRef,
  type Scheme,
  selectSchemes,
  supportOf,
} from "veladis/severity";
import { describe, expect, it } from "vitest";

function best(machine: MachineRef) {
  const [first] = selectSchemes(machine).candidates;
  if (first === undefined) throw new Error("no candidate");
  return first;
}

function excluded(machine: MachineRef, scheme: string): string | undefined {
  return selectSchemes(machine).excluded.find((one) => one.scheme === scheme)?.reason;
}

// biome-ignore format: a row of a table is a line
const cases: [machine: string, scheme: string, status: string, classText: RegExp | undefined][] = [
  ["pump 90 kW 2980 r/min category II, in service", "iso-10816-7-2009", "applies", /"II".*"to":200/],
  ["pump 90 kW 2980 r/min, in service", "iso-10816-7-2009", "assumes", /"I"/],
  ["fan 90 kW 1480 r/min rigid BV-3, in service", "iso-14694-2003", "applies", /BV-3/],
  ["fan 400 kW 990 r/min flexible, in service", "iso-20816-3-2022", "applies", /"group":"1","support":"flexible"/],
  ["motor 160 kW 315 mm 1490 r/min rigid, in service", "iso-20816-3-2022", "applies", /"group":"1"/],
  ["motor 160 kW 280 mm 1490 r/min rigid, in service", "iso-20816-3-2022", "applies", /"group":"2"/],
  ["steam turbine 100 MW 3000 r/min, in service", "iso-20816-2-2017", "applies", /3000/],
  ["steam turbine 45 MW 3000 r/min, in service", "iso-20816-2-2017", "applies", /3000/],
  ["steam turbine 20 MW 6000 r/min rigid, in service", "iso-20816-3-2022", "applies", /"group":"1"/],
  ["steam turbine 100 MW 3000 r/min shaft, in service", "iso-20816-2-2017-shaft", "applies", /3000/],
  ["gas turbine 10 MW 8000 r/min shaft, in service", "iso-20816-4-2018-shaft", "applies", undefined],
  ["gear drive 1 MW 3000 r/min shaft, in service", "iso-7919-3-2009", "applies", undefined],
  ["gear drive 90 kW 1480 r/min, in service", "iso-10816-1-1995-annexB", "applies", /II/],
  ["reciprocating engine 500 kW class 3, in service", "iso-10816-6-1995", "applies", /"3"/],
  ["reciprocating compressor 500 kW 600 r/min part piping, in service", "iso-20816-8-2018", "applies", /piping/],
  ["hydro set 5 MW 300 r/min group 3, in service", "iso-10816-5-2000", "applies", /"3"/],
  ["wind turbine 2 MW part generator, in service", "iso-10816-21-2015", "applies", /generator/],
  ["motor 90 kW 280 mm grade A 1490 r/min mounting resilient, new", "iec-60034-14-2003", "applies", /"A"/],
  // shaft heights in mm are those of the metric frames, for which IEC 60034-14 is; in inches, of NEMA MG 1
  ["motor 125 hp frame NEMA 1785 r/min mounting resilient, new", "nema-mg1-7-table-7-1", "applies", /resilient/],
  ["pump 90 kW 2980 r/min category II test site region allowable, new", "iso-10816-7-2009-acceptance", "applies", /site/],
];

describe("selection of tables by nameplate", () => {
  it.each(cases)("%s: %s", (machine, scheme, status, classText) => {
    const first = best(machine);
    expect([first.scheme, first.status]).toEqual([scheme, status]);
    if (classText !== undefined) expect(JSON.stringify(first.machineClass)).toMatch(classText);
    expect(first.reason).toMatch(/^a /);
  });

  // ISO 14694 scope, read in its catalogue record: fans below 300 kW; larger ones use ISO 10816-3
  it("a fan below 300 kW: ISO 14694, not ISO 10816-3, and the other way round", () => {
    expect(excluded("fan 299 kW rigid", "iso-10816-3-2009")).toBe("a fan below 300 kW: ISO 14694, not ISO 10816-3");
    expect(excluded("fan 299 kW rigid", "iso-14694-2003")).toBeUndefined();
    expect(excluded("fan 300 kW rigid", "iso-14694-2003")).toMatch(/300 kW or more/);
    expect(excluded("fan 300 kW rigid", "iso-10816-3-2009")).toBeUndefined();
  });

  it("a pump: ISO 10816-7, and the groups of 1998 only as withdrawn", () => {
    const machine = "pump 250 kW 1490 r/min rigid, in service";
    expect(excluded(machine, "iso-10816-3-2009")).toMatch(/ISO 10816-7/);
    expect(excluded(machine, "iso-20816-3-2022")).toMatch(/ISO 10816-7/);
    expect(selectSchemes(machine).candidates.find(({ scheme }) => scheme === "iso-10816-3-1998")).toMatchObject({
      withdrawn: true,
      replacedBy: "ISO 10816-3:2009",
    });
  });

  it("never guesses a missing power or support silently", () => {
    const noSupport = best("motor 250 kW 1490 r/min, in service, housing");
    expect(noSupport).toMatchObject({
      scheme: "iso-20816-3-2022",
      status: "assumes",
      machineClass: { support: "rigid" },
    });
    expect(noSupport.missing.map(({ fact }) => fact)).toEqual(["support"]);
    expect(noSupport.missing[0]?.allowed).toEqual(["rigid", "flexible"]);
    expect(noSupport.assumedFacts).toEqual([
      "power in place of shaft height, which was not given",
      "support rigid: not given, and taken for its lower limits",
    ]);
    const noPower = best("fan flexible, in service, housing, BV-3");
    expect(noPower).toMatchObject({ scheme: "iso-14694-2003", status: "applies" });
    const neither = best({ type: "compressor", condition: "in service", place: "housing" });
    expect(neither).toMatchObject({ status: "assumes", machineClass: { group: "2", support: "rigid" } });
    expect(neither.missing).toMatchObject([{ fact: "support" }, { fact: "power", unit: "kW" }]);
    const fan = best("fan 90 kW rigid, in service");
    expect(fan).toMatchObject({
      scheme: "iso-14694-2003",
      status: "assumes",
      assumedFacts: ["category BV-5: not given, and taken for its lower limits"],
    });
    expect(fan.missing[0]?.ask).toMatch(/BV-3: heating, ventilating .* industrial process/);
    // the part is what was measured: it is asked, never assumed
    const turbine = best("wind turbine 2 MW, in service");
    expect(turbine).toMatchObject({ scheme: "iso-10816-21-2015", status: "asks", assumedFacts: [] });
    expect(turbine.machineClass).toBeUndefined();
  });

  it("says what stood in for the size that decides", () => {
    const assumed = (machine: string) => selectSchemes(machine).candidates[0]?.assumedFacts.join();
    expect(assumed("motor 250 kW rigid, in service, housing")).toMatch(/power in place of shaft height/);
    expect(assumed("motor 280 mm rigid, in service, housing")).toBe("");
    expect(assumed("motor group 2 250 kW rigid, in service, housing")).toBe("");
    expect(assumed("compressor 250 kW rigid, in service, housing")).toBe("");
    const untyped = selectSchemes("280 mm rigid, in service, housing").candidates;
    expect(untyped.find(({ scheme }) => scheme === "iso-10816-3-2009")?.assumedFacts.join()).toMatch(
      /taken for an electrical/,
    );
  });

  it("a gas turbine above 3 MW is left to its own part", () => {
    expect(excluded("gas turbine 10 MW rigid", "iso-10816-3-2009")).toMatch(/ISO 10816-4 or ISO 20816-4/);
    expect(best("gas turbine 10 MW 8000 r/min rigid, in service, housing").scheme).toBe("iso-10816-4");
    expect(best("gas turbine 2 MW 8000 r/min rigid, in service, housing").scheme).toBe("iso-20816-3-2022");
  });

  // scope of ISO 20816-4:2018, read in its record in the ISO catalogue
  it("a gas turbine above 40 MW at 3000 or 3600 r/min is of ISO 20816-2 on its shaft too, with the lower of two limits", () => {
    for (const speed of [3000, 3600]) {
      const machine = `gas turbine 60 MW ${speed} r/min`;
      expect(excluded(`${machine}, shaft`, "iso-20816-4-2018-shaft")).toMatch(/above 40 MW.*ISO 20816-2/);
      expect(judge("170 um pp", `${machine}, shaft`)).toMatchObject({
        scheme: "iso-20816-2-2017-shaft",
        zone: "C",
        provenance: "memory",
      });
    }
    expect(judge("88 um pp", "gas turbine 60 MW 3000 r/min, shaft").zone).toBe("B");
    expect(judge("240.5 um pp", "gas turbine 60 MW 3000 r/min, shaft").zone).toBe("D");
    expect(judge("170 um pp", "gas turbine 40 MW 3000 r/min, shaft").scheme).toBe("iso-20816-4-2018-shaft");
    expect(judge("170 um pp", "gas turbine 60 MW 5000 r/min, shaft").scheme).toBe("iso-20816-4-2018-shaft");
  });

  // the same record: not aero-derivatives
  it("an aero-derivative gas turbine is judged by no table, however it is written", () => {
    const machine = "aero-derivative gas turbine 30 MW 8000 r/min";
    expect(excluded(machine, "iso-20816-4-2018-shaft")).toMatch(/an aero-derivative gas turbine/);
    expect(excluded(machine, "iso-10816-4")).toMatch(/an aero-derivative gas turbine/);
    for (const place of ["housing", "shaft"])
      expect(() => judge("3 mm/s rms", `${machine}, ${place}`)).toThrow(/a machine that a scheme gives a verdict for/);
    for (const words of [
      "gas turbine 30 MW, aero-derivative",
      "aeroderivative, gas turbine 30 MW",
      "gas turbine, aircraft derivative, 30 MW",
      "generator driven by aero-derivative gas turbine 30 MW 3000 r/min",
    ])
      expect(() => judge("3 mm/s rms", words), words).toThrow();
  });

  it("asks for the kind of machine, the place and the condition where they decide", () => {
    const { missing, candidates } = selectSchemes("90 kW 1490 r/min rigid");
    expect(missing.map(({ fact }) => fact)).toEqual(expect.arrayContaining(["type", "place", "condition"]));
    expect(
      candidates.filter(({ status }) => status === "applies").every(({ scheme }) => /chart|rule|ranges/.test(scheme)),
    ).toBe(true);
  });

  it("place and condition narrow the choice", () => {
    const shaft = selectSchemes("motor 1 MW 3000 r/min shaft, in service").candidates.map(({ scheme }) => scheme);
    expect(shaft).toEqual(["iso-20816-3-2022-shaft", "iso-7919-3-2009"]);
    const service = selectSchemes("motor 90 kW 280 mm 1490 r/min rigid, in service, housing").candidates;
    expect(service.some(({ kind }) => kind === "acceptance")).toBe(false);
    const fresh = selectSchemes("motor 90 kW 280 mm 1490 r/min rigid, new, housing").candidates;
    expect(fresh[0]?.kind).toBe("acceptance");
  });

  it("computes the support by the 25 % rule", () => {
    // ISO 10816-3 clause as quoted in a motor maker's manual: at least 25 % above the main excitation frequency
    expect(supportOf("31.25 Hz", "1500 r/min")).toBe("rigid");
    expect(supportOf("31.24 Hz", "1500 r/min")).toBe("flexible");
    expect(supportOf({ hertz: 31.25 * (1 - 1e-12) }, { hertz: 25 })).toBe("rigid");
    expect(best("fan 400 kW 1500 r/min natural 31.25 Hz, in service").machineClass).toMatchObject({ support: "rigid" });
    expect(best("fan 400 kW 1500 r/min natural 20 Hz, in service").machineClass).toMatchObject({ support: "flexible" });
    expect(() => selectSchemes("fan 400 kW 1500 r/min natural 20 Hz rigid")).toThrow(/flexible support/);
  });

  it("every scheme is a candidate or excluded with a reason, whatever the machine", () => {
    for (const machine of ["pump 90 kW", "fan 90 kW", "motor", "gear drive", "wind turbine", ""]) {
      const { candidates, excluded: not } = selectSchemes(machine === "" ? {} : machine);
      expect(candidates.length + not.length).toBe(builtInSchemes.length);
      for (const one of not) expect(one.reason).toMatch(/\w/);
    }
  });

  it("chooses among schemes of your own too", () => {
    const own = defineScheme({
      id: "site",
      kind: "zones",
      standard: "Site rule, invented",
      machines: ["fan"],
      classes: [
        {
          criteria: [
            {
              as: "mm/s rms",
              limits: { "B/C": 5 },
              source: { title: "Site rule", provenance: "printed", page: "p. 3" },
            },
          ],
        },
      ],
    });
    const all: Scheme[] = [...builtInSchemes, own];
    expect(selectSchemes("fan 90 kW", all).candidates.map(({ scheme }) => scheme)).toContain("site");
    expect(selectSchemes("pump 90 kW", [own])).toMatchObject({
      candidates: [],
      excluded: [{ reason: "for fan only" }],
    });
  });

  it("assumes the lowest limits, of each where no row has the lowest throughout", () => {
    const source = { title: "Site rule", provenance: "printed", page: "p. 3" } as const;
    const rule = (flexible: Record<"A/B" | "B/C", number>) =>
      defineScheme({
        id: "site",
        kind: "zones",
        standard: "Site rule, invented",
        classes: [
          { when: { support: "rigid" }, criteria: [{ as: "mm/s rms", limits: { "A/B": 2, "B/C": 4 }, source }] },
          { when: { support: "flexible" }, criteria: [{ as: "mm/s rms", limits: flexible, source }] },
        ],
      });
    const first = (own: Scheme) => selectSchemes("fan 90 kW", [own]).candidates[0];
    expect(first(rule({ "A/B": 2, "B/C": 5 }))).toMatchObject({
      status: "assumes",
      machineClass: { support: "rigid" },
    });
    expect(first(rule({ "A/B": 1, "B/C": 5 }))).toMatchObject({
      status: "assumes",
      machineClass: { support: ["rigid", "flexible"] },
      assumedFacts: ["support: not given, and the lowest limits of all that it may be are taken"],
    });
  });

  it("refuses facts that are none", () => {
    expect(() => selectSchemes("pump 90 kW 80 kW")).toThrow(/one power/);
    expect(() => selectSchemes({ support: "soft" } as unknown as MachineRef)).toThrow(/allowed: rigid, flexible/);
  });
});
