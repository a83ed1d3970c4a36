import { parentPort, workerData } from "node:worker_threads";
import { VeladisError } from "../../core/index";
import { parquetPortions } from "./portions";
import { BEATS, TAKEN, type WorkerMessage, type WorkerTask } from "./worker-message";

/** Portions that wait to be taken; then reading pauses. */
const AHEAD = 3;

const { path, shared } = workerData as WorkerTask;
const numbers = new Int32Array(shared);

function post(message: WorkerMessage, moved: ArrayBuffer[] = []): void {
  parentPort?.postMessage(message, moved);
}

try {
  let sent = 0;
  for await (const portion of parquetPortions(path, () => void Atomics.add(numbers, BEATS, 1))) {
    post({ portion }, "ends" in portion ? [portion.ends.buffer] : []);
    sent++;
    for (let taken = Atomics.load(numbers, TAKEN); sent - taken >= AHEAD; taken = Atomics.load(numbers, TAKEN)) {
      Atomics.wait(numbers, TAKEN, taken);
    }
  }
  post({ done: true });
} catch (error) {
  if (!(error instanceof VeladisError)) throw error;
  const { code, expected, received } = error;
  post({ refused: { code, expected, received } });
}
