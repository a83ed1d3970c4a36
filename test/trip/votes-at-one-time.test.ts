import fc from "fast-check";
import { type ChannelSettings, TripLogic, type VotedEvent, VotedTrip } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { ofVote, quick, told, votedOf } from "./voted-settings";

// the rule is the library's own, written in docs/guides/protection-voting.md
describe("votes are taken once all channels have changed", () => {
  const up = [9, 9, 9, 2, 2, 2];
  const down = [2, 2, 2, 9, 9, 9];

  it("two channels that are never up together do not trip a 2oo2 latch, and neither does the mirror image", () => {
    for (const [a, b] of [
      [up, down],
      [down, up],
    ] as const) {
      const pair = votedOf("2oo2", [quick, quick]);
      expect(ofVote(pair.run({ a, b }, 1))).toEqual([]);
      const stepped = votedOf("2oo2", [quick, quick]);
      for (const [i, level] of a.entries()) expect(stepped.step({ a: level, b: b[i] as number }, 1).voting).toBe(false);
      expect(stepped.status.output).toBe("healthy");
    }
  });

  it("an off-delay that runs out when an on-delay does: never up together, in either order", () => {
    const slow = { ...quick, onDelay: 5 };
    const held = { ...quick, offDelay: 2 };
    // the one is set from 0 s to 5 s (low from 3 s), the other from 5 s
    const [short, late] = [
      [9, 9, 9, 2, 2, 2, 2, 2],
      [9, 9, 9, 9, 9, 9, 9, 9],
    ];
    expect(ofVote(votedOf("2oo2", [held, slow]).run({ a: short, b: late }, 1))).toEqual([]);
    expect(ofVote(votedOf("2oo2", [slow, held]).run({ a: late, b: short }, 1))).toEqual([]);
  });

  it("a delay that runs out counts to the end of its level, although the other channel falls at that time", () => {
    const slow = { ...quick, onDelay: 3 };
    const [a, b] = [
      [9, 9, 9, 9, 9, 2, 2],
      [2, 2, 9, 9, 9, 9, 9],
    ];
    for (const pair of [votedOf("2oo2", [slow, slow]), votedOf("2oo2", [slow, slow])]) {
      expect(ofVote(pair.run({ a, b }, 1))).toEqual(["5 vote trip"]);
    }
    expect(ofVote(votedOf("2oo2", [slow, slow]).run({ a: b, b: a }, 1))).toEqual(["5 vote trip"]);
  });

  it("a bypass that is lifted when the signal is good again does not trip", () => {
    const one = votedOf("1oo2", [quick, quick]);
    const a = [2, Number.NaN, Number.NaN, 2, 2];
    const b = [2, 2, 2, 2, 2];
    const commands = [
      { time: 1, do: "bypass on", channel: "a" },
      { time: 3, do: "bypass off", channel: "a" },
    ] as const;
    expect(ofVote(one.run({ a, b }, 1, { nan: "sensor fault", commands }))).toEqual([]);
    expect(one.status.output).toBe("healthy");
  });

  it("one channel of 1oo1 trips as it does alone", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(2, 4, 8, 9), { minLength: 1, maxLength: 20 }),
        fc.record({ onDelay: fc.integer({ min: 0, max: 4 }), offDelay: fc.integer({ min: 0, max: 3 }) }),
        fc.boolean(),
        (levels, delays, latching) => {
          const channel: ChannelSettings = { ...quick, ...delays };
          const alone = new TripLogic({ ...channel, latching, contact: "normally open", coil: "normally energised" });
          const wanted = alone.run(levels, 1).map(({ time, event }) => `${time} vote ${event}`);
          expect(ofVote(votedOf("1oo1", [channel], { latching }).run({ a: levels }, 1))).toEqual(wanted);
        },
      ),
    );
  });

  it("2oo2 of one level twice trips as one channel does alone, and a higher level never trips later", () => {
    const levels = fc.array(fc.tuple(fc.constantFrom(2, 5, 8), fc.constantFrom(0, 1, 4)), {
      minLength: 1,
      maxLength: 20,
    });
    fc.assert(
      fc.property(levels, fc.integer({ min: 0, max: 4 }), (rows, onDelay) => {
        const channel: ChannelSettings = { ...quick, onDelay };
        const b = rows.map(([level]) => level);
        const a = rows.map(([level, more]) => level + more);
        const [alone] = ofVote(votedOf("1oo1", [channel]).run({ a: b }, 1));
        for (const pair of [
          { a: b, b },
          { a, b },
          { a: b, b: a },
        ]) {
          const [both] = ofVote(votedOf("2oo2", [channel, channel]).run(pair, 1));
          expect(both).toBe(alone);
        }
      }),
    );
  });

  it("names in another order change nothing but who is first of those that set at one time", () => {
    const level = fc.constantFrom(2, 5, 8, 9, Number.NaN);
    const delays = fc.record({
      onDelay: fc.constantFrom(0, 1, 2),
      offDelay: fc.constantFrom(0, 1, 2),
      startInhibit: fc.constantFrom(0, 0, 2),
      sensorFault: fc.constantFrom("alarm" as const, "hold" as const, "bad" as const),
    });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(level, level, level), { minLength: 1, maxLength: 16 }),
        fc.tuple(delays, delays, delays),
        fc.constantFrom("1oo3" as const, "2oo3" as const, "3oo3" as const),
        fc.constantFrom("votes to trip" as const, "does not vote" as const),
        fc.boolean(),
        (rows, settings, vote, badChannel, latching) => {
          const relay = { latching, contact: "normally open", coil: "normally energised" } as const;
          const inOrder = (order: readonly (0 | 1 | 2)[]): VotedEvent[] => {
            const channels = Object.fromEntries(order.map((i) => ["abc".charAt(i), { ...quick, ...settings[i] }]));
            const histories = Object.fromEntries(order.map((i) => ["abc".charAt(i), rows.map((row) => row[i])]));
            const logic = new VotedTrip({ vote, badChannel, channels, ...relay });
            return logic.run(histories, 1, { nan: "sensor fault", excursions: true });
          };
          const forward = inOrder([0, 1, 2]);
          const backward = inOrder([2, 1, 0]);
          expect(ofVote(backward)).toEqual(ofVote(forward));
          expect(told(backward).sort()).toEqual(told(forward).sort());
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("the first-out is the channel that has been set longest, however many follow before the vote calls", () => {
    const logic = votedOf("3oo3", [quick, quick, quick]);
    logic.step({ a: 2, b: 9, c: 2 }, 1);
    logic.step({ a: 9, b: 9, c: 2 }, 1);
    const status = logic.step({ a: 9, b: 9, c: 9 }, 1);
    expect([status.output, status.firstOut]).toEqual(["trip", "b"]);
    const moved = votedOf("2oo2", [quick, quick]);
    moved.step({ a: 2, b: 9 }, 1);
    const { events, firstOut } = moved.step({ a: 9, b: 2 }, 1);
    expect(firstOut).toBe("a");
    expect(events.find(({ event }) => event === "trip")?.firstOut).toBe(true);
  });
});

