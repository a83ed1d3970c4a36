/**
 * What was assumed stays with an amplitude through any expression: random expressions are held against the union of
 * assumptions and the value that their own trees come to, reckoned here; and their explanations are carried out.
 */
import fc from "fast-check";
import { type Amplitude, assumedText, convertAmplitude, format } from "veladis";
import { explain } from "veladis/explain";
import { sineFrequency } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { evaluateLine, newSession, type Session } from "../../src/repl/index";
import { replay } from "../amplitude/replay";

/** What an expression ought to come to: RMS velocity in mm/s, and all that was assumed. */
interface Expected {
  readonly text: string;
  readonly value: number;
  readonly assumed: readonly string[];
  /** Its frequency, where it says one. */
  readonly hertz?: number | undefined;
  /** The variable, where it is made of that alone. */
  readonly one?: string | undefined;
  /** Whether it may be written as a level: two of them are not added. */
  readonly level?: boolean;
}

const number = fc.double({ min: 0.1, max: 50, noNaN: true }).map((x) => Number(x.toPrecision(4)));

/** Variables with their ways; each is an RMS velocity in some unit. Ratios by definition: 1 in = 25.4 mm. */
const ways: readonly {
  line: (x: number) => string;
  value: (x: number) => number;
  assumed: readonly string[];
  hertz?: number;
  level?: boolean;
}[] = [
  { line: (x) => `${x} mm/s rms`, value: (x) => x, assumed: [] },
  { line: (x) => `${x} mm/s pk to mm/s rms`, value: (x) => x / Math.SQRT2, assumed: ["sine"] },
  { line: (x) => `${x} in/s pp to in/s rms`, value: (x) => (25.4 * x) / 2 / Math.SQRT2, assumed: ["sine"] },
  {
    line: (x) => `${x} mm/s pk with crest factor 3 to in/s rms`,
    value: (x) => x / 3,
    assumed: ["crest-factor"],
  },
  {
    line: (x) => `${x} mm/s pk with crest factor 4.5 to mm/s rms`,
    value: (x) => x / 4.5,
    assumed: ["crest-factor"],
  },
  {
    line: (x) => `${x} um rms at 25 Hz to mm/s rms`,
    value: (x) => (x * 2 * Math.PI * 25) / 1000,
    assumed: ["one-frequency"],
    hertz: 25,
  },
  {
    line: (x) => `${x} m/s2 pk at 25 Hz to dB re 1e-9 m/s`,
    value: (x) => (1000 * x) / (2 * Math.PI * 25) / Math.SQRT2,
    assumed: ["one-frequency", "sine"],
    hertz: 25,
    level: true,
  },
];

const variables = fc.tuple(...ways.map(() => number));

const leaf = (values: readonly number[]): fc.Arbitrary<Expected> =>
  fc.oneof(
    fc.nat(ways.length - 1).map((i) => {
      const { value, assumed, hertz, level } = ways[i] as (typeof ways)[number];
      return { text: `v${i}`, value: value(values[i] as number), assumed, hertz, level: level === true, one: `v${i}` };
    }),
    number.map((x) => ({ text: `${x} mm/s rms`, value: x, assumed: [] })),
    number.map((x) => ({ text: `${x} in/s rms`, value: 25.4 * x, assumed: [] })),
    number.map((x) => ({
      text: `(${x + 80} dB re 1e-9 m/s)`,
      value: 1e-6 * 10 ** ((x + 80) / 20),
      assumed: [],
      level: true,
    })),
  );

const all = (...of: readonly Expected[]): string[] => of.flatMap(({ assumed }) => assumed);
const texts = (of: readonly Expected[]): string => of.map(({ text }) => text).join(", ");

/** The frequency of a result of several: the one that any of them says; no two differ here. */
const common = (of: readonly Expected[]): number | undefined => of.find(({ hertz }) => hertz !== undefined)?.hertz;

/** What is assumed where some say a frequency and others none. */
const taken = (of: readonly Expected[]): string[] =>
  common(of) !== undefined && of.some(({ hertz }) => hertz === undefined) ? ["one-frequency"] : [];

const isOne = (a: Expected, b: Expected): boolean => a.one !== undefined && a.one === b.one;

