import { readFileSync } from "node:fs";
import { VeladisError } from "veladis";
import { describe, expect, it } from "vitest";
import { type Call, calls } from "./calls";

type Given = Record<string, unknown>;

/**
 * Arguments that are no options: a reading, a frequency, an answer, a session. Other things may stand in them, such as
 * the columns of the row they came from. By name of the call and place.
 */
const data: Readonly<Record<string, readonly number[]>> = {
  assumedText: [0],
  convertAmplitude: [0],
  format: [0],
  readingText: [0],
  hertz: [0],
  writtenValue: [0],
  changeFromBaseline: [1],
  classify: [0],
  machineNotes: [0],
  supportOf: [1],
  marginText: [0],
  askedWarnings: [0, 1],
  sheetHtml: [0],
  sheetJson: [0],
  sheetMarkdown: [0],
  bandOverall: [0],
  convertDensity: [0],
  convertSpectrum: [0],
  densityOverall: [0],
  orderLines: [0],
  topLines: [0],
  completions: [1],
  evaluateLine: [1],
  registerAmplitudes: [0],
  "VotedTrip.step": [0],
  "VotedTrip.run": [0],
  formatUncertain: [0],
  ratioOf: [1],
  uncertaintyOf: [0],
  zonesWithin: [0],
  withUncertainty: [0],
  "currentLoop.current": [0],
  formatVoltage: [0],
  "sensor.reading": [0],
  explain: [0],
  toJson: [1],
  auditPlant: [0],
  judgeRoute: [0, 1],
  machineVerdict: [0],
  scheduleSetpoints: [0],
  dueChecks: [0],
  benchRound: [0],
  takeResults: [0],
  doubtfulPeriods: [0],
  auditChanges: [0],
  changeCautions: [0],
};

const isPlain = (value: unknown): value is Given =>
  typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** The places of a call where options stand. */
const optionPlaces = ({ name, args }: Call): number[] =>
  args().flatMap((one, i) => (isPlain(one) && !data[name]?.includes(i) ? [i] : []));

/** The refusal of a call whose options hold one key more. */
async function refusalOf({ args, run }: Call, place: number, key: string): Promise<VeladisError | undefined> {
  const given = args();
  (given[place] as Given)[key] = 1;
  try {
    await run(...given);
    return undefined;
  } catch (error) {
    if (error instanceof VeladisError) return error;
    throw error;
  }
}

const all = Object.entries(calls).flatMap(([entry, list]) =>
  list.flatMap((call) => optionPlaces(call).map((place) => [`${entry}: ${call.name} ${place}`, call, place] as const)),
);

describe("an option that there is none of is refused, and named", () => {
  it.each(all)("%s", async (_, call, place) => {
    const error = await refusalOf(call, place, "zzz");
    expect([error?.code, error?.option]).toEqual(["unknown-option", "zzz"]);
  });
});

describe("a mistyped option is refused with the one that is meant", () => {
  it.each(all)("%s", async (_, call, place) => {
    const keys = Object.keys(call.args()[place] as Given).filter((key) => /^\w{4,}$/.test(key));
    for (const key of keys) {
      const error = await refusalOf(call, place, `${key}x`);
      expect([error?.code, error?.option]).toEqual(["unknown-option", `${key}x`]);
      expect(error?.didYouMean).toContain(key);
    }
  });
});

describe("every function that takes options is called with some", () => {
  it.each(Object.keys(calls))("%s", (entry) => {
    const name = entry === "veladis" ? "index" : entry.replace("veladis/", "");
    const page = readFileSync(`test/surface/${name}.txt`, "utf8");
    const taking = [...page.matchAll(/^function (\w+)(?:<[^(]*>)?\(([\s\S]*?)\): /gm)].filter(([, , parameters]) =>
      /\boptions\??:|: \w+(Options|Settings|Request)\b/.test(parameters as string),
    );
    const list: readonly Call[] = calls[entry as keyof typeof calls];
    const given = new Set(list.filter((call) => optionPlaces(call).length > 0).map((call) => call.name));
    expect(taking.map((found) => found[1]).filter((one) => !given.has(one as string))).toEqual([]);
  });
});
