import { VeladisError } from "veladis";
import { describe, expect, it } from "vitest";
import { type Call, calls } from "./calls";
import { hostile, placesIn, put } from "./hostile";
import { parameterNames } from "./parameter-names";

/** Places of a call that take every hostile value; where there are more, each takes a few in turn. */
const PLACES = 10;

/**
 * Refusals that name another parameter than the one that was replaced, by why they may, and by function with how many
 * there are at the most. What does not go together can be told of either; of numbers beyond all bounds none is to blame.
 */
const others = {
  "two arguments do not go together, and the other one is named": {
    // numbers with a comma, and an option that does not say so
    ...{ frequency: 12, parseAmplitude: 12 },
    // a number wants its type behind it
    format: 16,
    // as many elements as another list has
    ...{ "converter.array": 8, "classifier.array": 8, "TripLogic.run": 6 },
    // a frequency or a crest factor said twice, or one that cannot be applied
    ...{ "currentLoop.current": 8, "sensor.voltage": 5, formatVector: 9, uncertaintyOfVector: 4 },
    // bands and lowest frequencies beside lines
    ...{ bandOverall: 6, convertDensity: 9, convertSpectrum: 6, densityOverall: 8, orderLines: 3, topLines: 2 },
    ...{ linesOverall: 6, resolvingSettings: 6 },
    // two readings of different kinds, or one with a phase and one without
    ...{ vectorDifference: 5, rssDifference: 5, differenceOfVectors: 6, shaftAbsolute: 6, sumOfVectors: 3 },
    ...{ slowRollCompensated: 4, changeFromBaseline: 8, classify: 6, judge: 4, judgePoints: 2 },
    // a device, a machine or a state beside settings
    ...{ benchPlan: 4, baseline: 18, mechanicalSwitch: 3, machineToSql: 3, schemesFor: 2, toolkit: 6 },
    ...{ shockImmunity: 2, "new VotedTrip from a state": 2, exactZone: 8 },
  },
  "a result of several arguments that no number holds": {
    ...{ amountOf: 2, convert: 4, tryConvert: 2, convertAmplitude: 5, "toolkit.convert": 2, sineFrequency: 2 },
    ...{
      classifier: 5,
      schemeToSql: 4,
      combinedUncertainty: 4,
      checkPoints: 3,
      delayTest: 4,
      linearity: 4,
      askedWarnings: 3,
    },
    ...{ resetPointTest: 4, tripPointTest: 4, detectedLevels: 8, responseAt: 12, pointAlong: 4, profileOverall: 4 },
    ...{ bandPassPowerGain: 3, permissibleEccentricity: 3, permissibleUnbalance: 3, velocityOf: 3, density: 2 },
    ...{ "sensor.reading": 2, detrended: 2 },
  },
} as const;

const most = Object.assign({}, ...Object.values(others)) as Readonly<Record<string, number>>;

interface Refusal {
  readonly replaced: string;
  /** The keys and indexes to what was replaced within the argument. */
  readonly path: readonly string[];
  readonly what: string;
  readonly error: VeladisError;
}

/** What a call refuses with one of its arguments replaced by a hostile value, or a part of one. */
async function refusals({ name, args, run }: Call): Promise<Refusal[]> {
  const found: Refusal[] = [];
  const places = placesIn(args()).filter(({ length }) => length > 0);
  const step = Math.ceil(places.length / PLACES);
  for (const [place, path] of places.entries()) {
    for (const [i, [what, value]] of Object.entries(hostile).entries()) {
      if (i % step !== place % step) continue;
      const given = args();
      if (!put(given, path, value())) continue;
      const replaced = parameterNames(name, given)?.[path[0] as number] ?? "?";
      try {
        await run(...given);
      } catch (error) {
        if (!(error instanceof VeladisError)) throw error;
        found.push({ replaced, path: path.slice(1).map(String), what, error });
      }
    }
  }
  return found;
}

const told = ({ replaced, path, what, error }: Refusal): string =>
  `${what} at ${[replaced, ...path].join(".")} names ${error.parameter}: ${error.message.slice(0, 80)}`;

/** Of all calls, once they have run. */
const sum = { all: 0, right: 0, within: 0, keyed: 0 };

const list = Object.entries(calls).flatMap(([entry, of]) =>
  of.map((call) => [`${entry}: ${call.name}`, call] as const),
);

describe("a refusal names the parameter that was replaced", () => {
  it.each(list)("%s", async (_, call) => {
    const all = await refusals(call);
    const astray = all.filter(({ replaced, error }) => error.parameter !== replaced);
    expect(all.filter(({ error }) => error.parameter === undefined).map(told)).toEqual([]);
    expect(astray.length, astray.map(told).join("\n")).toBeLessThanOrEqual(most[call.name] ?? 0);
    const within = all.filter(({ replaced, path, error }) => path.length > 0 && error.parameter === replaced);
    sum.all += all.length;
    sum.right += all.length - astray.length;
    sum.within += within.length;
    sum.keyed += within.filter(({ path, error: { option, fact, index } }) =>
      [option, fact, index].some((one) => one !== undefined && path.includes(String(one))),
    ).length;
  });

  it("in 99 of 100 at the least, of all", () => {
    expect(sum.all).toBeGreaterThan(50_000);
    expect(sum.right / sum.all).toBeGreaterThan(0.99);
  });

  it("and in 9 of 10 the option, the fact or the element within it", () => {
    expect(sum.keyed / sum.within).toBeGreaterThan(0.9);
  });
});
