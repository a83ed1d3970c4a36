import { Worker } from "node:worker_threads";
import type { WorkerTask } from "./worker-message";
import { workerUrl } from "./worker-url";

/** Of the memory for objects, in MiB: enough for row groups of a million rows and a hundred columns. */
export const HEAP = 2048;

/** What is used of a thread. */
export type ReadingThread = Pick<Worker, "on" | "once" | "terminate">;

/** The thread that reads Parquet, started. */
export function startedThread(workerData: WorkerTask): ReadingThread {
  return new Worker(workerUrl, { workerData, execArgv: [], resourceLimits: { maxOldGenerationSizeMb: HEAP } });
}
