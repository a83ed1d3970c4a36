import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const machine = ["--machine", "pump 90 kW 2980 r/min category II"];
const judge = (reading: string, ...rest: string[]) => veladis(["judge", reading, ...machine, ...rest]);

describe("judge of a reading with ±", () => {
  it("prints the verdict by guard band first, then interval, zones and probabilities", async () => {
    const { out } = await judge("4.9 ± 0.3 mm/s rms (k=2)");
    const [headline, within, likely, decided] = out.split("\n");
    expect(headline).toBe(
      "4.9 ± 0.3 mm/s rms (k=2): zone C, by guard band, unsatisfactory for long-term operation: plan remedial action",
    );
    expect(within).toBe("within      4.60 to 5.20 mm/s rms (U = 0.300, k = 2, first order): B, C");
    expect(likely).toBe("likely      A below 0.1 %, B 91 %, C 9.1 %, D below 0.1 %");
    expect(decided).toMatch(/^decided {5}by guard band: .*; by simple acceptance zone B$/);
    expect(out).not.toContain("zonesWithin");
  });

  it("takes the uncertainty of an option, and the other rule", async () => {
    const stated = await judge("4.9 ± 6 % mm/s rms (k=2)");
    const option = await judge("4.9 mm/s rms", "--uncertainty", "6 % (k=2)");
    expect(option.out.split("\n").slice(1)).toEqual(stated.out.split("\n").slice(1));
    const simple = await judge(
      "4.9 mm/s rms at 25 ± 0.5 Hz",
      "--uncertainty",
      "± 6 % (k=2)",
      "--rule",
      "simple acceptance",
    );
    expect(simple.out).toMatch(/: zone B,/);
    expect(simple.out).toContain("by simple acceptance: the zone of the best value");
  });

  it("says why there are no probabilities", async () => {
    const { out } = await judge("0.27 in/s pk ± 6 % (k=2)");
    expect(out.replace(/\s+/g, " ")).toContain(
      "likely not given: a probability would be false precision: how far off what was assumed may be is not known (sine)",
    );
  });

  it("as data: zone, headline and possible zones are those of the rule, so that a script is on the safe side", async () => {
    const { out } = await judge("4.9 ± 0.3 mm/s rms (k=2)", "--json");
    const { zone, headline, possible, worst, text, within } = JSON.parse(out);
    expect({ zone, headline, possible, worst, text }).toEqual({
      ...{ zone: "C", headline: "zone C", possible: ["B", "C"], worst: "C" },
      text: "4.90 mm/s rms: zone C",
    });
    expect(within.bestValue).toEqual({ zone: "B", headline: "zone B" });
    expect(within.probabilities.C).toBeCloseTo(0.091, 3);
  });

  it("lines are read with ± and without", async () => {
    const { out } = await veladis(["judge", ...machine], "4.9 ± 0.3 mm/s rms (k=2)\n4.9 mm/s rms\n");
    const [uncertain, plain] = out.split("\n");
    expect(uncertain).toContain("zone C, ");
    expect(uncertain).toContain("; by guard band; within 4.60 to 5.20 mm/s rms: B, C; likely ");
    expect(plain).toMatch(/^4.9 mm\/s rms: zone B, /);
  });
});

describe("judge of several points with ±", () => {
  const reading = "DE-H 4.9 ± 0.3 (k=2), DE-V 2.2 ± 5 % (k=2), NDE-H 5 mm/s rms";

  it("takes the worst zone that an interval touches, and shows each", async () => {
    const { out } = await judge(reading);
    expect(out).toMatch(/^DE-H governs, 4\.90 ± 0\.30 mm\/s rms \(k=2\): zone C, by guard band,/);
    expect(out).toMatch(/^> +DE-H .* zone C +4\.60 to 5\.20 mm\/s rms: B, C$/m);
    expect(out).toMatch(/^ +DE-V .* zone A +2\.09 to 2\.31 mm\/s rms: A$/m);
    const simple = await judge(reading, "--rule", "simple acceptance");
    expect(simple.out).toContain(": zone B,");
  });

  it("as data: the zone of the rule, the possible ones, and what is within the interval of each", async () => {
    const { zone, headline, possible, worst, points } = JSON.parse((await judge(reading, "--json")).out);
    expect({ zone, headline, possible, worst }).toEqual({
      ...{ zone: "C", headline: "zone C", possible: ["B", "C"], worst: "C" },
    });
    expect(points.map(({ within }: { within?: { zones: string[] } }) => within?.zones)).toEqual([
      ["B", "C"],
      ["A"],
      undefined,
    ]);
  });

  it("a verdict never becomes better by a ± of one of them", async () => {
    for (const shown of ["3.1", "3.19", "4.9", "5.05", "8.4", "9"]) {
      const [plain, uncertain] = await Promise.all(
        [shown, `${shown} ± 0.2`].map(async (one) =>
          JSON.parse((await judge(`DE-H ${one}, DE-V 1 mm/s rms`, "--json")).out),
        ),
      );
      expect(uncertain.zone >= plain.zone, shown).toBe(true);
      expect(uncertain.worst >= plain.worst, shown).toBe(true);
    }
  });

  it.each([
    ["DE-H 4,9 ± 0,3; DE-V 2,2 mm/s rms", "DE-H 4.9 ± 0.3, DE-V 2.2 mm/s rms"],
    ["DE-H 4.9 mm/s rms ± 0.3 mm/s rms, DE-V 2.2 mm/s rms", "DE-H 4.9 ± 0.3, DE-V 2.2 mm/s rms"],
    ["DE-H 4.9 ± 0.3 (k=2, 95 %), DE-V 2.2 mm/s rms", "DE-H 4.9 ± 0.3 (k=2), DE-V 2.2 mm/s rms"],
  ])("%s is %s", async (written, same) => {
    const [one, other] = await Promise.all(
      [written, same].map(async (text) => JSON.parse((await judge(text, "--json")).out)),
    );
    expect(one.points.map((point: { within?: { interval: object } }) => point.within?.interval)).toEqual(
      other.points.map((point: { within?: { interval: object } }) => point.within?.interval),
    );
  });

  it.each([
    ["DE-H 4.9 ± 0.3, DE-V 2.2 ± 0.1 mm/s rms (k=2)", "the coverage factor behind each ±"],
    ["DE-H 4.9 mm/s rms at 25 ± 1 Hz, DE-V 2 mm/s rms", "whose frequencies have no ±"],
    ["DE-H 4.9 ± 0.3 ± 0.2, DE-V 2 mm/s rms", "points with their readings"],
  ])("%s is refused", async (text, says) => {
    const { err, code } = await judge(text);
    expect(err).toContain(says);
    expect(code).toBe(2);
  });
});

