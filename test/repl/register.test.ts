import { all, create } from "mathjs";
import { describe, expect, it } from "vitest";
import { type Amplitude, format, VeladisError } from "../../src/index";
import { type LevelDifference, registerAmplitudes } from "../../src/repl/index";

const math = registerAmplitudes(create(all as never) as never as Parameters<typeof registerAmplitudes>[0]);
const text = (expression: string): string => format(math.evaluate(expression) as Amplitude);

describe("amplitudes in an instance of mathjs", () => {
  it.each([
    ['amplitude("0.25 in/s pk") * 2', "0.500 in/s pk"],
    ['3 * amplitude("0.25 in/s pk")', "0.750 in/s pk"],
    ['amplitude("1 in/s pk") + amplitude("25.4 mm/s pk")', "2.00 in/s pk"],
    ['amplitude("3 mm/s rms") - amplitude("1 mm/s rms")', "2.00 mm/s rms"],
    ['amplitude("3 mm/s rms") / 2', "1.50 mm/s rms"],
    ['rss(amplitude("3 mm/s rms"), amplitude("4 mm/s rms"))', "5.00 mm/s rms"],
    ['meanAmplitude([amplitude("3 mm/s rms"), amplitude("4 mm/s rms")])', "3.50 mm/s rms"],
    ['vectorDifference(amplitude("3 mil pp"), amplitude("1 mil pp"), 90)', "3.16 mil pp"],
    ['rssDifference(amplitude("5 mm/s rms"), amplitude("3 mm/s rms"))', "4.00 mm/s rms"],
    ['amplitude("0.2 in/s pk at 1180 r/min") to "mil pp"', "3.24 mil pp"],
    ['amplitude("4.5 mm/s rms") + decibels(6)', "8.98 mm/s rms"],
    ['decibels(6) + amplitude("4.5 mm/s rms")', "8.98 mm/s rms"],
    ['amplitude("4.5 mm/s rms") - decibels(6)', "2.26 mm/s rms"],
    ['amplitude("4.5 mm/s rms") + -decibels(6)', "2.26 mm/s rms"],
    ['amplitude("95 dB re 1e-9 m/s") + decibels(6)', "101.0 dB re 1e-9 m/s"],
  ])("%s", (expression, expected) => {
    expect(text(expression)).toBe(expected);
  });

  it.each([
    ['amplitude("1 g pk") > amplitude("9 m/s2 pk")', true],
    ['amplitude("1 in/s pk") == amplitude("25.4 mm/s pk")', true],
    ['amplitude("1 in/s pk") != amplitude("25.4 mm/s pk")', false],
    ['amplitude("1 in/s pk") <= amplitude("25 mm/s pk")', false],
    ['amplitude("1 in pp") / amplitude("1 mil pp")', 1000],
    ['amplitude("0.1 mm/s rms") + amplitude("0.2 mm/s rms") == amplitude("0.3 mm/s rms")', true],
    ['amplitude("0.1 mm/s rms") + amplitude("0.2 mm/s rms") > amplitude("0.3 mm/s rms")', false],
    ['amplitude("1e-16 m rms") < amplitude("2e-16 m rms")', true],
    ["2 * decibels(3) - decibels(1) / 2 == decibels(5.5)", true],
    ["decibels(3) >= decibels(6)", false],
  ])("%s", (expression, expected) => {
    expect(math.evaluate(expression)).toBe(expected);
  });

  it.each([
    ['amplitude("2 mm/s rms") + amplitude("1 mm/s pk")', "wrong-detector"],
    ['amplitude("2 mm/s rms") + amplitude("1 g rms")', "wrong-quantity"],
    ['amplitude("2 mm/s")', "missing-detector"],
    ['amplitude("2 mm/s rms") to "um pp"', "missing-frequency"],
    ['rss(amplitude("2 mm/s pk"), amplitude("1 mm/s pk"))', "wrong-detector"],
    ["rss(1, 2)", "wrong-type"],
    ['amplitude("95 dB re 1e-9 m/s") + amplitude("95 dB re 1e-9 m/s")', "wrong-type"],
    ['amplitude("95 dB re 1e-9 m/s") - amplitude("95 dB re 1e-8 m/s")', "wrong-type"],
  ])("%s is refused", (expression, code) => {
    let error: unknown;
    try {
      math.evaluate(expression);
    } catch (reason) {
      error = reason;
    }
    expect(error).toBeInstanceOf(VeladisError);
    expect((error as VeladisError).code).toBe(code);
  });

  it.each([
    ['(amplitude("3 mm/s pk") to "mm/s rms") * 2', ["sine"], ["given", "convert", "scale"]],
    ['(amplitude("3 mm/s pk") to "mm/s rms") / 2 to "in/s rms"', ["sine"], ["given", "convert", "scale", "convert"]],
    ['amplitude("3 mm/s rms") + amplitude("1 mm/s rms")', ["one-frequency", "in-phase"], ["given", "given", "sum"]],
    [
      'amplitude("3 mil pp") - amplitude("25.4 um pp")',
      ["one-frequency", "in-phase"],
      ["given", "given", "convert", "difference"],
    ],
    [
      'sum([amplitude("3 mm/s rms"), amplitude("1 mm/s rms")])',
      ["one-frequency", "in-phase"],
      ["given", "given", "sum"],
    ],
    ['rss(amplitude("3 mm/s rms"), amplitude("4 mm/s rms"))', ["uncorrelated"], ["given", "given", "rss"]],
    ['meanAmplitude(amplitude("3 mm/s rms"), amplitude("4 mm/s rms"))', [], ["given", "given", "sum", "scale"]],
    ['+(amplitude("3 g pk") to "g rms")', ["sine"], ["given", "convert"]],
  ] as const)("%s keeps what was assumed, and the steps", (expression, assumed, steps) => {
    const answer = math.evaluate(expression) as Amplitude;
    expect(answer.assumed).toEqual(assumed);
    expect(answer.history?.map(({ does }) => does)).toEqual(steps);
  });

  it("gives the difference of two levels in dB, with what they had assumed, also back from JSON", () => {
    const { evaluate } = math as unknown as { evaluate(expression: string, scope?: object): LevelDifference };
    const three = evaluate('(amplitude("1 m/s pk") to "dB re 1e-9 m/s") - amplitude("174 dB re 1e-9 m/s")');
    expect(three.decibels).toBeCloseTo(2.99, 2);
    expect(three.assumed).toEqual(["sine"]);
    const back = JSON.parse(JSON.stringify(three));
    const raised = evaluate('amplitude("2 mm/s rms") + back', { back }) as unknown as Amplitude;
    expect(raised.value).toBeCloseTo(2 * 10 ** (three.decibels / 20), 12);
    expect(raised.assumed).toEqual(["sine"]);
  });

  it("takes an amplitude that comes back from JSON", () => {
    const back = JSON.parse(JSON.stringify(math.evaluate('amplitude("0.25 in/s pk") to "mm/s rms"')));
    const { evaluate } = math as unknown as { evaluate(expression: string, scope: object): Amplitude };
    expect(evaluate("back + 2 back", { back }).assumed).toEqual(["sine", "one-frequency", "in-phase"]);
    expect(evaluate("back == back", { back })).toBe(true);
  });

  it("knows the units of the trade, exactly", () => {
    expect(String(math.evaluate("1500 rpm to Hz"))).toBe("25 Hz");
    expect(String(math.evaluate("1 ips to mm/s"))).toBe("25.4 mm / s");
    expect(String(math.evaluate("1 gn to m/s^2"))).toBe("9.80665 m / s^2");
    expect(String(math.evaluate("25.4 micron to um"))).toBe("25.4 um");
  });

  it("leaves what mathjs could do as it was, and other instances alone", () => {
    expect(math.evaluate("1 + 2 * 3")).toBe(7);
    expect(String(math.evaluate("5 cm * 2"))).toBe("10 cm");
    const other = create(all as never);
    expect(() => other.evaluate?.("1 rpm")).toThrow();
    expect(() => other.evaluate?.('amplitude("1 g pk")')).toThrow();
  });

  it("keeps a unit of the same name that the instance has", () => {
    const own = create(all as never) as never as Parameters<typeof registerAmplitudes>[0];
    own.createUnit("rpm", "0.5 Hz" as never);
    expect(String(registerAmplitudes(own).evaluate("1 rpm to Hz"))).toBe("0.5 Hz");
  });
});
