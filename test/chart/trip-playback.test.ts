import fc from "fast-check";
import { expect, it } from "vitest";
import { fanSettings } from "../../docs/site/charts";
import { tripPlayback } from "../../src/chart/trip-playback";
import { type TripCommandName, TripLogic, tripCommands } from "../../src/entries/protection";

/** Tells a logic what a history's command says. */
function tell(logic: TripLogic, name: TripCommandName): void {
  if (name === "reset") logic.reset();
  else if (name === "start") logic.start();
  else if (name === "bypass on" || name === "bypass off") logic.bypass(name === "bypass on");
  else logic.power(name === "power back");
}

it("every span shows the state and contact that the logic has in its middle", () => {
  const level = fc.constantFrom(2, 4, 8.2, 8.5, 9, 10);
  const command = fc.record({ time: fc.integer({ min: 0, max: 12 }), do: fc.constantFrom(...tripCommands) });
  fc.assert(
    fc.property(
      fc.array(level, { minLength: 12, maxLength: 12 }),
      fc.array(command, { maxLength: 3 }),
      fc.record({
        onDelay: fc.integer({ min: 0, max: 4 }),
        offDelay: fc.integer({ min: 0, max: 3 }),
        startInhibit: fc.constantFrom(0, 0, 2),
        latching: fc.boolean(),
        timerResets: fc.constantFrom("below threshold" as const, "below reset level" as const),
      }),
      (levels, given, rules) => {
        const settings = { ...fanSettings, ...rules };
        const commands = [...given].sort((a, b) => a.time - b.time);
        const { segments } = tripPlayback(settings, levels, 1, { commands });
        expect(segments[0]?.from).toBe(0);
        expect(segments.at(-1)?.to).toBe(12);
        const logic = new TripLogic(settings);
        for (let half = 0; half < 24; half++) {
          for (const { time: at, do: name } of commands) if (at * 2 === half) tell(logic, name);
          const height = levels[Math.floor(half / 2)] as number;
          const before = logic.step(height, 0.25);
          logic.step(height, 0.25);
          const time = half / 2 + 0.25;
          const segment = segments.find(({ from, to }) => from <= time && time < to);
          expect([time, segment?.status.state, segment?.status.contact]).toEqual([time, before.state, before.contact]);
        }
      },
    ),
    { numRuns: 300 },
  );
});

it("of levels with their times is that of the same levels evenly spaced", () => {
  const level = fc.constantFrom(2, 4, 8.2, 8.5, 9, 10);
  fc.assert(
    fc.property(fc.array(level, { minLength: 2, maxLength: 12 }), fc.integer({ min: 0, max: 4 }), (levels, onDelay) => {
      const settings = { ...fanSettings, onDelay };
      const even = tripPlayback(settings, levels, 2, {});
      // the last level stands until the next, which is the same
      const last = levels.at(-1) as number;
      const times = Array.from({ length: levels.length + 1 }, (_, i) => 2 * i);
      const timed = tripPlayback(settings, [...levels, last], times, {});
      const told = ({ from, to, status }: (typeof even.segments)[number]) => [from, to, status.state, status.contact];
      expect(timed.segments.map(told)).toEqual(even.segments.map(told));
    }),
  );
});
