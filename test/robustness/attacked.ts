/** What commands do with a hostile file: an answer, or one refusal, and no row lost without a word. */
import { randomUUID } from "node:crypto";
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { run } from "../../src/cli/run";
import type { HostileFile } from "./hostile-files";

/** Longest that a command may take with one file, in milliseconds. */
const LONGEST = 5000;

const trip = [
  ...["--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "2", "--timer-resets", "threshold"],
  ...["--latching", "--from", "mm/s rms"],
];
const convert = ["--column", "level", "--from", "mm/s rms", "--to", "in/s pk"];

/** The commands that read a file of this ending, each with its name. */
function commandsFor({ ending }: HostileFile, path: string, out: string): Record<string, readonly string[]> {
  const table = {
    "table --json": ["table", path, ...convert, "--json"],
    "table --out": ["table", path, ...convert, "--out", out, "--replace"],
  };
  if (ending === ".parquet") return table;
  const judged = ["--scheme", "iso-10816-3-2009", "--machine", "group 2 rigid"];
  return {
    ...table,
    convert: ["--file", path, ...convert],
    simulate: ["simulate", "--file", path, ...trip],
    setpoints: ["setpoints", "--file", path, "--column", "level", "--from", "mm/s rms", ...judged],
    overall: ["overall", path, "--rate", "100", "--unit", "mm/s", "--column", "level"],
    check: ["check", "--file", path, "--from", "mm/s rms", "--tolerance", "5 %"],
  };
}

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly took: number;
}

async function ended(args: readonly string[]): Promise<Ended> {
  const printed: Uint8Array[] = [];
  let err = "";
  // so that what one command left is not counted with the next, where the bench asks for it
  globalThis.gc?.();
  const start = performance.now();
  const code = await run(args, {
    ...{ piped: undefined, colour: false },
    out: (text) => void printed.push(Buffer.from(text as string)),
    err: (text) => {
      err += text;
    },
  });
  return { code, out: Buffer.concat(printed).toString(), err, took: performance.now() - start };
}

/** The account that a command printed: in, answered, refused, skipped. */
function accountIn(err: string): readonly number[] | undefined {
  const told = /^rows: (\d+) in = (\d+) answered \+ (\d+) refused \+ (\d+) skipped/m.exec(err);
  if (told !== null) return told.slice(1).map(Number);
  const plain = /^([\d ]+) rows?: ([\d ]+) written.*, ([\d ]+) refused/m.exec(err);
  if (plain !== null) return [...plain.slice(1).map((count) => Number(count.replaceAll(" ", ""))), 0];
  const line = err.split("\n").find((one) => one.startsWith('{"summary"'));
  if (line === undefined) return undefined;
  const { account, rows, written, refused } = JSON.parse(line).summary;
  if (account === undefined) return [rows, written, refused, 0];
  const { blank, remarks, preamble } = account.skipped;
  return [account.in, account.answered, account.refused, blank + remarks + preamble];
}

/** What is wrong with the end of a command. */
function faultsOf(name: string, { code, out, err, took }: Ended, { rowsIn }: HostileFile): string[] {
  const faults: string[] = [];
  if (code !== 0 && code !== 2) faults.push(`exit ${code}`);
  if (code === 2 && !/veladis: |"error":|refused/.test(err)) faults.push("refused without a word");
  if (/\n {4}at |TypeError|RangeError/.test(err + out)) faults.push("a raw error");
  if (took > LONGEST) faults.push(`${Math.round(took)} ms`);
  const account = accountIn(err);
  if (account !== undefined) {
    const [all = 0, answered = 0, refused = 0, skipped = 0] = account;
    if (all !== answered + refused + skipped) faults.push(`an account that does not add up: ${account}`);
    if (rowsIn !== undefined && all !== rowsIn) faults.push(`${all} rows in, of ${rowsIn}`);
    const lines = out === "" ? 0 : out.trimEnd().split("\n").length;
    if (name === "table --json" && lines !== answered) faults.push(`${lines} rows written, ${answered} told`);
  } else if (name.startsWith("table") && code === 0) faults.push("no account");
  return faults;
}

/** What came of a hostile file. */
export interface Attack {
  /** What is wrong, each with the command's name. */
  readonly faults: readonly string[];
  /** Milliseconds of the command that took longest. */
  readonly longest: number;
}

/** Gives a file to every command that reads such. */
export async function attacked(file: HostileFile, folder: string): Promise<Attack> {
  // a command that refused may still read a little: it finds no other file in that place
  const path = join(folder, `${randomUUID()}${file.ending}`);
  const out = join(folder, "out.csv");
  writeFileSync(path, file.content);
  const faults: string[] = [];
  let longest = 0;
  for (const [name, args] of Object.entries(commandsFor(file, path, out))) {
    writeFileSync(out, "previous");
    try {
      const end = await ended(args);
      longest = Math.max(longest, end.took);
      const own = faultsOf(name, end, file);
      const kept = existsSync(out) && readFileSync(out, "utf8") === "previous";
      if (name === "table --out" && kept !== (accountIn(end.err) === undefined && end.code === 2)) {
        own.push(kept ? "no output" : "a previous output that is gone");
      }
      faults.push(...own.map((fault) => `${name}: ${fault}`));
    } catch (error) {
      faults.push(`${name}: ${(error as Error).stack}`);
    }
  }
  for (const one of [path, out]) rmSync(one, { force: true });
  return { faults, longest };
}
