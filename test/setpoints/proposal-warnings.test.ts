import type { Source } from "veladis";
import { baseline, type ProposalRequest, proposeSetpoints, setpointRules } from "veladis/protection";
import { builtInSchemes, confirmableLimits, confirmedSchemes, type Scheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { machineFor } from "../severity/machine-for";
import { inPrint, recalled, siteRule, zonesIn } from "../severity/own-scheme";

const limits = { "B/C": "4 mm/s rms", "C/D": "8 mm/s rms", source: "the pump's maker" } as const;
const statistics = baseline([2, 1.9, 2.1, 2, 1.95, 2.05, 2, 1.9, 2.1, 2], { as: "mm/s rms" });
const sound = { baseline: statistics, limits } as const;
const device = { band: { lowest: "10 Hz", highest: "1 kHz" } } as const;

const texts = (request: ProposalRequest) => {
  const { warnings } = proposeSetpoints(request);
  return Object.fromEntries(warnings.map(({ code, text }) => [code, text]));
};
/** What is said of how limits and rules are known, from one grade to the next. */
const open = (...grades: readonly string[]) =>
  `limits and rules that are not verified, the least known first: ${grades.join("; ")}; check them against a printed copy`;
const rules = [
  "of common practice, without a source (TRIP at C/D, hysteresis)",
  "read on a page whose making is unknown (delays)",
  "quoted in another document (ALARM by the baseline, ALARM below zone C, TRIP apart from the baseline)",
] as const;
const CAPS = "ALARM at most 1.25 times B/C, TRIP at most 1.25 times C/D, mean plus k standard deviations";
const USER = open(
  `from memory (${CAPS})`,
  "as stated by the user (B/C of the pump's maker, C/D of the pump's maker)",
  ...rules,
);

describe("what is told of limits and baseline", () => {
  it("where the limits come from", () => {
    expect(texts(sound)).toEqual({ "unverified limits or rules": USER });
  });

  it("whether those of a table were read in print", () => {
    const told = (bc: Source, cd: Source) => {
      const zones = { ...zonesIn("mm/s rms", { "B/C": 4, "C/D": 8 }, bc), limitSources: { "C/D": cd } };
      const scheme = siteRule("limits", { classes: [{ criteria: [zones] }] });
      return texts({ baseline: statistics, scheme })["unverified limits or rules"];
    };
    const [practice, reported, quotedRules] = rules;
    const [BC, CD] = ["B/C of Site rule limits, edition not stated", "C/D of Site rule limits, edition not stated"];
    expect(told(inPrint, inPrint)).toBe(open(`from memory (${CAPS})`, ...rules));
    expect(told(recalled, inPrint)).toBe(open(`from memory (${BC}, ${CAPS})`, ...rules));
    expect(told(inPrint, recalled)).toBe(open(`from memory (${CD}, ${CAPS})`, ...rules));
    const quoted = { ...inPrint, provenance: "quoted" } as const;
    expect(told(inPrint, quoted)).toBe(
      open(`from memory (${CAPS})`, practice, reported, quotedRules.replace("(", `(${CD}, `)),
    );
  });

  it("the worst grade of all: of limits that do not govern and of highest settings too, the alarm's and the trip's", () => {
    const source = (provenance: Source["provenance"]) => ({ title: "site rule", provenance }) as const;
    const site = (id: string, bc: number, ...known: readonly Source["provenance"][]) => {
      const [limits, most] = known.map(source) as [Source, Source];
      const ceilings = { alarm: 1.2 * bc, trip: 2.4 * bc, source: most };
      const criteria = [{ ...zonesIn("mm/s rms", { "B/C": bc, "C/D": 2 * bc }, limits), ceilings }];
      return siteRule(id, { machines: ["fan"], edition: "2", classes: [{ criteria }] });
    };
    const schemes = [site("low", 4, "quoted", "practice"), site("high", 6, "memory", "reported")];
    const { provenance, alarm, trip, warnings } = proposeSetpoints({
      ...{ baseline: statistics, machine: "fan 90 kW 1490 r/min", schemes },
    });
    expect([provenance, alarm?.reasons[1]?.source.provenance, trip?.asked.value]).toEqual(["memory", "quoted", 8]);
    const text = warnings.find(({ code }) => code === "unverified limits or rules")?.text;
    expect(text).toMatch(/first: from memory \(B\/C of Site rule high:2, C\/D of Site rule high:2, /);
    expect(text).toMatch(/without a source \(highest alarm setting of Site rule low:2, highest trip setting of/);
    expect(text).toMatch(/making is unknown \(highest alarm setting of Site rule high:2, /);
    expect(text).toMatch(/another document \(B\/C of Site rule low:2, C\/D of Site rule low:2, /);
  });

  it("no less of limits that nobody confirmed than of the same when confirmed", () => {
    const pump = { baseline: "2 mm/s rms", machine: "pump 90 kW 2980 r/min category I" } as const;
    const row = "category I, power up to 200 kW";
    const confirmations = confirmableLimits("iso-10816-7-2009")
      .filter((one) => one.row.startsWith(row) && /^[BC]\//.test(one.limit))
      .map(({ scheme, edition, row: at, limit, as, shipped }) => ({
        ...{ scheme, edition, row: at, limit, as, printed: shipped },
        ...{ page: "12", by: "H. Example", on: "2024-03-04" },
      }));
    expect(confirmations).toHaveLength(2);
    const schemes = confirmedSchemes(confirmations);
    const [before, after] = [texts(pump), texts({ ...pump, schemes })].map(
      (all) => all["unverified limits or rules"] ?? "",
    );
    const memory = "from memory (highest alarm setting of ISO 10816-7:2009, highest trip setting of ISO 10816-7:2009, ";
    for (const text of [before, after]) expect(text).toContain(`first: ${memory}TRIP at most 1.25 times C/D); `);
    expect(before).toContain("making is unknown (B/C of ISO 10816-7:2009, C/D of ISO 10816-7:2009, delays)");
    expect(after).toBe(before?.replace("B/C of ISO 10816-7:2009, C/D of ISO 10816-7:2009, ", ""));
  });

  it("that a limit confirmed above the highest setting, which is from memory, makes one of the two wrong", () => {
    const confirmed = (printed: number) => {
      const [place] = confirmableLimits("iso-10816-7-2009").filter(
        ({ row, limit }) => row === "category I, power up to 200 kW" && limit === "C/D",
      );
      const { shipped, ...one } = place as NonNullable<typeof place>;
      const by = { page: "12", by: "H. Example", second: "K. Other", on: "2024-03-04", reread: true };
      const { scheme, edition, row, limit, as } = one;
      return confirmedSchemes([{ scheme, edition, row, limit, as, printed, ...by }]);
    };
    const pump = { baseline: "2 mm/s rms", machine: "pump 90 kW 2980 r/min category I" } as const;
    const { trip, warnings } = proposeSetpoints({ ...pump, schemes: confirmed(9) });
    const at = warnings.findIndex(({ code }) => code === "ceiling below limit");
    expect(warnings[at - 1]?.code).toBe("unverified limits or rules");
    expect(warnings[at]?.text).toBe(
      "the highest trip setting of ISO 10816-7:2009 (8.30 mm/s rms, from memory) is below C/D of ISO 10816-7:2009, 9.00 mm/s rms (confirmed by H. Example and K. Other, 2024-03-04, p. 12): one of them is wrong; the lower is taken; check both against the same printed copy",
    );
    expect([trip?.asked.value, trip?.range[1]]).toEqual([8.3, 8.3]);
    expect(texts({ ...pump, schemes: confirmed(8.3) })).not.toHaveProperty("ceiling below limit");
    const zones = zonesIn("mm/s rms", { "B/C": 4, "C/D": 8 });
    const low = siteRule("low", {
      classes: [{ criteria: [{ ...zones, ceilings: { alarm: 3.9, trip: 8, source: recalled } }] }],
    });
    expect(texts({ baseline: "2 mm/s rms", scheme: low })["ceiling below limit"]).toMatch(
      /^the highest alarm setting of Site rule low, edition not stated \(3.90 mm\/s rms, from memory\) is below B\/C/,
    );
  });

  it("no rule prints what is from memory", () => {
    for (const { text, source } of Object.values(setpointRules)) {
      if (source.provenance === "memory") expect(text).not.toMatch(/print/);
    }
  });

  it("that there are none, or no shutdown", () => {
    expect(texts({ baseline: statistics, k: 4 })).toStrictEqual({
      "no limits": "without a scheme or limits of the maker there is no trip to propose; the alarm is statistical",
      "unverified limits or rules": open("from memory (mean plus k standard deviations)", ...rules.slice(0, 2)).replace(
        "TRIP at C/D, ",
        "",
      ),
    });
    const none = "without a scheme or limits of the maker there is no trip to propose;";
    const one = proposeSetpoints({ baseline: "2 mm/s rms" });
    expect(one.alarm).toBeNull();
    expect(one.warnings.find(({ code }) => code === "no limits")?.text).toBe(
      `${none} one reading without limits gives no alarm either`,
    );
    const alike = proposeSetpoints({ baseline: baseline([2, 2, 2, 2, 2, 2], { as: "mm/s rms" }) });
    expect(alike.alarm).toBeNull();
    expect(alike.warnings.find(({ code }) => code === "no limits")?.text).toBe(
      `${none} readings that are all alike give no alarm either`,
    );
    const fan = { scheme: "iso-14694-2003", machine: "fan 3 kW 1480 r/min rigid BV-2" } as const;
    expect(texts({ ...fan, baseline: statistics })["no shutdown"]).toMatch(
      /^no trip: ISO 14694 \(2003\), .* as it is here has no upper limit of zone C and no shutdown limit; take the maker's, or set it from the machine's history$/,
    );
  });

  it("that the machine already runs in zone C or D, above its edge and not at it", () => {
    expect(texts({ limits, baseline: "4.2 mm/s rms" })["baseline in zone C"]).toBe(
      "the baseline of 4.20 mm/s rms is above B/C of the pump's maker: find the cause before setting an alarm from it",
    );
    expect(texts({ limits, baseline: "4 mm/s rms" })).not.toHaveProperty("baseline in zone C");
    expect(texts({ limits, baseline: "8 mm/s rms" })).toHaveProperty("baseline in zone C");
    const beyond = texts({ limits, baseline: "8.1 mm/s rms" });
    expect(beyond["baseline in zone D"]).toBe(
      "the baseline of 8.10 mm/s rms is above C/D of the pump's maker: find the cause before setting an alarm from it",
    );
    expect(beyond).not.toHaveProperty("baseline in zone C");
    expect(texts({ limits, baseline: "none" })).not.toHaveProperty("baseline in zone C");
  });

  it("that the machine is at or above a setpoint already, and that a range is never upside down", () => {
    const told = (level: string) => {
      const { "alarm at once": alarm, "trip at once": trip } = texts({ limits, baseline: level });
      return [alarm, trip];
    };
    expect(told("4.9 mm/s rms")).toEqual([undefined, undefined]);
    expect(told("5 mm/s rms")).toEqual([
      "the alarm would stand at once: the machine is already at it (alarm 5.00 mm/s rms, baseline 5.00 mm/s rms)",
      undefined,
    ]);
    expect(told("9 mm/s rms")).toEqual([
      "the alarm would stand at once: the machine is already above it (alarm 5.00 mm/s rms, baseline 9.00 mm/s rms)",
      "the machine would trip at once: the machine is already above it (trip 8.00 mm/s rms, baseline 9.00 mm/s rms)",
    ]);
    expect(proposeSetpoints({ limits, baseline: "9 mm/s rms" }).alarm?.range).toEqual([5, 5]);
    const fan = { scheme: "iso-14694-2003", machine: "fan 90 kW 1480 r/min rigid BV-3" } as const;
    expect(proposeSetpoints({ ...fan, baseline: "8 mm/s rms" }).alarm?.range).toEqual([7.1, 7.1]);
    // what the device makes of it counts
    expect(texts({ ...sound, device: { step: "2 mm/s rms" } })["alarm at once"]).toMatch(/already at it/);
  });

  it("that a baseline of zero may be a dead sensor", () => {
    expect(texts({ limits, baseline: "0 mm/s rms" })["baseline of zero"]).toBe(
      "a baseline of zero: a dead sensor or a stopped machine reads zero",
    );
    expect(texts({ limits, baseline: "0.01 mm/s rms" })).not.toHaveProperty("baseline of zero");
  });

  it("how little is known of a baseline", () => {
    expect(texts({ limits, baseline: "none" })["no baseline"]).toBe(setpointRules["no baseline"].text);
    expect(texts({ limits, baseline: "2 mm/s rms" })["single baseline"]).toBe(
      "the baseline is one reading: nothing is known of its scatter",
    );
    const few = baseline([2, 2.1, 1.9], { as: "mm/s rms" });
    expect(texts({ limits, baseline: few })["poor baseline"]).toBe(few.warnings[0]);
  });
});

describe("what is told of an alarm", () => {
  // the alarm is 2 + a quarter of 4
  it("that it does not stand out of the sensor's noise: at the floor, not above it", () => {
    const noise = (noiseFloor: string) => texts({ ...sound, sensor: { noiseFloor } })["alarm in noise"];
    expect(noise("3 mm/s rms")).toBe("the alarm of 3.00 mm/s rms is not above the sensor's noise floor of 3 mm/s rms");
    expect(noise("2.99 mm/s rms")).toBeUndefined();
    expect(texts({ baseline: "2 mm/s rms", sensor: { noiseFloor: "9 mm/s rms" } })).not.toHaveProperty(
      "alarm in noise",
    );
  });

  it("that it lies in the scatter: three spreads, or the percentile if that reaches higher", () => {
    const scatter = (changed: object) => texts({ limits, baseline: { ...statistics, ...changed } })["alarm in scatter"];
    const reaching = (value: number) => ({ spread: 0.01, percentile: { percent: 95, value } });
    expect(scatter({ spread: 0.35 })).toBe(
      "the alarm of 3.00 mm/s rms lies within the scatter of the baseline, which reaches 3.05 mm/s rms: it will come without cause",
    );
    expect(scatter({ spread: 0.33 })).toBeUndefined();
    expect(scatter(reaching(3))).toMatch(/which reaches 3.00 mm\/s rms/);
    expect(scatter(reaching(2.99))).toBeUndefined();
  });
});

describe("what is told of a trip", () => {
  it("that sensor or loop cannot carry it: above their end, not at it", () => {
    const beyond = (sensor: object) => texts({ ...sound, sensor })["trip beyond full scale"];
    expect(beyond({ loop: "0 to 7.9 mm/s rms" })).toBe(
      "the trip of 8.00 mm/s rms lies beyond what sensor and loop carry (7.90 mm/s rms): no level within their range makes it act",
    );
    expect(beyond({ fullScale: "50 mm/s rms", loop: "0 to 7 mm/s rms" })).toMatch(/7.00 mm/);
    expect(beyond({ fullScale: "6 mm/s rms", loop: "0 to 7 mm/s rms" })).toMatch(/6.00 mm/);
    expect(beyond({ loop: "0 to 8 mm/s rms", fullScale: "8 mm/s rms" })).toBeUndefined();
    expect(beyond({})).toBeUndefined();
    const scale = { baseline: "none", sensor: { fullScale: "1 mm/s rms" } } as const;
    expect(texts(scale)).not.toHaveProperty("trip beyond full scale");
  });

  it("that it lies under a third of the span of its loop, at or below its start, and not where it uses the loop", () => {
    const little = (loop: string) => texts({ ...sound, sensor: { loop } })["little of span"];
    // common practice, no source: a trip of 8 mm/s at a third of the span or above
    expect(little("0 to 100 mm/s rms")).toMatch(
      /^the trip lies at 8\.0 % of the span 0 to 100 mm\/s rms, under a third/,
    );
    expect(little("0 to 24 mm/s rms")).toBeUndefined();
    expect(little("8 to 20 mm/s rms")).toMatch(/at or below the start/);
    expect(little("0 to 7 mm/s rms")).toBeUndefined();
  });

  it("that it follows close on the alarm: less than 1.2 times it", () => {
    const margin = (level: string) =>
      texts({ baseline: level, limits: { ...limits, "C/D": "6 mm/s rms" } })["little margin"];
    // alarms of 5 (the cap) and 4.5
    expect(margin("5 mm/s rms")).toBeUndefined();
    expect(texts({ baseline: "5 mm/s rms", limits: { ...limits, "C/D": "5.5 mm/s rms" } })["little margin"]).toBe(
      "the trip is only 1.10 times the alarm: there is little time to act between them",
    );
    expect(margin("3.5 mm/s rms")).toBeUndefined();
    const held = { baseline: "2 mm/s rms", limits, device: { lowest: "7 mm/s rms" } } as const;
    expect(Object.keys(texts(held))).toEqual(["beyond device", "unverified limits or rules", "single baseline"]);
  });
});

describe("what is told of a device", () => {
  it("that the shaft turns outside its band, or at the lower edge where it reads 0.707", () => {
    // flat within 10 % from 1.26 times the lower edge of a band between -3 dB points: ISO 2954, from memory
    const band = (machine: string) => texts({ ...sound, machine, device })["outside band"];
    expect(band("pump 540 r/min")).toBe(
      "the running frequency of 9.00 Hz is below the band of 10.0 to 1000 Hz, so the shaft's own vibration is read low or not at all",
    );
    for (const [machine, hertz] of [
      ["pump 600 r/min", "10.0"],
      ["pump 750 r/min", "12.5"],
    ] as const) {
      expect(band(machine)).toBe(
        `the running frequency of ${hertz} Hz is at the lower edge of the band (10.0 Hz), where a device reads as little as 0.707 of it`,
      );
    }
    expect(band("pump 90000 r/min")).toBe("the running frequency of 1500 Hz is above the band of 10.0 to 1000 Hz");
    for (const machine of ["pump 756 r/min", "pump 1490 r/min", "pump 60000 r/min"])
      expect(band(machine)).toBeUndefined();
  });

  it("that without a speed its band is held against nothing", () => {
    expect(texts({ ...sound, device })).toEqual({
      "unverified limits or rules": USER,
      "unknown frequency": "state the running speed, so that it can be held against the device's band",
    });
  });

  it("that its steps are coarse, or that it cannot hold a setting", () => {
    expect(texts({ ...sound, device: { step: "1.3 mm/s rms" } })["coarse steps"]).toBe(
      "alarm: the device stores 2.60 mm/s rms for 3.00 mm/s rms: it acts at a level 13.3 % lower than asked",
    );
    const trip = { ...sound, limits: { ...limits, "C/D": "11 mm/s rms" }, device: { step: "3 mm/s rms" } } as const;
    expect(texts(trip)["coarse steps"]).toBe(
      "trip: the device stores 9.00 mm/s rms for 11.0 mm/s rms: it acts at a level 18.2 % lower than asked",
    );
    expect(texts({ ...sound, device: { step: "0.93 mm/s rms" } })).not.toHaveProperty("coarse steps");
    expect(texts({ ...sound, device: { lowest: "5 mm/s rms" } })["beyond device"]).toBe(
      'alarm of 3.00 mm/s rms: expected a setpoint the device can hold, 5 mm/s rms or more, received "3.00 mm/s rms"',
    );
  });

  it("that a delay is longer than suits the machine, not one that just does", () => {
    const delayed = (onDelay: number, machine?: string) =>
      texts({ ...sound, onDelay, ...(machine !== undefined && { machine }) })["long delay"];
    expect(delayed(10.5, "pump 1490 r/min")).toBe(
      "a trip delay of 10.5 s is longer than the 10 s that suit a pump: damage may be done by then",
    );
    expect(delayed(12)).toMatch(/the 10 s that suit a machine:/);
    expect(delayed(12, "1490 r/min")).toMatch(/the 10 s that suit a machine:/);
    expect(delayed(10, "pump 1490 r/min")).toBeUndefined();
    expect(delayed(0, "pump 1490 r/min")).toBeUndefined();
  });
});

describe("which peak a table in peak means", () => {
  const inPeak = (builtInSchemes as readonly Scheme[]).filter(
    ({ peakMeans, kind }) => peakMeans !== undefined && (kind === "zones" || kind === "operation"),
  );
  it.each(inPeak.map((scheme) => [scheme.id, scheme] as const))(
    "%s: said of what is set by it, with the band",
    (_, scheme) => {
      for (const one of scheme.classes) {
        const [peak] = one.criteria.filter(({ as }) => as.endsWith(" pk"));
        const baseline = `0.001 ${peak?.as}` as "1 mm/s pk";
        const told = texts({ baseline, scheme, machine: machineFor(scheme, one) });
        expect(told["which peak"]).toMatch(
          /^peak: .* leaves open whether it means a true peak or 1\.414 x RMS, in (?:a band that it does not state|the band of \d+ to \d+ Hz); the device has to measure the same$/,
        );
      }
    },
  );

  it("is no question of limits in RMS, nor of limits of the maker", () => {
    expect(texts({ baseline: "2 mm/s rms", machine: "fan 90 kW 1480 r/min BV-3 rigid" })).not.toHaveProperty(
      "which peak",
    );
    expect(texts(sound)).not.toHaveProperty("which peak");
    expect(texts({ baseline: "2 mm/s pk", machine: "fan 90 kW 1480 r/min BV-3 rigid" })["which peak"]).toContain(
      "ISO 14694",
    );
  });
});

/** Counted by hand in the readings themselves. */
describe("readings of the baseline that have reached the trip", () => {
  const quiet = [2, 1.9, 2.1, 2, 1.95, 2.05, 2, 1.9, 2.1, 2, 2.02, 1.98, 2, 1.97, 2.03, 2, 2.01, 1.99, 2, 2];
  const of = (readings: readonly number[], as = "mm/s rms") =>
    texts({ baseline: baseline(readings, { as: as as "mm/s rms" }), limits })["readings at trip"];

  it("are counted", () => {
    expect(of([...quiet, 8, 9.1])).toBe(
      "2 of 22 readings of the baseline stand at or above the trip of 8.00 mm/s rms, the highest at 9.10: it would have tripped the machine there; look at each",
    );
    expect(of([...quiet, 9.1, 7.9])).toContain("1 of 22 readings of the baseline stand at or above");
  });

  it("are told in the unit of the trip", () => {
    const inches = [...quiet, 8, 9.1].map((value) => value / 25.4);
    const told = proposeSetpoints({
      baseline: baseline(inches, { as: "in/s rms" }),
      limits,
      device: { step: "0.1 mm/s rms" },
    });
    expect(told.warnings.find(({ code }) => code === "readings at trip")?.text).toContain("2 of 22 readings");
  });

  it("are told without a number where the scatter reaches the trip", () => {
    expect(of([2, 6, 4, 1, 7, 3, 9, 5, 2, 4, 8.5, 3])).toContain(
      "readings of the baseline stand at or above the trip of 8.00 mm/s rms, the highest of 12 at 9.00",
    );
  });

  it("are none below it, of one reading, and where the whole baseline is at the trip, which is told", () => {
    expect(of([...quiet, 7.9])).toBeUndefined();
    expect(texts({ baseline: "2 mm/s rms", limits })["readings at trip"]).toBeUndefined();
    const above = texts({
      baseline: baseline(
        quiet.map((one) => one + 10),
        { as: "mm/s rms" },
      ),
      limits,
    });
    expect([above["readings at trip"], above["trip at once"] !== undefined]).toEqual([undefined, true]);
  });
});
