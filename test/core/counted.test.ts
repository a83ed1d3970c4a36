import { expect, it } from "vitest";
import { counted } from "../../src/core/index";

it.each([
  [0, "0 rows"],
  [1, "1 row"],
  [2, "2 rows"],
  [1001, "1001 rows"],
])("%d of a row is %s", (count, text) => {
  expect(counted(count, "row")).toBe(text);
});

it("writes the count as it is told", () => {
  expect(counted(12_000, "level", "12 000")).toBe("12 000 levels");
});
