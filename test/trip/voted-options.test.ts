import { VotedTrip } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeOf } from "../refusals/refusal-of";
import { settings } from "./trip-settings";
import { ofVote, quick, told, votedOf } from "./voted-settings";

const { latching, contact, coil } = settings;

describe("every option of a run of several channels counts", () => {
  it("as: 1 in/s pk against 8 mm/s rms trips", () => {
    const levels = { a: [0.1, 1, 1], b: [0.1, 1, 1] };
    const logic = votedOf("2oo2", [quick, quick]);
    const events = logic.run(levels, 1, { as: "in/s pk" });
    expect(ofVote(events)).toEqual(["1 vote trip"]);
    // 1 in/s of a sine is 25.4 / sqrt(2) mm/s rms
    expect(events[0]?.level).toBeCloseTo(25.4 / Math.SQRT2, 12);
    expect(logic.assumed).toEqual(["sine"]);
    expect(votedOf("2oo2", [quick, quick]).run(levels, 1)).toEqual([]);
  });

  it("as: one a channel", () => {
    const levels = { a: [1], b: [9] };
    const as = { a: "in/s pk", b: "mm/s rms" };
    expect(ofVote(votedOf("2oo2", [quick, quick]).run(levels, 1, { as }))).toEqual(["0 vote trip"]);
    expect(codeOf(() => votedOf("2oo2", [quick, quick]).run(levels, 1, { as: { a: "in/s pk" } }))).toBe(
      "missing-option",
    );
    expect(codeOf(() => votedOf("2oo2", [quick, quick]).run(levels, 1, { as: { ...as, c: "g pk" } }))).toBe(
      "unknown-option",
    );
    expect(codeOf(() => votedOf("2oo2", [quick, quick]).run(levels, 1, { as: { a: "in/s pk", b: "m" } }))).toBe(
      "missing-detector",
    );
  });

  it("at: for all, for each, and not without as", () => {
    // 1 g pk at 50 Hz is 9806.65 / (2 pi 50) / sqrt(2) mm/s rms = 22.07; at 200 Hz it is 5.52
    const run = (at: object | string, channels = { a: [1], b: [1] }) =>
      ofVote(votedOf("2oo2", [quick, quick]).run(channels, 1, { as: "g pk", at: at as never }));
    expect(run("50 Hz")).toEqual(["0 vote trip"]);
    expect(run({ hertz: 50 })).toEqual(["0 vote trip"]);
    expect(run("200 Hz")).toEqual([]);
    expect(run({ a: "50 Hz", b: "200 Hz" })).toEqual([]);
    expect(run({ a: "50 Hz", b: { hertz: 50 } })).toEqual(["0 vote trip"]);
    expect(codeOf(() => run({ a: "50 Hz" }))).toBe("missing-option");
    expect(codeOf(() => votedOf("1oo1", [quick]).run({ a: [1] }, 1, { at: "50 Hz" }))).toBe("missing-option");
  });

  it("a channel named hertz has its frequency by name", () => {
    const logic = () =>
      new VotedTrip({
        ...{ vote: "1oo1", badChannel: "votes to trip", latching, contact, coil, channels: { hertz: quick } },
      });
    expect(ofVote(logic().run({ hertz: [1] }, 1, { as: "g pk", at: { hertz: "50 Hz" } as never }))).toEqual([
      "0 vote trip",
    ]);
    expect(ofVote(logic().run({ hertz: [1] }, 1, { as: "g pk", at: { hertz: 50 } }))).toEqual(["0 vote trip"]);
  });

  it("excursions: those that rode the delay out are told", () => {
    const slow = { ...quick, onDelay: 3 };
    const levels = { a: [9, 9, 2], b: [2, 2, 2] };
    expect(told(votedOf("2oo2", [slow, slow]).run(levels, 1, { excursions: true }))).toEqual([
      "0 a timing",
      "2 a rode out",
    ]);
    expect(votedOf("2oo2", [slow, slow]).run(levels, 1)).toEqual([]);
    expect(codeOf(() => votedOf("1oo1", [slow]).run({ a: [1] }, 1, { excursions: 1 as never }))).toBe("wrong-type");
  });

  it("commands: reset, start, power and bypass at their times", () => {
    const inhibited = { ...quick, startInhibit: 2 };
    const levels = { a: [2, 2, 9, 9, 2, 2, 9, 9, 9, 9], b: [2, 2, 2, 2, 2, 2, 2, 2, 2, 2] };
    const logic = votedOf("1oo2", [inhibited, quick]);
    const events = logic.run(levels, 1, {
      commands: [
        { time: 5, do: "reset" },
        { time: 3.5, do: "reset" },
        { time: 6, do: "start" },
        { time: 8.5, do: "power lost" },
        { time: 9, do: "power back" },
        { time: 10, do: "bypass on", channel: "b" },
      ],
    });
    expect(told(events)).toEqual([
      "2 a trip",
      "2 vote trip",
      "3.5 vote reset refused",
      "4 a clear",
      "5 vote reset",
      "6 a start",
      "6 b start",
      "8 a trip",
      "8 vote trip",
      "8.5 a power lost",
      "8.5 b power lost",
      "9 a power back",
      "9 b power back",
      "10 b bypass on",
    ]);
    expect(events[2]?.reason).toBe("the vote still calls for a trip");
    expect(events.at(-1)?.cost).toBe("with b bypassed 1oo2 becomes 1oo1");
  });

  it("commands: a bypass names its channel, and no other command does", () => {
    const run = (command: object) =>
      votedOf("1oo2", [quick, quick]).run({ a: [1], b: [1] }, 1, {
        commands: [command as never],
      });
    expect(codeOf(() => run({ time: 0, do: "bypass on" }))).toBe("missing-option");
    expect(codeOf(() => run({ time: 0, do: "bypass on", channel: "d" }))).toBe("unknown-option");
    expect(codeOf(() => run({ time: 0, do: "bypass on", channel: 1 }))).toBe("wrong-type");
    expect(codeOf(() => run({ time: 0, do: "start", channel: "a" }))).toBe("out-of-range");
    expect(codeOf(() => run({ time: 0, do: "start", when: 1 }))).toBe("unknown-option");
    expect(codeOf(() => run({ time: 1.5, do: "start" }))).toBe("out-of-range");
  });

  it("a refused option changes nothing", () => {
    const logic = votedOf("1oo2", [quick, quick]);
    expect(codeOf(() => logic.run({ a: [9], b: [9] }, 1, { commands: [{ time: 9, do: "start" }] }))).toBe(
      "out-of-range",
    );
    expect(codeOf(() => logic.run({ a: [9], b: [9] }, [-1, 2]))).toBe("length-mismatch");
    expect(codeOf(() => logic.run({ a: [9, 9], b: [9, 9] }, [1, 0], { as: "in/s pk" }))).toBe("out-of-range");
    expect(logic.snapshot()).toEqual(votedOf("1oo2", [quick, quick]).snapshot());
  });

  it("times of the rows, irregular and repeated", () => {
    const slow = { ...quick, onDelay: 3 };
    const logic = votedOf("2oo2", [slow, slow]);
    const events = logic.run({ a: [9, 9, 9, 2], b: [2, 2, 9, 9] }, [100, 101, 101, 104.5]);
    expect(told(events)).toEqual(["103 a trip", "104 b trip", "104 vote trip", "104.5 a clear"]);
    expect(told(logic.run({ a: [2], b: [2] }, [107]))).toEqual(["107 b clear"]);
    expect(logic.run({ a: [], b: [] }, [])).toEqual([]);
  });
});
