import fc from "fast-check";
import { convertAmplitude, format, parseAmplitude, VeladisError } from "veladis";
import { judgeRoute, machineVerdict, type PlantMachine, type RouteReading } from "veladis/plant";
import {
  builtInSchemes,
  changeFromBaseline,
  classify,
  judge,
  judgePoints,
  type Machine,
  type Scheme,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { machineFor } from "../severity/machine-for";
import { asData, someNameplate } from "../severity/nameplates";

/** A row of a list with what is told of it. */
function row(tag: string, machine: Machine, more: Partial<PlantMachine> = {}): PlantMachine {
  return { tag, line: 2, machine, settings: {}, device: {}, own: {}, ...more };
}

const plantOf = (...machines: PlantMachine[]) => ({ machines, refused: [], ownColumns: [] });
const pump = { type: "pump", power: "90 kW", speed: "2980 r/min", category: "II" } as const;
const fan = { type: "fan", power: "132 kW", speed: "1485 r/min", support: "rigid", category: "BV-3" } as const;
const at = (tag: string, reading: string, line = 2, more: Partial<RouteReading> = {}): RouteReading => ({
  ...{ tag, line, reading },
  ...more,
});

const types = ["mm/s rms", "mm/s pk", "in/s pk", "in/s rms", "um pp", "mil pp", "g pk"] as const;
const someText = fc
  .tuple(
    fc.double({ min: 0, max: 80, noNaN: true }),
    fc.constantFrom(...types),
    fc.option(fc.integer({ min: 5, max: 100 })),
  )
  .map(([value, type, hz]) => `${Number(value.toPrecision(4))} ${type}${hz === null ? "" : ` at ${hz} Hz`}`);

/** A refusal as its code, or what is made of an answer. */
function orCode<Answer>(ask: () => Answer): Answer | string {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    return error.code;
  }
}

