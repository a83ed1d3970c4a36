import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parquetWriteBuffer } from "hyparquet-writer";
import { afterAll, describe, expect, it } from "vitest";
import { parquetPortions } from "../../src/cli/parquet/portions";
import { VeladisError } from "../../src/index";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-damage-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ROWS = 200;
const each = <T>(make: (i: number) => T): T[] => Array.from({ length: ROWS }, (_, i) => make(i));
const columnData = [
  { name: "tag", data: each((i) => `fan ${i % 5}`), type: "STRING" as const },
  { name: "v", data: each((i) => (i % 17 === 0 ? null : i / 100)), type: "DOUBLE" as const },
  { name: "n", data: each((i) => BigInt(1480 + (i % 7))), type: "INT64" as const },
  { name: "at", data: each((i) => new Date(1.767e12 + i * 60_000)), type: "TIMESTAMP" as const },
];

/** Whole numbers below a bound, the same in every run. */
function drawing(seed: number): (bound: number) => number {
  let state = seed;
  return (bound) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * bound);
  };
}

/** The file with a bit flipped, or cut off. */
function damagedCopy(whole: Uint8Array, draw: (bound: number) => number): Buffer {
  const copy = Buffer.from(whole);
  if (draw(10) === 0) return copy.subarray(0, draw(copy.length));
  const at = draw(copy.length);
  copy[at] = (copy[at] as number) ^ (1 << draw(8));
  return copy;
}

describe("damaged Parquet", () => {
  it.each(["SNAPPY", "UNCOMPRESSED"] as const)("%s: rows as many as there are, or a refusal", async (codec) => {
    const whole = new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize: 90, codec }));
    const draw = drawing(15);
    const path = join(folder, `${codec}.parquet`);
    let refused = 0;
    for (let i = 0; i < 200; i++) {
      writeFileSync(path, damagedCopy(whole, draw));
      let cells = 0;
      try {
        for await (const portion of parquetPortions(path, () => undefined)) {
          if ("ends" in portion) cells += portion.ends.length;
        }
        expect(cells).toBe(ROWS * columnData.length);
      } catch (error) {
        if (!(error instanceof VeladisError)) throw error;
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(50);
  });

  it("by the command: an answer or one refusal", async () => {
    const whole = new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize: 90 }));
    const draw = drawing(16);
    const path = join(folder, "command.parquet");
    for (let i = 0; i < 10; i++) {
      writeFileSync(path, damagedCopy(whole, draw));
      const { err, code } = await veladis(["table", path, "--column", "v", "--from", "mm/s rms", "--to", "in/s pk"]);
      expect(code).toBe(2);
      expect(err).toMatch(/^veladis: .*[\s\S]*expected: /);
    }
  });
});
