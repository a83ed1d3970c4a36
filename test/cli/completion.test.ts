import { describe, expect, it } from "vitest";
import { pages } from "../../src/cli/commands/pages";
import { completionScripts } from "../../src/cli/options/completion-scripts";
import { completions } from "../../src/cli/options/completions";
import { builtInSchemes } from "../../src/severity/index";
import { root } from "../examples/fences";
import { runInShell } from "../examples/run-shell";
import { veladis } from "./in-process";

const following = (...words: string[]): Promise<string[]> => completions(words, pages);

describe("what can follow", () => {
  it("at first a command, or an option of the one that needs no name", async () => {
    expect(await following("")).toEqual([...new Set(Object.keys(pages).map((name) => name.split(" ")[0]))]);
    expect(await following("s")).toEqual(["schemes", "sql", "setpoints", "simulate", "shock", "sum"]);
    expect(await following("--dig")).toEqual(["--digits"]);
  });

  it("an option of the command that has not been given", async () => {
    expect(await following("judge", "--s")).toEqual(["--scheme", "--since", "--speed-unit", "--sensor", "--strict"]);
    expect(await following("judge", "--strict", "--s")).toEqual(["--scheme", "--since", "--speed-unit", "--sensor"]);
    expect(await following("table", "--machine-column", "a", "--machine-c")).toEqual(["--machine-column"]);
    expect(await following("plan", "")).toContain("--threshold");
  });

  it.each([
    [
      ["judge", "--scheme", "iso-10816-7"],
      ["iso-10816-7-2009", "iso-10816-7-2009-acceptance"],
    ],
    [["judge", "--scheme=iso-14694-2003-a"], ["iso-14694-2003-acceptance"]],
    [["judge", "--scheme", "=", "iso-14694-2003-a"], ["iso-14694-2003-acceptance"]],
    [["setpoints", "--sheet", "m"], ["markdown"]],
    [
      ["setpoints", "--sheet", "="],
      ["markdown", "html", "json"],
    ],
    [
      ["plan", "--relay", "normally closed"],
      ["normally closed, normally energised", "normally closed, normally de-energised"],
    ],
    [
      ["simulate", "--timer-resets", ""],
      ["threshold", "reset-level"],
    ],
    [
      ["simulate", "--sensor-fault", ""],
      ["alarm", "hold", "bad"],
    ],
    [
      ["overall", "--unit", "mm"],
      ["mm/s2", "mm/s", "mm"],
    ],
    [
      ["overall", "--edges", ""],
      ["ideal", "3dB"],
    ],
    [
      ["--to", "in/s p"],
      ["in/s pk", "in/s pp"],
    ],
    [
      ["completion", ""],
      ["bash", "zsh", "fish"],
    ],
  ])("the value of a closed list: %j", async (words, expected) => {
    expect(await following(...words)).toEqual(expected);
  });

  it("a scheme for the command that prints them", async () => {
    expect(await following("schemes", "")).toEqual(builtInSchemes.map(({ id }) => id));
  });

  it.each([
    [["judge", "4"]],
    [["judge", "--since", ""]],
    [["table", ""]],
    [["judge", "--", "--s"]],
    [["toString", ""]],
  ])("nothing where anything can: %j", async (words) => {
    expect(await following(...words)).toEqual([]);
  });

  it("by the command, a word a line", async () => {
    const { out, code } = await veladis(["completion", "--words", "--", "judge", "--sch"]);
    expect([out, code]).toEqual(["--scheme\n", 0]);
    expect((await veladis(["completion", "--words", "--", "judge", "--h"])).out).toBe("--help\n");
  });
});

describe("every value that is completed", () => {
  it.each([
    [
      "relay",
      [
        "plan",
        "--threshold",
        "9 mm/s rms",
        "--hysteresis",
        "8 %",
        "--delay",
        "8",
        "--latching",
        "--shaker",
        "8 Hz to 3 kHz",
      ],
    ],
    ["edges", ["overall", "docs/examples/fan-bearing.csv", "--rate", "2560", "--unit", "g"]],
    ["window", ["overall", "docs/examples/fan-bearing.csv", "--rate", "2560", "--unit", "g"]],
    ["detrend", ["overall", "docs/examples/fan-bearing.csv", "--rate", "2560", "--unit", "g"]],
    [
      "rounds",
      ["setpoints", "--baseline", "2 mm/s rms", "--limits", "4.5 mm/s rms, 7.1 mm/s rms", "--step", "0.2 mm/s rms"],
    ],
    ["rule", ["check", "--known", "1 g pk", "--indicated", "1 g pk", "--tolerance", "5 %", "--uncertainty", "2 %"]],
    ["to", ["1 mm/s rms at 25 Hz"]],
  ])("of --%s is taken", async (option, call) => {
    const named = Object.hasOwn(pages, call[0] as string) ? [call[0] as string] : [];
    const values = await following(...named, `--${option}`, "");
    expect(values.length).toBeGreaterThan(1);
    for (const value of values) {
      const answer = await veladis([...call, `--${option}`, value]);
      // a true peak is related to others by a stated crest factor alone
      if (value.endsWith("true pk")) expect(answer.err).toContain("not-a-sine");
      else expect(answer).toMatchObject({ code: 0 });
    }
  });
});

describe("the script of bash", () => {
  /** What bash puts in place of the last word. */
  const replies = (...words: string[]): string[] => {
    const typed = ["veladis", ...words].map((word) => `'${word.replaceAll("'", "'\\''")}'`).join(" ");
    const { out } = runInShell(
      `eval "$(veladis completion bash)"\nCOMP_WORDS=(${typed})\nCOMP_CWORD=${words.length}\n_veladis\nprintf '%s\\n' "\${COMPREPLY[@]}"`,
      root,
    );
    return out.trimEnd().split("\n");
  };

  it("completes commands, options and values", () => {
    expect(replies("jud")).toEqual(["judge"]);
    expect(replies("judge", "--sch")).toEqual(["--scheme"]);
    expect(replies("judge", "--scheme", "=", "iso-14694-2003-a")).toEqual(["iso-14694-2003-acceptance"]);
    expect(replies("judge", "4")).toEqual([""]);
  });

  it("quotes a value of several words, unless it stands within quotation marks", () => {
    expect(replies("--to", "in/s\\ r")).toEqual(["in/s\\ rms"]);
    expect(replies("--to", '"in/s r')).toEqual(["in/s rms"]);
  });
});

it("every shell has its script, which calls the command", async () => {
  for (const [shell, script] of Object.entries(completionScripts)) {
    expect((await veladis(["completion", shell])).out).toBe(script);
    expect(script).toContain("veladis completion --words -- ");
  }
});
