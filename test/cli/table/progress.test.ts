import { afterEach, describe, expect, it, vi } from "vitest";
import type { Io } from "../../../src/cli/input/io";
import { grouped, progressOf } from "../../../src/cli/table/progress";

afterEach(() => {
  vi.restoreAllMocks();
});

/** What is shown at given milliseconds since the start. */
function shownAt(name: string | undefined, steps: readonly (readonly [ms: number, rows: number, share?: number])[]) {
  const shown: string[] = [];
  const now = vi.spyOn(performance, "now").mockReturnValue(5000);
  const progress = progressOf({ progress: (text: string) => void shown.push(text) } as Io, name);
  for (const [ms, rows, share] of steps) {
    now.mockReturnValue(5000 + ms);
    progress.show(rows, share);
  }
  progress.end();
  return shown;
}

describe("progress of a table", () => {
  it("is a bar of 24 parts with its share, rows and rate, under the name of the file", () => {
    expect(shownAt("plant/fans.csv", [[500, 1_234_567, 0.5]])).toEqual([
      "fans.csv  ############............ 50 %  1 234 567 rows, 2 469 134 a second",
      "",
    ]);
    expect(shownAt("fans.csv", [[2000, 1, 0.999]])[0]).toBe(
      "fans.csv  #######################. 99 %  1 row, 1 a second",
    );
    expect(shownAt("fans.csv", [[2000, 4, 1]])[0]).toBe("fans.csv  ######################## 100 %  4 rows, 2 a second");
  });

  it("has no bar where the size is not known", () => {
    expect(shownAt(undefined, [[4000, 2000]])).toEqual(["standard input  2 000 rows, 500 a second", ""]);
  });

  it("is shown ten times a second at most, and cleared only if it was", () => {
    const steps = [99, 100, 199, 200, 250, 300].map((ms) => [ms, ms] as const);
    const rows = shownAt("a", steps).map((text) => /a {2}(\d+)/.exec(text)?.[1]);
    expect(rows).toEqual(["100", "200", "300", undefined]);
    expect(shownAt("a", [[99, 1]])).toEqual([]);
    expect(shownAt("a", [])).toEqual([]);
  });

  it("is nothing where nobody watches", () => {
    const progress = progressOf({} as Io, "a");
    expect([progress.show(1, 0.5), progress.end()]).toEqual([undefined, undefined]);
  });
});

it.each([
  [0, "0"],
  [999, "999"],
  [1000, "1 000"],
  [123_456, "123 456"],
  [12_345_678, "12 345 678"],
])("%d in groups of three is %s", (count, text) => expect(grouped(count)).toBe(text));