describe("a route by tag", () => {
  it("gives each reading the zones that judge gives by its own machine's nameplate", () => {
    fc.assert(
      fc.property(someNameplate, someText, (plate, reading) => {
        const machine = asData(plate);
        const alone = orCode(() => judge(reading, machine));
        const judged = orCode(() => judgeRoute(plantOf(row("M", machine)), [at("M", reading)]));
        if (typeof judged === "string") {
          // a nameplate that contradicts itself is no machine of a plant
          expect(judged).toBe(alone);
          return;
        }
        const { verdicts, refused } = judged;
        const [verdict] = verdicts;
        if (typeof alone === "string") {
          expect(refused.map(({ code }) => code)).toEqual([alone === "missing-fact" ? refused[0]?.code : alone]);
          expect(verdicts).toEqual([]);
          return;
        }
        if (verdict === undefined) {
          // of another quantity than all limits, a reading without its frequency is refused here
          expect(["missing-frequency", "missing-fact"]).toContain(refused[0]?.code);
          return;
        }
        expect([verdict.zone, verdict.worst]).toEqual([alone.zone, alone.worst]);
        if (alone.zone !== alone.zones.at(-1) && alone.margin.ratio >= 1) {
          expect(1 / verdict.ratio).toBeCloseTo(1 / alone.margin.ratio, 9);
        }
      }),
      { numRuns: 400 },
    );
  }, 120_000);

  it("gives each reading what classify gives by the table that its row names", () => {
    const cases = (builtInSchemes as readonly Scheme[])
      .filter(({ informative }) => informative === undefined)
      .flatMap((scheme) => scheme.classes.map((one) => [scheme, machineFor(scheme, one)] as const));
    fc.assert(
      fc.property(fc.constantFrom(...cases), someText, ([scheme, machine], reading) => {
        const told = { scheme, machine, assume: "lowest limits" } as const;
        const alone = orCode(() => classify(reading, told));
        const { verdicts } = judgeRoute(plantOf(row("M", machine, { table: scheme.id })), [at("M", reading)]);
        const [verdict] = verdicts;
        if (typeof alone === "string") {
          expect(verdict).toBeUndefined();
          return;
        }
        if (verdict === undefined) return;
        expect([verdict.zone, verdict.worst, verdict.headline]).toEqual([alone.zone, alone.worst, alone.headline]);
        expect(verdict.limit.name).toBe(alone.limit.name);
        expect(1 / verdict.ratio).toBeCloseTo(1 / alone.margin.ratio, 9);
      }),
      { numRuns: 400 },
    );
  }, 120_000);

  it("judges by limits of the maker: up to B/C it is A or B, above C/D it is D", () => {
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the blower" };
    const plant = plantOf(row("G-1", { type: "lobe blower" }, { limits }));
    const route = [4.5, 4.6, 7.1, 7.2].map((value, i) => at("G-1", `${value} mm/s rms`, i + 2));
    const { verdicts, bases } = judgeRoute(plant, route);
    const byLine = [...verdicts].sort((a, b) => a.line - b.line).map(({ zone }) => zone);
    expect(byLine).toEqual(["AB", "C", "C", "D"]);
    expect(bases[0]?.chosenBy).toBe("limits");
    expect(bases[0]?.limitSources[0]?.title).toBe("maker of the blower");
  });

  it("gives equal readings in other units one zone, whatever their order", () => {
    // 2.9 mm/s rms is 2.9 x sqrt(2) / 25.4 = 0.16146 in/s pk
    const peak = (2.9 * Math.SQRT2) / 25.4;
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 20, noNaN: true }), (level) => {
        const same = types
          .slice(0, 4)
          .map((type) => format(convertAmplitude(`${level} mm/s rms`, type), { digits: 15 }));
        const { verdicts } = judgeRoute(
          plantOf(row("P-1", pump)),
          same.map((text, i) => at("P-1", text, i + 2, { point: `${i}` })),
        );
        expect(new Set(verdicts.map(({ zone }) => zone)).size).toBe(1);
      }),
    );
    const { verdicts } = judgeRoute(plantOf(row("P-1", pump)), [
      at("P-1", `${peak} in/s pk`),
      at("P-1", "2.9 mm/s rms", 3),
    ]);
    expect(verdicts.map(({ zone }) => zone)).toEqual(["A", "A"]);
  });

  it("gives worst first, then the order of the route, and names who was not read", () => {
    const plant = plantOf(row("P-1", pump), row("P-2", pump), row("P-3", pump));
    const route = [
      at("P-2", "2 mm/s rms", 2),
      at("P-1", "9 mm/s rms", 3),
      at("P-2", "6 mm/s rms", 4),
      at("P-1", "1 mm/s rms", 5),
    ];
    const { verdicts, unread } = judgeRoute(plant, route);
    expect(verdicts.map(({ line, zone }) => [line, zone])).toEqual([
      [3, "D"],
      [4, "C"],
      [2, "A"],
      [5, "A"],
    ]);
    expect(unread).toEqual([{ tag: "P-3", line: 2 }]);
  });

  it("judges a range of speeds on the safe side", () => {
    // ISO 7919-3: the limits of the shaft fall with the root of the speed, so the highest governs (from memory)
    const slow = { type: "steam turbine", power: "5 MW", place: "shaft" } as const;
    const range = { ...slow, speed: { from: "3000 r/min", to: "9000 r/min" } } as const;
    const [one, other] = [range, { ...slow, speed: "9000 r/min" } as const].map(
      (machine) =>
        judgeRoute(plantOf(row("T", machine, { table: "iso-7919-3-2009" })), [at("T", "60 um pp")]).verdicts[0],
    );
    expect(one?.limit.value).toBeCloseTo(other?.limit.value as number, 9);
    expect(one?.zone).toBe(other?.zone);
  });
});

