import { TripLogic } from "veladis/protection";
import { expect, it } from "vitest";
import { settings } from "./trip-settings";

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
