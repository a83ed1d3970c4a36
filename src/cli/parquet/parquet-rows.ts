import { shown, VeladisError } from "../../core/index";
import type { Portion } from "./portions";
import { HEAP, type ReadingThread, startedThread } from "./started-thread";
import { BEATS, type Refused, TAKEN, type WorkerMessage, type WorkerTask } from "./worker-message";

/** Milliseconds without anything done, after which a file is given up. */
const PATIENCE = 10_000;

/** What the thread refuses, with the file's name. */
function told({ code, expected, received }: Refused, path: string): VeladisError {
  const named = received.includes(shown(path)) ? received : `${shown(path)}, ${received}`;
  return new VeladisError(code, { expected, received: named });
}

/** The end of the thread by an error, as a refusal where it is one. */
function refusal(error: NodeJS.ErrnoException, path: string): Error {
  if (error.code === "ERR_WORKER_OUT_OF_MEMORY") {
    return new VeladisError("syntax", {
      expected: `a Parquet file in row groups that fit into ${HEAP} MiB`,
      received: `${shown(path)}, whose rows do not: damaged, or to be written in smaller row groups`,
    });
  }
  if (error.code !== "ERR_MODULE_NOT_FOUND" || !error.message.includes("hyparquet")) return error;
  return new VeladisError("unreadable", {
    expected: "the package hyparquet beside veladis, to read Parquet: npm install hyparquet",
    received: "nothing",
  });
}

/**
 * What a Parquet file shows. It is read in a thread of its own, since a damaged file can keep a reader busy for ever, and
 * can ask for more memory than there is.
 *
 * @param patience - milliseconds without anything done, after which the file is refused
 * @param start - starts the thread
 * @throws {@link VeladisError} `unreadable` without hyparquet and for a file that cannot be read, `syntax` for what is no
 *   whole Parquet
 */
export async function* parquetRows(
  path: string,
  patience = PATIENCE,
  start: (task: WorkerTask) => ReadingThread = startedThread,
): AsyncGenerator<Portion> {
  const shared = new SharedArrayBuffer(8);
  const numbers = new Int32Array(shared);
  const worker = start({ path, shared });
  const messages: WorkerMessage[] = [];
  let wake: () => void = () => undefined;
  let failure: Error | undefined;
  worker.on("message", (message: WorkerMessage) => {
    messages.push(message);
    wake();
  });
  worker.once("error", (error) => {
    failure = refusal(error, path);
    wake();
  });
  worker.once("exit", (code) => {
    failure ??= new Error(`the thread that reads Parquet ended with ${code}`);
    wake();
  });

  /** The next message; refused when nothing is done for too long. */
  const next = async (): Promise<WorkerMessage> => {
    let beats = -1;
    let since = performance.now();
    while (messages.length === 0) {
      if (failure !== undefined) throw failure;
      const seen = Atomics.load(numbers, BEATS);
      if (seen !== beats) since = performance.now();
      else if (performance.now() - since > patience) {
        throw new VeladisError("syntax", {
          expected: "a Parquet file that is whole",
          received: `${shown(path)}, of which nothing could be read for ${patience / 1000} s`,
        });
      }
      beats = seen;
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, patience / 10);
        wake = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    }
    return messages.shift() as WorkerMessage;
  };

  try {
    for (;;) {
      const message = await next();
      if ("done" in message) return;
      if ("refused" in message) throw told(message.refused, path);
      yield message.portion;
      Atomics.add(numbers, TAKEN, 1);
      Atomics.notify(numbers, TAKEN);
    }
  } finally {
    await worker.terminate();
  }
}