/** What putting two together in phase assumes, and the second one's text, linear where both may be levels. */
const together = (a: Expected, b: Expected) => ({
  hertz: common([a, b]),
  one: isOne(a, b) ? a.one : undefined,
  assumed: [
    ...all(a, b),
    ...(isOne(a, b) ? [] : [...(a.hertz === undefined || b.hertz === undefined ? ["one-frequency"] : []), "in-phase"]),
  ],
  second: a.level && b.level ? `1 * ${b.text}` : b.text,
});

const expression = (values: readonly number[]): fc.Arbitrary<Expected> =>
  fc.letrec<{ node: Expected }>((tie) => {
    const pair = fc.tuple(tie("node"), tie("node"));
    const several = fc.array(tie("node"), { minLength: 2, maxLength: 4 });
    return {
      node: fc.oneof(
        { depthSize: "small", withCrossShrink: true },
        leaf(values),
        pair.map(([a, b]) => {
          const { second, ...way } = together(a, b);
          return { text: `(${a.text} + ${second})`, value: a.value + b.value, ...way };
        }),
        // a difference of near equals has few digits left to hold
        pair.map(([one, other]) => {
          const [a, b] = one.value > other.value ? [one, other] : [other, one];
          const tenth = { ...b, text: `${b.text} / 10`, value: b.value / 10, level: false };
          const less = a.value - b.value < 0.1 * a.value ? tenth : b;
          const { second, ...way } = together(a, less);
          return { text: `(${a.text} - ${second})`, value: a.value - less.value, ...way };
        }),
        fc
          .tuple(tie("node"), number)
          .map(([a, x]) => ({ ...a, text: `${x} * ${a.text}`, value: x * a.value, level: false })),
        fc
          .tuple(tie("node"), number)
          .map(([a, x]) => ({ ...a, text: `(${a.text} / ${x})`, value: a.value / x, level: false })),
        tie("node").map((a) => ({ ...a, text: `(+${a.text})` })),
        several.map((of) => ({
          text: `rss(${texts(of)})`,
          value: Math.sqrt(of.reduce((sum, { value }) => sum + value * value, 0)),
          assumed: [...all(...of), "uncorrelated"],
          hertz: taken(of).length > 0 ? undefined : common(of),
        })),
        several.map((of) => ({
          text: `mean([${texts(of)}])`,
          value: of.reduce((sum, { value }) => sum + value, 0) / of.length,
          assumed: [...all(...of), ...taken(of)],
          hertz: common(of),
        })),
        several.map((of) => ({
          text: `max(${texts(of)})`,
          value: Math.max(...of.map(({ value }) => value)),
          assumed: all(...of),
          hertz: of.find(({ value }) => value === Math.max(...of.map((one) => one.value)))?.hertz,
          level: of.some(({ level }) => level),
        })),
        several.map((of) => ({
          text: `min(${texts(of)})`,
          value: Math.min(...of.map(({ value }) => value)),
          assumed: all(...of),
          hertz: of.find(({ value }) => value === Math.min(...of.map((one) => one.value)))?.hertz,
          level: of.some(({ level }) => level),
        })),
      ),
    };
  }).node;

const anything = variables.chain((values) => fc.tuple(fc.constant(values), expression(values)));

async function sessionWith(values: readonly number[]): Promise<Session> {
  const session = newSession();
  for (const [i, { line }] of ways.entries()) await evaluateLine(`v${i} = ${line(values[i] as number)}`, session);
  return session;
}

describe("an amplitude through any expression", () => {
  it("keeps all that was assumed, and its explanation carried out comes to it within 1e-12", async () => {
    let checked = 0;
    await fc.assert(
      fc.asyncProperty(anything, async ([values, expected]) => {
        if (expected.text.length > 400) return;
        checked++;
        const { value, text } = await evaluateLine(expected.text, await sessionWith(values));
        const answer = value as Amplitude;
        const mm = convertAmplitude(answer, "mm/s rms").value;
        expect(Math.abs(mm / expected.value - 1)).toBeLessThan(1e-12);
        expect(new Set(answer.assumed ?? [])).toEqual(new Set(expected.assumed));
        expect(text.includes("(")).toBe(expected.assumed.length > 0 || answer.hertz !== undefined);
        if (expected.assumed.length > 0) expect(text).toContain(assumedText(answer).slice(0, -1));
        const { steps } = explain(answer);
        const replayed = replay(steps);
        const written = answer.level?.decibels ?? answer.value;
        expect(Math.abs((replayed.at(-1) as number) / written - 1)).toBeLessThan(1e-12);
        const said = new Set(steps.flatMap(({ assumed = [] }) => assumed));
        expect(said).toEqual(new Set(expected.assumed));
        expect(JSON.parse(JSON.stringify(answer)).history ?? []).toEqual(answer.history ?? []);
      }),
      { numRuns: 500 },
    );
    expect(checked).toBeGreaterThan(400);
  }, 60_000);
});

