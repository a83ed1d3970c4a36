import { describe, expect, it } from "vitest";
import { Compiler } from "./compiler";
import { mistakes } from "./mistakes";

const HEAD = [
  'import { convert, converter } from "veladis";',
  'import { toolkit } from "veladis/kit";',
  "declare const text: string;",
  'let change = "in/s pk";',
  "change += change;",
  'declare const either: "mm/s rms" | "um pp";',
  'const source = { title: "Hollowmere workshop sheet 3, invented", provenance: "memory" } as const;',
  'const line = { symbol: "lin/s", quantity: "velocity", num: 127, den: 60_000, name: "line per second", source } as const;',
  "const kit = toolkit({ units: [line] });",
  "",
].join("\n");

const calls = Object.entries(mistakes);

describe("what the compiler says of a mistake", () => {
  it("stands on the page, under the argument that is wrong", { timeout: 120_000 }, async () => {
    // one language service for all: reading the sources takes seconds
    const compiler = new Compiler(calls.map(([, call]) => `${HEAD}${call};\nexport {};\n`));
    const page = calls.map(([name, call], i) => {
      const complaints = compiler.complaints(i);
      expect(complaints, name).toHaveLength(1);
      return [
        `# ${name}`,
        call,
        ...complaints.flatMap(({ message, start, length }) => [
          `${" ".repeat(start - HEAD.length)}${"^".repeat(length)}`,
          message,
        ]),
      ].join("\n");
    });
    await expect(`${page.join("\n\n")}\n`).toMatchFileSnapshot("messages.txt");
  });
});
