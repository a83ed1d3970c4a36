import fc from "fast-check";
import { type ChannelSettings, type ChannelVote, VotedTrip, type VoteText, voted } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { votesInPrint } from "../references/protection-logic";

const all = (length: number): ChannelVote[][] =>
  length === 0
    ? [[]]
    : all(length - 1).flatMap((rest) => (["trip", "healthy", "bad"] as const).map((one) => [one, ...rest]));

const votes = ["1oo1", "1oo2", "2oo2", "2oo3", "1oo3", "3oo3", "2oo4", "3oo4"] as const;

describe("votes", () => {
  it.each(votes)("%s over every combination of trip, healthy and bad", (vote) => {
    const [needed, of] = vote.split("oo").map(Number) as [number, number];
    for (const channels of all(of)) {
      const trips = channels.filter((one) => one === "trip").length;
      const bad = channels.filter((one) => one === "bad").length;
      expect(voted(vote, channels, "votes to trip")).toMatchObject({ trip: trips + bad >= needed, unable: false });
      expect(voted(vote, channels, "does not vote")).toMatchObject({
        trip: trips >= needed,
        unable: of - bad < needed,
      });
    }
  });

  it.each(votesInPrint.flatMap(({ expected }) => [...expected]))("%s, met in print, is a vote", (vote) => {
    const channels = Array.from({ length: Number(vote.split("oo")[1]) }, () => "trip" as const);
    expect(voted(vote, channels, "does not vote").trip).toBe(true);
  });

  it.each([["2oo1"], ["0oo2"], ["two of three"], [undefined]])("%s is refused", (vote) => {
    expect(() => voted(vote as VoteText, ["trip"], "does not vote")).toThrow(/expected a vote/);
  });

  it("asks for the right number of channels and for what a bad one counts", () => {
    expect(() => voted("2oo3", ["trip", "trip"], "does not vote")).toThrow(
      expect.objectContaining({ code: "length-mismatch" }),
    );
    expect(() => voted("1oo1", ["trip"], undefined as never)).toThrow(
      expect.objectContaining({ code: "missing-fact" }),
    );
  });
});

const channel = {
  threshold: "7.1 mm/s rms",
  hysteresis: "5 %",
  onDelay: 3,
  timerResets: "below threshold",
  sensorFault: "bad",
} as const satisfies ChannelSettings;

const relay = { latching: false, contact: "normally open", coil: "normally energised" } as const;

const trio = (more: object = {}) =>
  new VotedTrip({
    vote: "2oo3",
    badChannel: "does not vote",
    channels: { a: channel, b: channel, c: channel },
    ...relay,
    ...more,
  });

