/** Where the code of the thread that reads stands: the build puts it beside the command. */
export const workerUrl = new URL("./parquet-worker.js", import.meta.url);
