import fc from "fast-check";
import { checkAgainstKnown } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { errorPlot } from "../../src/cli/print/error-plot";

const check = (known: string, indicated: string, more: object = {}) =>
  checkAgainstKnown({ known, indicated, tolerance: "5 %", ...more });

/** Errors in percent as a person reads them: columns counted from that of zero. */
function readBack(text: string): { readonly column: number; readonly errors: readonly number[] } {
  const column = Number(/a column is (\S+) %/.exec(text)?.[1]);
  const rows = text.split("\n").filter((line) => line.includes("█") && !line.startsWith("a column"));
  const rule = text.split("\n").find((line) => line.includes("┼")) as string;
  const zero = (rule.indexOf("┼") + rule.lastIndexOf("┼")) / 2;
  return { column, errors: rows.map((line) => (line.indexOf("█") - zero) * column) };
}

describe("errors in the terminal", () => {
  it("are read back within one column at any width", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 20, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 60, max: 200 }),
        (shown, width) => {
          const checks = shown.map((one, i) => ({ name: `${i}`, check: check("10 mm/s rms", `${one} mm/s rms`) }));
          const text = errorPlot(checks, width);
          for (const line of text.split("\n").slice(0, -2)) expect(line.length).toBeLessThanOrEqual(width);
          const { column, errors } = readBack(text);
          // of ten: a tenth more is ten percent; by hand
          errors.forEach((error, i) => {
            expect(Math.abs(error - ((shown[i] as number) - 10) * 10)).toBeLessThanOrEqual(column);
          });
        },
      ),
    );
  });

  it("stand by frequency in rising order, with tolerance, uncertainty and verdict", () => {
    const text = errorPlot(
      [
        { name: "high", check: check("8 mm/s rms at 159.2 Hz", "8.1 mm/s rms", { uncertainty: "1 % (k=2)" }) },
        { name: "low", check: check("8 mm/s rms at 40 Hz", "7 mm/s rms") },
      ],
      80,
    );
    expect(text).toMatch(/40\.0 Hz .*█.*\[.*\].* -13 % fail\n +159 Hz .*\[.*█.*\].* \+1\.3 % pass\n/);
    expect(text).toContain("─ the uncertainty (k = 2)");
  });

  it("is drawn beside the answer of check, and not beside data", async () => {
    const { veladis } = await import("./in-process");
    const args = ["check", "--known", "8 mm/s rms", "--indicated", "7.3 mm/s rms", "--tolerance", "5 %"];
    expect((await veladis([...args, "--plot"])).out).toContain("error, % of the known level");
    expect((await veladis(args)).out).not.toContain("█");
  });
});
