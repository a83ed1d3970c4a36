import { readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { type CalculatorFunction, functions, numberFunctions } from "../../src/repl/index";
import { root } from "../examples/fences";

const path = `${root}/docs/guides/calculator.md`;
const marked = /(<!-- functions:begin -->\n)[\s\S]*?(<!-- functions:end -->)/;

/** The table of functions as the guide prints it, from the texts of the help. */
function functionsTable(): string {
  const rows = (Object.values(functions) as CalculatorFunction[]).map(
    ({ usage, help }) => `| \`${usage}\` | ${help} |`,
  );
  return [
    "| call | what it gives |",
    "| --- | --- |",
    ...rows,
    "",
    `Of numbers, by mathjs: ${numberFunctions.map((name) => `\`${name}\``).join(", ")}; constants \`pi\`, \`tau\`, \`e\`.`,
    "",
  ].join("\n");
}

it("the guide prints the functions as the help has them (VELADIS_WRITE=1 writes them)", () => {
  const page = readFileSync(path, "utf8");
  const written = page.replace(marked, (_, begin: string, end: string) => `${begin}\n${functionsTable()}\n${end}`);
  if (process.env.VELADIS_WRITE === "1") writeFileSync(path, written);
  else expect(page).toBe(written);
});
