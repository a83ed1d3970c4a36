import * as root from "veladis";
import { nomograph } from "veladis/chart";
import { completions, evaluateLine, helpText, newSession } from "veladis/mathjs";
import * as protection from "veladis/protection";
import { currentLoop, sensor } from "veladis/sensor";
import { defineScheme, judge, parseMachine, parsePoints, schemeById, selectSchemes } from "veladis/severity";
import { densityUnit, overall, windowName } from "veladis/signal";
import { toSql } from "veladis/sql";
import { parseUncertain } from "veladis/uncertainty";
import { afterAll, describe, expect, it } from "vitest";
import { isUnfinished } from "../../src/repl/index";
import { veladis } from "../cli/in-process";

const MEGABYTE = 1 << 20;
/**
 * Sizes in turn, so that what is worse than linear fails early and never runs for hours. `VELADIS_LINEAR=full` goes on
 * to a whole megabyte, and tells what took longest.
 */
const full = process.env.VELADIS_LINEAR === "full";
const SIZES = full ? [MEGABYTE >> 6, MEGABYTE >> 2, MEGABYTE] : [MEGABYTE >> 7, MEGABYTE >> 5];
/** Milliseconds for a megabyte: a hundred times what is needed, for machines that are loaded. */
const MOST = 3000;

/** Texts of about the size, of the kinds that make careless patterns search. */
const hard: Readonly<Record<string, (size: number) => string>> = {
  digits: (n) => "1".repeat(n),
  "digits, and a letter": (n) => `${"1".repeat(n)}x`,
  "digits and points": (n) => "1.".repeat(n / 2),
  "thousands with commas": (n) => "1,000".repeat(n / 5),
  spaces: (n) => " ".repeat(n),
  "spaces within": (n) => `1${" ".repeat(n)}mm/s${" ".repeat(n)}rms${" ".repeat(n)}x`,
  "tabs, and a letter": (n) => `${"\t".repeat(n)}x`,
  "line ends": (n) => `x${"\n".repeat(n)}x`,
  "an exponent after the other": (n) => "1e".repeat(n / 2),
  signs: (n) => "+-".repeat(n / 2),
  "signs, and a digit": (n) => `${"-".repeat(n)}1`,
  "a unit over and over": (n) => `1 ${"mm/s ".repeat(n / 5)}`,
  "prefixes of a unit": (n) => `1 ${"µ".repeat(n)}m rms`,
  "a slash over and over": (n) => `1 mm${"/s".repeat(n / 2)} rms`,
  "per over and over": (n) => `1 mm${" per s".repeat(n / 6)} rms`,
  "at over and over": (n) => `1 mm/s rms${" at 25 Hz".repeat(n / 9)}`,
  "to over and over": (n) => `1 mm/s rms${" to in/s pk".repeat(n / 11)}`,
  "peak to peak over and over": (n) => `1 mm/s ${"peak to ".repeat(n / 8)}`,
  "re over and over": (n) => `60 dB ${"re ".repeat(n / 3)}1 nm/s`,
  "orders over and over": (n) => `${"2x ".repeat(n / 3)}1500 r/min`,
  "hyphens between letters": (n) => `1 mm/s p${"-".repeat(n)}p`,
  "letters and hyphens": (n) => "p-".repeat(n / 2),
  "open brackets": (n) => "(".repeat(n),
  "open brackets of lists": (n) => "[".repeat(n),
  "brackets within brackets": (n) => `${"(".repeat(n / 2)}1${")".repeat(n / 2)}`,
  "open quotes": (n) => '"'.repeat(n),
  "quotes and letters": (n) => '"a'.repeat(n / 2),
  separators: (n) => ",".repeat(n),
  "separators with spaces": (n) => " , ;".repeat(n / 4),
  "a word of a machine over and over": (n) => "pump ".repeat(n / 5),
  "almost a word of a machine": (n) => `${"natural frequency of ".repeat(n / 21)}x`,
  NULs: (n) => "\0".repeat(n),
  "halves of surrogate pairs": (n) => "\ud800".repeat(n),
  "letters with many marks": (n) => `a${"\u0301".repeat(n)}`,
  "letters that grow in small": (n) => "İ".repeat(n),
  "signs that grow plain": (n) => "ﷺ".repeat(n / 16),
  "a point over and over": (n) => "P 4.9 ".repeat(n / 6),
  "points with commas": (n) => "P 4.9, ".repeat(n / 7),
  "a coverage factor over and over": (n) => `DE-H 4.9 mm/s rms${", k=2".repeat(n / 5)}`,
  "plus and minus over and over": (n) => `4.9${" ± 0.3".repeat(n / 6)} mm/s rms`,
  "labels over and over": (n) => " / II".repeat(n / 5),
  names: (n) => "__proto__".repeat(n / 9),
  assignments: (n) => "a=".repeat(n / 2),
  "a name, and no end": (n) => `${"a".repeat(n)} = `,
  "comments that end early": (n) => "*/".repeat(n / 2),
};

