import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkAgainstKnown, proposeSetpoints, shakerReach, TripLogic } from "../../src/entries/protection";
import { currentLoop, sensor } from "../../src/entries/sensor";
import { parseMachine, type Scheme, schemesFor } from "../../src/entries/severity";
import { parseVector } from "../../src/entries/vector";
import { convertAmplitude, frequency, parseAmplitude } from "../../src/index";
import { root } from "./fences";

interface Machine {
  readonly tag: string;
  readonly words: string;
  readonly point: string;
  readonly sensor?: string;
  readonly loop?: string;
  readonly baseline: string;
  readonly alarm: string;
  readonly trip: string;
  readonly step?: string;
  readonly hysteresis: string;
  readonly delay: number;
  readonly latching: boolean;
}

interface Plant {
  readonly machines: readonly Machine[];
  readonly switch: {
    readonly on: string;
    readonly step: string;
    readonly band: string;
    readonly contact: "normally open";
    readonly coil: "normally energised";
    readonly sensorFault: "alarm";
    readonly timerResets: "below threshold";
  };
  readonly shaker: Readonly<Record<"frequencies" | "stroke" | "acceleration" | "payload" | "uncertainty", string>>;
  readonly check: Readonly<Record<"known" | "asFound" | "asLeft" | "tolerance", string>>;
  readonly vectors: Readonly<Record<"on" | "reading" | "slowRoll" | "casing", string>>;
}

const plant: Plant = JSON.parse(readFileSync(`${root}/docs/examples/hollowmere.json`, "utf8"));
const page = readFileSync(`${root}/docs/guides/example-plant.md`, "utf8");
const prose = page.replace(/\s+/g, " ");

/** A reading as the prose of the page writes it. */
const inProse = (reading: string): string =>
  reading.replace(" rms", " RMS").replace(" pk", " peak").replace(" pp", " peak-to-peak");

const number = (reading: string): string => reading.split(" ")[0] as string;

/** Whether a setpoint is a whole number of steps. */
const isOnStep = (setpoint: string, step: string): boolean => {
  const steps = Number(number(setpoint)) / Number(number(step));
  return Math.abs(steps - Math.round(steps)) < 1e-9;
};

describe("the page of the invented plant", () => {
  it("has the rows of hollowmere.json", () => {
    const rows = page.split("\n").filter((line) => line.startsWith("| "));
    const cells = rows.map((row) =>
      row
        .slice(1, -1)
        .split("|")
        .map((cell) => cell.trim()),
    );
    expect(cells.slice(2)).toEqual(
      plant.machines.map((one) => [
        ...[one.tag, one.words, one.point, one.sensor ?? one.loop, one.baseline, one.alarm, one.trip, one.hysteresis],
        ...[`${one.delay} s`, one.latching ? "yes" : "no"],
      ]),
    );
  });

  it("tells of steps, switch and shaker as hollowmere.json does", () => {
    for (const { tag, step } of plant.machines) {
      if (step) expect(prose).toMatch(new RegExp(`of ${inProse(step)} for( the)?( [^,.]* and)? ${tag}`, "i"));
    }
    const { on, step, band, contact, coil } = plant.switch;
    expect(prose).toContain(
      `The vibration switch of ${on} is set in steps of ${inProse(step)}. It measures from ${band}.`,
    );
    expect(prose).toContain(`Its contact is ${contact} and its coil ${coil}`);
    expect(prose).toContain("a sensor fault counts as a level above the threshold");
    expect(prose).toContain("restarts when the level falls below the threshold");
    const { frequencies, stroke, acceleration, payload, uncertainty } = plant.shaker;
    const limits = [frequencies, inProse(stroke), inProse(acceleration), `at most ${payload}`].join(", ");
    expect(prose).toContain(`${limits}; the expanded uncertainty of its level is ${uncertainty} (k = 2)`);
  });

  it("tells the story of the check as it computes", () => {
    const { known, asFound, asLeft, tolerance } = plant.check;
    const { uncertainty } = plant.shaker;
    const [found, left] = [asFound, asLeft].map((indicated) =>
      checkAgainstKnown({ known, indicated, tolerance, uncertainty }),
    );
    expect([found?.verdict, left?.verdict]).toEqual(["fail", "pass"]);
    const low = (percent = 0): string => (-percent).toFixed(2);
    expect(prose).toContain(`shows ${number(asFound)}: it reads **low**, by ${low(found?.errorPercent)} %`);
    expect(prose).toContain(`a tolerance of ${tolerance} is not kept`);
    expect(prose).toContain(`it shows ${number(asLeft)}, which is ${low(left?.errorPercent)} % low`);
    const trip = Number(number(plant.machines[0]?.trip ?? ""));
    const reached = (trip * Number(number(known))) / Number(number(asFound));
    expect(prose).toContain(`set to ${trip} mm/s, it would let the fan reach ${reached.toFixed(2)} mm/s`);
    const [, speed] = known.split(" at ");
    expect(prose).toContain(`gives 8.0 mm/s RMS at ${speed} (${frequency(speed as string).hertz} Hz)`);
  });
});

