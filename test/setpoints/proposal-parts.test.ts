import { convert } from "veladis";
import { baseline, type ProposalRequest, proposeSetpoints, setpointRules } from "veladis/protection";
import type { Criterion } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";
import { recalled, siteRule, zonesIn } from "../severity/own-scheme";

const limits = { "B/C": "4 mm/s rms", "C/D": "8 mm/s rms", source: "maker" } as const;
const readings = [2, 1.9, 2.1, 2, 1.95, 2.05, 2, 1.9, 2.1, 2.4];
const statistics = baseline(readings, { as: "mm/s rms" });
const at = { at: "1490 r/min" } as const;

describe("a proposal", () => {
  it("carries baseline and limits to the unit of the device, at the speed of the machine", () => {
    const proposal = proposeSetpoints({
      baseline: "20 um pp",
      limits: { "B/C": "40 um pp", "C/D": "80 um pp", source: "maker" },
      machine: "pump 1490 r/min",
      device: { step: "0.001 mm/s rms" },
    });
    const here = (microns: number) => convert(microns, "um pp", "mm/s rms", at);
    expect(proposal.as).toBe("mm/s rms");
    expect(proposal.baseline).toBeCloseTo(here(20), 12);
    expect(proposal.alarm?.asked.value).toBeCloseTo(here(30), 12);
    expect(proposal.trip?.asked.value).toBeCloseTo(here(80), 12);
    expect(proposal.alarm?.asked.hertz).toBeCloseTo(1490 / 60, 12);
    expect([...proposal.assumed].sort()).toEqual(["one-frequency", "sine"]);
    const noSpeed = { baseline: "20 um pp", limits, device: { step: "0.1 mm/s rms" } } as const;
    expect(refusalOf(() => proposeSetpoints(noSpeed)).code).toBe("missing-frequency");
  });

  it("carries inches to millimetres without a speed", () => {
    const proposal = proposeSetpoints({ baseline: "0.1 in/s rms", limits, device: { step: "0.1 mm/s rms" } });
    expect(proposal.baseline).toBeCloseTo(2.54, 12);
    expect(proposal.alarm?.asked.value).toBeCloseTo(3.54, 12);
    expect(proposal.assumed).toEqual([]);
  });

  it("is in the unit of the limits where there is neither baseline nor device", () => {
    const own = { "B/C": "40 um pp", "C/D": "80 um pp", source: "maker" };
    expect(proposeSetpoints({ baseline: "none", limits: own })).toMatchObject({
      as: "um pp",
      baseline: null,
      alarm: { asked: { value: 40, unit: "um", detector: "pp" } },
      assumed: [],
    });
    const table = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
    expect(proposeSetpoints({ baseline: "none", ...table }).as).toBe("mm/s rms");
  });

  it("clears at the stored setpoint less the hysteresis", () => {
    const { alarm, trip, hysteresis } = proposeSetpoints({
      baseline: "2 mm/s rms",
      limits,
      device: { step: "0.7 mm/s rms" },
    });
    expect(hysteresis.percent).toBe(5);
    for (const one of [alarm, trip]) {
      expect(one?.reset.value).toBeCloseTo((one?.stored.value as number) * 0.95, 12);
      expect(one?.reset).toMatchObject({ unit: "mm/s", detector: "rms", quantity: "velocity" });
    }
    expect([alarm?.stored.value, trip?.stored.value]).toEqual([2.8, 7.7]);
    expect(alarm?.reasons.at(-1)).toEqual(setpointRules["device steps"]);
  });

  it("names the steps of a device only where they change a number", () => {
    const { alarm } = proposeSetpoints({ baseline: "2 mm/s rms", limits, device: { step: "0.5 mm/s rms" } });
    expect(alarm?.stored.value).toBe(3);
    expect(alarm?.reasons).not.toContainEqual(setpointRules["device steps"]);
  });

  it("without limits has the statistical alarm alone", () => {
    const { mean, standardDeviation, withoutOutliers } = statistics;
    const proposal = proposeSetpoints({ baseline: statistics });
    expect(proposal.trip).toBeNull();
    expect(proposal.statistical).toEqual({
      k: 3,
      value: mean + 3 * standardDeviation,
      withoutOutliers: withoutOutliers.mean + 3 * withoutOutliers.standardDeviation,
      reasons: [setpointRules.statistical],
    });
    expect(proposal.alarm).toMatchObject({
      asked: { value: mean + 3 * standardDeviation },
      range: [statistics.median, mean + 3 * standardDeviation],
      reasons: [setpointRules.statistical],
    });
  });

  it("without limits and scatter has no alarm, and nothing that was verified", () => {
    const still = baseline(Array(20).fill(2), { as: "mm/s rms" });
    for (const given of [still, "2 mm/s rms"] as const) {
      expect(proposeSetpoints({ baseline: given })).toMatchObject({
        baseline: 2,
        alarm: null,
        trip: null,
        statistical: null,
        hysteresis: { percent: 5 },
        verified: false,
      });
    }
  });

  it("hands on what is no setpoint that a device cannot hold", () => {
    const wrong = (device: object) => refusalOf(() => proposeSetpoints({ baseline: "2 mm/s rms", limits, device }));
    expect(wrong({ rounds: "off" }).code).toBe("unknown-option");
    expect(wrong({ step: "0 mm/s rms" }).code).toBe("not-positive");
  });

  it("takes of a table the quantity and detector of the baseline, and names what it leaves out", () => {
    const criterion = (as: string, limit: number) => zonesIn(as, { "B/C": limit, "C/D": 2 * limit }, recalled);
    const scheme = (...criteria: Criterion[]) =>
      siteRule("criteria", { standard: "site rule", edition: "2", classes: [{ criteria }] });
    const site = scheme(
      criterion("mm/s rms", 4),
      criterion("um pp", 50),
      criterion("um rms", 20),
      criterion("g pk", 1),
    );
    const from = (level: string, more: Partial<ProposalRequest> = {}) => {
      const { as, alarm, trip, warnings } = proposeSetpoints({ baseline: level, scheme: site, ...more });
      const left = warnings.find(({ code }) => code === "other quantities")?.text;
      return [as, trip?.asked.value, alarm?.reasons[1]?.text, left];
    };
    const left = (rest: string) =>
      `trip in ${rest} unguarded, which the scheme limits too: state the running speed, and its limits are taken in`;
    expect(from("10 um rms")).toEqual([
      "um rms",
      40,
      "B/C of site rule:2, 20.0 um rms",
      left("displacement alone leaves velocity and acceleration"),
    ]);
    expect(from("10 um pp").slice(0, 3)).toEqual(["um pp", 100, "B/C of site rule:2, 50.0 um pp"]);
    expect(from("1 g pk")).toEqual([
      "g pk",
      2,
      "B/C of site rule:2, 1.00 g pk",
      left("acceleration alone leaves velocity and displacement"),
    ]);
    // another detector of the same quantity is taken for a sine's
    expect(from("10 um pk")[1]).toBeCloseTo(50, 9);
    // with the speed of the machine all quantities count, each by the column that suits the detector, and the lowest
    const inVelocity = from("10 um pp", { machine: "1490 r/min", device: { step: "0.001 mm/s rms" } });
    expect(inVelocity[1]).toBeCloseTo(convert(40, "um rms", "mm/s rms", at), 9);
    expect(inVelocity[2]).toBe("B/C of displacement 20.0 um rms, at running speed 24.8 Hz, of site rule:2");
    expect(inVelocity[3]).toBe(
      "acceleration is taken in at running speed only: what of it lies at higher frequencies, a trip in velocity does not guard",
    );
    // and where the table limits the quantity nowhere, to its first at the speed of the machine
    const only = scheme(criterion("um pp", 50));
    const { trip, assumed } = proposeSetpoints({ baseline: "2 mm/s rms", scheme: only, machine: "1490 r/min" });
    expect(trip?.asked.value).toBeCloseTo(convert(100, "um pp", "mm/s rms", at), 9);
    expect([...assumed].sort()).toEqual(["one-frequency", "sine"]);
  });

  it("takes no table that prints only one of the two limits", () => {
    const scheme = (limits: Criterion["limits"]) =>
      siteRule("one limit", { classes: [{ criteria: [zonesIn("mm/s rms", limits)] }] });
    for (const limits of [{ "C/D": 8 }, { "B/C": 4 }, { "A/B": 2 }]) {
      const refusal = refusalOf(() => proposeSetpoints({ baseline: "2 mm/s rms", scheme: scheme(limits) }));
      expect([refusal.code, refusal.received]).toEqual(["wrong-type", `limits ${Object.keys(limits)}`]);
    }
    expect(proposeSetpoints({ baseline: "2 mm/s rms", scheme: scheme({ "B/C": 4, "C/D": 8 }) }).trip).not.toBeNull();
  });

  it("keeps below a ceiling that the table prints, and names its source", () => {
    const source = { title: "site rule, highest settings", provenance: "printed", page: "p. 3" } as const;
    const ceilings = (trip: number) => {
      const zones = zonesIn("mm/s rms", { "B/C": 4, "C/D": 8 });
      const criteria = [{ ...zones, ceilings: { alarm: 4.5, trip, source } }];
      const scheme = siteRule("ceilings", { classes: [{ criteria }] });
      return proposeSetpoints({ baseline: "4.2 mm/s rms", scheme });
    };
    const ceiling = { ...setpointRules["printed ceiling"], source };
    const { alarm, trip } = ceilings(9);
    expect([alarm?.asked.value, alarm?.range]).toEqual([4.5, [4.2, 4.5]]);
    expect([trip?.asked.value, trip?.range]).toEqual([8, [4.5, 9]]);
    expect(alarm?.reasons).toContainEqual(ceiling);
    expect(trip?.reasons.at(-1)).toEqual(ceiling);
    // at 1.25 times C/D it is named still, above it is no longer
    expect(ceilings(10).trip?.reasons.at(-1)).toEqual(ceiling);
    expect(ceilings(10.1).trip?.range).toEqual([4.5, 10]);
    expect(ceilings(10.1).trip?.reasons.at(-1)).toEqual(setpointRules["trip cap"]);
    expect(ceilings(7).trip).toMatchObject({ asked: { value: 7 }, range: [4.5, 7] });
  });

  it("says of limits of the site that it took the user's word", () => {
    const { alarm, verified } = proposeSetpoints({ baseline: "2 mm/s rms", limits });
    expect(alarm?.reasons[1]).toEqual({
      text: "B/C of maker",
      source: { title: "maker", provenance: "memory", note: "as stated by the user" },
    });
    expect(verified).toBe(false);
    const equal = { ...limits, "C/D": "4 mm/s rms" };
    expect(refusalOf(() => proposeSetpoints({ baseline: "none", limits: equal })).code).toBe("out-of-range");
    expect(refusalOf(() => proposeSetpoints({ baseline: "none", limits: null as never })).code).toBe("missing-option");
  });
});
