import { bypassCost } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeOf } from "../refusals/refusal-of";
import { ofVote, quick, votedOf } from "./voted-settings";

describe("what a bypass costs", () => {
  // truth tables of MooN voting: a channel less, as many votes needed; common practice, no source
  it.each([
    ["1oo1", ["B"], "1oo0", "with B bypassed 1oo1 can never trip"],
    ["1oo2", ["B"], "1oo1", "with B bypassed 1oo2 becomes 1oo1"],
    ["2oo2", ["B"], "2oo1", "with B bypassed 2oo2 can never trip"],
    ["2oo3", ["B"], "2oo2", "with B bypassed 2oo3 becomes 2oo2"],
    ["2oo3", ["A", "B"], "2oo1", "with A and B bypassed 2oo3 can never trip"],
    ["2oo4", ["A", "B"], "2oo2", "with A and B bypassed 2oo4 becomes 2oo2"],
    ["2oo4", ["A", "B", "C"], "2oo1", "with A, B and C bypassed 2oo4 can never trip"],
    ["2oo3", [], "2oo3", "with no channel bypassed 2oo3 stands"],
  ] as const)("%s without %s is %s: %s", (vote, bypassed, effective, text) => {
    const canTrip = !text.includes("never");
    expect(bypassCost(vote, bypassed)).toEqual({ bypassed, effective, canTrip, text });
  });

  it("is asked for channels that there can be", () => {
    expect(codeOf(() => bypassCost("1oo2", ["A", "A"]))).toBe("out-of-range");
    expect(codeOf(() => bypassCost("1oo2", ["A", "B", "C"]))).toBe("length-mismatch");
    expect(codeOf(() => bypassCost("1oo2", "A" as never))).toBe("wrong-type");
  });

  it("stands in the status and on the event, with the protection that is lost", () => {
    const pair = votedOf("2oo2", [quick, quick]);
    expect(pair.status.bypass).toBeNull();
    const { bypass, unable, effective, events } = pair.bypass("b", true);
    expect(bypass).toEqual(bypassCost("2oo2", ["b"]));
    expect([unable, effective]).toEqual([true, "2oo1"]);
    expect(events.map(({ event, cost }) => [event, cost])).toEqual([
      ["bypass on", "with b bypassed 2oo2 can never trip"],
      ["protection lost", undefined],
    ]);
    const off = pair.bypass("b", false);
    expect(off.events.map(({ event, cost }) => [event, cost])).toEqual([
      ["bypass off", undefined],
      ["protection back", undefined],
    ]);
    expect(off.bypass).toBeNull();
  });
});

describe("a bypassed channel votes healthy", () => {
  it.each(["votes to trip", "does not vote"] as const)("with a sensor fault, when a bad channel %s", (badChannel) => {
    const one = votedOf("1oo2", [quick, quick], { badChannel });
    one.bypass("a", true);
    const status = one.step({ a: "fault", b: 2 }, 60);
    expect(status).toMatchObject({ output: "healthy", voting: false, effective: "1oo1" });
    expect(status.channels).toEqual({ a: "healthy", b: "healthy" });
    expect(one.step({ a: "fault", b: 9 }, 1).output).toBe("trip");
  });

  it("during the start inhibit, with and without a sensor fault", () => {
    const inhibited = { ...quick, startInhibit: 10 };
    const one = votedOf("1oo2", [inhibited, inhibited]);
    one.bypass("a", true);
    expect(one.step({ a: "fault", b: 2 }, 5)).toMatchObject({ output: "healthy", channels: { a: "healthy" } });
    expect(one.step({ a: 9, b: 2 }, 5)).toMatchObject({ output: "healthy", channels: { a: "healthy" } });
    expect(one.step({ a: "fault", b: 2 }, 60)).toMatchObject({ output: "healthy", channels: { a: "healthy" } });
  });

  it("also while its output is set: a latch stays, an output that does not latch clears", () => {
    const latched = votedOf("1oo2", [quick, quick]);
    latched.step({ a: 9, b: 2 }, 1);
    expect(latched.bypass("a", true)).toMatchObject({ output: "trip", latched: true, channels: { a: "healthy" } });
    expect(latched.reset().accepted).toBe(true);
    const loose = votedOf("1oo2", [quick, quick], { latching: false });
    loose.step({ a: 9, b: 2 }, 1);
    expect(ofVote(loose.bypass("a", true).events)).toEqual(["1 vote clear"]);
    expect(ofVote(loose.bypass("a", false).events)).toEqual(["1 vote trip"]);
  });

  it("a bypass that ends with the fault still there lets the bad channel vote again", () => {
    const one = votedOf("1oo2", [quick, quick]);
    one.bypass("a", true);
    one.step({ a: "fault", b: 2 }, 1);
    expect(ofVote(one.bypass("a", false).events)).toEqual(["1 vote trip"]);
  });
});

describe("a sensor fault during the start inhibit", () => {
  const inhibited = { ...quick, startInhibit: 10 };

  it("trips no vote before the inhibit is over, and does then", () => {
    const one = votedOf("1oo2", [inhibited, quick]);
    const early = one.step({ a: "fault", b: 2 }, 10);
    expect([early.output, early.channels.a, ofVote(early.events)]).toEqual(["healthy", "bad", []]);
    expect(ofVote(one.step({ a: "fault", b: 2 }, 5).events)).toEqual(["10 vote trip"]);
    expect(ofVote(votedOf("1oo2", [inhibited, quick]).step({ a: "fault", b: 2 }, 15).events)).toEqual(["10 vote trip"]);
  });

  it("does not take back the vote of a channel that was set before the start", () => {
    const one = votedOf("1oo2", [inhibited, quick], { latching: false });
    one.step({ a: 9, b: 2 }, 12);
    one.start();
    expect(one.step({ a: "fault", b: 2 }, 1)).toMatchObject({ output: "trip", voting: true });
  });
});