describe("a background with ±", () => {
  it("is taken at the upper end of its interval, and says so", async () => {
    // 2.9 is 3.2 times 0.9, and not three times 0.9 + 2 x 0.1 / root 3
    const { out } = await judge("2.9 mm/s rms", "--background", "0.9 ± 0.1 mm/s rms");
    expect(out).toContain("NOT RELIABLE: background too high");
    expect(out.replace(/\s+/g, " ")).toContain(
      "0.90 ± 0.12 mm/s rms (k=2): taken at the upper end of its interval, 1.02",
    );
    expect((await judge("2.9 mm/s rms", "--background", "0.9 mm/s rms")).out).not.toContain("NOT RELIABLE");
  });

  it("of several points too, each its own", async () => {
    const { out } = await judge("DE-H 2.9, DE-V 2.2 mm/s rms", "--background", "DE-H 0.9 ± 0.1, DE-V 0.1 mm/s rms");
    expect(out).toContain("NOT RELIABLE: background too high at DE-H");
    const { err } = await judge("2.9 mm/s rms", "--background", "DE-H 0.9 ± 0.1 mm/s rms");
    expect(err).toContain("received: those of several points");
  });
});

describe("the ends of an interval", () => {
  it("are not drawn in by few digits", async () => {
    const { out } = await judge("4.96 ± 0.32 mm/s rms (k=2)", "--digits", "1");
    expect(out).toContain("4.64 to 5.28 mm/s rms");
  });
});

describe("a number and its ± in brackets", () => {
  it("are read as without them", async () => {
    const plain = await judge("4.9 ± 0.3 mm/s rms (k=2)");
    expect(plain.out).toContain("4.60 to 5.20 mm/s rms");
    const { out } = await judge("(4.9 ± 0.3) mm/s rms (k=2)");
    // the first line tells the reading as it was written
    expect(out.replace("(4.9 ± 0.3)", "4.9 ± 0.3")).toBe(plain.out);
    expect((await judge("(4.9 ± 0.3 mm/s rms) 5 (k=2)")).code).not.toBe(0);
  });
});

describe("a point without ± beside one that has it", () => {
  it("is named as taken as exact, on the page and on a line", async () => {
    const points = "DE-H 4.9, DE-V 2.2 ± 0.3 mm/s rms, k=2";
    const { out } = await judge(points);
    expect(out).toMatch(/DE-H +4\.90 mm\/s rms .* no ±: taken as exact/);
    expect(out).not.toMatch(/DE-V .* taken as exact/);
    const { out: line } = await veladis(["judge", ...machine], `${points}\nDE-H 4.9, DE-V 2.2 mm/s rms\n`);
    const [beside, without] = line.trimEnd().split("\n");
    expect(beside).toContain("DE-H zone B (no ±: taken as exact), DE-V zone A;");
    expect(without).not.toContain("taken as exact");
  });
});

describe("cells with ± of files", () => {
  it.each([
    ["value\n4.9 ± 0.3 mm/s rms\n", []],
    ["value\n4.9 ± 0.3\n", ["--from", "mm/s rms"]],
  ])("%j is refused, not read without it", async (file, options) => {
    const { out, err, code } = await veladis(["table", "--column", "value", ...machine, ...options], file);
    expect(out.trim().split("\n")).toHaveLength(1);
    expect(err).toMatch(/line 2: syntax/);
    expect(err).toContain("write the value plus its uncertainty U in a column of its own");
    expect(err).toContain("1 refused");
    expect(code).toBe(2);
  });
});
