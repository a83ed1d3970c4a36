import { baseline, proposeSetpoints } from "veladis/protection";
import { uncertaintyOf } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";

const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the circulation pump" };
const codes = (proposal: ReturnType<typeof proposeSetpoints>) => proposal.warnings.map(({ code }) => code);

describe("setpoints from a baseline with its uncertainty", () => {
  it("keep its history, and tell how well they are known", () => {
    const proposal = proposeSetpoints({ baseline: "2 ± 0.1 mm/s rms (k=2)", limits });
    // baseline plus a quarter of the limit: the limit is a number, the baseline is not
    expect(proposal.alarm?.asked.value).toBe(3.125);
    expect(uncertaintyOf(proposal.alarm?.asked as never).expanded).toBeCloseTo(0.1, 9);
    const told = proposal.warnings.find(({ code }) => code === "uncertain setpoint");
    expect(told?.text).toContain("the alarm by the rules is 3.125 ± 0.10 mm/s rms (k = 2");
    expect(codes(proposal)).not.toContain("alarm perhaps at once");
  });

  it("warn where its interval reaches the alarm or the trip", () => {
    const alarm = proposeSetpoints({ baseline: "4.4 ± 1.5 mm/s rms (k=2)", limits });
    expect(alarm.alarm?.atOnce).toBe(false);
    expect(codes(alarm)).toContain("alarm perhaps at once");
    expect(codes(alarm)).not.toContain("trip perhaps at once");
    const trip = proposeSetpoints({ baseline: "6.9 ± 0.5 mm/s rms (k=2)", limits });
    expect(codes(trip)).toContain("trip perhaps at once");
  });

  it("take limits with one too", () => {
    const proposal = proposeSetpoints({
      baseline: "2 mm/s rms",
      limits: { ...limits, "C/D": "7.1 ± 0.2 mm/s rms (k=2)" },
    });
    expect(uncertaintyOf(proposal.trip?.stored as never).expanded).toBeCloseTo(0.2, 9);
  });

  it("say nothing of it where there is none", () => {
    expect(codes(proposeSetpoints({ baseline: "2 mm/s rms", limits }))).not.toContain("uncertain setpoint");
  });

  it("of a list do not carry it, which the baseline says", () => {
    const { warnings, median } = baseline(["2 ± 0.1 mm/s rms", "2.1 mm/s rms", "2.2 ± 5 % mm/s rms"], {
      as: "mm/s rms",
    });
    expect(median).toBe(2.1);
    expect(warnings).toContain(
      "2 of 3 readings have an uncertainty of their own, which the statistics do not carry: their scatter is all that is told",
    );
  });
});
