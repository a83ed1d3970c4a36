import { checkChart } from "veladis/chart";
import { checkAgainstKnown, checkPoints } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { codeAndExpectedOf } from "../refusals/refusal-of";
import { parsed, words } from "./svg";

const check = (known: string, indicated: string, uncertainty?: string) =>
  checkAgainstKnown({ known, indicated, tolerance: "5 %", ...(uncertainty !== undefined && { uncertainty }) });
const named = (...checks: ReturnType<typeof check>[]) =>
  checks.map((one, i) => ({ name: `point ${i + 1}`, check: one }));

const pass = check("8 mm/s rms at 40 Hz", "8.2 mm/s rms");
const fail = check("8 mm/s rms at 40 Hz", "7.2 mm/s rms");

/** Heights of the dots, and of the two bars of each tolerance. */
function heights(svg: string): { readonly dots: number[]; readonly bars: number[] } {
  const numbers = (pattern: RegExp) => [...svg.matchAll(pattern)].map(([, one]) => Number(one));
  return {
    dots: numbers(/<circle class="veladis-point"[^>]*? cy="([\d.]+)"/g),
    bars: numbers(/<line class="veladis-trip"[^>]*? y1="([\d.]+)"/g),
  };
}

describe("a chart of checks", () => {
  it("draws the error to the scale of its tolerance", () => {
    // errors of +2.5 % and -10 % against 5 %: half of it above, and twice below; by hand
    const { dots, bars } = heights(checkChart({ checks: named(pass, fail) }));
    expect([dots.length, bars.length]).toEqual([2, 4]);
    const middle = ((bars[0] as number) + (bars[1] as number)) / 2;
    const tolerance = Math.abs((bars[0] as number) - (bars[1] as number)) / 2;
    expect((middle - (dots[0] as number)) / tolerance).toBeCloseTo(0.5, 1);
    expect((middle - (dots[1] as number)) / tolerance).toBeCloseTo(-2, 1);
  });

  it("says in words what does not pass, and all of it in the description", () => {
    const svg = checkChart({ checks: named(pass, fail) });
    expect(words(svg)).toContain("fail");
    expect(words(svg)).not.toContain("pass");
    const texts = parsed(svg).children.map(({ text }) => text);
    expect(texts[0]).toBe("Error against tolerance: 1 pass, 1 fail");
    expect(texts[1]).toContain("point 1: 2.5 %, pass; point 2: -10 %, fail");
  });

  it("stands over what tells the checks apart", () => {
    const of = (...checks: ReturnType<typeof check>[]) =>
      parsed(checkChart({ checks: named(...checks) })).children[1]?.text;
    expect(of(pass, check("4 mm/s rms at 40 Hz", "4 mm/s rms"))).toContain("over the level. 4 mm/s rms: 0 %");
    expect(of(pass, check("8 mm/s rms at 80 Hz", "8 mm/s rms"))).toContain("over the frequency. 40 Hz: 2.5 %");
    expect(of(pass, fail)).toContain("over the check. point 1");
  });

  it("draws the uncertainty where one is stated, and says what the line is", () => {
    const svg = checkChart({ checks: named(check("8 mm/s rms", "8.2 mm/s rms", "2 % (k=2)")) });
    expect(words(svg).join(" ")).toContain("the line through it the uncertainty (k = 2)");
    expect(checkChart({ checks: named(pass) })).not.toContain("the uncertainty");
  });

  it("takes checks that were kept before the tolerance below was told", () => {
    const { toleranceBelow, expected, ...before } = checkAgainstKnown({
      ...{ known: "8 mm/s rms", indicated: "7.7 mm/s rms", tolerance: "0.5 dB" },
    });
    // 0.5 dB up is 1.0593 times, down 0.9441 times
    expect([toleranceBelow, expected?.value]).toEqual([expect.closeTo(8 * (1 - 10 ** (-0.5 / 20)), 9), 8]);
    expect(heights(checkChart({ checks: [{ name: "", check: before }] }))).toEqual(
      heights(checkChart({ checks: [{ name: "", check: { ...before, toleranceBelow: toleranceBelow as number } }] })),
    );
  });

  it("takes the points of several checks, and refuses none", () => {
    const { points } = checkPoints([{ known: "8 mm/s rms", indicated: "8 mm/s rms" }], { tolerance: "5 %" });
    expect(checkChart({ checks: points.map((one) => ({ name: one.point, check: one })) })).toContain("1 pass");
    expect(codeAndExpectedOf(() => checkChart({ checks: [] }))).toMatch(/^missing-option: at least one check/);
  });
});
