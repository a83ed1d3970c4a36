import { describe, expect, it } from "vitest";
import { readText } from "./read";

/** What a refusal says, on one line. */
async function refusal(content: string): Promise<string> {
  return readText(content).then(
    () => "read",
    (error: Error) => `${error.name}: ${error.message}`,
  );
}

// megabytes are slow to read again for every mutant: apart from the other tests of the rule
describe("9. long rows", () => {
  it("a row beyond a megabyte stops the run, with its line", async () => {
    const long = "x".repeat((1 << 20) + 8);
    for (const content of [`a,b\n1,2\n${long},1\n`, `a,b\n1,2\n"${long}`, `a,b\n1,2\n${long}`]) {
      expect(await refusal(content)).toContain("expected rows of at most 1048576 bytes, at line 3 of file.csv");
    }
    expect(await refusal(long)).toContain("at line 1 of");
    expect((await readText(`a,b\n${"x".repeat((1 << 20) - 2)},1\n`)).rows).toHaveLength(1);
  });

  it("so does one behind the rows that the separator was found from, in whatever pieces it comes", async () => {
    const content = `a,b\n${"1,2\n".repeat(1001)}${"x".repeat(1 << 20)},1\n3,4\n`;
    for (const cuts of [[], [5000], [5000, 900_000]]) {
      await expect(readText(content, {}, cuts)).rejects.toMatchObject({
        expected: "rows of at most 1048576 bytes, at line 1003 of file.csv",
      });
    }
  });

  it("megabytes of blank lines and remarks are no long row", async () => {
    const { account } = await readText(`a,b\n${"\n# remark\n".repeat(300_000)}1,2\n`);
    expect(account).toMatchObject({ rows: 1, skipped: { blank: 300_000, remarks: 300_000 } });
  });
});
