import * as root from "veladis";
import { evaluateLine, helpText, newSession } from "veladis/mathjs";
import * as protection from "veladis/protection";
import { sensor } from "veladis/sensor";
import { classify, defineScheme, parseMachine, schemeById, selectSchemes } from "veladis/severity";
import { windowName } from "veladis/signal";
import { schemeToSql, toSql } from "veladis/sql";
import { afterEach, describe, expect, it } from "vitest";
import { veladis } from "../cli/in-process";

const NAMES = ["__proto__", "constructor", "prototype", "toString", "valueOf", "hasOwnProperty", "__defineGetter__"];

// biome-ignore lint/suspicious/noExplicitAny: names that no type allows
type Loose = any;

const plain = Object.getOwnPropertyNames(Object.prototype).sort();
afterEach(() => {
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(plain);
  expect(({} as Loose).polluted).toBeUndefined();
});

const settings = {
  threshold: "0.35 in/s pk",
  hysteresis: "10 %",
  onDelay: 2,
  timerResets: "below threshold",
  sensorFault: "alarm",
};
const relay = { latching: true, contact: "normally open", coil: "normally energised" };

describe.each(NAMES)("%s is no name of", (name) => {
  it.each<[string, () => unknown]>([
    ["a unit", () => root.unitSymbol(name)],
    ["a detector", () => root.detectorSymbol(name)],
    ["a unit of frequency", () => root.frequencyUnitSymbol(name)],
    ["a frequency", () => root.hertz(`25 ${name}` as Loose)],
    ["a reading's unit", () => root.parseAmplitude(`1 ${name} rms`)],
    ["a reading's detector", () => root.parseAmplitude(`1 mm/s ${name}`)],
    ["a reference of levels", () => root.parseAmplitude(`60 dB re ${name}`)],
    ["a reading as data", () => root.convertAmplitude({ value: 1, unit: name, detector: name } as Loose, "mm/s rms")],
    ["a unit of voltage", () => sensor("100 mV/g").reading(`1 ${name} rms`, "mm/s rms")],
    ["a sensitivity", () => sensor(`100 ${name}/g`)],
    ["a scheme", () => schemeById(name)],
    ["a fact of a machine", () => selectSchemes(JSON.parse(`{"${name}": "pump"}`))],
    ["a kind of machine", () => selectSchemes({ type: name as Loose })],
    ["a unit of power", () => selectSchemes({ power: `90 ${name}` as Loose })],
    ["a window", () => windowName(name)],
    ["a kind of scheme", () => defineScheme({ ...own("own"), kind: name as Loose })],
    ["a part of a scheme", () => defineScheme(JSON.parse(`{"${name}": 1, ${JSON.stringify(own("own")).slice(1)}`))],
    ["a limit", () => defineScheme(JSON.parse(JSON.stringify(own("own")).replace('"A/B"', `"${name}"`)))],
    [
      "when an on-delay starts over",
      () => new protection.TripLogic({ ...settings, ...relay, timerResets: name } as Loose),
    ],
    [
      "a command",
      () =>
        new protection.TripLogic({ ...settings, ...relay } as Loose).run([1], 1, {
          commands: [{ time: 0, do: name as Loose }],
        }),
    ],
    [
      "a rule of decision",
      () =>
        protection.checkAgainstKnown({
          known: "1 g pk",
          indicated: "1 g pk",
          tolerance: "5 %",
          uncertainty: "1 %",
          rule: name as Loose,
        }),
    ],
    ["a unit of mass", () => protection.centrifugalForce(`20 ${name}·mm`, "25 Hz")],
    ["how names are quoted", () => toSql("mm/s rms", "in/s rms", { column: "v", dialect: name as Loose })],
    ["a topic of the help", () => helpText(name)],
  ])("%s", (_, act) => {
    expect(act).toThrow(root.VeladisError);
  });

  it("a word for a machine: it is set aside", () => {
    expect(Object.keys(parseMachine(name))).toEqual(["notUnderstood"]);
  });

  it("a variable or function of the calculator that was not assigned", async () => {
    await expect(evaluateLine(name)).rejects.toThrow(root.VeladisError);
    await expect(evaluateLine(`${name}(1)`)).rejects.toThrow(root.VeladisError);
    await expect(evaluateLine(`${name}.x`)).rejects.toThrow(root.VeladisError);
  });

  it("a command or an option of the command line", async () => {
    const { code, err } = await veladis([name]);
    expect([code, err.length < 2000]).toEqual([2, true]);
    expect((await veladis([`--${name}`, "1"])).code).toBe(2);
    expect((await veladis(["table", `--${name}`])).code).toBe(2);
  });
});

