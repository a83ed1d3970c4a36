import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

/** A start of fan 1 as an invented recorder has it: a level a second by the clock, a rise of 15 s from 60 s on. */
function recorded(gap = 1): string {
  const from = Date.UTC(2026, 2, 4, 11, 59, 30);
  const rows = Array.from({ length: 120 }, (_, i) => {
    const time = new Date(from + (i < 75 ? i : i + gap - 1) * 1000).toISOString().slice(0, 19).replace("T", " ");
    return `${time};${i >= 60 && i < 75 ? "12.1" : "2.6"}`;
  });
  return `${["time;level", ...rows].join("\n")}\n`;
}

const words = ["simulate", "--from", "mm/s rms", "--threshold", "9 mm/s rms", "--hysteresis", "8 %"];
const settings = [...words, "--timer-resets", "threshold", "--latching", "--delay", "8"];
const masks = ["--multiplier", "2 for 300", "--inhibit", "500", "--commands", "bypass on at 50, bypass off at 90"];
const plain = (text: string) => text.replace(/ +/g, " ");

describe("a simulation with masks", () => {
  it("says what would have happened without each of them and without all, by seconds and by the clock", async () => {
    const { out } = await veladis([...settings, ...masks], recorded());
    expect(out).not.toMatch(/ trip {2}/);
    for (const line of [
      "as set no trip; at the end inhibited",
      "without the on-delay of 8 s no trip",
      "without the start inhibit of 500 s no trip",
      "without the multiplier of 2 for 300 s no trip",
      "without the bypass no trip",
      "with the on-delay alone trip at 68 s (12:00:38)",
      "without any of these trip at 60 s (12:00:30)",
    ]) {
      expect(plain(out)).toContain(`\n${line}\n`);
    }
    expect(out).not.toMatch(/\nwithout the latch/);
    const tripped = await veladis(settings, recorded());
    expect(plain(tripped.out)).toContain("\nas set trip at 68 s (12:00:38); at the end latched\n");
    expect(plain(tripped.out)).toContain("\nwithout the latch trip at 68 s (12:00:38); at the end normal\n");
    const one = await veladis([...settings, "--multiplier", "2 for 300"], recorded());
    expect(plain(one.out)).toContain("\nwithout the multiplier of 2 for 300 s trip at 68 s (12:00:38)\n");
  });

  it("compares them for several delays", async () => {
    const { out } = await veladis([...settings.slice(0, -1), "2, 8, 20", ...masks.slice(0, 2)], recorded());
    expect(plain(out)).toMatch(/\nwithout the multiplier of 2 for 300 s 62 s \(12:00:32\) 68 s \(12:00:38\) -\n/);
    expect(plain(out)).toMatch(/\nwithout an on-delay - - -\n/);
    expect(plain(out)).toMatch(/\nwithout any of these( 60 s \(12:00:30\)){3}\n/);
  });

  it("has them as data", async () => {
    const { out } = await veladis([...settings, ...masks, "--json"], recorded());
    const { begins, unmasked, commands, notGiven } = JSON.parse(out);
    expect(begins).toBe("2026-03-04 11:59:30");
    expect(unmasked).toMatchObject({
      asSet: { first: null, trips: 0, end: "inhibited" },
      without: [{ mask: "on-delay" }, { mask: "start inhibit" }, { mask: "multiplier" }, { mask: "bypass" }],
      onDelayAlone: { first: { time: 68 } },
      withoutAny: { first: { time: 60, level: 12.1 } },
      otherLatch: { latching: false },
    });
    expect(commands.length).toBe(2);
    expect(notGiven).toEqual(["relay", "sensor-fault"]);
    const tripped = await veladis([...settings, "--json"], recorded());
    expect(JSON.parse(tripped.out).events).toMatchObject([{ time: 68, clock: "2026-03-04 12:00:38" }]);
  });
});

describe("every setting in force is printed", () => {
  it("those at their default too", async () => {
    const { out } = await veladis(settings, recorded());
    for (const line of [
      " threshold 9.000 mm/s rms",
      " hysteresis 8 %: clears below 8.280 mm/s rms",
      " on-delay 8 s; starts over below threshold",
      " off-delay 0 s",
      " latch latching: a trip stays until it is reset by hand",
      " relay contact normally open, coil normally energised (not given)",
      " sensor fault not given: a cell without a level is refused",
      " inhibit none",
      " multiplier none",
      " commands none",
      " levels in mm/s rms; each stands until the next",
      " longest gap 5 s, five times the median of 1 s between levels; no gap is longer",
      " excursions not told",
    ]) {
      expect(plain(out)).toContain(`\n${line}\n`);
    }
  });

  it("and all that were given", async () => {
    const more = ["--off-delay", "2", "--relay", "normally closed, normally de-energised", "--sensor-fault", "hold"];
    const last = ["--at", "25 Hz", "--excursions", "--longest-gap", "90"];
    const { out } = await veladis([...settings, ...masks, ...more, ...last], recorded());
    for (const line of [
      " off-delay 2 s, of no effect: the output latches",
      " relay contact normally closed, coil normally de-energised",
      " sensor fault hold",
      " inhibit no trip for 500 s from the beginning and from each start",
      " multiplier 2 for 300 s from the beginning and from each start: threshold 18.00 mm/s rms\n meanwhile",
      " commands bypass on at 50 s (12:00:20), bypass off at 90 s (12:01:00)",
      " levels in mm/s rms at 25 Hz; each stands until the next",
      " longest gap 90 s; no gap is longer",
      " excursions told",
    ]) {
      expect(plain(out)).toContain(`\n${line}\n`);
    }
  });
});

