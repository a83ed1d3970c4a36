/**
 * Lines of any content: the calculator answers or refuses, and never takes long. `VELADIS_FUZZ=1000000` sets the number
 * of lines; the default keeps the suite short.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { VeladisError } from "../../src/index";
import { newSession, respond } from "../../src/repl/index";
import { corpus, injections, refused } from "./corpus";

const lines = Number(process.env.VELADIS_FUZZ ?? 30_000);
/** Bound on one line, in milliseconds; pauses of a busy machine are allowed for by trying again. */
const LONGEST = 50;

const known = [...corpus.map(({ line }) => line), ...refused.map(({ line }) => line), ...injections];
const tokens = [
  ...[
    "1",
    "0.25",
    "2e3",
    ".5",
    "1e999",
    "-",
    "+",
    "*",
    "/",
    "^",
    "%",
    "(",
    ")",
    "[",
    "]",
    "{",
    "}",
    ",",
    ";",
    ":",
    "=",
    "==",
    "<",
    ">",
  ],
  ...[
    "!",
    "?",
    ".",
    "'",
    '"',
    "@",
    "#",
    "$",
    "\\",
    "`",
    "|",
    "&",
    "~",
    "\n",
    "\t",
    " ",
    "  ",
    "mm/s",
    "in/s",
    "g",
    "um",
    "mil",
    "dB",
    "re",
  ],
  ...[
    "rms",
    "pk",
    "pp",
    "avg",
    "peak to peak",
    "at",
    "to",
    "1500 r/min",
    "2x 1500 rpm",
    "25 Hz",
    "with crest factor",
    "rss",
    "mean",
    "max",
  ],
  ...[
    "judge",
    "setpoints",
    "value",
    "sqrt",
    "pi",
    "last",
    "a",
    "help",
    "names",
    "constructor",
    "__proto__",
    "import",
    "_0",
    "x".repeat(99),
    "½",
    "µ",
    "²",
    "∞",
    "🙂",
  ],
];

const line = fc.oneof(
  { weight: 6, arbitrary: fc.array(fc.constantFrom(...tokens), { maxLength: 30 }).map((parts) => parts.join(" ")) },
  { weight: 3, arbitrary: fc.array(fc.constantFrom(...tokens), { maxLength: 60 }).map((parts) => parts.join("")) },
  { weight: 2, arbitrary: fc.string({ unit: "binary", maxLength: 200 }) },
  { weight: 2, arbitrary: fc.uint8Array({ maxLength: 300 }).map((bytes) => Buffer.from(bytes).toString("latin1")) },
  {
    weight: 4,
    arbitrary: fc
      .tuple(fc.constantFrom(...known), fc.nat(), fc.constantFrom(...tokens))
      .map(([text, at, token]) => text.slice(0, at % (text.length + 1)) + token + text.slice(at % (text.length + 1))),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(fc.constantFrom(...tokens), fc.nat(1200)).map(([token, n]) => token.repeat(n).slice(0, 1100)),
  },
);

describe("fuzz", () => {
  it(`${lines} lines are answered or refused, each within ${LONGEST} ms`, async () => {
    let session = newSession();
    await respond("1 + 1", session);
    const { engine } = session;
    let slowest = 0;
    let answered = 0;
    const timed = async (text: string): Promise<number> => {
      const start = performance.now();
      try {
        const response = await respond(text, session);
        if (response !== "exit" && typeof response.text !== "string") throw new Error(`no text for ${text}`);
        answered++;
      } catch (error) {
        if (!(error instanceof VeladisError)) throw error;
      }
      return performance.now() - start;
    };
    const batch = 10_000;
    for (let done = 0; done < lines; done += batch) {
      session = { ...newSession(), ...(engine && { engine }) };
      for (const text of fc.sample(line, { numRuns: Math.min(batch, lines - done), seed: done })) {
        let taken = await timed(text);
        for (let again = 0; taken > LONGEST && again < 5; again++) taken = await timed(text);
        expect(taken, JSON.stringify(text)).toBeLessThan(LONGEST);
        slowest = Math.max(slowest, taken);
      }
    }
    console.log(`${lines} lines, ${answered} answered, the slowest in ${slowest.toFixed(1)} ms`);
    expect(Object.keys(Object.prototype)).toEqual([]);
  }, 1_800_000);
});
