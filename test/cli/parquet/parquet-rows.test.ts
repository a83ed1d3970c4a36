import { EventEmitter } from "node:events";
import { afterEach, describe, expect, it, vi } from "vitest";
import { parquetRows } from "../../../src/cli/parquet/parquet-rows";
import { BEATS, TAKEN, type WorkerMessage, type WorkerTask } from "../../../src/cli/parquet/worker-message";

/** Stands for a thread: what it is started with, and what it says. */
class Stand extends EventEmitter {
  static last: Stand;
  static act: (stand: Stand) => void = () => undefined;
  ended = 0;
  readonly numbers: Int32Array;

  constructor(
    readonly url: URL,
    readonly options: { workerData: WorkerTask; execArgv: string[]; resourceLimits: object },
  ) {
    super();
    Stand.last = this;
    this.numbers = new Int32Array(options.workerData.shared);
    queueMicrotask(() => Stand.act(this));
  }

  say(...messages: WorkerMessage[]): void {
    for (const message of messages) this.emit("message", message);
  }

  async terminate(): Promise<void> {
    this.ended++;
  }
}
vi.mock("node:worker_threads", () => ({ Worker: Stand }));
afterEach(() => {
  Stand.act = () => undefined;
});

const names = (...all: string[]): WorkerMessage => ({ portion: { names: all, rows: 1 } });
const later = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function read(patience = 2000): Promise<unknown[]> {
  const all: unknown[] = [];
  for await (const portion of parquetRows("levels.parquet", patience)) all.push(portion);
  return all;
}

describe("the thread that reads Parquet, seen from the other", () => {
  it("is told the file, bounded in memory, and ended when it is done", async () => {
    Stand.act = (stand) => stand.say(names("v"), names("w"), { done: true });
    expect(await read()).toEqual([
      { names: ["v"], rows: 1 },
      { names: ["w"], rows: 1 },
    ]);
    const { url, options, ended, numbers } = Stand.last;
    expect(url.pathname).toMatch(/parquet-worker/);
    expect(options).toMatchObject({
      workerData: { path: "levels.parquet" },
      execArgv: [],
      resourceLimits: { maxOldGenerationSizeMb: 2048 },
    });
    expect([ended, numbers.length, numbers[BEATS], numbers[TAKEN]]).toEqual([1, 2, 0, 2]);
  });

  it("is told of each portion once it was worked on", async () => {
    Stand.act = (stand) => stand.say(names("v"), names("w"), { done: true });
    const rows = parquetRows("levels.parquet");
    const taken: unknown[] = [];
    for (let i = 0; i < 3; i++) {
      await rows.next();
      taken.push(Stand.last.numbers[TAKEN]);
    }
    expect(taken).toEqual([0, 1, 2]);
  });

  it("is woken to go on", async () => {
    Stand.act = (stand) => stand.say(names("v"), { done: true });
    const rows = parquetRows("levels.parquet");
    await rows.next();
    const { value } = Atomics.waitAsync(Stand.last.numbers, TAKEN, 0, 2000);
    await rows.next();
    expect(await value).toBe("ok");
  });

  it("is ended when its reader has enough", async () => {
    Stand.act = (stand) => stand.say(names("v"), names("w"));
    for await (const _ of parquetRows("levels.parquet")) break;
    expect(Stand.last.ended).toBe(1);
  });

  it("answers at once what comes late", async () => {
    Stand.act = async (stand) => {
      await later(30);
      stand.say(names("v"));
      await later(30);
      stand.say({ done: true });
    };
    const start = performance.now();
    expect(await read(20_000)).toHaveLength(1);
    expect(performance.now() - start).toBeLessThan(1500);
  });

  it("is given up when it does nothing for too long, and is ended then too", async () => {
    const start = performance.now();
    await expect(read(200)).rejects.toMatchObject({
      code: "syntax",
      expected: "a Parquet file that is whole",
      received: '"levels.parquet", of which nothing could be read for 0.2 s',
    });
    const took = performance.now() - start;
    expect(took).toBeGreaterThanOrEqual(200);
    expect(took).toBeLessThan(1500);
    expect(Stand.last.ended).toBe(1);
  });

  it("may take longer while it gets on", async () => {
    Stand.act = async (stand) => {
      for (let i = 0; i < 10; i++) {
        await later(60);
        Atomics.add(stand.numbers, BEATS, 1);
      }
      stand.say({ done: true });
    };
    expect(await read(300)).toEqual([]);
  });

  it("refuses with the name of the file, once", async () => {
    const refused = (received: string) => {
      Stand.act = (stand) => stand.say({ refused: { code: "syntax", expected: "a Parquet file", received } });
      return read().then(
        () => "read",
        ({ code, expected, received }) => [code, expected, received],
      );
    };
    expect(await refused("an empty file")).toEqual(["syntax", "a Parquet file", '"levels.parquet", an empty file']);
    expect(await refused('"levels.parquet", which is cut off')).toEqual([
      ...["syntax", "a Parquet file", '"levels.parquet", which is cut off'],
    ]);
    expect(Stand.last.ended).toBe(1);
  });

  const failing = (message: string, code?: string) => {
    Stand.act = async (stand) => {
      await later(20);
      stand.emit("error", Object.assign(new Error(message), code === undefined ? {} : { code }));
      stand.emit("exit", 1);
    };
    const start = performance.now();
    return read(20_000).then(
      () => "read",
      (error) => {
        expect(performance.now() - start).toBeLessThan(1500);
        return error;
      },
    );
  };

  it("without enough memory says so", async () => {
    expect(await failing("out of memory", "ERR_WORKER_OUT_OF_MEMORY")).toMatchObject({
      code: "syntax",
      expected: "a Parquet file in row groups that fit into 2048 MiB",
      received: '"levels.parquet", whose rows do not: damaged, or to be written in smaller row groups',
    });
  });

  it("without hyparquet says what to install; another package that lacks is a bug", async () => {
    const lacks = "Cannot find package";
    expect(await failing(`${lacks} 'hyparquet'`, "ERR_MODULE_NOT_FOUND")).toMatchObject({
      code: "unreadable",
      expected: "the package hyparquet beside veladis, to read Parquet: npm install hyparquet",
      received: "nothing",
    });
    expect(await failing(`${lacks} 'other'`, "ERR_MODULE_NOT_FOUND")).toMatchObject({ message: `${lacks} 'other'` });
    const bug = await failing("hyparquet is no function");
    expect([bug.name, bug.message]).toEqual(["Error", "hyparquet is no function"]);
  });

  it("that ends without a word is a bug, told at once", async () => {
    Stand.act = async (stand) => {
      await later(20);
      stand.emit("exit", 3);
    };
    const start = performance.now();
    await expect(read(20_000)).rejects.toThrow("the thread that reads Parquet ended with 3");
    expect(performance.now() - start).toBeLessThan(1500);
  });
});