describe("a voted trip", () => {
  it("trips at the moment the second channel does, and names the first", () => {
    const logic = trio();
    logic.step({ a: 8, b: 4, c: 4 }, 2);
    const status = logic.step({ a: 8, b: 8, c: 4 }, 10);
    const found = status.events.filter(({ event }) => event === "trip");
    expect(found.map(({ time, channel: name, firstOut }) => [time, name, firstOut ?? false])).toEqual([
      [3, "a", true],
      [5, "b", false],
      [5, "vote", false],
    ]);
    expect([status.output, status.firstOut, status.effective]).toEqual(["trip", "a", "2oo3"]);
    const cleared = logic.step({ a: 8, b: 4, c: 4 }, 1);
    expect([cleared.output, cleared.firstOut]).toEqual(["healthy", "a"]);
    expect(logic.step({ a: 4, b: 4, c: 4 }, 1).firstOut).toBeNull();
  });

  it("latches behind the vote, and refuses a reset while the vote stands", () => {
    const logic = trio({ latching: true });
    logic.step({ a: 8, b: 8, c: 4 }, 4);
    expect(logic.reset()).toEqual({ accepted: false, reason: "the vote still calls for a trip" });
    expect(logic.step({ a: 4, b: 8, c: 4 }, 1)).toMatchObject({ output: "trip", latched: true });
    expect(logic.power(false)).toMatchObject({ output: "trip", coil: "de-energised" });
    expect(logic.reset().reason).toMatch(/no power/);
    expect(logic.power(true).output).toBe("trip");
    expect(logic.reset()).toEqual({ accepted: true });
    expect(logic.status.output).toBe("healthy");
  });

  it("says when bad channels leave no protection", () => {
    const logic = trio();
    expect(logic.step({ a: "fault", b: 4, c: 4 }, 1)).toMatchObject({ unable: false, effective: "2oo2" });
    const status = logic.step({ a: "fault", b: "fault", c: 9 }, 10);
    expect(status).toMatchObject({ unable: true, output: "healthy" });
    expect(status.events.map(({ event }) => event)).toContain("protection lost");
    expect(logic.step({ a: 4, b: 4, c: 4 }, 1).events.map(({ event }) => event)).toContain("protection back");
    logic.step({ a: "fault", b: 4, c: 4 }, 1);
    logic.power(false);
    expect(logic.power(true).channels.a).toBe("bad");
  });

  it("counts bad channels towards a trip when so set", () => {
    const logic = trio({ badChannel: "votes to trip" });
    expect(logic.step({ a: "fault", b: 4, c: 4 }, 1)).toMatchObject({ output: "healthy", effective: "1oo2" });
    expect(logic.step({ a: "fault", b: 8, c: 4 }, 3).output).toBe("trip");
  });

  it("runs histories row by row", () => {
    const [a, b, c] = [
      [4, 9, 9, 9, 9, 4],
      [4, 4, 9, 9, 9, 4],
      [4, 4, Number.NaN, 4, 4, 4],
    ] as const;
    const events = trio().run({ a, b, c }, 1, "sensor fault");
    expect(events.map(({ time, channel: name, event }) => `${time} ${name} ${event}`)).toEqual([
      "2 c fault",
      "3 c fault over",
      "4 a trip",
      "5 b trip",
      "5 vote trip",
      "5 a clear",
      "5 vote clear",
      "5 b clear",
    ]);
    expect(() => trio().run({ a, b, c }, 1)).toThrow(expect.objectContaining({ code: "not-a-number" }));
    expect(() => trio().run({ a, b, c: [1] }, 1)).toThrow(expect.objectContaining({ code: "length-mismatch" }));
    expect(() => trio().run({ a, b, c }, 0)).toThrow(expect.objectContaining({ code: "not-positive" }));
  });

  it("changes nothing when a level is refused, and knows its channels", () => {
    const logic = trio();
    logic.step({ a: 8, b: 8, c: 4 }, 2);
    expect(() => logic.step({ a: 8, b: 8, c: -1 }, 2)).toThrow(expect.objectContaining({ code: "negative" }));
    expect(logic.status).toMatchObject({ time: 2, output: "healthy" });
    expect(() => logic.step({ a: 8, b: 8 }, 2)).toThrow(expect.objectContaining({ code: "missing-fact" }));
    expect(() => logic.step({ a: 8, b: 8, c: 1, d: 1 }, 2)).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    );
    expect(() => logic.bypass("d", true)).toThrow(expect.objectContaining({ code: "unknown-option" }));
    logic.bypass("a", true);
    expect(logic.step({ a: 8, b: 8, c: 4 }, 100).channels).toMatchObject({ a: "healthy", b: "trip" });
  });

  it("is the vote of three channels on their own, however the steps are split", () => {
    const level = fc.constantFrom(4, 6.9, 7.1, 9);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(level, level, level, fc.integer({ min: 1, max: 8 })), { maxLength: 12 }),
        (rows) => {
          const whole = trio();
          const split = trio();
          for (const [a, b, c, seconds] of rows) {
            const status = whole.step({ a, b, c }, seconds);
            for (let i = 0; i < seconds; i++) split.step({ a, b, c }, 1);
            expect(split.status.output).toBe(status.output);
            expect(status.output === "trip").toBe(voted("2oo3", Object.values(status.channels), "does not vote").trip);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});
