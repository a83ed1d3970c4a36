import { afterEach, describe, expect, it, vi } from "vitest";
import { parquetRows } from "../../src/cli/parquet/parquet-rows";

let code = "";
vi.mock("./built-worker", () => ({
  get workerUrl() {
    return new URL(`data:text/javascript,${encodeURIComponent(code)}`);
  },
}));
afterEach(() => {
  code = "";
});

async function read(patience: number): Promise<unknown> {
  for await (const portion of parquetRows("in.parquet", patience)) expect(portion).toBeDefined();
  return "done";
}

const head =
  'import { parentPort, workerData } from "node:worker_threads"; const shared = new Int32Array(workerData.shared);';

describe("the thread that reads Parquet", () => {
  it("is ended when it does nothing for too long", async () => {
    code = "for (;;);";
    const start = performance.now();
    await expect(read(300)).rejects.toMatchObject({ code: "syntax", received: expect.stringContaining("for 0.3 s") });
    expect(performance.now() - start).toBeLessThan(5000);
  });

  it("may take longer while it gets on", async () => {
    code = `${head} const end = Date.now() + 3000; while (Date.now() < end) Atomics.add(shared, 0, 1);
      parentPort.postMessage({ done: true });`;
    // longer than a thread takes to start on a busy machine
    expect(await read(1500)).toBe("done");
  });

  it("waits for a reader that is slow, and is not blamed for it", async () => {
    code = `${head} for (let i = 0; i < 3; i++) {
      parentPort.postMessage({ portion: { names: [String(i)], rows: 0 } });
      while (Atomics.load(shared, 1) <= i) Atomics.wait(shared, 1, i); }
      parentPort.postMessage({ done: true });`;
    const seen: unknown[] = [];
    for await (const portion of parquetRows("in.parquet", 1500)) {
      seen.push(portion);
      await new Promise((resolve) => setTimeout(resolve, 1700));
    }
    expect(seen).toHaveLength(3);
  });

  it("refuses what it refuses, and throws what is a bug", async () => {
    code = `${head} parentPort.postMessage({ refused: { code: "syntax", expected: "a", received: "b" } });`;
    await expect(read(5000)).rejects.toMatchObject({
      name: "VeladisError",
      expected: "a",
      received: '"in.parquet", b',
    });
    code = 'throw new TypeError("a bug");';
    await expect(read(5000)).rejects.toThrow(TypeError);
    code = "process.exit(3);";
    await expect(read(5000)).rejects.toThrow("ended with 3");
  });
});
