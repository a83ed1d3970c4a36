import { TripLogic } from "veladis/protection";
import { expect, it } from "vitest";
import { settings } from "./trip-settings";

it("the first-out survives every command that leaves the output set, apart from the state that it was resumed from", () => {
  const logic = new TripLogic({ ...settings, onDelay: 1 });
  logic.step(1, 2);
  const stored = structuredClone(logic.snapshot());
  const resumed = new TripLogic(settings, stored);
  const wanted = { time: 1, event: "trip", level: 1, cause: "level" };
  (stored.firstOut as { level: number }).level = 99;
  for (const command of [
    () => resumed.start(),
    () => resumed.bypass(true),
    () => resumed.bypass(false),
    () => resumed.power(false),
    () => resumed.power(true),
  ]) {
    expect(command().output).toBe("trip");
    expect(resumed.firstOut).toEqual(wanted);
    expect(Object.isFrozen(resumed.firstOut)).toBe(true);
  }
});

it("the first-out stays as it was, whatever becomes of the event that was handed out", () => {
  const high = { ...settings, threshold: "9 mm/s rms", onDelay: 1 } as const;
  const run = new TripLogic(high);
  const [tripped] = run.run([10, 10, 10], 1);
  const step = new TripLogic(high);
  const [, again] = step.step(10, 2).events;
  for (const [logic, event] of [
    [run, tripped],
    [step, again],
  ] as const) {
    expect(event?.event).toBe("trip");
    expect(logic.firstOut).toEqual(event);
    (event as { time: number }).time = 99;
    expect(logic.firstOut?.time).toBe(1);
    expect(Object.isFrozen(logic.firstOut)).toBe(true);
  }
});
