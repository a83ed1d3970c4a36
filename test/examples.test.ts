import { describe, expect, it } from "vitest";
import { allFences } from "./examples/fences";
import { runFence } from "./examples/run-fence";
import { isAsPrinted, printedBy, shellExamples, writePrinted } from "./examples/run-shell";
import { typeErrorsOf } from "./examples/type-errors";

const fences = allFences("ts");

describe("every example in README, docs and docstrings", () => {
  it("compiles under the project's own options", () => {
    expect(typeErrorsOf(fences)).toEqual([]);
  });

  it.each(fences.map((fence) => [`${fence.file}:${fence.line}`, fence] as const))("%s is true", async (_, fence) => {
    expect(await runFence(fence), "an example must claim something: // => value").toBeGreaterThan(0);
  });
});

describe("every command in README and docs prints what the page says (VELADIS_WRITE=1 writes it)", () => {
  const examples = allFences("sh").flatMap(shellExamples);

  it.each(examples.map((example) => [`${example.fence.file}: ${example.command}`, example] as const))(
    "%s",
    (_, example) => {
      const actual = printedBy(example.command);
      if (isAsPrinted(actual, example.printed)) return;
      if (process.env.VELADIS_WRITE === "1") writePrinted(example, actual);
      else expect(actual).toEqual(example.printed);
    },
  );
});
