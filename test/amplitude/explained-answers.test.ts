import { VeladisError } from "veladis";
import { explain } from "veladis/explain";
import {
  balanceGrades,
  benchPlan,
  gradeOfUnbalance,
  linearity,
  permissibleUnbalance,
  proposeSetpoints,
  TripLogic,
  VotedTrip,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { unbalanceHistories } from "../../src/balance/index";
import { calls } from "../robustness/calls";
import { replay } from "./replay";

/** Whether an answer holds an amplitude or a history, found here by another way than the library's. */
function holdsHistory(answer: unknown): boolean {
  const text = JSON.stringify(answer, (_, value) => (ArrayBuffer.isView(value) ? undefined : value)) ?? "";
  return /"history":\[\{/.test(text);
}

/** What has to hold of every explanation: carried out, its lines come to what they say, and its results are lines. */
function expectReplayed(answer: object | string): void {
  const { steps, results, text } = explain(answer);
  const values = replay(steps);
  for (const [i, { value }] of steps.entries()) {
    if (value === Number.POSITIVE_INFINITY) expect(values[i]).toBe(value);
    else expect(Math.abs((values[i] as number) - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-12);
  }
  for (const { step } of results) expect(steps[step]).toBeDefined();
  expect(text.split("\n")).toHaveLength(steps.length + results.filter(({ place }) => place !== "").length);
  expect(new Set(results.map(({ place }) => place)).size).toBe(results.length);
}

const all = Object.entries(calls).flatMap(([entry, list]) =>
  list.map((call) => [`${entry}: ${call.name}`, call] as const),
);

describe("every answer of a public function that keeps a history is explained, and its lines replayed come to it", () => {
  const explained: string[] = [];

  it.each(all)("%s", async (name, { args, run }) => {
    const answer = await run(...args());
    if (typeof answer !== "object" || answer === null || !holdsHistory(answer)) return;
    expectReplayed(answer);
    explained.push(name);
  });

  it("among them baselines, checks, trip runs, plans, verdicts, overalls, proposals and balance", () => {
    for (const name of [
      "baseline",
      "checkAgainstKnown",
      "asFoundAsLeft",
      "linearity",
      "tripPointTest",
      "TripLogic",
      "benchPlan",
      "judge",
      "judgePoints",
      "overall",
      "proposeSetpoints",
      "storedSetpoint",
      "permissibleUnbalance",
    ]) {
      expect(explained.some((one) => one.includes(name))).toBe(true);
    }
  });
});

const settings = {
  threshold: "8 mm/s rms",
  hysteresis: "5 %",
  onDelay: 2,
  timerResets: "below threshold",
  sensorFault: "bad",
} as const;
const relay = { latching: true, contact: "normally open", coil: "normally energised" } as const;

describe("an answer that is made of several", () => {
  it("is told by place, each amplitude once: what is a step on the way to another is told there", () => {
    const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker of the pump" };
    const { text, results, steps } = explain(
      proposeSetpoints({ baseline: "2 mm/s rms", limits, device: { step: "0.1 mm/s rms" } }),
    );
    expect(results).toEqual([
      { place: "alarm.reset", step: 5 },
      { place: "trip.reset", step: 8 },
    ]);
    // the steps of the second start behind those of the first
    expect(steps[7]?.of).toEqual([6]);
    expect(text.split("\n").slice(4, 9)).toEqual([
      "  2 mm/s rms + 1.125 mm/s rms = 3.125 mm/s rms  (alarm)",
      "  3.125 mm/s rms down to a whole number of steps of 0.1 = 3.1 mm/s rms  (steps of the device)",
      "  3.1 mm/s rms x 0.95 = 2.945 mm/s rms  (less a hysteresis of 5 %)",
      "trip.reset",
      "  7.1 mm/s rms  (C/D of maker of the pump)",
    ]);
  });

  it("names the points of a list by their place", () => {
    const check = linearity(
      [
        { known: "2 mm/s rms", indicated: "2.1 mm/s rms" },
        { known: "5 mm/s rms", indicated: "0.28 in/s pk" },
      ],
      { tolerance: "5 %" },
    );
    expect(explain(check).results.map(({ place }) => place)).toEqual([
      "points[0]",
      "points[0].expected",
      "points[1]",
      "points[1].expected",
    ]);
    expectReplayed(check);
  });

  it("survives JSON", () => {
    const plan = benchPlan(
      { threshold: "9 mm/s rms", hysteresis: "8 %", onDelay: 8, latching: true, frequencies: ["2400 r/min"] },
      { lowest: "8 Hz", highest: "3 kHz" },
    );
    expect(explain(JSON.parse(JSON.stringify(plan)))).toEqual(explain(plan));
  });

  it("is a trip logic with its threshold and reset level, and the events of its run by the levels as they were written", () => {
    const logic = new TripLogic({ ...settings, ...relay });
    const events = logic.run([0.3, 0.5, 0.5, 0.5], 1, { as: "in/s pk" });
    expect(explain(logic).results.map(({ place }) => place)).toEqual(["rules.reset"]);
    expect(explain(events).text.split("\n")).toEqual([
      "[0]",
      "  0.5 in/s pk",
      "  0.5 in/s pk x 25.4 = 12.7 mm/s pk",
      "  12.7 mm/s pk / 1.414 = 8.98 mm/s rms  (one sine)",
    ]);
    expect(events[0]?.history?.at(-1)?.value).toBe(events[0]?.level);
    expectReplayed(events);
  });

  it("has no lines where levels were given in the unit of the threshold: nothing was reckoned", () => {
    const events = new TripLogic({ ...settings, ...relay }).run([9, 9, 9], 1);
    expect(events).toHaveLength(1);
    expect(explain(events)).toEqual({ steps: [], results: [], text: "" });
  });

  it("is a voted run, each channel by the unit of its own levels", () => {
    const pair = new VotedTrip({
      ...{ vote: "1oo2", badChannel: "votes to trip", ...relay },
      channels: { "drive end": settings, "free end": settings },
    });
    const histories = { "drive end": [0.5, 0.5, 0.5, 0.5], "free end": [9, 9, 9, 9] };
    const events = pair.run(histories, 1, { as: { "drive end": "in/s pk", "free end": "mm/s rms" } });
    const told = events.filter(({ history }) => history !== undefined);
    expect(told.map(({ channel }) => channel)).toContain("drive end");
    expect(told.map(({ channel }) => channel)).not.toContain("free end");
    expectReplayed(events);
  });

  it.each([{}, { foo: 1 }, 3, new Date(0), () => 1])("is not %j", (answer) => {
    expect(() => explain(answer as object)).toThrow(VeladisError);
  });
});

describe("balance", () => {
  // U = 1000 G m / omega and F = U omega squared, ISO 21940-11 clause 6, from memory
  it.each(balanceGrades)("G %d: replayed it comes to eccentricity, unbalance, planes and force", (grade) => {
    const planes = { left: "300 mm", right: "800 mm" };
    const found = permissibleUnbalance(grade, { mass: "400 kg", speed: "1480 r/min", planes });
    const values = replay(explain(found).steps);
    const wanted = [found.eccentricity, found.unbalance, found.planes.left, found.planes.right, found.force];
    for (const one of wanted) expect(values.some((value) => Math.abs(value / one - 1) < 1e-12)).toBe(true);
    expectReplayed(found);
  });

  it("the grade and the force of an unbalance, and each line in a unit of its own", () => {
    const rotor = { mass: "400 kg", speed: "1480 r/min" } as const;
    const { grade, force } = unbalanceHistories({ unbalance: "20 oz·in", ...rotor });
    expect(explain({ history: grade }).steps.at(-1)?.value).toBeCloseTo(gradeOfUnbalance("20 oz·in", rotor), 12);
    expect(explain({ history: grade }).steps.map(({ type }) => type)).toEqual(["oz·in", "g·mm", "um", "um/s", "mm/s"]);
    expect(explain({ history: force }).steps.map(({ type }) => type)).toEqual(["oz·in", "g·mm", "kg·m", "kg·m/s", "N"]);
    for (const history of [grade, force]) expectReplayed({ history });
  });
});
