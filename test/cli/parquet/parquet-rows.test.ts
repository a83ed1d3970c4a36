import { EventEmitter } from "node:events";
import { Worker } from "node:worker_threads";
import { afterEach, describe, expect, it } from "vitest";
import { parquetRows } from "../../../src/cli/parquet/parquet-rows";
import type { ReadingThread } from "../../../src/cli/parquet/started-thread";
import { BEATS, TAKEN, type WorkerMessage, type WorkerTask } from "../../../src/cli/parquet/worker-message";

/** Stands for a thread: what it is told, and what it says. */
class Stand extends EventEmitter {
  ended = 0;
  readonly numbers: Int32Array;

  constructor(
    readonly task: WorkerTask,
    act: (stand: Stand) => void,
  ) {
    super();
    this.numbers = new Int32Array(task.shared);
    queueMicrotask(() => act(this));
  }

  say(...messages: WorkerMessage[]): void {
    for (const message of messages) this.emit("message", message);
  }

  async terminate(): Promise<number> {
    this.ended++;
    return 0;
  }
}

let act: (stand: Stand) => void = () => undefined;
let last: Stand;
afterEach(() => {
  act = () => undefined;
});
const rowsOf = (patience?: number) =>
  parquetRows("levels.parquet", patience, (task) => {
    last = new Stand(task, act);
    return last as unknown as ReadingThread;
  });

const names = (...all: string[]): WorkerMessage => ({ portion: { names: all, rows: 1 } });
const later = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function read(patience = 2000): Promise<unknown[]> {
  const all: unknown[] = [];
  for await (const portion of rowsOf(patience)) all.push(portion);
  return all;
}

describe("the thread that reads Parquet, seen from the other", () => {
  it("is told the file, and ended when it is done", async () => {
    act = (stand) => stand.say(names("v"), names("w"), { done: true });
    expect(await read()).toEqual([
      { names: ["v"], rows: 1 },
      { names: ["w"], rows: 1 },
    ]);
    const { task, ended, numbers } = last;
    expect(task.path).toBe("levels.parquet");
    expect([ended, numbers.length, numbers[BEATS], numbers[TAKEN]]).toEqual([1, 2, 0, 2]);
  });

  it("is told of each portion once it was worked on", async () => {
    act = (stand) => stand.say(names("v"), names("w"), { done: true });
    const rows = rowsOf();
    const taken: unknown[] = [];
    for (let i = 0; i < 3; i++) {
      await rows.next();
      taken.push(last.numbers[TAKEN]);
    }
    expect(taken).toEqual([0, 1, 2]);
  });

  it("is woken to go on", async () => {
    act = (stand) => stand.say(names("v"), { done: true });
    const rows = rowsOf();
    await rows.next();
    const code = `const { workerData, parentPort } = require("node:worker_threads"); parentPort.postMessage("here");
      parentPort.postMessage(Atomics.wait(new Int32Array(workerData), ${TAKEN}, 0, 3000));`;
    const sleeper = new Worker(code, { eval: true, workerData: last.task.shared });
    const woken = new Promise((resolve) => sleeper.on("message", (word) => word !== "here" && resolve(word)));
    await new Promise((resolve) => sleeper.once("message", resolve));
    await later(100);
    await rows.next();
    expect(await woken).toBe("ok");
    await sleeper.terminate();
  });

  it("is ended when its reader has enough", async () => {
    act = (stand) => stand.say(names("v"), names("w"));
    for await (const _ of rowsOf()) break;
    expect(last.ended).toBe(1);
  });

  it("answers at once what comes late", async () => {
    act = async (stand) => {
      await later(30);
      stand.say(names("v"));
      await later(30);
      stand.say({ done: true });
    };
    const start = performance.now();
    expect(await read(20_000)).toHaveLength(1);
    expect(performance.now() - start).toBeLessThan(15_000);
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
    expect(took).toBeLessThan(15_000);
    expect(last.ended).toBe(1);
  });

  it("may take longer while it gets on", async () => {
    act = async (stand) => {
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
      act = (stand) => stand.say({ refused: { code: "syntax", expected: "a Parquet file", received } });
      return read().then(
        () => "read",
        ({ code, expected, received }) => [code, expected, received],
      );
    };
    expect(await refused("an empty file")).toEqual(["syntax", "a Parquet file", '"levels.parquet", an empty file']);
    expect(await refused('"levels.parquet", which is cut off')).toEqual([
      ...["syntax", "a Parquet file", '"levels.parquet", which is cut off'],
    ]);
    expect(last.ended).toBe(1);
  });

  const failing = (message: string, code?: string) => {
    act = async (stand) => {
      await later(20);
      stand.emit("error", Object.assign(new Error(message), code === undefined ? {} : { code }));
      stand.emit("exit", 1);
    };
    const start = performance.now();
    return read(20_000).then(
      () => "read",
      (error) => {
        expect(performance.now() - start).toBeLessThan(15_000);
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
    act = async (stand) => {
      await later(20);
      stand.emit("exit", 3);
    };
    const start = performance.now();
    await expect(read(20_000)).rejects.toThrow("the thread that reads Parquet ended with 3");
    expect(performance.now() - start).toBeLessThan(15_000);
  });
});