describe("without an on-delay", () => {
  const plainSwitch = [
    "simulate",
    "--from",
    "mm/s rms",
    "--threshold",
    "9 mm/s rms",
    "--hysteresis",
    "8 %",
    "--latching",
  ];

  it("no timer is asked for, and none is told of", async () => {
    const { out, code, err } = await veladis([...plainSwitch, "--delay", "0"], recorded());
    expect([code, err.includes("timer-resets")]).toEqual([0, false]);
    expect(plain(out)).toContain("latching, no on-delay");
    expect(plain(out)).toContain("\n on-delay 0 s: trips at once\n");
    expect(out).not.toContain("starts over");
    const data = JSON.parse((await veladis([...plainSwitch, "--delay", "0", "--json"], recorded())).out);
    expect(data.notGiven).toEqual(["relay", "sensor-fault", "timer-resets"]);
  });

  it("one that is told all the same has no effect, which is said", async () => {
    const answers = [];
    for (const when of ["threshold", "reset-level"]) {
      const { out } = await veladis([...plainSwitch, "--delay", "0", "--timer-resets", when], recorded());
      expect(plain(out)).toContain(" on-delay 0 s: trips at once; no timer, so --timer-resets has no effect\n");
      answers.push(out);
    }
    expect(answers[1]).toBe(answers[0]);
  });

  it("beside a delay that takes time it is asked for", async () => {
    const { err, code } = await veladis([...plainSwitch, "--delay", "0,2"], recorded());
    expect(code).toBe(2);
    expect(err).toContain("--timer-resets such as threshold");
  });
});

describe("gaps in a history", () => {
  it("are told with their times, as a warning after a high level", async () => {
    const { out } = await veladis(settings, recorded(3600));
    expect(out.replace(/\s+/g, " ")).toContain(
      "gaps longer than 5 s - warning, after a high level: no reading for 1 h from 74 s (12:00:44) to 3674 s (13:00:44); " +
        "what happened in it is unknown, the level before it, 12.1 mm/s rms, is taken to stand",
    );
    const json = await veladis([...settings, "--json"], recorded(3600));
    expect(JSON.parse(json.out).gaps).toMatchObject({ longest: 5, gaps: [{ start: 74, end: 3674, high: true }] });
    expect((await veladis([...settings, "--longest-gap", "3600"], recorded(3600))).out).toContain("no gap is longer");
  });

  it("are not without a word that the list was cut", async () => {
    const csv = `time,level\n${Array.from({ length: 40 }, (_, i) => `${i + 60 * Math.floor(i / 3)},2`).join("\n")}\n`;
    expect((await veladis(settings, csv)).out).toContain("- and 3 more, 0 of them after a high level or a fault");
  });

  it("after a sensor fault say so", async () => {
    const { out } = await veladis([...settings, "--sensor-fault", "hold"], "time,level\n0,2\n1,2\n2,fault\n200,2\n");
    expect(out.replace(/\s+/g, " ")).toContain(
      "warning, after a sensor fault: no reading for 3.3 min from 2 s to 200 s",
    );
  });

  it("are not where levels are evenly spaced, which an option for them contradicts", async () => {
    const even = [...settings, "--every", "1", "--column", "level"];
    expect((await veladis(even, "level\n2\n2\n")).out).toMatch(/longest gap +none: evenly spaced/);
    expect((await veladis([...even, "--longest-gap", "5", "--json"], "level\n2\n2\n")).code).toBe(2);
  });
});

describe("the clock of a history", () => {
  const rows = (...times: string[]) =>
    `time,level\n${times.map((time, i) => `${time},${i === 1 ? 20 : 2}`).join("\n")}\n`;
  const first = async (...times: string[]) => {
    const { out } = await veladis([...settings.slice(0, -1), "0"], rows(...times));
    return /\n +[\d.]+ {2}(.*?) *trip /.exec(out)?.[1];
  };

  it("has the date where the history goes over midnight, and the zone of the file", async () => {
    expect(await first("2026-03-04 23:59:58", "2026-03-05 00:00:03", "2026-03-05 00:00:04")).toBe(
      "2026-03-05 00:00:03",
    );
    expect(await first("2026-03-04T11:00:00+02:00", "2026-03-04T11:00:07+02:00", "2026-03-04T11:00:08+02:00")).toBe(
      "11:00:07",
    );
    expect(await first("2026-03-04T11:00:00Z", "2026-03-04T11:00:07.250Z", "2026-03-04T11:00:08Z")).toBe(
      "11:00:07.250",
    );
    expect(await first("0", "5", "6")).toBe("");
  });

  it("is one for all rows", async () => {
    const { err } = await veladis(settings, rows("2026-03-04 11:00:00", "5000000000"));
    expect(err).toContain('times written as the first one, "2026-03-04 11:00:00" at line 2');
  });
});
