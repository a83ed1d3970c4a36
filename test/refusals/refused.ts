import { VeladisError } from "veladis";

/** A frame of a stack that stands in the sources: where, and which function was called there. */
export interface Call {
  readonly file: string;
  readonly line: number;
  readonly called: string;
}

/** What was refused, the error that came, and the calls in the sources that led to it. */
export interface Refusal {
  readonly what: string;
  readonly error: VeladisError;
  readonly calls: readonly Call[];
}

/** Acts by what is wrong with them; each must be refused. */
export type Cases = Readonly<Record<string, () => unknown>>;

const FRAME = /^ +at (?:async )?(?:(.*?) \()?(?:file:\/\/)?\/.*?\/(src\/.*?\.ts):(\d+):\d+\)?$/;

/** The calls in the sources that led to an error, the innermost first; the first is the error's own. */
export function callsOf({ stack = "" }: Error): Call[] {
  let called = "VeladisError";
  return stack.split("\n").flatMap((row) => {
    const [, name = "", file, line] = FRAME.exec(row) ?? [];
    if (file === undefined) return [];
    const call = { file, line: Number(line), called };
    called = name
      .replace(/ \[as .*\]$/, "")
      .split(".")
      .at(-1) as string;
    return [call];
  });
}

/** What happens while the acts run with stacks deep enough to reach the public function. */
export async function withDeepStacks<Result>(act: () => Promise<Result>): Promise<Result> {
  const usual = Error.stackTraceLimit;
  Error.stackTraceLimit = 100;
  try {
    return await act();
  } finally {
    Error.stackTraceLimit = usual;
  }
}

async function refusal(what: string, act: () => unknown): Promise<Refusal> {
  let result: unknown;
  try {
    result = await act();
  } catch (error) {
    if (error instanceof VeladisError) return { what, error, calls: callsOf(error) };
    throw new Error(`${what}: another error than the library's`, { cause: error });
  }
  throw new Error(`${what}: accepted, with ${JSON.stringify(result)?.slice(0, 200)}`);
}

/** The refusals of all cases, in their order. */
export function refusalsOf(cases: Cases): Promise<Refusal[]> {
  return withDeepStacks(async () => {
    const refusals: Refusal[] = [];
    const failures: unknown[] = [];
    for (const [what, act] of Object.entries(cases)) {
      await refusal(what, act).then(
        (one) => refusals.push(one),
        (error) => failures.push(error),
      );
    }
    if (failures.length > 0) throw new AggregateError(failures, failures.map(String).join("\n"));
    return refusals;
  });
}

/** All that refusals say, as one page to read from top to bottom. */
export function pageOf(refusals: readonly Refusal[]): string {
  const entries = refusals.map(({ what, error }) => {
    const { code, expected, received, allowed, didYouMean, parameter, index, option, fact } = error;
    const where = Object.entries({ parameter, index, option, fact }).filter(([, value]) => value !== undefined);
    const rows: [string, string | undefined][] = [
      ["expected", expected],
      ["received", received],
      ["did you mean", didYouMean?.join(" | ")],
      ["allowed", allowed?.join(" | ")],
      ["where", where.length > 0 ? where.map(([name, value]) => `${name} ${value}`).join(", ") : undefined],
    ];
    const told = rows.filter(([, value]) => value !== undefined);
    return [`${what}: ${code}`, ...told.map(([name, value]) => `  ${name}: ${value}`)].join("\n");
  });
  return `${entries.join("\n\n")}\n`;
}

/** The message that the parts of a refusal make. */
export function composed({ expected, received, allowed, didYouMean }: VeladisError): string {
  const hint = didYouMean
    ? `; did you mean ${didYouMean.join(" or ")}?`
    : allowed
      ? `; allowed: ${allowed.join(", ")}`
      : "";
  return `expected ${expected}, received ${received}${hint}`;
}
