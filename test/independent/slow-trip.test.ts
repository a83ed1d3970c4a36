import { TripLogic, VotedTrip } from "veladis/protection";
import { currentLoop } from "veladis/sensor";
import { describe, expect, it } from "vitest";
import { tripDifferences } from "./trip-histories";

/**
 * Source: the rules in docs/guides/protection-trip.md and -voting.md, of which slow-trip.ts is a second reading that
 * shares no code with the library; they are the project's own. `node bench/random-histories.mjs` compares 1,000,000.
 */
describe("the trip logic against a slow model of its rules", () => {
  it("2,000 random histories, voted and single: no difference", () => {
    expect(tripDifferences({ TripLogic, VotedTrip, currentLoop }, 2000)).toEqual([]);
  });

  it("power that is lost and back at one time has ended an output that does not latch", () => {
    const channel = {
      threshold: "10 mm/s rms",
      hysteresis: "5 %",
      onDelay: 0,
      timerResets: "below threshold",
      sensorFault: "alarm",
    } as const;
    const pair = new VotedTrip({
      vote: "1oo2",
      badChannel: "does not vote",
      channels: { a: channel, b: channel },
      latching: false,
      contact: "normally open",
      coil: "normally energised",
    });
    const commands = [
      { time: 1, do: "power lost" },
      { time: 1, do: "power back" },
    ] as const;
    const events = pair.run({ a: [12, 12], b: [2, 2] }, 1, { commands });
    expect(
      events.filter(({ channel: of }) => of !== "b").map(({ time, channel: of, event }) => `${time} ${of} ${event}`),
    ).toEqual(["0 a trip", "0 vote trip", "1 a power lost", "1 a power back", "1 a trip", "1 vote trip"]);
  });
});
