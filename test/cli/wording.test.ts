import { rmSync } from "node:fs";
import { afterAll, describe, expect, it, vi } from "vitest";
import { isInstrumented } from "../refusals/is-instrumented";
import { type Call, callsOf, withDeepStacks } from "../refusals/refused";
import { unreachedBy } from "../refusals/sites";
import { folder, printedOf } from "./refusal-cases";

const reached: Call[] = [];

// what a command refuses it prints; the places in the sources are told when the error is made
vi.mock("../../src/core/error", async (original) => {
  const real = await original<typeof import("../../src/core/error")>();
  class Noted extends real.VeladisError {
    constructor(...parts: ConstructorParameters<typeof real.VeladisError>) {
      super(...parts);
      reached.push(...callsOf(this));
    }
  }
  return { ...real, VeladisError: Noted };
});

const { veladis } = await import("./in-process");

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Where a place in the sources is reached by a fault of the computer alone: no room, no leave, a package missing. */
const faults = [
  ...["open-file", "plain-file", "standard-input"].map((name) => `src/cli/input/${name}.ts`),
  ...["run-table", "whole-file", "whole-folder"].map((name) => `src/cli/table/${name}.ts`),
  // without the package that writes Parquet
  "src/cli/print/limit-file.ts:25",
  // without the package that draws PNG, and without fonts
  "src/cli/commands/chart-file.ts:12",
  "src/cli/commands/chart-file.ts:22",
  // without the package that reads workbooks
  "src/cli/input/workbook.ts:29",
  // a file that is changed between two readings, and a record too long to be held
  "src/cli/input/timed-record.ts:103",
  "src/cli/input/timed-samples.ts:60",
  "src/cli/input/updated-list.ts:109",
  // a record that no row can be added to
  "src/cli/input/append-row.ts",
  // in a thread of its own, where no call is seen; its refusals are held by the tests of damaged files
  "src/cli/parquet/",
];

describe("refusals of the command", () => {
  it.skipIf(isInstrumented("cli"))("come from every place in the sources that refuses", async () => {
    await withDeepStacks(() => printedOf(veladis));
    const left = unreachedBy("cli", reached).filter((site) => !faults.some((one) => site.startsWith(one)));
    expect(left).toEqual([]);
  });
});
