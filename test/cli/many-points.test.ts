import { expect, it } from "vitest";
import { veladis } from "./in-process";

// more than the arguments that a call takes
const COUNT = 150_000;
const rows = "8 mm/s rms,8.1 mm/s rms\n".repeat(COUNT);

it("prints a check of so many points that a call could not take them as arguments", { timeout: 120_000 }, async () => {
  const { out, err, code } = await veladis(["check", "--file", "-", "--tolerance", "5 %"], `known,indicated\n${rows}`);
  expect([code, err]).toEqual([0, expect.not.stringContaining("RangeError")]);
  expect(out).toContain("all in all: pass");
});
