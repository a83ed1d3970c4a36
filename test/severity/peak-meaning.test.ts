/**
 * Which peak a table means: a true peak, or 1.414 x RMS. A public comment of 2016 on ANSI/AMCA 204 records that the
 * standard does not define how the peak is taken; ISO 14694 prints a peak and an RMS column whose ratio is no 1.414.
 */
import {
  builtInSchemes,
  type Criterion,
  classifier,
  classify,
  defineScheme,
  judge,
  limitsFor,
  type Scheme,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { machineFor } from "./machine-for";
import { siteRule } from "./own-scheme";

const amca = { scheme: "ansi-amca-204-05", machine: "fan BV-3 rigid" } as const;
const peaks = (cautions: readonly string[]) => cautions.filter((one) => one.startsWith("peak: "));
const own = (as: "mm/s pk" | "mm/s true pk", peakMeans?: Scheme["peakMeans"], band: Scheme["band"] = [10, 1000]) =>
  siteRule("12", {
    band,
    ...(peakMeans && { peakMeans }),
    classes: [
      {
        criteria: [
          {
            as,
            limits: { "A/B": 2, "B/C": 4, "C/D": 8 },
            source: { title: "Site rule 12", provenance: "printed", page: "p. 3" },
          },
        ],
      },
    ],
  });

describe("which peak a table means", () => {
  it("is told by every table with limits in peak, and by no other", () => {
    for (const scheme of builtInSchemes as readonly Scheme[]) {
      const criteria: Criterion[] = scheme.classes.flatMap((one) => one.criteria);
      const isPeak = criteria.some(({ as }) => / pk$/.test(as));
      expect(scheme.peakMeans !== undefined, scheme.id).toBe(isPeak);
    }
  });

  const inPeak = (builtInSchemes as readonly Scheme[]).filter(({ peakMeans }) => peakMeans !== undefined);
  it.each(inPeak.map((scheme) => [scheme.id, scheme] as const))(
    "%s: every row says which peak is meant, or that it is left open, and in which band",
    (_, scheme) => {
      const { peakMeans = "open", band, standard, edition } = scheme;
      const meant = { open: "leaves open whether", rms: "means 1.414 x RMS", true: "means a true peak" }[peakMeans];
      const where = band === null ? "in a band that it does not state" : `in the band of ${band[0]} to ${band[1]} Hz`;
      for (const one of scheme.classes) {
        for (const { as } of one.criteria.filter((criterion) => / pk$/.test(criterion.as))) {
          const machine = machineFor(scheme, one);
          const told = peaks(classify(`1 ${as}`, { scheme, machine, assume: "lowest limits" }).cautions);
          expect(told.join(), JSON.stringify(machine)).toContain(`peak: ${standard} (${edition}) ${meant}`);
          expect(told.join()).toContain(where);
        }
      }
    },
  );

  it("is left open by ANSI/AMCA 204, which states no band: the answer says so", () => {
    const told = classify("0.3 in/s pk", amca);
    expect(told.peakMeans).toBe("open");
    expect(told.criteria[0]?.peakMeans).toBe("open");
    expect(peaks(told.cautions)).toEqual([
      "peak: ANSI/AMCA 204 (05, R2012) leaves open whether it means a true peak or 1.414 x RMS, in a band that it does not state; a true peak may be higher than this reading: measure it too, and judge the larger",
    ]);
    expect(JSON.parse(JSON.stringify(told)).peakMeans).toBe("open");
  });

  it("is no question for limits in RMS", () => {
    const told = classify("4 mm/s rms", { scheme: "iso-14694-2003", machine: "fan BV-3 rigid" });
    expect("peakMeans" in told).toBe(false);
    expect(peaks(told.cautions)).toEqual([]);
    expect(classify("4 mm/s pk", { scheme: "iso-14694-2003", machine: "fan BV-3 rigid" }).peakMeans).toBe("open");
    // both columns of BV-1 rigid and of BV-5 rigid: 15.2 / 10.6 and 7.6 / 5.6 are no 1.414
    const columns = limitsFor({ scheme: "iso-14694-2003", machine: "fan BV-5 rigid" });
    const [pk, rms] = columns.map(({ limits }) => limits.shutdown?.value as number) as [number, number];
    expect(pk / rms).toBeCloseTo(1.357, 3);
  });

  it("takes a true peak as it stands, on the safe side", () => {
    // AMCA 204 BV-3 rigid: alarm 0.4, shutdown 0.5 in/s peak
    const told = classify("0.45 in/s true pk", amca);
    expect([told.zone, told.bound, told.judged.value]).toEqual(["alarm", "exact", 0.45]);
    expect(peaks(told.cautions)[0]).toMatch(/the larger of the two and is judged as it stands, on the safe side$/);
    expect(told.assumedFacts.join()).not.toMatch(/crest factor/);
    expect(judge("0.45 in/s true pk", "fan 90 kW BV-3 rigid", { schemes: ["ansi-amca-204-05"] }).headline).toBe(
      "alarm",
    );
    const compiled = classifier("ansi-amca-204-05", "fan BV-3 rigid", "in/s true pk");
    for (const value of [0.2, 0.25, 0.3, 0.4, 0.45, 0.5, 0.6])
      expect(compiled(value)).toBe(classify(`${value} in/s true pk`, amca).zone);
  });

  it("1.414 x RMS: an RMS reading needs no other, a true peak is on the safe side", () => {
    const scheme = own("mm/s pk", "rms");
    expect(peaks(classify("2 mm/s rms", { scheme }).cautions)).toEqual([
      "peak: Site rule 12 (not stated) means 1.414 x RMS, no true peak, in the band of 10 to 1000 Hz",
    ]);
    const told = classify("5 mm/s true pk", { scheme });
    expect(told.headline).toBe("zone C");
    expect(peaks(told.cautions)[0]).toMatch(/on the safe side$/);
  });

  it("a true peak: any other reading leaves worse open", () => {
    const scheme = own("mm/s true pk", "true", null);
    expect(classify("3 mm/s true pk", { scheme }).headline).toBe("zone B");
    const told = classify("2 mm/s rms", { scheme });
    expect(told.headline).toBe("zone B or worse");
    expect(peaks(told.cautions)).toEqual([
      "peak: Site rule 12 (not stated) means a true peak, read in the waveform, in a band that it does not state; the reading is none, and its crests may be higher",
    ]);
    expect(classify("2 mm/s rms", { scheme: own("mm/s true pk") }).peakMeans).toBe("true");
  });

  it("of a table of one's own that says nothing is taken as left open", () => {
    expect(classify("2 mm/s pk", { scheme: own("mm/s pk") }).peakMeans).toBe("open");
  });

  it("may not contradict what the limits are written in, and goes to JSON and back", () => {
    expect(() => own("mm/s pk", "true")).toThrow(/limits in true pk/);
    expect(() => own("mm/s true pk", "rms")).toThrow(/limits in pk/);
    expect(() => own("mm/s pk", "derived" as "rms")).toThrow(/which peak is meant/);
    expect(() => siteRule("12", { peakMeans: "rms" })).toThrow(/limits in pk/);
    const text = JSON.stringify(own("mm/s pk", "rms"));
    expect(JSON.stringify(defineScheme(JSON.parse(text)))).toBe(text);
  });
});
