import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { writtenDate } from "../../../src/cli/input/written-date";

describe("dates of a file are not read in the time of this computer", () => {
  const { TZ } = process.env;
  beforeAll(() => {
    process.env.TZ = "America/St_Johns";
  });
  afterAll(() => {
    if (TZ === undefined) delete process.env.TZ;
    else process.env.TZ = TZ;
  });

  // ISO 8601 and POSIX: 2026-01-12 is day 20465 since 1970-01-01
  it.each([
    ["2026-01-12T06:00:00", 6],
    ["12.01.2026 06:00", 6],
    ["2026-01-12T06:00:00Z", 6],
    ["2026-01-12T06:00:00+02:00", 4],
  ])("%s", (cell, hour) => {
    expect(new Date(2026, 0, 12).getTimezoneOffset()).toBe(210);
    expect(writtenDate(cell)?.at["day-first"]).toBe((20_465 * 24 + hour) * 3.6e9);
  });
});
