import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { type Portion, parquetPortions } from "../../../src/cli/parquet/portions";
import { postPortions } from "../../../src/cli/parquet/post-portions";
import { BEATS, TAKEN, type WorkerMessage } from "../../../src/cli/parquet/worker-message";
import { madeParquet } from "./made-file";

const folder = mkdtempSync(join(tmpdir(), "veladis-portions-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let count = 0;
function file(...columns: Parameters<typeof madeParquet>[0]): string {
  const path = join(folder, `${++count}.parquet`);
  writeFileSync(path, madeParquet(columns));
  return path;
}

async function portions(path: string, beat: () => void = () => undefined): Promise<Portion[]> {
  const all: Portion[] = [];
  for await (const portion of parquetPortions(path, beat)) all.push(portion);
  return all;
}

/** A whole number of 64 bits as milliseconds since 1970; the second is beyond all dates. */
const at = { name: "at", kind: 9, values: [0n, 8_640_000_000_000_001n, -1n] };
const rows = (length: number) => ({ name: "v", values: Array.from({ length }, (_, i) => i) });

describe("portions of a Parquet file", () => {
  it("are its columns, then its cells by the place of their ends", async () => {
    let beats = 0;
    const told = await portions(file({ name: "v", values: [1.5, 2, 3.25], checksum: true }, at), () => void beats++);
    const text = "1.51970-01-01T00:00:00.000Z23.251969-12-31T23:59:59.999Z";
    expect(told).toEqual([
      { names: ["v", "at"], rows: 3 },
      {
        text,
        ends: Uint32Array.of(3, 27, 28, 28, 32, 56),
        faults: [{ row: 1, column: 1, reason: "a time beyond all dates" }],
        share: 1,
        summed: false,
      },
    ]);
    expect(beats).toBeGreaterThan(1);
    const [, summed] = await portions(file({ name: "v", values: [1], checksum: true }));
    expect(summed).toMatchObject({ summed: true });
  });

  it("are of 4,096 rows, each with its share of the file, and number faults from their own first row", async () => {
    const values = Array.from({ length: 10_000 }, (_, i) => (i === 5000 ? 8_640_000_000_000_001n : BigInt(i)));
    const [, ...told] = await portions(file({ name: "at", kind: 9, values }));
    expect(told.map((portion) => "ends" in portion && [portion.ends.length, portion.share])).toEqual([
      [4096, 0.4096],
      [4096, 0.8192],
      [1808, 1],
    ]);
    expect(told.map((portion) => "ends" in portion && portion.faults)).toEqual([
      ...[[], [{ row: 904, column: 0, reason: "a time beyond all dates" }], []],
    ]);
    expect(await portions(file(rows(4096)))).toHaveLength(2);
  });

  it("of no rows are the columns alone", async () => {
    expect(await portions(file({ name: "v", values: [] }))).toEqual([{ names: ["v"], rows: 0 }]);
  });
});

describe("portions posted to another thread", () => {
  const shared = (taken = 0): SharedArrayBuffer => {
    const buffer = new SharedArrayBuffer(8);
    new Int32Array(buffer)[TAKEN] = taken;
    return buffer;
  };

  it("are posted one by one, their ends moved, and then the end", async () => {
    const posted: [WorkerMessage, number][] = [];
    const memory = shared(9);
    await postPortions({ path: file(rows(5000)), shared: memory }, (message, moved) => {
      posted.push([message, moved.length]);
      const [buffer] = moved;
      if (buffer !== undefined) {
        expect("portion" in message && "ends" in message.portion && message.portion.ends.buffer).toBe(buffer);
      }
    });
    expect(posted.map(([message, moved]) => [Object.keys(message)[0], moved])).toEqual([
      ...[
        ["portion", 0],
        ["portion", 1],
        ["portion", 1],
      ],
      ["done", 0],
    ]);
    expect(new Int32Array(memory)[BEATS]).toBeGreaterThan(1);
  });

  it("pause while three wait to be taken", async () => {
    const { Worker } = await import("node:worker_threads");
    const memory = shared();
    const numbers = new Int32Array(memory);
    // another thread takes one after a while: this one stands still until then
    const code = `const { workerData, parentPort } = require("node:worker_threads");
      const numbers = new Int32Array(workerData); parentPort.postMessage("here");
      parentPort.once("message", () => { Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300);
        for (let i = 0; i < 4; i++) { Atomics.add(numbers, ${TAKEN}, 1); Atomics.notify(numbers, ${TAKEN}); }
        process.exit(); });`;
    const taker = new Worker(code, { eval: true, workerData: memory });
    await new Promise((resolve) => taker.once("message", resolve));
    let sent = 0;
    let takenAtFourth = -1;
    let takenAtThird = -1;
    const told = file(rows(14_000));
    await postPortions({ path: told, shared: memory }, () => {
      sent++;
      // none was taken: the third is sent all the same, and the fourth waits
      if (sent === 3) {
        takenAtThird = numbers[TAKEN] as number;
        taker.postMessage("take");
      }
      if (sent === 4) takenAtFourth = numbers[TAKEN] as number;
    });
    expect(sent).toBe(6); // columns, four portions, the end
    expect(takenAtThird).toBe(0);
    expect(takenAtFourth).toBeGreaterThan(0);
    await taker.terminate();
  });

  it("a refusal is posted as data, and a bug is thrown", async () => {
    const posted: unknown[] = [];
    const path = join(folder, "empty.parquet");
    writeFileSync(path, "");
    await postPortions({ path, shared: shared(9) }, (message, moved) => posted.push([message, moved]));
    const refused = { code: "syntax", expected: "a Parquet file", received: "an empty file" };
    expect(posted).toEqual([[{ refused }, []]]);
    const bug = () => {
      throw new TypeError("a bug");
    };
    await expect(postPortions({ path: file(rows(1)), shared: shared(9) }, bug)).rejects.toThrow(TypeError);
  });
});
