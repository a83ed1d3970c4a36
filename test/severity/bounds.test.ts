import fc from "fast-check";
import { classify, judge, machineClassifier } from "veladis/severity";
import { describe, expect, it } from "vitest";

/** ISO 10816-3:2009 group 1 rigid: velocity 2.3, 4.5, 7.1 mm/s RMS (read), displacement 29, 57, 90 um RMS (memory). */
const velocities = [2.3, 4.5, 7.1] as const;
const displacements = [29, 57, 90] as const;

const zoneOf = (value: number, limits: readonly number[]) => limits.filter((limit) => value > limit).length;
const letters = ["A", "B", "C", "D"] as const;

/** A vibration as the lines of its spectrum: frequency in Hz and RMS displacement in um. */
interface Line {
  readonly hertz: number;
  readonly um: number;
}

const rss = (values: readonly number[]) => Math.sqrt(values.reduce((sum, value) => sum + value * value, 0));
const displacementOf = (lines: readonly Line[]) => rss(lines.map(({ um }) => um));
const velocityOf = (lines: readonly Line[]) => rss(lines.map(({ hertz, um }) => (2 * Math.PI * hertz * um) / 1000));

const byScheme = (reading: string, speed: number) =>
  classify(reading, { scheme: "iso-10816-3-2009", machine: `group 1 rigid housing ${speed} r/min` });

/** Two lines at running speed and above, of some size about the limits. */
const someVibration = fc
  .record({
    speed: fc.double({ min: 150, max: 12_000, noNaN: true }),
    orders: fc.tuple(fc.double({ min: 1, max: 1.2, noNaN: true }), fc.double({ min: 1, max: 30, noNaN: true })),
    sizes: fc.tuple(fc.double({ min: -2, max: 2, noNaN: true }), fc.double({ min: -5, max: 2, noNaN: true })),
    large: fc.boolean(),
  })
  .map(({ speed, orders, sizes, large }) => {
    const running = speed / 60;
    // about a limit of displacement, or about one of velocity
    const about = large ? 50 : (1000 * 4) / (2 * Math.PI * running);
    return {
      speed,
      lines: orders.map((order, i) => ({ hertz: order * running, um: about * 2 ** (sizes[i] as number) })),
    };
  });

describe("one reading alone of a vibration with nothing below running speed", () => {
  it.each(["displacement", "velocity"] as const)(
    "%s: the zone by both criteria is among those possible",
    (quantity) => {
      let more = 0;
      fc.assert(
        fc.property(someVibration, ({ speed, lines }) => {
          const [um, velocity] = [displacementOf(lines), velocityOf(lines)];
          const truth = letters[Math.max(zoneOf(um, displacements), zoneOf(velocity, velocities))];
          const reading = quantity === "displacement" ? `${um} um rms` : `${velocity} mm/s rms`;
          const verdict = byScheme(reading, speed);
          expect(verdict.possible, `${reading} at ${speed} r/min: ${verdict.headline}`).toContain(truth);
          if (verdict.possible.length > 1) more++;
          expect(verdict.possible.at(-1)).toBe(verdict.worst);
          expect(verdict.possible[0]).toBe(verdict.zone);
        }),
        { numRuns: 2000 },
      );
      // the set says something: it is one zone more often than not for a velocity, and never for a healthy displacement
      expect(more).toBeGreaterThan(100);
      expect(more).toBeLessThan(quantity === "velocity" ? 1000 : 2000);
    },
  );
});

describe("a displacement alone", () => {
  it("means a velocity of at least 2 pi f1 d", () => {
    // 20 um RMS at 1500 r/min is 2 pi 25 Hz x 20 um = 3.14 mm/s RMS
    const verdict = byScheme("20 um rms", 1500);
    expect(verdict.judged.value).toBeCloseTo((2 * Math.PI * 25 * 20) / 1000, 9);
    expect(verdict).toMatchObject({ zone: "B", bound: "least", headline: "zone B or worse", worst: "D" });
    expect(verdict.assumedFacts.join()).toMatch(/nothing below running speed, 25\.0 Hz: assumed/);
    expect(verdict.criteria.map(({ bound }) => bound)).toEqual(["least", "exact"]);
    // nothing is worse than the worst zone
    expect(byScheme("46 um rms", 1500)).toMatchObject({ headline: "zone D", possible: ["D"] });
  });

  it("at a frequency that is told is what it says", () => {
    expect(
      classify("20 um rms at 25 Hz", { scheme: "iso-10816-3-2009", machine: "group 1 rigid 1500 r/min" }),
    ).toMatchObject({ headline: "zone B", possible: ["B"], bound: "exact" });
  });
});

describe("a velocity alone", () => {
  // 4.5 mm/s RMS and 57 um RMS, both B/C, are one sine at 4.5e-3/(2 pi 57e-6) Hz, that is 754 r/min
  const crossing = ((4.5e-3 / (2 * Math.PI * 57e-6)) * 60) as number;

  it("is complete above the crossing of the two criteria, and open below it", () => {
    expect(crossing).toBeCloseTo(754, 0);
    expect(byScheme("4.5 mm/s rms", crossing * 1.001)).toMatchObject({ headline: "zone B", possible: ["B"] });
    expect(byScheme("4.5 mm/s rms", crossing * 0.999)).toMatchObject({ headline: "zone B to C", possible: ["B", "C"] });
  });

  it("without a speed leaves all open that is worse", () => {
    const verdict = classify("2 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" });
    expect(verdict).toMatchObject({ headline: "zone A or worse", word: "displacement not judged", worst: "D" });
    expect(verdict.unjudged.map(({ as }) => as)).toEqual(["um rms"]);
  });

  it("is judged by its displacement at the lowest speed of a range", () => {
    const range = (low: number) =>
      classify("4.5 mm/s rms", {
        scheme: "iso-10816-3-2009",
        machine: { group: 1, support: "rigid", speed: { from: `${low} r/min`, to: "3000 r/min" } },
      }).possible;
    expect(range(760)).toEqual(["B"]);
    expect(range(750)).toEqual(["B", "C"]);
  });
});

