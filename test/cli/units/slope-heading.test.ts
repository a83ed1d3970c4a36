import { describe, expect, it } from "vitest";
import { veladis } from "../in-process";

const ask = async (heading: string, ...more: string[]) =>
  veladis(
    ["overall", "--density", "--slope-column", "3", "--column", "2", ...more],
    `Hz,g2/Hz,${heading}\n20,,3\n80,0.04,0\n350,0.04,-3\n2000,,\n`,
  );

describe("the heading of a column of slopes", () => {
  it.each([
    ...["dB/octave", "slope (dB/oct)", "slope dB per octave", "dB_oct", "Slope [dB/Oct.]"],
    ...["N [dB/oct]", "N (dB/octave)", "dB/Oktave", "N = dB/oct", "Steigung dB pro Oktave", "slope N [dB/oct]"],
  ])("%s says dB an octave", async (heading) => {
    const { out, err } = await ask(heading);
    expect(err).toContain("4 answered");
    expect(out).not.toContain("taken as");
  });

  it.each(["slope", "gradient to the next", "slope 1"])("%s says none: what is taken is told", async (heading) => {
    const { out, err } = await ask(heading);
    expect(err).toContain("4 answered");
    expect(out).toContain("slopes of column 3 taken as dB an octave, which its heading does not say");
  });

  it.each([
    "slope (dB/decade)",
    "slope (N/oct)",
    "slope N",
    "slope dB",
    "exponent",
    "slope (g2/Hz/Hz)",
    "dB/oct (N)",
    "slope %",
    "slope 10log",
    "slope 10 log10",
    "slope log-log",
    "dB/Dekade",
    "dB/decades",
    "dB/oct per decade",
    "N [dB/dec]",
    "logarithmic slope",
  ])("%s says another unit, and is refused", async (heading) => {
    const { err, code } = await ask(heading);
    expect(code).toBe(2);
    expect(err).toContain("a column of slopes in dB an octave");
  });

  it("that is told to be wrong is passed over, which is told", async () => {
    const { out } = await ask(
      "slope (dB/decade)",
      "--file-units",
      "none",
      "--at-unit",
      "Hz",
      "--unit",
      "g2/Hz",
      "--at-column",
      "1",
    );
    expect(out).toContain("which its heading was not asked for");
  });
});
