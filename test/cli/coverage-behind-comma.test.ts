/** How the factor of an uncertainty is written: common practice, no source. */
import type { Amplitude } from "veladis";
import { fromJson } from "veladis/json";
import { combinedUncertainty } from "veladis/protection";
import { judgePoints, parsePoints } from "veladis/severity";
import { formatUncertain } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";
import { veladis } from "./in-process";

interface Judged {
  readonly headline: string;
  readonly points: readonly { point: string; reading: Pick<Amplitude, "history"> }[];
}

const judged = async (text: string): Promise<Judged | string> => {
  const { out, err } = await veladis([
    "judge",
    ...[text, "--machine", "pump 90 kW 2980 r/min rigid category II", "--json"],
  ]);
  return out === "" ? err : fromJson("points verdict", out);
};

describe("a coverage factor behind a comma is no measuring point", () => {
  it.each([
    ["DE-H 4.6 ± 0.3, k=1, DE-V 2.2 mm/s rms", "zone C", "± 0.3 mm/s rms (k=1)"],
    ["DE-H 4.6 ± 0.3; k=1; DE-V 2.2 mm/s rms", "zone C", "± 0.3 mm/s rms (k=1)"],
    ["DE-H 4,6 ± 0,3, k=1; DE-V 2,2 mm/s rms", "zone C", "± 0.3 mm/s rms (k=1)"],
    ["DE-H 4.6 ± 0.3 mm/s rms, k=1, DE-V 2.2 mm/s rms", "zone C", "± 0.3 mm/s rms (k=1)"],
    ["DE-H 4.6 ± 0.3, 2 sigma, DE-V 2.2 mm/s rms", "zone B", "± 0.3 mm/s rms (k=2)"],
    ["DE-H 4.6 ± 0.3, 2σ, DE-V 2.2 mm/s rms", "zone B", "± 0.3 mm/s rms (k=2)"],
    ["DE-H 4.6 ± 0.3, 95 %, DE-V 2.2 mm/s rms", "zone B", "± 0.3 mm/s rms (95 %, k=1.96)"],
    ["DE-H 4.6 ± 0.3, k=2, 95 %, DE-V 2.2 mm/s rms", "zone B", "± 0.3 mm/s rms (k=2)"],
  ])("but that of the reading before it: %s", async (text, headline, note) => {
    const answer = (await judged(text)) as Judged;
    expect(answer.headline).toBe(headline);
    expect(answer.points.map(({ point }) => point)).toEqual(["DE-H", "DE-V"]);
    expect(answer.points[0]?.reading.history?.[0]?.note).toBe(note);
  });

  it.each([
    "DE-H 4.6, k=1, DE-V 2.2 mm/s rms",
    "DE-H 4.6 k=1, DE-V 2.2 mm/s rms",
    "k 1, DE-V 2.2 mm/s rms",
    "k=1, DE-V 2.2 ± 0.1 mm/s rms",
    "DE-H 4.6 ± 0.3, K: 1, DE-V 2.2 mm/s rms",
    "DE-H 4.6 ± 0.3, sigma 2, DE-V 2.2 mm/s rms",
    "DE-H 4.6 ± 0.3, DE-V 2.2 mm/s rms, k=1",
    "DE-H 4.6, 95 % DE-V 2.2 mm/s rms",
    "DE-H 4.6 ± 0.3 mm/s rms at 25 Hz, k=1, DE-V 2.2 mm/s rms",
  ])("or refused with the form: %s", async (text) => {
    const { error } = JSON.parse((await judged(text)) as string);
    expect(error.code).toBe("syntax");
    expect(error.expected).toMatch(/coverage factor .*± 0\.2 \(k=2\)/);
  });

  it("in points without ± either", () => {
    for (const text of [
      "DE-H 4.6, k=1, DE-V 2.2 mm/s rms",
      "DE-H 4.6 k=1, DE-V 2.2 mm/s rms",
      "2 sigma 2.2 mm/s rms",
    ]) {
      expect(() => parsePoints(text)).toThrow("a coverage factor in brackets");
    }
    expect(parsePoints("Kiln K1 2.2 mm/s rms")[0]?.point).toBe("Kiln K1");
  });
});

describe("a coverage factor or two sides that are not read", () => {
  it("say what was wrong", async () => {
    const comma = "a coverage factor with a point for decimals, such as (k=2.5)";
    const sides = "one ± for both sides; of two unequal sides take the larger";
    for (const [text, says] of [
      ["4.9 ± 0.3 mm/s rms k=2,5", comma],
      ["4.9 ± 0.3 mm/s rms, k=2,5 at 25 Hz", comma],
      ["4.9 ± 0.3 mm/s rms (k=2,5)", comma],
      ["4.9 +0.3/-0.2 mm/s rms", sides],
      ["4.9 mm/s rms -0.2/+0.3", sides],
      ["4.9 mm/s rms +3 % / −2 %", sides],
      ["4.9 ± 0.3 mm/s rms (99 %)", "(k=2), (2 sigma) or (95 %)"],
    ] as const) {
      expect(() => formatUncertain(text), text).toThrow(says);
    }
    expect(await judged("DE-H 4.6 +0.3/-0.2, DE-V 2.2 mm/s rms")).toContain(sides);
    expect(await judged("4.6 +0.3/-0.2 mm/s rms")).toContain(sides);
  });

  // 2 / 1.96 of it
  it("but 95 % confidence is read as 95 %", () => {
    for (const words of ["95 % confidence", "95 %", "95 % confidence level"]) {
      expect(formatUncertain(`4.9 ± 0.3 mm/s rms (${words})`)).toBe("4.90 ± 0.31 mm/s rms (k=2)");
      expect(formatUncertain(`4.9 ± 0.3 mm/s rms, ${words.slice(0, 15)}`)).toBe("4.90 ± 0.31 mm/s rms (k=2)");
    }
    expect(formatUncertain("4.9 ± 0.3 mm/s rms (k=2,95 %)")).toBe("4.90 ± 0.30 mm/s rms (k=2)");
  });
});

describe("readings with the machine stopped", () => {
  it("of several points carry their names", () => {
    const { code, message } = refusalOf(() =>
      judgePoints("DE-H 3.1, DE-V 2.2 mm/s rms", "pump 90 kW 2980 r/min", { background: "0.4, 1.5 mm/s rms" }),
    );
    expect(code).toBe("syntax");
    expect(message).toContain("one each behind the name of its point");
  });
});

describe("a combined uncertainty", () => {
  it("loses no ± of the reading that it is a share of", () => {
    for (const reading of ["8 ± 0.3 mm/s rms", "8 mm/s rms at 25 ± 0.5 Hz"]) {
      const { code, message } = refusalOf(() => combinedUncertainty(["2 % (k=2)"], reading));
      expect(code).toBe("out-of-range");
      expect(message).toContain("a ± of its own");
    }
    // root of 2^2 + (0.3 / 8 * 2 / root 3)^2
    expect(combinedUncertainty(["2 % (k=2)", "± 0.3 mm/s rms"], "8 mm/s rms")).toBeCloseTo(4.77, 3);
  });

  it("of nothing is none", () => {
    expect(refusalOf(() => combinedUncertainty([])).code).toBe("missing-option");
  });
});
