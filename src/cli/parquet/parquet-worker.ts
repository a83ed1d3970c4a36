import { parentPort, workerData } from "node:worker_threads";
import { postPortions } from "./post-portions";

await postPortions(workerData, (message, moved) => parentPort?.postMessage(message, moved));