describe("an inhibit delays the on-delay", () => {
  it("a level that is up all the time trips 3 s after an inhibit of 10 s: at 13 s", () => {
    const slow = { ...quick, onDelay: 3, startInhibit: 10 };
    expect(ofVote(votedOf("1oo1", [slow]).step({ a: 9 }, 30).events)).toEqual(["13 vote trip"]);
    expect(ofVote(votedOf("1oo1", [{ ...slow, onDelay: 0 }]).step({ a: 9 }, 30).events)).toEqual(["10 vote trip"]);
  });

  it("exactly at the end of the inhibit of a bad channel the status says what the events say", () => {
    const make = () => votedOf("2oo2", [{ ...quick, startInhibit: 7 }, quick]);
    const logic = make();
    const status = () => [logic.status.voting, logic.status.unable, logic.status.effective, logic.status.output];
    expect(ofVote(logic.step({ a: "fault", b: 9 }, 6).events)).toEqual(["0 vote protection lost"]);
    expect(status()).toEqual([false, true, "2oo1", "healthy"]);
    expect(logic.step({ a: "fault", b: 9 }, 1).events).toEqual([]);
    expect(status()).toEqual([false, true, "2oo1", "healthy"]);
    const resumed = make();
    resumed.resume(logic.snapshot());
    expect(resumed.status).toEqual(logic.status);
    expect(ofVote(logic.step({ a: "fault", b: 9 }, 0).events)).toEqual(["7 vote protection back", "7 vote trip"]);
    expect(status()).toEqual([true, false, "1oo1", "trip"]);
  });
});
