import { machineTypes, type Scheme, type SchemeInput, selectSchemes } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { bySupport, inPrint, recalled, siteRule, zonesIn } from "./own-scheme";

type Parts = Partial<SchemeInput>;

const low = zonesIn("mm/s rms", { "A/B": 1, "B/C": 2 });
const high = zonesIn("mm/s rms", { "A/B": 2, "B/C": 4 });
const supports = bySupport([low], [high]);
const categories = [
  { when: { category: "I" }, criteria: [low] },
  { when: { category: "II" }, criteria: [high] },
];

function candidate(machine: string, parts: Parts) {
  const [first] = selectSchemes(machine, [siteRule("12", parts)]).candidates;
  if (first === undefined) throw new Error("no candidate");
  return first;
}

describe("a candidate", () => {
  it("is told with all that is known of it", () => {
    const own = siteRule("12", { edition: "2020", scope: "fans of the heating works", machines: ["fan"] });
    expect(selectSchemes("fan 90 kW, in service, housing", [own])).toStrictEqual({
      candidates: [
        {
          scheme: "12",
          standard: "Site rule 12",
          edition: "2020",
          kind: "zones",
          status: "applies",
          reason: "a fan, in service, readings on the housing: fans of the heating works",
          missing: [],
          assumedFacts: [],
          machineClass: {},
          provenance: "printed",
          verified: true,
          withdrawn: false,
        },
      ],
      excluded: [],
      missing: [],
    });
  });

  it("that is withdrawn names what replaced it", () => {
    const { withdrawn, replacedBy } = candidate("fan", { status: "withdrawn", replacedBy: "Site rule 13" });
    expect([withdrawn, replacedBy]).toEqual([true, "Site rule 13"]);
  });

  // biome-ignore format: a row of a table is a line
  const reasons: [machine: string, parts: Parts, reason: string][] = [
    ["90 kW", {}, "any machine of its scope, in service, readings on the housing: works"],
    ["fan 90 kW, new", {}, "a fan, new, readings on the housing: works"],
    ["fan 90 kW, new", { kind: "acceptance" }, "a fan, acceptance test, readings on the housing: works"],
    ["fan 90 kW, shaft", { place: "shaft" }, "a fan, in service, readings of the shaft: works"],
    ["fan category II", { classes: categories }, "a fan, in service, readings on the housing: works; class: category II"],
    ["fan", { classes: categories, ask: ["category"] }, "a fan, in service, readings on the housing: works"],
  ];

  it.each(reasons)("says for whom, when and where: %s, %j", (machine, parts, reason) => {
    expect(candidate(machine, { scope: "works", ...parts }).reason).toBe(reason);
  });

  it("is verified where every limit that can apply was read in print", () => {
    const verified = (machine: string, parts: Parts) => candidate(machine, parts).verified;
    const of = (...criteria: ReturnType<typeof zonesIn>[]): Parts => ({ classes: [{ criteria }] });
    const memory = zonesIn("um pp", { "A/B": 20, "B/C": 40 }, recalled);
    expect(verified("fan", of(low))).toBe(true);
    expect(verified("fan", of(memory))).toBe(false);
    expect(verified("fan", of(low, memory))).toBe(false);
    expect(verified("fan", of({ ...low, limitSources: { "A/B": recalled } }))).toBe(false);
    expect(verified("fan", of({ ...low, source: recalled, limitSources: { "A/B": inPrint } }))).toBe(false);
    // of a class taken for its lower limits only that class counts; of classes still open each does
    const open = bySupport([low], [{ ...high, source: recalled }]);
    expect(verified("fan", { classes: open })).toBe(true);
    expect(verified("fan", { classes: open, ask: ["support"] })).toBe(false);
    // a criterion for slow machines counts unless the machine is known to be fast
    const slow = of(low, { ...memory, when: { speed: { to: 600 } } });
    expect(verified("fan 2980 r/min", slow)).toBe(true);
    expect(verified("fan 500 r/min", slow)).toBe(false);
    expect(verified("fan", slow)).toBe(false);
  });
});

describe("what is asked of a machine", () => {
  const type = { fact: "type", ask: "the kind of machine", allowed: Object.keys(machineTypes) };
  const place = {
    fact: "place",
    ask: "where the reading was taken: on the housing, or the shaft against its housing",
    allowed: ["housing", "shaft"],
  };
  const condition = {
    fact: "condition",
    ask: "whether the machine is new or in service",
    allowed: ["new", "in service"],
  };
  // biome-ignore format: a row of a table is a line
  const asked: [machine: string, parts: Parts, missing: object[]][] = [
    ["90 kW", {}, []],
    ["90 kW", { machines: ["fan"] }, [type]],
    ["fan", { machines: ["fan"] }, []],
    ["fan", { place: "shaft" }, [place]],
    ["fan shaft", { place: "shaft" }, []],
    ["fan", { kind: "acceptance" }, [condition]],
    ["fan new", { kind: "acceptance" }, []],
  ];

  it.each(asked)("the scope: %s, %j", (machine, parts, missing) => {
    const { candidates, missing: all } = selectSchemes(machine, [siteRule("12", parts)]);
    expect(candidates[0]?.missing).toStrictEqual(missing);
    expect(candidates[0]?.status).toBe(missing.length === 0 ? "applies" : "asks");
    expect(all).toStrictEqual(missing);
  });

  it("a fact of the scope and of the classes is asked once, beside the others", () => {
    const classes = (["fan", "pump"] as const).flatMap((kind) =>
      supports.map(({ when, criteria }) => ({ when: { type: kind, ...when }, criteria })),
    );
    const { missing } = candidate("90 kW", { machines: ["fan", "pump"], classes });
    expect(missing.map(({ fact }) => fact)).toEqual(["type", "support"]);
    expect(missing[0]).toStrictEqual(type);
  });

  it("of several tables: what most of them miss comes first, with the answers that any of them knows", () => {
    const other = [
      { when: { category: "II" }, criteria: [low] },
      { when: { category: "III" }, criteria: [high] },
    ];
    const powers = [
      { when: { power: { to: 15 } }, criteria: [low] },
      { when: { power: { above: 15 } }, criteria: [high] },
    ];
    const schemes = [
      siteRule("1", { classes: powers }),
      siteRule("2", { classes: categories }),
      siteRule("3", { classes: other }),
    ];
    expect(selectSchemes("fan", schemes).missing).toStrictEqual([
      { fact: "category", ask: "the category of the standard", allowed: ["I", "II", "III"] },
      { fact: "power", ask: "the rated power", unit: "kW" },
    ]);
  });
});

