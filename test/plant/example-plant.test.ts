import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { frequency } from "../../src/frequency/index";
import {
  auditChanges,
  auditPlant,
  auditRules,
  dueChecks,
  judgeRoute,
  type Plant,
  parseChanges,
  parsePlant,
  type RouteReading,
  scheduleSetpoints,
  takeResults,
} from "../../src/plant/index";
import { amplitudeOf, parseAmplitude } from "../../src/reading/index";
import { classify, defineScheme, judge, type Scheme } from "../../src/severity/index";

const folder = `${import.meta.dirname}/../../docs/examples/plant`;
const textOf = (name: string): string => readFileSync(`${folder}/${name}`, "utf8").trimEnd();

/** The cells of a line of this folder's files: commas between them, quotes around those with a comma. */
const cellsOf = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, plain]) => quoted ?? plain ?? "");

const tableOf = (name: string) => {
  const [heading = "", ...rows] = textOf(name).split("\n");
  return { heading: cellsOf(heading), rows: rows.map(cellsOf) };
};

const on = "2026-10-01";
const plant: Plant = parsePlant(tableOf("plant.csv"));
const readme = textOf("README.md");

/** The rows of the table under a heading of the README. */
const planted = (heading: string): string[][] => {
  const section = readme.split(/^## /m).find((part) => part.startsWith(heading)) as string;
  return section
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .slice(2)
    .map((line) =>
      line
        .slice(2, -2)
        .split(" | ")
        .map((cell) => cell.trim()),
    );
};

const sorted = (texts: readonly string[]): string[] => [...texts].sort();

describe("the list of the invented plant", () => {
  const { findings } = auditPlant(plant, { on });
  /** Notes on the tables and on words of the nameplate that play no part: told, and no faults. */
  const remaining = (code: string): boolean => code === "limits from memory" || code === "facts set aside";

  it("is of 30 machines, none refused, with a column of its own", () => {
    expect([plant.machines.length, plant.refused, plant.ownColumns]).toEqual([30, [], ["cost centre"]]);
  });

  it("has exactly the faults that the README lists, each found by its rule", () => {
    const expected = planted("Faults of the list").map(([tag, , finding]) => `${tag}: ${finding}`);
    const found = findings.filter(({ code }) => !remaining(code));
    expect(sorted(found.map(({ tag, severity, code }) => `${tag}: ${severity}: ${code}`))).toEqual(sorted(expected));
  });

  it("has every rule of the audit but these", () => {
    const codes = new Set<string>(findings.map(({ code }) => code));
    expect(Object.keys(auditRules).filter((code) => !codes.has(code))).toEqual([
      "no setpoint",
      "alarm above the maker's ceiling",
      "limits not known",
      "several tables",
      "facts assumed",
      "left out of tolerance",
      "left in doubt",
    ]);
  });

  it("leaves as other notes what the README names, and no other", () => {
    const rest = findings.filter(({ code }) => remaining(code));
    expect(new Set(rest.map(({ severity }) => severity))).toEqual(new Set(["note"]));
    expect(rest.filter(({ code }) => code === "facts set aside").map(({ tag }) => tag)).toEqual([
      "Boiler-feed pump A",
      "Boiler-feed pump B",
      "Condensate pump 1",
      "Low-street booster pump",
      "Low-street booster pump 2",
    ]);
    // own limits, and those that do not fit, are of no table
    expect(rest.filter(({ code }) => code === "limits from memory")).toHaveLength(30 - 6 - 1);
  });

  it("keeps the figures of the machines on the page of the invented plant", () => {
    const { machines } = JSON.parse(readFileSync(`${folder}/../hollowmere.json`, "utf8")) as {
      machines: readonly Readonly<Record<string, string | number | boolean>>[];
    };
    for (const { tag, baseline, alarm, trip, step, hysteresis, delay, latching, sensor, loop } of machines) {
      const cells = plant.machines.find((one) => one.tag === tag)?.cells;
      expect([tag, cells?.baseline, cells?.alarm, cells?.trip, cells?.hysteresis]).toEqual([
        ...[tag, baseline, alarm, trip, hysteresis],
      ]);
      expect([cells?.["trip delay s"], cells?.latching]).toEqual([`${delay}`, latching ? "yes" : "no"]);
      expect([cells?.sensor, cells?.loop]).toEqual([sensor, loop]);
      if (step !== undefined) expect(cells?.step).toBe(step);
    }
  });
});

/** The rows of a route by their headings, with a unit in the cell or in a column. */
const routeOf = (name: string): RouteReading[] => {
  const { heading, rows } = tableOf(name);
  return rows.map((row, i) => {
    const cell = (title: string): string => row[heading.indexOf(title)] ?? "";
    const at = cell("at");
    return {
      ...{ tag: cell("tag"), point: cell("point"), date: cell("date"), line: i + 2 },
      reading: cell("reading") || `${cell("value")} ${cell("unit")}`,
      ...(at !== "" && { at: frequency(at) }),
    };
  });
};

describe("the routes", () => {
  const before = routeOf("route-2026-09.csv");
  const route = routeOf("route-2026-10.csv");

  it.each([
    ["of September", before],
    ["of October", route],
  ])("%s: each verdict is that of judge or classify, called by hand", (_, rows) => {
    const { verdicts } = judgeRoute(plant, rows);
    expect(verdicts.length).toBeGreaterThan(28);
    for (const { tag, line, headline, zone } of verdicts) {
      const { machine, table, limits } = plant.machines.find((one) => one.tag === tag) as Plant["machines"][number];
      const { reading, at } = rows[line - 2] as RouteReading;
      const amplitude = parseAmplitude(
        at === undefined ? `${reading}` : `${reading} at ${(at as { hertz: number }).hertz} Hz`,
      );
      const assume = { assume: "lowest limits" } as const;
      if (limits !== undefined) {
        // limits of the maker: A and B together below B/C, C, and D above C/D
        const [lower, upper] = [limits["B/C"], limits["C/D"]].map((one) => amplitudeOf(one).value) as [number, number];
        const own: Scheme = defineScheme({
          ...{ id: "by-hand", kind: "zones", standard: "the maker", edition: "now", title: "t", scope: "s" },
          ...{ measuredOn: "m", band: null },
          classes: [
            {
              criteria: [
                {
                  as: "mm/s rms",
                  limits: { "B/C": lower, "C/D": upper },
                  source: { title: "t", provenance: "reported" },
                },
              ],
            },
          ],
        });
        expect([tag, headline]).toEqual([tag, classify(amplitude, { scheme: own, machine, ...assume }).headline]);
      } else {
        const told =
          table === undefined
            ? judge(amplitude, machine, assume)
            : classify(amplitude, { scheme: table as "iso-14694-2003", machine, ...assume });
        expect([tag, headline, zone]).toEqual([tag, told.headline, told.zone]);
      }
    }
  });

  it("of October: worst first, two lines refused, four machines not read", () => {
    const { verdicts, refused, unread } = judgeRoute(plant, route, { before });
    expect(verdicts.slice(0, 4).map(({ tag, headline }) => [tag, headline])).toEqual([
      ["Condensate pump 2", "zone D"],
      ["Circulation pump 4", "zone D"],
      ["Boiler-feed pump B", "zone C"],
      ["Circulation pump 2", "zone C"],
    ]);
    expect(refused.map(({ tag, code }) => [tag, code])).toEqual([
      ["Make-up pump", "out-of-range"],
      ["Condensate pump 4", "unknown-option"],
    ]);
    expect(unread.map(({ tag }) => tag)).toEqual([
      "Cooling fan",
      "make-up pump",
      "Mill-street booster pump 2",
      "Chiller pump",
    ]);
  });

  it("of October: what reaches the trip or the alarm that is set is told, whatever its zone (common practice, no source)", () => {
    const { verdicts } = judgeRoute(plant, route);
    const told = verdicts.flatMap(({ tag, point, cautions }) =>
      cautions.flatMap((text) => {
        const [, setpoint] = /^at or above the (trip|alarm) as set, /.exec(text) ?? [];
        return setpoint === undefined ? [] : [`${tag} ${point}: ${setpoint}`];
      }),
    );
    expect(sorted(told)).toEqual([
      "Boiler-feed pump B DE-H: alarm",
      "Boiler-feed pump B NDE-H: alarm",
      "Circulation pump 4 pinion bearing H: trip",
      "Condensate pump 2 DE-V: alarm",
      "Condensate pump 3 DE-V: alarm",
      "ID fan 2 fan bearing H: alarm",
    ]);
  });

  it.each([
    // 0.2 in/s peak is 5.08 mm/s peak, 3.59 mm/s RMS of a sine
    ["3.6 mm/s rms", {}, "at or above the alarm as set, 0.200 in/s pk: does it stand?"],
    ["3.5 mm/s rms", {}, undefined],
    ["0.2 in/s pk", {}, "at or above the alarm as set, 0.200 in/s pk: does it stand?"],
    // 0.35 in/s peak at 1180 r/min: 8.89 mm/s over 123.57 rad/s, twice: 143.9 um peak-to-peak
    [
      "144 um pp",
      { at: { hertz: 1180 / 60 } },
      "at or above the trip as set, 0.350 in/s pk: why did it not act? (a bypass, an inhibit, a delay, another sensor or band)",
    ],
    ["143 um pp", { at: { hertz: 1180 / 60 } }, "at or above the alarm as set, 0.200 in/s pk: does it stand?"],
  ])("%s %o on a pump set in in/s peak", (reading, at, text) => {
    const { verdicts } = judgeRoute(plant, [{ tag: "Low-street booster pump", line: 2, reading, ...at }]);
    expect(verdicts[0]?.cautions.find((one) => one.startsWith("at or above"))).toBe(text);
  });

  it("give no verdict for either row of a tag that two rows share, however it is written", () => {
    for (const tag of ["Make-up pump", "make-up pump"]) {
      const { verdicts, refused } = judgeRoute(plant, [{ tag, line: 2, reading: "1.9 mm/s rms" }]);
      expect([verdicts, refused[0]?.code]).toEqual([[], "out-of-range"]);
    }
    const { refused } = scheduleSetpoints(plant);
    expect(refused.map(({ tag }) => tag)).toEqual(["Make-up pump", "make-up pump", "Chiller pump"]);
  });
});

describe("the record of changes", () => {
  it("holds exactly the faults that the README lists", () => {
    const record = parseChanges(tableOf("changes.csv"));
    expect(record.refused).toEqual([]);
    const found = auditChanges(plant, record.changes, { on });
    const expected = planted("Faults of the record").map(([tag, , finding]) => `${tag}: ${finding}`);
    expect(sorted(found.map(({ tag, severity, code }) => `${tag}: ${severity}: ${code}`))).toEqual(sorted(expected));
  });
});

describe("the checks", () => {
  it("due on 2026-10-15 are three, the most urgent first", () => {
    const due = dueChecks(plant, { on: "2026-10-15" }).filter(({ isDue }) => isDue);
    expect(due.map(({ tag, state, days }) => [tag, state, days])).toEqual([
      ["Boiler-feed pump B", "never checked", null],
      ["Circulation pump 3", "date ahead", -512],
      // from 2026-06-12 to 2026-10-15: 18 + 31 + 31 + 30 + 15 days
      ["ID fan 2", "overdue", 125],
    ]);
  });

  it("that came back: one failed as found, one passed, one refused for the wrong year on the list", () => {
    const { results, refused } = takeResults(plant, tableOf("results-2026-10.csv"), { on: "2026-10-22" });
    // (6.4 - 7) / 7 and (3.9 - 4) / 4
    expect(results.map(({ tag, asFound }) => [tag, asFound.verdict, asFound.errorPercent.toFixed(2)])).toEqual([
      ["ID fan 2", "fail", "-8.57"],
      ["Boiler-feed pump B", "pass", "-2.50"],
    ]);
    expect(refused.map(({ tag, line, column }) => [tag, line, column])).toEqual([["Circulation pump 3", 4, "date"]]);
  });
});

it("the histories are called by tags of the list", () => {
  const tags = plant.machines.map(({ tag }) => `${tag}.csv`);
  expect(readdirSync(`${folder}/history`).filter((name) => !tags.includes(name))).toEqual([]);
});
