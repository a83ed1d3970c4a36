import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { parse } from "csv-parse/sync";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run";
import { hostileInput } from "./hostile-scheme";
import { hostileTexts, obeyed, shownAs } from "./hostile-texts";

const folder = mkdtempSync(join(tmpdir(), "veladis-writing-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** What a command printed: texts of both outputs, and bytes of data apart. */
interface Printed {
  readonly out: string;
  readonly err: string;
  readonly data: string;
}

async function veladis(
  args: readonly string[],
  input?: string | Buffer,
  colour = false,
  terminal = colour,
): Promise<Printed> {
  const printed = { out: "", err: "", data: "" };
  await run(args, {
    piped: input === undefined ? undefined : Readable.from([Buffer.from(input)]),
    ...{ colour, terminal },
    out: (text: string | Uint8Array) => {
      if (typeof text === "string") printed.out += text;
      else printed.data += Buffer.from(text).toString("utf8");
    },
    err: (text) => {
      printed.err += text;
    },
    progress: (text) => {
      printed.err += `${text}\n`;
    },
  });
  return printed;
}

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** Files that hold a text in headings, cells, places and schemes; and one whose name is the text where a name can be. */
function filesWith(text: string, at: number) {
  const path = (name: string): string => join(folder, `${at}-${name}`);
  const write = (name: string, content: string): string => {
    writeFileSync(path(name), content);
    return path(name);
  };
  const odd = join(folder, `${at}`);
  mkdirSync(odd, { recursive: true });
  const named = join(odd, `${text.replaceAll("\u0000", "").replaceAll("/", "")}.csv`);
  writeFileSync(named, "level\n1\n2\n3\n9\n");
  return {
    named,
    zones: write("zones.json", JSON.stringify(hostileInput(text, "zones"))),
    grades: write("grades.json", JSON.stringify(hostileInput(text, "grades"))),
    broken: write("broken.json", `{ ${text}`),
    headed: write(
      "headed.csv",
      `${quoted(text)},level,machine\n1,1.5,${quoted(text)}\n2,3,motor\n3,${quoted(text)},pump\n`,
    ),
    route: write("route.txt", `${text.replace(/[\r\n]/g, "")}: 4 mm/s rms\nfan ${text.replace(/[\r\n]/g, "")}: none\n`),
  };
}

type Files = ReturnType<typeof filesWith>;

const judged = ["--from", "mm/s rms", "--to", "in/s pk"];
const trip = [
  "--threshold",
  "6 mm/s rms",
  "--hysteresis",
  "5 %",
  "--delay",
  "1",
  "--timer-resets",
  "threshold",
  "--latching",
];

/** Commands that print a text from outside, by what they do with it. */
const commands: Readonly<Record<string, (text: string, files: Files) => readonly [args: string[], input?: string][]>> =
  {
    convert: (text, { named, headed, route }) => [
      [[text]],
      [[`4 mm/s rms ${text}`]],
      [[`4 mm/s rms to ${text}`]],
      [["--file", route, "--to", "in/s pk"]],
      [["--file", route, "--to", "in/s pk", "--explain"]],
      [["--file", route, "--to", "in/s pk", "--json"]],
      [["--file", text, "--to", "in/s pk"]],
      [["--file", named, "--column", text, ...judged]],
      [["--file", headed, "--column", "level", ...judged]],
      [["--file", headed, "--column", "level", "--json", ...judged]],
    ],
    judge: (text, { zones, grades, broken }) => [
      [["judge", "3 mm/s rms", "--scheme", zones]],
      [["judge", "3 mm/s rms", "--scheme", grades]],
      [["judge", "3 mm/s rms", "--scheme", grades, "--explain"]],
      [["judge", "3 mm/s rms", "--scheme", grades, "--json"]],
      [["judge", "--scheme", grades], `3 mm/s rms\n${text}\n`],
      [["judge", "--scheme", grades, "--json"], `3 mm/s rms\n${text}\n`],
      [["judge", "3 mm/s rms", "--scheme", broken]],
      [["judge", "3 mm/s rms", "--scheme", text]],
      [["judge", "3 mm/s rms", "--machine", `motor 1485 r/min rigid, ${text}`]],
      [["judge", "3 mm/s rms", "--machine", `motor 1485 r/min rigid, ${text}`, "--json"]],
      [["judge", `point ${text} 3 mm/s rms, other 2 mm/s rms`, "--machine", "motor 1485 r/min rigid"]],
      [["judge", `point ${text} 3 mm/s rms, other 2 mm/s rms`, "--machine", "motor 1485 r/min rigid", "--json"]],
    ],
    protection: (text, { zones, headed, named }) => [
      [["setpoints", "--baseline", "1.8 mm/s rms", "--machine", `motor 1485 r/min rigid, ${text}`]],
      [["setpoints", "--baseline", "1.8 mm/s rms", "--machine", "motor", "--scheme", zones]],
      [["setpoints", "--baseline", "1.8 mm/s rms", "--machine", "motor", "--scheme", zones, "--json"]],
      ...["markdown", "html", "json"].map((sheet): [string[]] => [
        [
          "setpoints",
          "--baseline",
          "1.8 mm/s rms",
          "--machine",
          "motor",
          "--scheme",
          zones,
          "--sheet",
          sheet,
          "--name",
          text,
        ],
      ]),
      [["setpoints", "--file", headed, "--column", text, "--from", "mm/s rms", "--machine", "motor 1485 r/min rigid"]],
      [["simulate", "--file", headed, "--column", "level", "--every", "1", "--from", "mm/s rms", ...trip]],
      [["simulate", "--file", named, "--column", text, "--every", "1", "--from", "mm/s rms", ...trip]],
      [["simulate", "--file", text, "--column", text, "--every", "1", "--from", "mm/s rms", ...trip]],
      ...["markdown", "html", "json"].map((sheet): [string[]] => [
        [
          "check",
          "--known",
          "8 mm/s rms",
          "--indicated",
          "7.9 mm/s rms",
          "--tolerance",
          "5 %",
          "--name",
          text,
          "--sheet",
          sheet,
        ],
      ]),
      [["check", "--known", text, "--indicated", text, "--tolerance", text]],
      [["check", "--file", headed, "--from", "mm/s rms", "--tolerance", "5 %"]],
      [["overall", named, "--rate", "1000", "--unit", "g", "--band", "300-400"]],
      [["overall", headed, "--column", text, "--rate", "1000", "--unit", "g"]],
      [["balance", "--mass", "12 kg", "--speed", "1485 r/min", "--unbalance", text]],
      [["balance", text, "--mass", "12 kg", "--speed", "1485 r/min"]],
      [["plan", "--threshold", text]],
    ],
    besides: (text) => [
      [["schemes", text]],
      [["schemes", "--machine", `motor, ${text}`]],
      [["schemes", "--machine", `motor, ${text}`, "--json"]],
      [["help", text]],
      [[`--${text}`]],
      [["judge", "--json", `--${text}`]],
      [["completion", text]],
    ],
    calculator: (text) => [
      [[], `${text}\n`],
      [[], `judge(3 mm/s rms, "motor 1485 r/min rigid, ${text}")\nlast\nexplain last\n`],
      [[], `judge("point ${text} 3 mm/s rms, other 2 mm/s rms", "motor 1485 r/min rigid")\n`],
      [[], `setpoints(1.8 mm/s rms, "motor 1485 r/min rigid, ${text}")\n`],
      [[], `a = "${text}"\na\nnames\nhelp ${text}\n`],
    ],
  };

// those that a terminal obeys, and some of the others: all of them go through the other media
const terminalTexts = hostileTexts.filter((text, i) => shownAs(text) !== text || i % 8 === 0);

describe.each(Object.entries(commands))("%s", (_, calls) => {
  it.each(terminalTexts.map((text, i) => [JSON.stringify(text), text, i] as const))(
    "prints nothing of %s that is obeyed",
    async (_name, text, i) => {
      const files = filesWith(text, i);
      for (const [args, input] of calls(text, files)) {
        const { out, err } = await veladis(args, input);
        expect(obeyed(out), `output of ${args.join(" ")}`).toBeUndefined();
        expect(obeyed(err), `errors of ${args.join(" ")}`).toBeUndefined();
        if (args.includes("--json")) {
          // each line is JSON, and none is a number or a text that an outsider wrote
          for (const line of `${out}${err}`.split("\n").filter((one) => one.startsWith("{"))) {
            expect(typeof JSON.parse(line)).toBe("object");
          }
        }
      }
      rmSync(join(folder, `${i}`), { recursive: true });
    },
  );
});

/** The text of a cell that was added: an apostrophe off where it stands before a formula. */
const takenOff = (cell: string): string =>
  /^'[\s']*[=+\-@\uff1d\uff0b\uff0d\uff20]/.test(cell) ? cell.slice(1) : cell;

describe("cells that are added to a table", () => {
  const table = (files: Files, ...more: string[]): string[] => [
    ...["table", files.headed, "--column", "level", "--from", "mm/s rms", "--to", "dB re 1e-6 m/s", ...more],
  ];

  it.each(hostileTexts.map((text, i) => [JSON.stringify(text), text, i] as const))("of %s", async (_, text, i) => {
    const files = filesWith(text, i);
    // as the file has it: halves of pairs are no text of a file
    const held = Buffer.from(text).toString();
    const outs = [join(folder, `${i}-answered.csv`), join(folder, `${i}-refused.csv`)] as const;
    const scheme = ["--scheme", files.grades];
    for (const { out, err, data } of [
      await veladis(table(files, ...scheme)),
      await veladis(table(files, ...scheme, "--out", outs[0], "--refused", outs[1], "--replace")),
      await veladis(table(files, ...scheme, "--json")),
    ]) {
      expect(obeyed(out)).toBeUndefined();
      expect(obeyed(err)).toBeUndefined();
      if (!data.startsWith("{")) continue;
      for (const line of data.trimEnd().split("\n")) {
        expect(obeyed(line)).toBeUndefined();
        expect(Object.values(JSON.parse(line).cells)).toHaveLength(3);
      }
    }
    const written = readdirSync(folder).filter((name) => name === `${i}-answered.csv` || name === `${i}-refused.csv`);
    for (const name of written) {
      const rows = parse(readFileSync(join(folder, name)), { relax_column_count: true }) as string[][];
      const own = ["level", "machine"];
      const first = rows[0] as string[];
      const added = first.flatMap((title, at) => (own.includes(title) || title === first[0] ? [] : [at]));
      for (const row of rows.slice(1)) {
        for (const at of added) {
          const cell = row[at] as string;
          expect(/^-?[\d.]+(e[-+]?\d+)?$/.test(cell) || !/^[\s]*[=+\-@\uff1d\uff0b\uff0d\uff20]/.test(cell), cell).toBe(
            true,
          );
          expect(obeyed(cell) ?? obeyed(`${cell}\n`)).toBeUndefined();
        }
      }
      // a row with a line end within a cell may be refused
      if (!name.includes("answered") || rows.length < 2 || /[\r\n]/.test(text)) continue;
      const at = first.indexOf("scheme");
      expect(takenOff(rows[1]?.[at] as string)).toBe(`id ${shownAs(text)}`);
      expect(takenOff(rows[1]?.[first.indexOf("zone")] as string)).toBe(`${shownAs(text)} calm`);
      expect(first[0]).toBe(held);
      expect(rows[1]?.[2]).toBe(held);
    }
    rmSync(join(folder, `${i}`), { recursive: true });
  });

  it("numbers stay numbers, below zero too", async () => {
    const path = join(folder, "numbers.csv");
    writeFileSync(path, "level\n0.5\n1e-9\n");
    const { data } = await veladis(["table", path, "--column", "level", "--from", "m/s rms", "--to", "dB re 1 m/s"]);
    const rows = parse(data) as string[][];
    expect(rows.slice(1).map((row) => Number(row[1]))).toEqual([
      expect.closeTo(20 * Math.log10(0.5), 9),
      expect.closeTo(-180, 9),
    ]);
  });
});

/** What sets a colour and takes it off. */
const mark = new RegExp(`${String.fromCharCode(27)}\\[(0|1;(30|97);48;2;\\d+;\\d+;\\d+)m`, "g");

describe("where a person reads", () => {
  it("zones have their colours, and nothing else steers the terminal", async () => {
    const { out } = await veladis(
      ["judge", "4.1 mm/s rms", "--machine", "motor 90 kW 1485 r/min rigid"],
      undefined,
      true,
    );
    expect(out.match(mark)).toHaveLength(2);
    expect(obeyed(out.replaceAll(mark, ""))).toBeUndefined();
    for (const text of hostileTexts) {
      const scheme = join(folder, "coloured.json");
      writeFileSync(scheme, JSON.stringify(hostileInput(text, "zones")));
      const { out: other } = await veladis(["judge", `4.1 mm/s rms`, "--scheme", scheme], undefined, true);
      expect(other.match(mark)).toHaveLength(2);
      expect(obeyed(other.replaceAll(mark, ""))).toBeUndefined();
    }
  });
});

describe("a terminal without colour, where data goes to it", () => {
  const add = ["--column", "level", ...judged];
  const commands: Record<string, string[]> = { table: ["table", ...add], "convert --column": add };
  const steers = /[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069\ufffe\uffff]/u;
  const layout = /\t|\r?\n/g;

  it.each(Object.entries(commands))("no heading and no cell steers it: %s", async (_, args) => {
    // a NUL is refused in any case
    for (const text of hostileTexts.filter((one) => !one.includes("\0"))) {
      const content = `level\t${quoted(text)}\r\n1.5\t${quoted(text)}\r\n`;
      const { out, data } = await veladis(args, content, false, true);
      expect([data, steers.exec(out.replaceAll(layout, ""))]).toEqual(["", null]);
      // in a pipe the bytes are those of the file
      const piped = await veladis(args, content);
      expect(piped.out).toBe("");
      expect(piped.data).toContain(Buffer.from(`1.5\t${quoted(text)}\t`).toString());
    }
  });

  it.each(Object.entries(commands))("UTF-16 and Latin-1 are shown as text: %s", async (_, args) => {
    const content = "level,µ\u001b[2J\n1.5,Lüfter\n";
    const shown = /^level,µ\\u001b\[2J,.*\n1\.5,Lüfter,/;
    const utf16 = await veladis(args, Buffer.from(`\ufeff${content}`, "utf16le"), false, true);
    expect([utf16.out, utf16.data]).toEqual([expect.stringMatching(shown), ""]);
    const latin1 = await veladis([...args, "--encoding", "latin-1"], Buffer.from(content, "latin1"), false, true);
    expect([latin1.out, latin1.data]).toEqual([expect.stringMatching(shown), ""]);
  });

  it("what goes to a file stays as it is", async () => {
    const path = join(folder, "kept.csv");
    await veladis(["table", ...add, "--out", path], "level,\u001b[31m\n1.5,\u001b[0m\n", false, true);
    const written = readFileSync(path, "utf8");
    expect([written.slice(0, 12), written.includes("\n1.5,\u001b[0m,")]).toEqual(["level,\u001b[31m,", true]);
  });
});