describe("what gets no verdict", () => {
  const cell = { line: 4, tag: "P-9", column: "trip", code: "missing-unit", message: "expected a unit" };
  const plant = {
    machines: [row("P-1", pump), row("P-2", pump), row("P-2", fan, { line: 3 }), row("P-9", pump)],
    refused: [cell],
    ownColumns: [],
  };
  const refusalOf = (reading: RouteReading) => {
    const { verdicts, refused } = judgeRoute(plant, [reading]);
    expect(verdicts).toEqual([]);
    return [refused[0]?.line, refused[0]?.code, refused[0]?.didYouMean?.[0]];
  };

  it("is a tag that no row has, or two rows have, or whose row was refused", () => {
    expect(refusalOf(at("P-10", "2 mm/s rms", 7))).toEqual([7, "unknown-option", "P-1"]);
    expect(refusalOf(at("P-2", "2 mm/s rms", 8))).toEqual([8, "out-of-range", undefined]);
    expect(refusalOf(at("P-9", "2 mm/s rms", 9))).toEqual([9, "missing-fact", undefined]);
    expect(refusalOf(at("p-1", "2 mm/s rms", 9))).toEqual([9, "unknown-option", "P-1"]);
  });

  it("is a wrong date, a unit without its detector, and a reading with its uncertainty", () => {
    expect(refusalOf(at("P-1", "2 mm/s rms", 2, { date: "2026-02-30" }))[1]).toBe("out-of-range");
    expect(refusalOf(at("P-1", "2 mm/s rms", 2, { date: "31.03.2026" }))[1]).toBe("syntax");
    expect(refusalOf(at("P-1", "2 mm/s", 2))[1]).toBe("missing-detector");
    expect(refusalOf(at("P-1", "2 ± 0.1 mm/s rms", 2))[1]).toBe("syntax");
    expect(refusalOf(at("P-1", "-2 mm/s rms", 2))[1]).toBe("negative");
  });

  it("is a reading of another quantity without its frequency: the running speed is not taken for it", () => {
    const housing = { ...pump, place: "housing" } as const;
    const other = plantOf(row("P-1", housing));
    expect(judgeRoute(other, [at("P-1", "40 um pp")]).refused[0]?.code).toBe("missing-frequency");
    const told = judgeRoute(other, [
      at("P-1", "40 um pp at 2980 r/min"),
      at("P-1", "40 um pp", 3, { at: "2980 r/min" }),
    ]);
    expect(told.verdicts.map(({ zone }) => zone)).toEqual(
      [judge("40 um pp at 2980 r/min", housing).zone, "C"].map(() => told.verdicts[0]?.zone),
    );
    expect(told.verdicts[0]?.zone).toBe(judge("40 um pp at 2980 r/min", housing).zone);
    const twice = judgeRoute(other, [at("P-1", "40 um pp at 25 Hz", 2, { at: "50 Hz" })]);
    expect(twice.refused[0]?.code).toBe("out-of-range");
  });

  it("is a row with a table and limits, by which nobody could say it", () => {
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" };
    const both = row("P-1", pump, { table: "iso-10816-7-2009", limits });
    expect(judgeRoute(plantOf(both), [at("P-1", "2 mm/s rms")]).refused[0]?.code).toBe("out-of-range");
    expect(() => machineVerdict(both, "2 mm/s rms")).toThrow(VeladisError);
    const units = { ...limits, "B/C": "0.2 in/s pk" };
    expect(judgeRoute(plantOf(row("P-1", pump, { limits: units })), [at("P-1", "2 mm/s rms")]).refused[0]?.code).toBe(
      "wrong-type",
    );
  });

  it("is never the whole route: the others are judged", () => {
    const { verdicts, refused } = judgeRoute(plant, [
      at("P-9", "2 mm/s rms", 2),
      at("P-1", "2 mm/s rms", 3),
      at("X", "2 mm/s rms", 4),
    ]);
    expect(verdicts.map(({ line }) => line)).toEqual([3]);
    expect(refused.map(({ line }) => line)).toEqual([2, 4]);
  });
});

