import { VeladisError } from "../../core/index";
import { parquetPortions } from "./portions";
import { BEATS, TAKEN, type WorkerMessage, type WorkerTask } from "./worker-message";

/** Portions that wait to be taken; then reading pauses. */
const AHEAD = 3;

/**
 * Reads a Parquet file for another thread, and posts what it shows, its end, or why it is refused.
 *
 * @param post - is given a message and what it moves
 */
export async function postPortions(
  { path, shared }: WorkerTask,
  post: (message: WorkerMessage, moved: ArrayBuffer[]) => void,
): Promise<void> {
  const numbers = new Int32Array(shared);
  try {
    let sent = 0;
    for await (const portion of parquetPortions(path, () => void Atomics.add(numbers, BEATS, 1))) {
      post({ portion }, "ends" in portion ? [portion.ends.buffer] : []);
      sent++;
      for (let taken = Atomics.load(numbers, TAKEN); sent - taken >= AHEAD; taken = Atomics.load(numbers, TAKEN)) {
        Atomics.wait(numbers, TAKEN, taken);
      }
    }
    post({ done: true }, []);
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    const { code, expected, received } = error;
    post({ refused: { code, expected, received } }, []);
  }
}
