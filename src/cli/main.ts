#!/usr/bin/env node
import { lazily } from "../core/index";
import { standardInput } from "./input/standard-input";
import { exitCodes } from "./print/exit-codes";
import { run } from "./run";

// A reader that has seen enough (head, less) closes the pipe: nothing is told, but not all was handed over.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(exitCodes.closed);
  process.stderr.write(
    `veladis: unwritable\n  expected: room and leave to write the output\n  received: ${error.code}\n`,
  );
  process.exit(exitCodes.refused);
});
// Nobody is left to be told.
process.stderr.on("error", () => undefined);

const { stdout, stderr } = process;

/** Opened where it is asked for: that costs a while, and a reading that stands in the arguments needs none. */
const piped = lazily(() => standardInput(process.stdin));

run(process.argv.slice(2), {
  get piped() {
    return process.stdin.isTTY ? undefined : piped();
  },
  terminal: Boolean(stdout.isTTY),
  ...(stdout.isTTY && { columns: stdout.columns }),
  colour: Boolean(stdout.isTTY) && !process.env.NO_COLOR,
  out: (text) =>
    stdout.write(text) ? undefined : new Promise<void>((resolve) => stdout.once("drain", () => resolve())),
  err: (text) => {
    if (text !== "") stderr.write(text);
  },
  ...(stderr.isTTY && { progress: (text: string) => void stderr.write(`\r\x1b[K${text}`) }),
}).then((code) => {
  process.exitCode = code;
});