describe("what has changed", () => {
  const level = parseAmplitude("2.2 mm/s rms");
  const known = plantOf(row("P-1", pump, { baseline: { level, date: "2026-01-10", count: 12 } }));

  it("since the baseline is what changeFromBaseline says, in any unit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 15, noNaN: true }),
        fc.constantFrom(...types.slice(0, 4)),
        (value, type) => {
          const reading = format(convertAmplitude(`${value} mm/s rms`, type), { digits: 12 });
          const change = judgeRoute(known, [at("P-1", reading)]).verdicts[0]?.sinceBaseline;
          const alone = changeFromBaseline(reading, level, {
            scheme: "iso-10816-7-2009",
            machine: pump,
            assume: "lowest limits",
          });
          expect(change?.significant).toBe(alone.significant);
          expect(change?.direction).toBe(alone.direction);
          expect(change?.change).toBeCloseTo(alone.change, 9);
          expect(change?.ratio).toBeCloseTo(alone.ratio, 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("is no fall where several points are read, since the baseline names none", () => {
    const route = [at("P-1", "0.4 mm/s rms", 2, { point: "DE-H" }), at("P-1", "4.9 mm/s rms", 3, { point: "DE-V" })];
    const { verdicts } = judgeRoute(known, route);
    expect(verdicts.map(({ point, sinceBaseline }) => [point, sinceBaseline?.significant])).toEqual([
      ["DE-V", true],
      ["DE-H", null],
    ]);
    expect(judgeRoute(known, [at("P-1", "0.4 mm/s rms")]).verdicts[0]?.sinceBaseline?.significant).toBe(true);
  });

  it("is not told since a baseline of a later day", () => {
    const [verdict] = judgeRoute(known, [at("P-1", "4 mm/s rms", 2, { date: "2025-12-01" })]).verdicts;
    expect(verdict?.sinceBaseline).toBeNull();
    expect(verdict?.cautions[0]).toContain("after this reading");
  });

  it("since the last route goes by tag and point, the latest of several days", () => {
    const before = [
      at("P-1", "3 mm/s rms", 2, { point: "DE-H", date: "2026-01-05" }),
      at("P-1", "2 mm/s rms", 3, { point: "de-h ", date: "2026-02-05" }),
      at("P-1", "9 mm/s rms", 4, { point: "DE-V", date: "2026-02-05" }),
      at("P-1", "9 mm/s rms", 5, { point: "NDE", date: "2026-02-05" }),
    ];
    const now = [
      at("P-1", "2.5 mm/s rms", 2, { point: "DE-H", date: "2026-03-05" }),
      at("P-1", "8 mm/s rms", 3, { point: "DE-V", date: "2026-02-05" }),
    ];
    const { verdicts, pointsUnread } = judgeRoute(known, now, { before });
    const [vertical, horizontal] = verdicts;
    expect(horizontal?.sinceLast?.change).toBeCloseTo(0.5, 12);
    expect(horizontal?.sinceLast?.significant).toBe(false);
    expect(vertical?.sinceLast).toBeNull();
    expect(vertical?.cautions.join()).toContain("not before");
    expect(pointsUnread).toEqual([{ tag: "P-1", point: "NDE", line: 5 }]);
  });

  it("is not told since a point that the last route has twice on one day", () => {
    const before = [at("P-1", "3 mm/s rms", 2), at("P-1", "2 mm/s rms", 3)];
    const [verdict] = judgeRoute(known, [at("P-1", "4 mm/s rms")], { before }).verdicts;
    expect(verdict?.sinceLast).toBeNull();
    expect(verdict?.cautions.join()).toContain("more than once");
  });
});

describe("a point of the housing by its name", () => {
  it("is not judged by limits of the shaft, whether place, table or both say so", () => {
    const turbine = { type: "steam turbine", power: "12 MW", speed: "5400 r/min" } as const;
    const codesOf = (machine: Machine, point: string, more: Partial<PlantMachine> = {}) =>
      judgeRoute(plantOf(row("T", machine, more)), [at("T", "60 um pp", 2, { point })]).refused.map(({ code }) => code);
    for (const point of ["bearing housing H", "casing vertical"]) {
      expect(codesOf({ ...turbine, place: "shaft" }, point)).toEqual(["out-of-range"]);
      expect(codesOf(turbine, point, { table: "iso-7919-3-2009" })).toEqual(["out-of-range"]);
      expect(orCode(() => judgePoints(`${point} 60 um pp`, { ...turbine, place: "shaft" }))).toBe("out-of-range");
    }
    expect(codesOf({ ...turbine, place: "shaft" }, "bearing 1 X")).toEqual([]);
    const housed = judgeRoute(plantOf(row("T", { ...turbine, place: "housing" })), [
      at("T", "2 mm/s rms", 2, { point: "bearing housing H" }),
    ]);
    expect(housed.refused).toEqual([]);
  });

  it("has a machine whose facts are yet to be confirmed refused, as ? and maybe are", () => {
    for (const words of ["category II (to be confirmed)", "category II tbc", "category II, unconfirmed"]) {
      expect(
        orCode(() => judge("2 mm/s rms", `pump 90 kW 2980 r/min ${words}`)),
        words,
      ).toBe("syntax");
    }
  });
});

describe("a reading at a setpoint as it is set", () => {
  const set = { alarm: parseAmplitude("4 mm/s rms"), trip: parseAmplitude("7 mm/s rms") };
  const plant = plantOf(row("P-1", { ...pump, place: "housing" }, set));
  const asked = (reading: string) => judgeRoute(plant, [at("P-1", reading)]).verdicts[0]?.cautions.join() ?? "";

  it("is told with its verdict: of the trip why it did not act, of the alarm whether it stands", () => {
    expect(asked("7 mm/s rms")).toContain("at or above the trip as set, 7.00 mm/s rms: why did it not act?");
    expect(asked("6.9 mm/s rms")).toContain("at or above the alarm as set, 4.00 mm/s rms: does it stand?");
    expect(asked("3.9 mm/s rms")).toBe("");
  });

  it("is told in any type, at the frequency of the reading where it is of another quantity", () => {
    // 7 mm/s rms is 7 x sqrt(2) / 25.4 = 0.3897 in/s pk; at 50 Hz 7 x 2 x sqrt(2) / (2 pi 50) x 1000 = 63.02 um pp
    expect(asked("0.390 in/s pk")).toContain("the trip");
    expect(asked("0.389 in/s pk")).toContain("the alarm");
    expect(asked("63.1 um pp at 50 Hz")).toContain("the trip");
    expect(asked("62.9 um pp at 50 Hz")).toContain("the alarm");
    // 20 lg(7e-3 / 1e-9) = 136.9 dB
    expect(asked("137 dB re 1e-9 m/s")).toContain("the trip");
  });

  it("that cannot be held against readings of another quantity is named", () => {
    const other = plantOf(row("P-1", { ...pump, place: "shaft" }, { trip: set.trip }));
    const { bases } = judgeRoute(other, [at("P-1", "40 um pp")]);
    expect(bases[0]?.cautions.join()).toContain("readings in um pp are not held against the trip in mm/s rms");
  });
});

describe("what a verdict rests on", () => {
  it("is told once for all readings of a machine in one type, with grade, sources and cautions", () => {
    const plant = plantOf(row("P-1", { type: "pump", power: "90 kW" }));
    const { bases, verdicts, cautions } = judgeRoute(
      plant,
      [1, 2, 3, 4].map((value) => at("P-1", `${value} mm/s rms`, value)),
    );
    expect(bases.length).toBe(1);
    const [basis] = bases;
    const whole = judge("3 mm/s rms", { type: "pump", power: "90 kW" });
    expect(basis?.assumedFacts).toEqual(whole.assumedFacts);
    expect(basis?.provenance).toBe(whole.provenance);
    expect(basis?.cautions).toEqual(whole.cautions);
    expect(basis?.limitSources.length).toBeGreaterThan(0);
    expect(verdicts.every((one) => one.basis === 0)).toBe(true);
    expect(cautions.length).toBeGreaterThan(2);
  });

  it("carries the history of a reading that was converted or came by a loop", () => {
    const converted = convertAmplitude("0.25 in/s pk", "mm/s rms");
    const clipped = parseAmplitude("20 mm/s rms (above range)");
    const { verdicts } = judgeRoute(plantOf(row("P-1", pump)), [
      { tag: "P-1", line: 2, point: "a", reading: converted },
      { tag: "P-1", line: 3, point: "b", reading: clipped },
    ]);
    const [above, other] = verdicts;
    expect(other?.assumed).toEqual(["sine"]);
    expect(other?.history?.length).toBeGreaterThan(1);
    expect(above?.line).toBe(3);
    const below = parseAmplitude("0 mm/s rms (below range)");
    expect(judgeRoute(plantOf(row("P-1", pump)), [{ tag: "P-1", line: 2, reading: below }]).refused[0]?.code).toBe(
      "sensor-fault",
    );
  });

  it("says of a reading of zero what judge says", () => {
    const [verdict] = judgeRoute(plantOf(row("P-1", pump)), [at("P-1", "0 mm/s rms")]).verdicts;
    expect(verdict?.cautions[0]).toContain("a reading of zero");
    expect(verdict?.ratio).toBe(Number.POSITIVE_INFINITY);
  });

  it("is judged by a confirmed or own table where one is given", () => {
    const own = (builtInSchemes as readonly Scheme[]).find(({ id }) => id === "iso-10816-7-2009") as Scheme;
    const plant = plantOf(row("P-1", pump, { table: own.id }));
    expect(judgeRoute(plant, [at("P-1", "2 mm/s rms")], { schemes: [own] }).bases[0]?.schemes).toEqual([own.id]);
    expect(
      judgeRoute(plantOf(row("P-1", pump, { table: "no-such-table" })), [at("P-1", "2 mm/s rms")]).refused[0]?.code,
    ).toBe("unknown-option");
  });
});

describe("what is no route", () => {
  it("is refused with its place", () => {
    const plant = plantOf(row("P-1", pump));
    const codeOf = (ask: () => unknown) => orCode(ask);
    expect(codeOf(() => judgeRoute(undefined as never, []))).toBe("missing-option");
    expect(codeOf(() => judgeRoute(plant, undefined as never))).toBe("missing-option");
    expect(codeOf(() => judgeRoute(plant, [7 as never]))).toBe("wrong-type");
    expect(codeOf(() => judgeRoute(plant, [{ ...at("P-1", "2 mm/s rms"), pont: "DE" } as never]))).toBe(
      "unknown-option",
    );
    expect(codeOf(() => judgeRoute(plant, [], { befor: [] } as never))).toBe("unknown-option");
    expect(codeOf(() => judgeRoute(plant, [{ tag: 7, line: 2, reading: "2 mm/s rms" } as never]))).toBe("wrong-type");
  });
});
