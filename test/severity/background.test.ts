/**
 * Lloyd's Register, Ship Vibration and Noise Guidance Notes, chapter 7, 1.3: broadband severity is valid where the
 * running value is more than three times that with the machine stopped, else narrow bands are needed.
 */
import {
  checkBackground,
  classify,
  judge,
  judgePoints,
  supportOf,
  supportRule,
  unknownSupportRule,
} from "veladis/severity";
import { describe, expect, it } from "vitest";

const pump = "pump 90 kW 2980 r/min category II";

describe("a reading with the machine stopped", () => {
  it("admits a broadband verdict above three times itself, not at three times", () => {
    expect(checkBackground("3.01 mm/s rms", "1 mm/s rms").valid).toBe(true);
    expect(checkBackground("3 mm/s rms", "1 mm/s rms").valid).toBe(false);
    expect(checkBackground("2.1 mm/s rms", "0.7 mm/s rms").valid).toBe(false);
    expect(checkBackground("1 mm/s rms", "0 mm/s rms")).toMatchObject({ valid: true, ratio: Number.POSITIVE_INFINITY });
    expect(checkBackground("0 mm/s rms", "0 mm/s rms").valid).toBe(false);
    // 0.02 in/s peak is 0.359 mm/s RMS as of a sine
    expect(checkBackground("4.1 mm/s rms", "0.02 in/s pk").ratio).toBeCloseTo(11.41, 1);
    expect(() => checkBackground("3 mm/s rms", "10 um rms")).toThrow(/frequency/);
  });

  it("leaves the zone as it is, and says first and loudly where it is too high", () => {
    const plain = judge("4.1 mm/s rms", pump);
    const quiet = judge("4.1 mm/s rms", pump, { background: "0.4 mm/s rms" });
    const loud = judge("4.1 mm/s rms", pump, { background: "2 mm/s rms" });
    expect([quiet.zone, loud.zone]).toEqual([plain.zone, plain.zone]);
    expect("background" in plain).toBe(false);
    expect(quiet.background?.valid).toBe(true);
    expect(loud.background?.source.provenance).toBe("quoted");
    expect(loud.cautions[0]).toMatch(/^BACKGROUND TOO HIGH: the reading is 2\.05 times that at rest.*narrow band$/);
    expect(loud.cautions.slice(1)).toEqual(plain.cautions);
  });

  it("is taken by classify and by points too", () => {
    const options = { scheme: "iso-10816-7-2009", machine: pump, background: "2 mm/s rms" } as const;
    expect(classify("4.1 mm/s rms", options).background?.valid).toBe(false);
    const { points } = judgePoints("DE-H 3.1, NDE-H 7 mm/s rms", pump, { background: "2 mm/s rms" });
    expect(points.map(({ verdict }) => verdict.background?.valid)).toEqual([false, true]);
  });
});

describe("rules for supports", () => {
  it("carry their sources", () => {
    // motor maker's manual, 7.4.3.2: at least 25 % above the excitation, in that direction
    expect(supportOf("62.5 Hz", "50 Hz")).toBe("rigid");
    expect([supportRule, unknownSupportRule].map(({ source }) => source.provenance)).toEqual(["quoted", "quoted"]);
    // the class society: not classified, then rigid
    expect(judge("3 mm/s rms", "motor 200 kW 1485 r/min").assumedFacts.join()).toMatch(/support rigid: not given/);
  });
});
