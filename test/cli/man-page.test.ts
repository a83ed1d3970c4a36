import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { version } from "../../package.json";
import { pages } from "../../src/cli/commands/pages";
import type { CommandPage } from "../../src/cli/options/command-page";
import { manPage } from "../../src/cli/options/man-page";

const all = await Promise.all(
  Object.entries(pages).map(async ([name, load]) => [name, (await load()) as CommandPage] as const),
);
const page = manPage(version, all);
const hasGroff = spawnSync("groff", ["--version"]).status === 0;

describe("the manual page", () => {
  it("has the sections that man(7) asks for, in its order", () => {
    const headings = [...page.matchAll(/^\.SH (.*)$/gm)].map(([, text]) => text);
    expect(headings.slice(0, 3)).toEqual(["NAME", "SYNOPSIS", "COMMANDS"]);
    expect(headings.slice(-2)).toEqual(["EXIT STATUS", "ENVIRONMENT"]);
    expect(page).toMatch(/^\.TH VELADIS 1 /);
  });

  it("names every command and every option", () => {
    for (const [name, { options }] of all) {
      const start = page.indexOf(`.SH VELADIS ${name.toUpperCase().replaceAll("-", "\\-")}\n`);
      const part = page.slice(start, page.indexOf("\n.SH ", start));
      for (const option of Object.keys(options)) expect(part).toContain(`.B ${`--${option}`.replaceAll("-", "\\-")}`);
    }
  });

  it("lets no text begin a request: lines with a point in front are those of the page alone", () => {
    const requests = [...page.matchAll(/^[.'](\S*)/gm)].map(([, name]) => name);
    expect([...new Set(requests)].sort()).toEqual(["B", "I", "PP", "SH", "TH", "TP", "fi", "nf"]);
  });

  it.skipIf(!hasGroff)("is set by groff without a warning, its texts as they are", () => {
    const { stdout, stderr } = spawnSync("groff", ["-man", "-Tutf8", "-ww", "-K", "utf8", "-P-c"], {
      input: page,
      encoding: "utf8",
    });
    expect(stderr.split("\n").filter((line) => line !== "" && !/cannot (adjust|break) line/.test(line))).toEqual([]);
    // letters in bold are struck twice
    const words = stdout
      .split("\b")
      .reduce((all, part) => all.slice(0, -1) + part)
      .replace(/\s+/g, " ");
    expect(words).toContain("--fail-from B|C|D");
    expect(words).toContain("veladis - vibration amplitudes for the protection of rotating plant");
  });
});