// biome-ignore lint/suspicious/noExplicitAny: parsers take texts of any kind here
type Loose = any;

const session = newSession();
const settings = { hysteresis: "10 %", onDelay: 2, timerResets: "below threshold", sensorFault: "alarm" };
const relay = { latching: true, contact: "normally open", coil: "normally energised" };
const csv = (text: string): string => `tag,v\n${text},${text}\n`;

const parsers: Readonly<Record<string, (text: string) => unknown>> = {
  "a reading": root.parseAmplitude,
  "a reading, behind its value": (text) => root.parseAmplitude(`1 ${text}`),
  "a type": root.readingType,
  "a unit": root.unitSymbol,
  "a detector": root.detectorSymbol,
  "a unit of frequency": root.frequencyUnitSymbol,
  "a frequency": root.frequency,
  "a frequency, typed": (text) => root.hertz(text as Loose),
  "a conversion": (text) => (root.convert as Loose)(1, text, "mm/s rms"),
  "a share": (text) => protection.amountOf(text, "1 mm/s rms"),
  "a sensor": sensor,
  "a sensor, behind its value": (text) => sensor(`100 mV/${text}`),
  "a voltage": (text) => sensor("100 mV/g").reading(text, "g pk"),
  "a loop": currentLoop,
  "a machine": parseMachine,
  "a machine, behind what is known": (text) => parseMachine(`pump 90 kW ${text}`),
  "a machine with a label": (text) => parseMachine(`pump 90 kW category II${text}`),
  "a reading that is judged": (text) => judge(text, "pump 90 kW 2980 r/min category II"),
  "an uncertain reading": parseUncertain,
  "points of a machine": parsePoints,
  "points behind a reading": (text) => parsePoints(`DE-H 4.9, ${text}`),
  "points of the command": (text) => veladis(["judge", text, "--machine", "pump 90 kW 2980 r/min category II"]),
  "a machine as data": (text) => selectSchemes({ type: text as Loose, power: text as Loose }),
  "the id of a scheme": schemeById,
  "a scheme in JSON": (text) =>
    defineScheme(JSON.parse(JSON.stringify({ id: text, kind: text, standard: text, classes: [] }))),
  "a grade of balance": protection.balanceGrade,
  "a vote": (text) => protection.parseVote(text as Loose),
  "a mass": (text) => protection.unbalanceOf(text, "10 mm"),
  "an unbalance": (text) => protection.centrifugalForce(text, "25 Hz"),
  "an uncertainty": (text) => protection.combinedUncertainty([text]),
  "a tolerance": (text) => protection.delayTest(1, [1], text),
  "a tolerance of levels": (text) =>
    protection.checkAgainstKnown({ known: "1 g pk", indicated: "1 g pk", tolerance: text }),
  "a threshold": (text) => new protection.TripLogic({ ...settings, ...relay, threshold: text } as Loose),
  "a hysteresis": (text) =>
    new protection.TripLogic({ ...settings, ...relay, threshold: "1 g pk", hysteresis: text } as Loose),
  "a window": windowName,
  "a unit of density": densityUnit,
  "the answer of an overall": (text) => overall([1, 2], { rate: 10, unit: "g", band: [1, 2], as: text as Loose }),
  "the unit of samples": (text) => overall([1, 2], { rate: 10, unit: text as Loose, band: [1, 2], as: "g rms" }),
  "a column of SQL": (text) => toSql("mm/s rms", "in/s rms", { column: text }),
  "an expression of SQL": (text) => toSql("mm/s rms", "in/s rms", { expression: text }),
  "a sheet in Markdown": (text) =>
    protection.sheetMarkdown(protection.setpointSheet({ machine: text, remarks: [text] })),
  "a sheet in HTML": (text) => protection.sheetHtml(protection.setpointSheet({ machine: text, remarks: [text] })),
  "a title of a chart": (text) => nomograph({ title: text }),
  "a label of a chart": (text) => nomograph({ readings: [{ reading: "1 mm/s rms at 25 Hz", label: text }] }),
  "a line of the calculator": (text) => evaluateLine(text, session),
  "a topic of the help": helpText,
  "a line to complete": (text) => completions(text, session),
  "a line that may go on": isUnfinished,
  "a sentence of the command": (text) => veladis([text]),
  "a type of the command": (text) => veladis(["1 mm/s rms", "--to", text]),
  "a machine of the command": (text) => veladis(["judge", "1 mm/s rms", "--machine", text]),
  "piped lines": (text) => veladis(["--to", "mm/s rms"], text),
  "a cell of a table": (text) =>
    veladis(["table", "--column", "v", "--from", "mm/s rms", "--to", "in/s rms"], csv(text)),
  "the header of a table": (text) =>
    veladis(["table", "--column", "v", "--from", "mm/s rms", "--to", "in/s rms"], text),
  "a column of CSV": (text) => veladis(["--column", "v", "--from", "mm/s rms", "--to", "in/s rms"], csv(text)),
  "levels of a trip": (text) =>
    veladis(["simulate", "--threshold", "1 mm/s rms"], `time,level\n0,1\n${text},${text}\n`),
  "samples of a record": (text) =>
    veladis(["overall", "--rate", "100", "--unit", "g", "--band", "1 to 40", "--to", "g rms"], `v\n1\n${text}\n`),
};