describe.each(plant.machines.map((one) => [one.tag, one] as const))("%s", (_, one) => {
  it("is a machine that a table is for, in words that are all read", () => {
    expect(parseMachine(one.words)).toMatchObject({ power: expect.any(String), type: expect.any(String) });
    expect(schemesFor(`${one.words}, in service`)[0]?.scheme.id).toMatch(/^iso-/);
  });

  it("has a sensor or a loop that carries its trip", () => {
    expect([one.sensor, one.loop].filter(Boolean)).toHaveLength(1);
    if (one.loop) expect(currentLoop(one.loop).current(one.trip).state).toBe("in range");
    if (one.sensor) {
      const { unit, voltage } = sensor(one.sensor);
      const trip = convertAmplitude(`${one.trip} at ${/\d+ r\/min/.exec(one.words)?.[0]}`, `${unit} pp`);
      expect(voltage(trip, "V pp").value).toBeGreaterThan(0);
    }
  });

  it("has settings within the rules, on the steps of its device", () => {
    const machine = one.words.endsWith("shaft") ? `${one.words}, in service` : `${one.words}, in service, housing`;
    const scheme = schemesFor(machine)[0]?.scheme as Scheme;
    const loop = one.loop === undefined ? {} : { sensor: { loop: one.loop } };
    const { alarm, trip, delay, warnings } = proposeSetpoints({
      ...{ baseline: one.baseline, scheme, machine, onDelay: one.delay },
      ...loop,
    });
    for (const [setpoint, proposed] of [
      [one.alarm, alarm],
      [one.trip, trip],
    ] as const) {
      const [low, high] = proposed?.range ?? [Number.NaN, Number.NaN];
      expect(parseAmplitude(setpoint).value).toBeGreaterThanOrEqual(low);
      expect(parseAmplitude(setpoint).value).toBeLessThanOrEqual(high * (1 + 1e-9));
      if (one.step) expect(isOnStep(setpoint, one.step)).toBe(true);
    }
    expect(one.delay).toBeLessThanOrEqual(delay.longest);
    // a support is set aside where a scheme makes no difference by it
    expect(warnings.map(({ code }) => code).filter((code) => code !== "set aside")).toEqual([
      "unverified limits or rules",
      "single baseline",
    ]);
  });

  it("trips after its delay, not before", () => {
    const { contact, coil, sensorFault, timerResets } = plant.switch;
    const { trip, hysteresis, delay, latching } = one;
    const logic = new TripLogic({
      ...{ threshold: trip, hysteresis, onDelay: delay, latching },
      ...{ contact, coil, sensorFault, timerResets },
    });
    expect(logic.step(trip, delay * 0.99).output).toBe("healthy");
    expect(logic.step(trip, delay * 0.01).output).toBe("trip");
    expect(logic.step(one.baseline, 60).output).toBe(latching ? "trip" : "healthy");
  });
});

it("the vectors are those of a machine, as the page tells them", () => {
  const { on, reading, slowRoll, casing } = plant.vectors;
  const one = plant.machines.find(({ tag }) => tag === on) as Machine;
  expect(parseVector(reading).amplitude).toMatchObject(parseAmplitude(`${one.baseline} at 1x of 5400 r/min`));
  expect(one.words).toContain("5400 r/min");
  for (const vector of [reading, slowRoll, casing]) {
    const { direction } = parseVector(vector);
    expect(direction).toBe("vertical");
    expect(prose).toContain(inProse(vector.split(",")[0] as string));
  }
  expect([reading, slowRoll].map((vector) => parseVector(vector).probe)).toEqual(["1Y", "1Y"]);
});

it("the switch under test is that of a machine, whose setpoints are on its steps", () => {
  const one = plant.machines.find(({ tag }) => tag === plant.switch.on);
  expect([one?.alarm, one?.trip].map((setpoint = "") => isOnStep(setpoint, plant.switch.step))).toEqual([true, true]);
});

it("the shaker can give the levels of the check", () => {
  const { frequencies, stroke, acceleration, payload } = plant.shaker;
  const [lowest, highest] = frequencies.split(" to ").map((word) => frequency(word)) as [
    { hertz: number },
    { hertz: number },
  ];
  const kilograms = Number(number(payload));
  const shaker = { lowest, highest, displacement: stroke, acceleration, payload: `${kilograms} kg` };
  expect(shakerReach(plant.check.known, shaker, "1 kg").possible).toBe(true);
  expect(shakerReach(plant.check.known, shaker, `${kilograms + 0.1} kg`).limitedBy).toEqual(["payload"]);
});
