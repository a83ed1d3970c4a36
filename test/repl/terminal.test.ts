/** The calculator on a real pseudo-terminal, made by script(1) of util-linux. Needs the built command. */
import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { root } from "../examples/fences";

const folder = mkdtempSync(join(tmpdir(), "veladis-terminal-"));
const history = join(folder, "history");
let child: ChildProcess | undefined;
let screen = "";

/** Opens the calculator on a terminal; what it shows collects in `screen`. */
function open(env: Record<string, string> = {}): void {
  screen = "";
  child = spawn("script", ["-qec", `"${process.execPath}" "${root}/dist/cli.js"`, "/dev/null"], {
    env: { ...process.env, VELADIS_HISTORY: history, TERM: "xterm", COLUMNS: "120", ...env },
  });
  child.stdout?.on("data", (text) => {
    screen += String(text);
  });
}

/** Waits until the screen shows a text behind what it showed before. */
async function shows(text: string | RegExp, from = 0): Promise<void> {
  const end = Date.now() + 15_000;
  const seen = (): boolean => {
    const rest = screen.slice(from);
    return typeof text === "string" ? rest.includes(text) : text.test(rest);
  };
  while (!seen()) {
    if (Date.now() > end) throw new Error(`${text} not shown in:\n${screen}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

/** Types keys, and waits for what they bring on the screen. */
async function type(keys: string, answer: string | RegExp): Promise<void> {
  const before = screen.length;
  child?.stdin?.write(keys);
  await shows(answer, before);
}

/** Ends by keys, and gives the exit code. */
function ended(keys: string): Promise<number | null> {
  const code = new Promise<number | null>((resolve) => child?.on("close", resolve));
  child?.stdin?.write(keys);
  return code;
}

afterEach(() => {
  child?.kill("SIGKILL");
});

describe.skipIf(!existsSync("/usr/bin/script"))("the calculator on a terminal", () => {
  it("starts, answers, completes, goes on over lines, refuses, survives Ctrl-C, and ends by its word", async () => {
    open();
    await shows("veladis 0.1.0: a line of readings and arithmetic");
    await type("a = 0.25 in/s pk at 1500 r/min\r", "a = 0.250 in/s pk at 25 Hz (1500 r/min)");
    await type("a * 1.25 to mm/s rms\r", "5.61 mm/s rms  (sine)");
    await type("vec\t", "vectorDifference(");
    await type("\x03", "(dropped)");
    await type("rss(", "rss(");
    await type("2.1 mm/s rms,\r", "... ");
    await type("0.8 mm/s rms)\r", "2.25 mm/s rms");
    await type("2 mm/s rms + 1 mm/s pk\r", "veladis: wrong-detector");
    await type("help rss\r", "root of the sum of squares");
    await type("names\r", "a = 0.250 in/s pk");
    await type("9 mm/s", "9 mm/s");
    await type("\x03", "(dropped)");
    await type("rss(1 mm/s rms,\r", "... ");
    await type("\x03", "(dropped)");
    await type("1 + 1\r", /\n2\r\n/);
    expect(await ended("exit\r")).toBe(0);
  });

  it("brings back a line typed in pieces as one, and drops an unfinished one with a word", async () => {
    const file = join(folder, "pieces");
    open({ VELADIS_HISTORY: file });
    await shows("> ");
    await type("rss(2.1 mm/s rms,\r", "... ");
    await type("0.8 mm/s rms)\r", "2.25 mm/s rms");
    await type("\x1b[A", "rss(2.1 mm/s rms, 0.8 mm/s rms)");
    await type("\x15max(1,\r", "... ");
    expect(await ended("exit\r")).toBe(0);
    expect(screen).toContain("the unfinished line is dropped");
    expect(readFileSync(file, "utf8")).toBe("rss(2.1 mm/s rms, 0.8 mm/s rms)\n");
    open({ VELADIS_HISTORY: file });
    await shows("> ");
    await type("max(1,\r", "... ");
    expect(await ended("\x04")).toBe(0);
    expect(screen).toContain("the unfinished line is dropped");
  });

  it("remembers its lines for the next time", async () => {
    expect(readFileSync(history, "utf8")).toContain("a * 1.25 to mm/s rms");
    open();
    await shows("> ");
    await type("\x1b[A", "1 + 1");
    expect(await ended("\x15\x04")).toBe(0);
  });

  it("brings back no line that a terminal would obey, and cuts a long file", async () => {
    writeFileSync(history, `${"1 + 2\n".repeat(2000)}\x1b[2J\n1 + 3\n`);
    open();
    await shows("> ");
    await type("\x1b[A", "1 + 3");
    await type("\x1b[A", "1 + 2");
    expect(screen).not.toContain("\x1b[2J");
    expect(await ended("\x15\x04")).toBe(0);
    expect(readFileSync(history, "utf8").split("\n")).toHaveLength(1001);
  });

  it("says once that a history cannot be kept, and serves", async () => {
    open({ VELADIS_HISTORY: folder });
    await shows("lines are not kept for the next time, EISDIR");
    await type("1 + 1\r", /\n2\r\n/);
    await type("1 + 2\r", /\n3\r\n/);
    expect(screen.match(/not kept/g)).toHaveLength(1);
    expect(await ended("\x04")).toBe(0);
  });

  it("ends by Ctrl-D, and by Ctrl-C twice", async () => {
    open({ VELADIS_HISTORY: "" });
    await shows("> ");
    expect(await ended("\x04")).toBe(0);
    open({ VELADIS_HISTORY: "" });
    await shows("> ");
    await type("\x03", "Ctrl-C once more ends the calculator, as exit does");
    // a line between starts the count anew
    await type("1 + 1\r", /\n2\r\n/);
    await type("\x03", "Ctrl-C once more");
    expect(await ended("\x03")).toBe(0);
  });

  it("has no words but its own", async () => {
    open({ VELADIS_HISTORY: "" });
    await shows("> ");
    for (const word of [".help", ".exit", ".break", ".editor", ".veladis"]) await type(`${word}\r`, "veladis: syntax");
    await type("\x03", "Ctrl-C once more");
    expect(screen).not.toMatch(/REPL|To exit|Ctrl\+|Abort on expression/);
    expect(await ended("\x03")).toBe(0);
  });

  it("drops a line on a terminal that knows no control sequences", async () => {
    open({ VELADIS_HISTORY: "", TERM: "dumb" });
    await shows("> ");
    await type("9 mm/s", "9 mm/s");
    await type("\x03", "(dropped)");
    await type("1 + 1\r", /\n2\r\n/);
    expect(await ended("exit\r")).toBe(0);
  });

  it("completes units behind a number", async () => {
    open({ VELADIS_HISTORY: "" });
    await shows("> ");
    await type("3 mm", "3 mm");
    // of keys that come at once, as pasted ones do, a tabulator stands for itself
    child?.stdin?.write("\t");
    await new Promise((resolve) => setTimeout(resolve, 500));
    await type("\t", "mm/s2");
    expect(screen).not.toContain("judge");
    expect(await ended("\x15\x04")).toBe(0);
  });
});