async function spent(parse: (text: string) => unknown, text: string): Promise<[milliseconds: number, message: string]> {
  const begun = performance.now();
  let message = "";
  try {
    const answer = await parse(text);
    message = (answer as { err?: string } | undefined)?.err ?? "";
  } catch (error) {
    if (!(error instanceof root.VeladisError)) throw error;
    message = error.message;
  }
  return [performance.now() - begun, message];
}

let slowest = { time: 0, what: "" };
afterAll(() => {
  if (full) console.info(`slowest: ${Math.round(slowest.time)} ms, ${slowest.what}`);
});

describe("a megabyte of anything is read or refused in time, in few words", () => {
  it.each(Object.entries(parsers))("%s", { timeout: full ? 600_000 : 30_000 }, async (parser, parse) => {
    for (const [kind, text] of Object.entries(hard)) {
      for (const size of SIZES) {
        const [time, message] = await spent(parse, text(size));
        if (time > slowest.time) slowest = { time, what: `${parser}: ${kind}, ${size} characters` };
        expect(time, `${size} characters: ${kind}`).toBeLessThan(MOST);
        expect(message.length, `the message for ${kind}`).toBeLessThan(5000);
      }
    }
  });
});

describe("data within data without end is refused, never a crash", () => {
  const deep = (levels: number): Loose => {
    let value: Loose = {};
    for (let i = 0; i < levels; i++) value = i % 2 === 0 ? { classes: value } : [value];
    return value;
  };

  it.each([100, 100_000])("%d deep", (levels) => {
    expect(() => defineScheme(deep(levels))).toThrow(root.VeladisError);
    expect(() => defineScheme({ id: "own", kind: "zones", standard: "x", classes: [deep(levels)] } as Loose)).toThrow(
      root.VeladisError,
    );
    expect(() => selectSchemes(deep(levels))).toThrow(root.VeladisError);
    expect(() => new protection.TripLogic(deep(levels))).toThrow(root.VeladisError);
  });

  it("in a line of the calculator", async () => {
    for (const [open, close] of ["()", "[]"].map((pair) => pair.split("") as [string, string])) {
      const line = `${open.repeat(240)}1${close.repeat(240)}`;
      await expect(evaluateLine(line)).rejects.toThrow(root.VeladisError);
    }
    await expect(evaluateLine(`2${"^2".repeat(240)}`)).rejects.toThrow(root.VeladisError);
  });
});
