import { explain } from "veladis/explain";
import { proposeSetpoints } from "veladis/protection";
import { judge } from "veladis/severity";
import { describe, expect, it } from "vitest";

const proposed = (baseline: string, machine: string) => {
  const { alarm, trip, warnings, schemes, assumedFacts, assumed } = proposeSetpoints({ baseline, machine });
  const told = Object.fromEntries(warnings.map(({ code, text }) => [code, text]));
  return { alarm, trip, told, schemes, assumedFacts, assumed };
};

// a sine's velocity is 2 pi f times its displacement (any textbook of mechanics); pp is 2 x 1.414 times RMS
describe("limits of another quantity of the class", () => {
  it("set a trip in displacement by what they are at running speed", () => {
    const { alarm, trip, told, assumed } = proposed("40 um pp", "motor 400 kW 3570 r/min rigid housing");
    const byHand = ((7.1 / (2 * Math.PI * 59.5)) * 1000 * 2 * Math.SQRT2) as number;
    expect(byHand).toBeCloseTo(53.7, 1);
    expect(trip?.asked.value).toBeCloseTo(byHand, 9);
    expect(alarm?.asked.value).toBeCloseTo((1.25 * byHand * 4.5) / 7.1, 9);
    expect(trip?.reasons[1]?.text).toBe("C/D of velocity 7.10 mm/s rms, at running speed 59.5 Hz, of ISO 20816-3:2022");
    expect(told["other quantities"]).toBe(
      "velocity is taken in at running speed only: what of it lies at higher frequencies, a trip in displacement does not guard",
    );
    expect(assumed).toEqual(["one-frequency", "sine"]);
    expect(trip && explain(trip).text.split("\n")).toEqual([
      "7.1 mm/s rms  (C/D of ISO 20816-3:2022, from memory)",
      "7.1 mm/s rms / 1000 = 0.0071 m/s rms",
      "0.0071 m/s rms / 373.8 = 1.899e-5 m rms  (2 pi x 59.5 Hz, one frequency)",
      "1.899e-5 m rms x 1e6 = 18.99 um rms",
      "18.99 um rms x 2.828 = 53.72 um pp  (one sine)",
    ]);
    expect(judge("100 um pp", "motor 400 kW 3570 r/min rigid housing").zone).toBe("D");
  });

  it("set a trip in velocity of a slow machine", () => {
    const { trip, told } = proposed("1 mm/s rms", "motor 400 kW 300 r/min rigid");
    expect(trip?.asked.value).toBeCloseTo((2 * Math.PI * 5 * 90) / 1000, 9);
    expect(trip?.reasons[1]?.text).toBe(
      "C/D of displacement 90.0 um rms, at running speed 5.00 Hz, of ISO 20816-3:2022",
    );
    // all of a displacement is seen by its velocity: nothing is left unguarded
    expect(told["other quantities"]).toBeUndefined();
  });

  it("are carried by the lowest speed of a range, and leave the setpoint without a frequency", () => {
    const { trip, told } = proposed("40 um pp", "motor 400 kW 900 to 1800 r/min rigid housing");
    expect(trip?.asked.value).toBeCloseTo((7.1 / (2 * Math.PI * 15)) * 1000 * 2 * Math.SQRT2, 9);
    expect(trip?.asked.hertz).toBeUndefined();
    expect(trip?.reasons[1]?.text).toBe(
      "C/D of velocity 7.10 mm/s rms, at running speed 15.0 Hz, the lowest of its range, of ISO 20816-3:2022",
    );
    expect(told["other quantities"]).toBe(
      "velocity is taken in at the lowest running speed only: what of it lies at higher speeds and frequencies, a trip in displacement does not guard",
    );
  });

  it("are named as unguarded where the speed is not known", () => {
    const { trip, told } = proposed("40 um pp", "motor 400 kW rigid housing");
    expect(trip?.asked.value).toBeCloseTo(90 * 2 * Math.SQRT2, 9);
    expect(told["other quantities"]).toBe(
      "trip in displacement alone leaves velocity unguarded, which the scheme limits too: state the running speed, and its limits are taken in",
    );
  });
});

describe("a displacement of which nobody said the place", () => {
  const turbine = "steam turbine 12 MW 5400 r/min rigid";

  it("takes the lower of housing and shaft, and says so", () => {
    const { trip, told, schemes, assumedFacts } = proposed("20 um pp", turbine);
    expect(schemes.map(({ scheme }) => scheme)).toEqual(["iso-20816-3-2022", "iso-20816-3-2022-shaft"]);
    expect(told["unknown place"]).toBe("place: not given, and the lower of housing and shaft is taken");
    expect(assumedFacts).toContain(told["unknown place"]);
    expect(told["assumed facts"] ?? "").not.toContain("place");
    const at = (place: string) => proposed("20 um pp", `${turbine} ${place}`);
    const trips = ["housing", "shaft"].map((place) => at(place).trip?.asked.value as number);
    expect(trip?.asked.value).toBe(Math.min(...trips));
    expect(at("shaft").told["unknown place"]).toBeUndefined();
  });

  it("is no question of a velocity", () => {
    expect(proposed("2 mm/s rms", turbine).told["unknown place"]).toBeUndefined();
  });
});