function own(id: string) {
  return {
    id,
    kind: "zones" as const,
    standard: "site rule, invented",
    classes: [
      {
        by: { support: "rigid" },
        criteria: [
          {
            as: "mm/s rms" as const,
            limits: { "A/B": 1.4, "B/C": 2.8 },
            source: { title: "site rule, invented", provenance: "memory" as const },
          },
        ],
      },
    ],
  };
}

describe.each(NAMES)("%s may be", (name) => {
  it("the id of a scheme, a class, a channel, a column, a part of a sheet", () => {
    const scheme = defineScheme({
      ...own(name),
      classes: [{ ...own(name).classes[0], by: { support: "rigid" }, named: { group: name } }],
    } as Loose);
    expect(classify("2 mm/s rms", { scheme, machine: { support: "rigid", group: name } as Loose }).zone).toBe("B");
    expect(
      schemeToSql(scheme, { support: "rigid", group: name } as Loose, { column: name, from: "mm/s rms" }),
    ).toContain(`"${name}"`);
    const sheet = protection.setpointSheet({ machine: name, facts: JSON.parse(`{"${name}": "here"}`) });
    expect(protection.sheetMarkdown(sheet)).toContain("here");
  });

  it("a column of a table", async () => {
    const { out, code } = await veladis(
      ["table", "--column", name, "--from", "mm/s rms", "--to", "in/s rms"],
      `tag,${name}\nP-1,25.4\n`,
    );
    expect([code, out.split("\n")[1]?.startsWith("P-1,25.4,1")]).toEqual([0, true]);
    const json = await veladis(
      ["table", "--column", name, "--from", "mm/s rms", "--to", "in/s rms", "--json"],
      `tag,${name}\nP-1,25.4\n`,
    );
    expect(JSON.stringify(JSON.parse(json.out.split("\n")[0] as string))).toContain(`"${name}":`);
  });

  it("a variable of the calculator, if it begins with a letter", async () => {
    const session = newSession();
    const assigned = evaluateLine(`${name} = 4 mm/s rms`, session);
    if (name.startsWith("_")) await expect(assigned).rejects.toThrow(root.VeladisError);
    else {
      await assigned;
      expect((await evaluateLine(`${name} * 2`, session)).text).toBe("8.00 mm/s rms");
    }
  });

  it("a channel of a voted trip", () => {
    const channels = JSON.parse(`{"${name}": ${JSON.stringify(settings)}, "b": ${JSON.stringify(settings)}}`);
    const trip = new protection.VotedTrip({ vote: "1oo2", badChannel: "does not vote", ...relay, channels } as Loose);
    trip.step(JSON.parse(`{"${name}": 0.6, "b": 0.1}`), 2);
    expect(trip.step(JSON.parse(`{"${name}": 0.6, "b": 0.1}`), 2).firstOut).toBe(name);
  });
});

describe("a dirty Object.prototype", () => {
  const dirt: Record<string, unknown> = {
    at: "60 Hz",
    crestFactor: 9,
    digits: 1,
    level: { decibels: 1, re: "1 nm/s" },
    scheme: "no",
    machine: "fan",
    hertz: 60,
    polluted: 1,
  };
  const within = <Result>(act: () => Result): Result => {
    for (const [name, value] of Object.entries(dirt))
      Object.defineProperty(Object.prototype, name, { value, configurable: true, enumerable: true, writable: true });
    try {
      return act();
    } finally {
      for (const name of Object.keys(dirt)) delete (Object.prototype as Loose)[name];
    }
  };

  it("does not crash, and readings keep what was written in them", () => {
    const asked = "4 mm/s rms at 25 Hz";
    expect({ ...within(() => root.parseAmplitude(asked)) }).toEqual({ ...root.parseAmplitude(asked) });
    expect(within(() => root.convert(25.4, "mm/s pk", "in/s pk"))).toBe(1);
    expect(within(() => root.unitSymbol("ips"))).toBe("in/s");
  });

  it("adds no fact to a machine and no part to a scheme", () => {
    expect(Object.keys(within(() => ({ ...defineScheme(own("own")) })))).not.toContain("polluted");
    expect(within(() => selectSchemes({ support: "rigid" }).candidates.length)).toBe(
      selectSchemes({ support: "rigid" }).candidates.length,
    );
  });
});
