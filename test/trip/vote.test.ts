import fc from "fast-check";
import {
  badChannels,
  type ChannelSettings,
  type ChannelVote,
  parseVote,
  type VotedEvent,
  VotedTrip,
  type VoteText,
  voted,
} from "veladis/protection";
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

  it.each([
    [1, 1, 2],
    [1, 1, 3],
    [1, 2, 4],
    [2, 1, 4],
  ])(
    "%d danger and %d alert of %d over every combination, against a search for the channels that do it",
    (needed, alerts, of) => {
      const words = ["trip", "alert", "healthy", "bad"] as const;
      const combinations = (length: number): ChannelVote[][] =>
        length === 0 ? [[]] : combinations(length - 1).flatMap((rest) => words.map((one) => [one, ...rest]));
      for (const channels of combinations(of)) {
        for (const bad of badChannels) {
          const isAtDanger = (one: ChannelVote) => one === "trip" || (one === "bad" && bad === "votes to trip");
          // every way to name some channels as those at danger and others as those at alert
          const found = Array.from({ length: 3 ** of }, (_, code) =>
            channels.map((one, i) => [one, Math.floor(code / 3 ** i) % 3] as const),
          ).some(
            (named) =>
              named.filter(([, role]) => role === 1).length === needed &&
              named.filter(([, role]) => role === 2).length === alerts &&
              named.every(([one, role]) => role === 0 || isAtDanger(one) || (role === 2 && one === "alert")),
          );
          expect(voted(`${needed} danger and ${alerts} alert of ${of}`, channels, bad).trip).toBe(found);
        }
      }
    },
  );

  it.each(votesInPrint.flatMap(({ expected }) => [...expected]))("%s, met in print, is a vote", (vote) => {
    const channels = Array.from({ length: Number(vote.split("oo")[1]) }, () => "trip" as const);
    expect(voted(vote, channels, "does not vote").trip).toBe(true);
  });

  it.each([["2oo1"], ["0oo2"], ["two of three"], [undefined]])("%s is refused", (vote) => {
    expect(() => voted(vote as VoteText, ["trip"], "does not vote")).toThrow(/expected a vote/);
  });

  it.each([
    ["2oo3", 2, 3],
    [" 2OO3 ", 2, 3],
    ["10oo12", 10, 12],
    ["1oo10", 1, 10],
  ])("reads %s", (written, needed, of) => {
    expect(parseVote(written as VoteText)).toEqual({ needed, of });
  });

  it.each(["12oo3of", "x2oo3", "2oo3x", "2oo", "oo3", "2 of 3", "100oo100", "", null, 23])(
    "reads no vote in %s",
    (written) => {
      expect(() => parseVote(written as VoteText)).toThrow(expect.objectContaining({ code: "syntax" }));
    },
  );

  it("asks for the right number of channels and for what a bad one counts", () => {
    expect(() => voted("2oo3", ["trip", "trip"], "does not vote")).toThrow(
      expect.objectContaining({ code: "length-mismatch" }),
    );
    expect(() => voted("1oo1", ["trip"], undefined as never)).toThrow(
      expect.objectContaining({ code: "missing-option" }),
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
    const events = trio().run({ a, b, c }, 1, { nan: "sensor fault" });
    expect(events.map(({ time, channel: name, event }) => `${time} ${name} ${event}`)).toEqual([
      "2 c fault",
      "3 c fault over",
      "4 a trip",
      "5 b trip",
      "5 vote trip",
      "5 a clear",
      "5 b clear",
      "5 vote clear",
    ]);
    expect(() => trio().run({ a, b, c }, 1)).toThrow(expect.objectContaining({ code: "not-a-number" }));
    expect(() => trio().run({ a, b, c: [1] }, 1)).toThrow(expect.objectContaining({ code: "length-mismatch" }));
    expect(() => trio().run({ a, b, c }, 0)).toThrow(expect.objectContaining({ code: "not-positive" }));
  });

  it("changes nothing when any level of a history is refused, and says which", () => {
    const logic = trio();
    const run = (c: readonly number[], more = {}) => logic.run({ a: [9, 9, 9], b: [9, 9, 9], c, ...more }, 2);
    expect(() => run([4, 4, -1])).toThrow(
      expect.objectContaining({ code: "negative", expected: expect.stringContaining("index 2") }),
    );
    expect(() => logic.run({ a: [], b: [] }, 2)).toThrow(expect.objectContaining({ code: "missing-option" }));
    expect(() => run([4, 4, 4], { d: [4, 4, 4] })).toThrow(expect.objectContaining({ code: "unknown-option" }));
    expect(logic.status).toMatchObject({ time: 0, output: "healthy" });
    expect(logic.run({ a: [], b: [], c: [] }, 2)).toEqual([]);
    expect(run([4, 4, 4]).map(({ channel: name }) => name)).toEqual(["a", "b", "vote"]);
  });

  it("changes nothing when a level is refused, and knows its channels", () => {
    const logic = trio();
    logic.step({ a: 8, b: 8, c: 4 }, 2);
    expect(() => logic.step({ a: 8, b: 8, c: -1 }, 2)).toThrow(expect.objectContaining({ code: "negative" }));
    expect(logic.status).toMatchObject({ time: 2, output: "healthy" });
    expect(() => logic.step({ a: 8, b: 8 }, 2)).toThrow(expect.objectContaining({ code: "missing-option" }));
    expect(() => logic.step({ a: 8, b: 8, c: 1, d: 1 }, 2)).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    );
    expect(() => logic.bypass("d", true)).toThrow(expect.objectContaining({ code: "unknown-option" }));
    logic.bypass("a", true);
    expect(logic.step({ a: 8, b: 8, c: 4 }, 100).channels).toMatchObject({ a: "healthy", b: "trip" });
  });

  it("is the vote of three channels on their own, at the same moments however the steps are split", () => {
    const level = fc.constantFrom(4, 6.9, 7.1, 9, "fault" as const);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(level, level, level, fc.integer({ min: 1, max: 8 })), { maxLength: 12 }),
        fc.constantFrom(...badChannels),
        fc.constantFrom("alarm" as const, "hold" as const, "bad" as const),
        (rows, badChannel, sensorFault) => {
          const settings = { ...channel, sensorFault };
          const more = { badChannel, channels: { a: settings, b: settings, c: settings } };
          const [whole, split] = [trio(more), trio(more)];
          const told = (events: readonly VotedEvent[]) =>
            events.map(({ time, event, channel: name }) => `${time} ${name} ${event}`).sort();
          for (const [a, b, c, seconds] of rows) {
            const status = whole.step({ a, b, c }, seconds);
            const pieces = Array.from({ length: seconds }, () => split.step({ a, b, c }, 1).events).flat();
            expect(told(pieces)).toEqual(told(status.events));
            expect({ ...split.status, events: [] }).toEqual({ ...status, events: [] });
            expect(status.output === "trip").toBe(voted("2oo3", Object.values(status.channels), badChannel).trip);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("counts a channel that comes back high from the moment its own delay has run, and one that was set at once", () => {
    const one = (sensorFault: "bad" | "alarm") =>
      trio({ vote: "1oo2", channels: { a: { ...channel, sensorFault }, b: channel } });
    const at = (events: readonly VotedEvent[]) =>
      events.filter(({ channel: name }) => name === "vote").map(({ time, event }) => `${time} ${event}`);
    const back = one("bad");
    back.step({ a: "fault", b: 4 }, 1);
    expect(at(back.step({ a: 9, b: 4 }, 10).events)).toEqual(["4 trip"]);
    const set = one("bad");
    set.step({ a: 9, b: 4 }, 5);
    expect(set.step({ a: "fault", b: 4 }, 1)).toMatchObject({ output: "healthy", channels: { a: "bad" } });
    expect(at(set.step({ a: 9, b: 4 }, 1).events)).toEqual(["6 trip"]);
    const alarmed = one("alarm");
    expect(alarmed.step({ a: "fault", b: 4 }, 2).channels.a).toBe("healthy");
    expect(alarmed.step({ a: "fault", b: 4 }, 2).channels.a).toBe("trip");
    expect(alarmed.step({ a: 4, b: 4 }, 1).channels.a).toBe("healthy");
  });

  it("names the first of all that call, whatever their order", () => {
    const pair = trio({ vote: "1oo2", channels: { a: channel, b: channel } });
    const { events } = pair.step({ a: 4, b: 9 }, 1);
    expect(events.map(({ event, firstOut }) => [event, firstOut])).toEqual([["timing", undefined]]);
    expect(pair.step({ a: 4, b: 9 }, 5).firstOut).toBe("b");
    expect(pair.step({ a: 9, b: 9 }, 5).firstOut).toBe("b");
    const three = trio();
    three.step({ a: 4, b: 9, c: 4 }, 5);
    const status = three.step({ a: 9, b: 9, c: 4 }, 5);
    expect([status.output, status.firstOut]).toEqual(["trip", "b"]);
  });

  it("says why a reset is refused", () => {
    const reason = (logic: VotedTrip) => logic.reset().reason;
    const logic = trio({ latching: true });
    expect(reason(logic)).toBe("there is nothing to reset");
    logic.power(false);
    expect(reason(logic)).toBe("there is nothing to reset");
    logic.power(true);
    logic.step({ a: 9, b: 9, c: 4 }, 5);
    logic.power(false);
    expect(reason(logic)).toBe("the device has no power");
    const loose = trio();
    loose.step({ a: 9, b: 9, c: 4 }, 5);
    expect(reason(loose)).toBe("the output does not latch; it clears by itself");
  });

  it("is latched only while the output stays set without the vote", () => {
    const logic = trio({ latching: true });
    expect(logic.status).toMatchObject({ latched: false, events: [], time: 0 });
    expect(logic.step({ a: 9, b: 9, c: 4 }, 5)).toMatchObject({ latched: false, voting: true });
    expect(logic.step({ a: 4, b: 4, c: 4 }, 1)).toMatchObject({ latched: true, voting: false, firstOut: "a" });
    logic.reset();
    expect(logic.status).toMatchObject({ latched: false, voting: false, firstOut: null, events: [] });
  });

  it("tells every channel of a start, of power, and one of its bypass", () => {
    const logic = trio({ channels: { a: { ...channel, startInhibit: 5 }, b: channel, c: channel } });
    const names = (events: readonly VotedEvent[]) => events.map(({ event, channel: name }) => `${name} ${event}`);
    logic.step({ a: 4, b: 4, c: 4 }, 10);
    expect(names(logic.start().events)).toEqual(["a start", "b start", "c start"]);
    // the start inhibits its channel anew
    expect(logic.step({ a: 9, b: 9, c: 4 }, 4).channels).toEqual({ a: "healthy", b: "trip", c: "healthy" });
    expect(logic.step({ a: 9, b: 9, c: 4 }, 4).channels.a).toBe("trip");
    const off = logic.power(false);
    expect(names(off.events)).toEqual(["a power lost", "b power lost", "c power lost"]);
    expect(off.channels).toEqual({ a: "healthy", b: "healthy", c: "healthy" });
    expect(names(logic.power(true).events)).toEqual(["a power back", "b power back", "c power back"]);
    expect(logic.status).toMatchObject({ output: "healthy", firstOut: null });
    expect(names(logic.bypass("b", true).events)).toEqual(["b bypass on"]);
    expect(names(logic.bypass("b", false).events)).toEqual(["b bypass off"]);
  });

  it("leaves excursions out of a history", () => {
    const events = trio().run({ a: [9, 4, 9, 9, 9, 9], b: [4, 4, 4, 4, 4, 4], c: [4, 4, 4, 4, 4, 4] }, 1);
    expect(events.map(({ time, event }) => `${time} ${event}`)).toEqual(["5 trip"]);
  });
});