describe("the order of candidates", () => {
  // biome-ignore format: a row of a table is a line
  const orders: [what: string, machine: string, before: Parts, after: Parts][] = [
    ["in service: a table for service before an acceptance test", "fan, in service", {}, { kind: "acceptance" }],
    ["new: an acceptance test before a table for service", "fan, new", { kind: "acceptance" }, {}],
    ["grades last of those", "fan, in service", { status: "guide" }, { kind: "grades" }],
    ["of unknown place: the housing before the shaft", "fan, in service", { status: "guide" }, { place: "shaft" }],
    ["an edition in force before a withdrawn one", "fan", {}, { status: "withdrawn", replacedBy: "Site rule 13" }],
    ["a withdrawn edition before a guide", "fan", { status: "withdrawn", replacedBy: "Site rule 13" }, { status: "guide" }],
    ["a withdrawn edition before ranges for orientation", "fan", { status: "withdrawn", replacedBy: "Site rule 13" }, { informative: true }],
    ["a table for just this machine before one for any, though it asks", "fan", { machines: ["fan"], classes: categories, ask: ["category"] }, {}],
    ["a table for one kind of machine before one for two", "fan", { machines: ["fan"] }, { machines: ["fan", "pump"] }],
    ["a table for two kinds before one for any", "fan", { machines: ["fan", "pump"] }, {}],
    ["a newer edition that assumes before an older one that knows", "fan", { edition: "2016", classes: supports }, { edition: "1990" }],
    ["a newer edition before an older one", "fan", { edition: "2016" }, { edition: "2009" }],
    ["the year of an edition, wherever it stands", "fan", { edition: "5th edition of 2016" }, { edition: "9th edition of 2009" }],
    ["an edition with a year before one without", "fan", { edition: "2016" }, { edition: "9th" }],
  ];

  it.each(orders)("%s", (_, machine, before, after) => {
    const [one, other]: Scheme[] = [siteRule("before", before), siteRule("after", after)];
    for (const schemes of [
      [one, other],
      [other, one],
    ] as Scheme[][]) {
      expect(selectSchemes(machine, schemes).candidates.map(({ scheme }) => scheme)).toEqual(["before", "after"]);
    }
  });

  it("of equals the one given first", () => {
    const ids = (...names: string[]) =>
      selectSchemes(
        "fan",
        names.map((name) => siteRule(name)),
      ).candidates.map(({ scheme }) => scheme);
    expect(ids("1", "2", "3")).toEqual(["1", "2", "3"]);
    expect(ids("3", "1", "2")).toEqual(["3", "1", "2"]);
  });
});

describe("why a table is not for a machine", () => {
  const rule = "Site rule 12 (2020)";
  // biome-ignore format: a row of a table is a line
  const reasons: [machine: string, parts: Parts, reason: string][] = [
    ["fan shaft", {}, "for readings on the housing"],
    ["fan housing", { place: "shaft" }, "for readings on the shaft"],
    ["motor", { machines: ["fan", "pump"] }, "for fan, pump only"],
    ["fan", { exclusions: [{ when: { type: "fan" }, reason: "a fan: Site rule 13" }] }, "a fan: Site rule 13"],
    ["fan 400 kW", { within: { power: { above: 15, to: 300 } } }, "for power above 15 to 300 kW; this machine: 400 kW"],
    ["fan category III", { within: { category: ["I", "II"] } }, 'for category I or II; this machine: "III"'],
    ["fan category III", { classes: categories }, `for the category of the standard, as in ${rule}; this machine: "III"`],
    ["fan 2980 r/min", { classes: [1500, 3000].map((speed) => ({ when: { speed: { oneOf: [speed] } }, criteria: [low] })) }, `for the running speed within ${rule}: 1500 r/min; 3000 r/min; this machine: 2980 r/min`],
    ["fan 2980 r/min", { classes: [{ when: { speed: { to: 1500 } }, criteria: [low] }] }, `for the running speed within ${rule}: up to 1500 r/min; this machine: 2980 r/min`],
    ["fan rigid category I", { classes: [{ when: { support: "rigid", category: "II" }, criteria: [low] }, { when: { support: "flexible", category: "I" }, criteria: [low] }] }, `for a machine within ${rule}, whose category and support agree; this machine: category "I", support "rigid"`],
  ];

  it.each(reasons)("%s, %j", (machine, parts, reason) => {
    expect(selectSchemes(machine, [siteRule("12", { edition: "2020", ...parts })]).excluded).toEqual([
      { scheme: "12", standard: "Site rule 12", edition: "2020", reason },
    ]);
  });

  it("a label is the same in any case", () => {
    expect(candidate("fan category ii", { classes: categories }).machineClass).toEqual({ category: "II" });
  });
});
