import { expect, it } from "vitest";
import { veladis } from "./in-process";

const plan = ["plan", "--hysteresis", "8 %", "--delay", "8", "--latching", "--loop"];

it.each([
  ["above its end", "0 to 9 mm/s rms"],
  ["below its start", "4 to 20 mm/s rms"],
])("a level of a plan that the loop cannot carry has no current: %s", async (_where, range) => {
  const args = [...plan, range, "--threshold", "9 mm/s rms", "--shaker", "8 Hz to 3 kHz"];
  const { out } = await veladis(args);
  expect(out).toContain(`beyond ${range}: no current`);
  expect(out).not.toMatch(/\b(?:20\.50|3\.800) mA/);
  const sheet = await veladis([...args, "--sheet", "markdown"]);
  expect(sheet.out).toContain(`beyond ${range}: no current`);
  const lines = (await veladis([...args, "--json"])).out.trim().split("\n");
  expect(lines.some((line) => JSON.parse(line).signals.some(({ beyond }: { beyond?: boolean }) => beyond))).toBe(true);
});