describe("a long calculation", () => {
  it("has a history that does not grow: 100 000 additions take time in proportion", async () => {
    const session = newSession();
    await evaluateLine("x = 1 um pk to um rms", session);
    await evaluateLine("y = x + 0.001 um rms", session);
    const { amplitudeOperation } = await import("../../src/repl/arithmetic");
    const small = session.variables.get("y") as Amplitude;
    let sum = session.variables.get("x") as Amplitude;
    let longest = 0;
    const took = (count: number): number => {
      const start = performance.now();
      for (let i = 0; i < count; i++) {
        sum = amplitudeOperation("add", "+", [sum, small], () => false) as Amplitude;
        longest = Math.max(longest, sum.history?.length ?? 0);
      }
      return performance.now() - start;
    };
    took(10_000);
    const [first, ...later] = Array.from({ length: 9 }, () => took(10_000));
    expect(longest).toBeLessThan(80);
    // a quadratic course would have the last tenth take nine times the first; the least of several is free of pauses
    expect(Math.min(...later)).toBeLessThan(3 * (first as number));
    expect(sum.assumed).toEqual(["sine", "one-frequency", "in-phase"]);
    expect(explain(sum).text).toContain("steps)");
  }, 60_000);

  it("keeps what was assumed over many lines", async () => {
    const session = newSession();
    await evaluateLine("x = 2 mm/s pk to mm/s rms", session);
    for (let i = 0; i < 200; i++) await evaluateLine("x = x * 1.01", session);
    const { text, value } = await evaluateLine("x to in/s rms", session);
    expect(text).toBe("0.407 in/s rms  (sine)");
    expect(JSON.stringify(value).length).toBeLessThan(12_000);
  });
});

describe("an answer as JSON", () => {
  it("carries what was assumed and the steps, also within a judgement, a proposal and a change", async () => {
    const session = newSession();
    await evaluateLine("x = 0.25 in/s pk to mm/s rms", session);
    const data = async (line: string) =>
      (JSON.parse(JSON.stringify(await evaluateLine(line, session))) as { value: { data: Amplitude } }).value.data;
    for (const line of [
      'judge(x, "pump 90 kW 1480 r/min rigid")',
      'setpoints(x, "pump 90 kW 1480 r/min rigid category II")',
      "change(x, 2 mm/s rms)",
    ]) {
      const { assumed, history } = await data(line);
      expect(assumed, line).toContain("sine");
      expect(history?.map(({ does }) => does).slice(0, 2), line).toEqual(
        line.startsWith("change") ? ["given", "given"] : ["given", "convert"],
      );
      expect((await evaluateLine(line, session)).text, line).toMatch(/\(sine\)|assumed: sine\n/);
    }
  });

  it("is accepted back by functions of the library and by the calculator", async () => {
    const { value } = await evaluateLine("2 * (0.25 in/s pk at 25 Hz to mm/s rms) ".replace(/[()]/g, ""));
    const back = JSON.parse(JSON.stringify(value)) as Amplitude;
    expect(back.assumed).toEqual(["sine"]);
    expect(convertAmplitude(back, "um rms").assumed).toEqual(["sine", "one-frequency"]);
    expect(format(back)).toBe("8.98 mm/s rms");
    expect(sineFrequency(back, "57.2 um rms")).toBeCloseTo(25, 1);
    expect(explain(back).text).toBe(explain(value as Amplitude).text);
    const session = newSession();
    session.variables.set("back", back);
    expect((await evaluateLine("back + 1 mm/s rms at 25 Hz", session)).text).toBe(
      "9.98 mm/s rms at 25 Hz (1500 r/min)  (sine, in phase; root sum of squares 9.04)",
    );
    session.variables.set("wrong", { ...back, value: -1 });
    await expect(evaluateLine("wrong * 2", session)).rejects.toMatchObject({ code: "negative" });
  });

  it("of a loop above its range says so", async () => {
    const { currentLoop } = await import("veladis/sensor");
    const session = newSession();
    session.variables.set("level", currentLoop("0 to 10 mm/s rms").reading(20.8));
    expect((await evaluateLine("2 * level", session)).text).toBe("20.6 mm/s rms (above range)");
  });
});