describe("a speed that varies", () => {
  it("is judged as the union over the range, or on the safe side of it", () => {
    const machines = [
      "motor 250 kW rigid housing",
      "pump 90 kW category II housing",
      "compressor 2 MW, shaft",
      "hydro set 5 MW group 3 housing",
      "fan 400 kW flexible housing",
      "gas turbine 10 MW, shaft",
    ];
    const speeds = fc.tuple(
      fc.constantFrom(100, 120, 150, 550, 600, 650, 900, 1000, 1500, 3000, 11_000, 14_000),
      fc.constantFrom(1.05, 1.5, 2, 4),
    );
    let compared = 0;
    const judged = (reading: string, machine: string) => {
      try {
        return judge(reading, machine);
      } catch {
        return undefined;
      }
    };
    fc.assert(
      fc.property(
        fc.constantFrom(...machines),
        speeds,
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.constantFrom("mm/s rms", "um pp"),
        (machine, [low, by], size, type) => {
          const reading = `${((type === "um pp" ? 60 : 3) * 2 ** size).toPrecision(4)} ${type}`;
          const whole = judged(reading, `${machine} ${low} to ${low * by} r/min`);
          for (let i = 0; i <= 12; i++) {
            const speed = low * by ** (i / 12);
            const one = judged(reading, `${machine} ${speed} r/min`);
            // a range that a standard ends in is judged by what is for the rest of it; one that is for none is refused
            if (one === undefined || whole === undefined) continue;
            compared++;
            const where = `${reading}, ${machine}, ${low} to ${low * by} r/min at ${speed}: ${one.headline}, whole ${whole.headline}`;
            const level = (zone: string) => ["A", "AB", "B", "C", "D"].indexOf(zone);
            expect(level(whole.worst), where).toBeGreaterThanOrEqual(level(one.worst));
            const ids = whole.judgements.map(({ scheme }) => scheme);
            for (const { scheme } of one.judgements) expect(ids, where).toContain(scheme);
          }
          // no worse than the worst single speed by more than what is taken on the safe side: a zone that some speed has
          if (whole !== undefined) expect(whole.possible).toContain(whole.zone);
        },
      ),
      { numRuns: 400 },
    );
    expect(compared).toBeGreaterThan(2000);
  });
});

describe("a machine's compiled classifier", () => {
  it("has the zone and the worst of judge at, beside and beyond every bound", () => {
    const machines = [
      "motor 250 kW 1485 r/min rigid housing",
      "motor 1485 r/min rigid housing",
      "motor 250 kW 700 r/min rigid housing",
      "motor 250 kW housing",
      "pump 90 kW 2980 r/min category II",
      "pump 500 r/min category I",
      "fan 90 kW 1480 r/min BV-3",
      "fan 90 kW 1480 r/min",
      "compressor 2 MW 11000 r/min shaft",
      "compressor 2 MW 11000 r/min",
      "steam turbine 45 MW",
      "generator 3000 r/min",
      "motor 90 kW 280 mm 1485 r/min new grade A",
      "hydro set 5 MW 300 r/min",
      "motor 250 kW 600 to 1800 r/min rigid housing",
      "gas turbine 8000 r/min",
    ];
    const types = ["mm/s rms", "in/s pk", "um pp", "mil pp", "um rms", "dB re 1 nm/s"];
    let compared = 0;
    let refused = 0;
    for (const machine of machines) {
      for (const type of types) {
        for (const at of [undefined, "25 Hz"] as const) {
          let compiled: ReturnType<typeof machineClassifier>;
          try {
            compiled = machineClassifier(machine, type, at === undefined ? {} : { at });
          } catch {
            refused++;
            continue;
          }
          // a bound is a limit with its tolerance: there the last digit of a conversion decides
          const values = [
            ...compiled.limits,
            ...compiled.bounds.flatMap((bound) =>
              [-2e-5, -1e-6, -1e-9, 1e-9, 1e-6, 2e-5].map((by) => bound * (1 + by)),
            ),
          ];
          for (const value of [...values, type.startsWith("dB") ? -20 : 0, 1, 10, 100]) {
            const text = `${value} ${type}`;
            const verdict = judge(at === undefined ? text : `${text} at ${at}`, machine);
            const where = `${text} at ${at}, ${machine}: ${verdict.headline}`;
            expect(compiled(value), where).toBe(verdict.zone);
            expect(compiled.worst(value), where).toBe(verdict.worst);
            if (compiled.complete) expect(verdict.worst, where).toBe(verdict.zone);
            expect([...compiled.schemes].sort(), where).toEqual(verdict.judgements.map(({ scheme }) => scheme).sort());
            compared++;
          }
        }
      }
    }
    expect(compared).toBeGreaterThan(2000);
    expect(refused).toBeLessThan((machines.length * types.length * 2) / 3);
  });
});
