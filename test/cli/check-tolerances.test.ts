import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const check = ["check", "--known", "10 mm/s rms at 80 Hz", "--indicated", "10.1 mm/s rms"];

describe("a tolerance in decibels", () => {
  // 10 x (10^(0.5/20) - 1) and 10 x (1 - 10^(-0.5/20))
  it("stands with both its sides in text, table and sheet", async () => {
    const half = [...check, "--tolerance", "0.5 dB"];
    expect((await veladis(half)).out).toContain("tolerance +0.593, -0.559 mm/s rms");
    expect((await veladis([...half, "--sheet", "markdown"])).out).toContain("+0.593, -0.559 mm/s rms");
    const several = await veladis(
      ["check", "--file", "-", "--tolerance", "0.5 dB"],
      "known,indicated\n10 mm/s rms,10.1 mm/s rms\n",
    );
    expect(several.out).toContain("within +0.593, -0.559");
    expect((await veladis([...check, "--tolerance", "5 %"])).out).toContain("tolerance 0.500 mm/s rms");
  });
});

describe("an uncertainty larger than the tolerance", () => {
  it("lets no error pass, and says so", async () => {
    const unsure = ["--tolerance", "1 %", "--uncertainty", "2 % (k=2)"];
    const { out } = await veladis([...check, ...unsure]);
    expect(out).toMatch(/; no error\s+passes/);
    expect(out).not.toMatch(/passes (?:up to )?0/);
    expect((await veladis([...check, ...unsure, "--sheet", "markdown"])).out).toContain("no error passes");
    const several = await veladis(["check", "--file", "-", ...unsure], "known,indicated\n10 mm/s rms,10 mm/s rms\n");
    expect(several.out).toContain("no error passes");
    expect((await veladis([...check, "--tolerance", "3 %", "--uncertainty", "2 % (k=2)"])).out).not.toContain(
      "no error passes",
    );
  });
});

describe("the sheet of a plan by injection", () => {
  const plan = ["plan", "--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching", "--sheet"];

  it("has a place to sign that each lead, jumper and bypass is back, and that of a shaker has none", async () => {
    const { out } = await veladis([...plan, "markdown", "--inject", "mA", "--loop", "0 to 20 mm/s rms"]);
    expect(out).toMatch(/back: signed, time/);
    for (const one of ["lead", "jumper", "bypass of the trip", "setting"]) expect(out).toContain(`| ${one} |`);
    expect((await veladis([...plan, "markdown", "--shaker", "8 Hz to 3 kHz"])).out).not.toContain("back: signed");
  });

  it("is set for A4, with room for what is found, and values that no long fact pushes aside", async () => {
    const { out } = await veladis([...plan, "html", "--shaker", "8 Hz to 3 kHz", "--fact", `${"long ".repeat(30)}: 1`]);
    expect(out).toContain("@page { size: A4;");
    expect(out).toContain('<td class="write"></td>');
    expect(out).toContain('<table class="facts">');
  });
});
