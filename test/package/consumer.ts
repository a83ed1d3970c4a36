import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { root } from "../examples/fences";

const manifest = JSON.parse(readFileSync(`${root}/package.json`, "utf8")) as { exports: Record<string, unknown> };

/** The public names of the entries: `veladis`, `veladis/severity` and so on. */
export const entryNames: readonly string[] = Object.keys(manifest.exports)
  .filter((path) => path !== "./package.json")
  .map((path) => path.replace(/^\./, "veladis"));

/** Runs a command and gives what it printed; what it said on stderr, or that it failed, is an error. */
export function ran(command: string, args: readonly string[], cwd: string, { quiet = true, input = "" } = {}): string {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, input, encoding: "utf8" });
  if (status !== 0 || (quiet && stderr !== "")) throw new Error(`${command} ${args.join(" ")}\n${stdout}${stderr}`);
  return stdout;
}

/** A throw-away project that has the packed tarball installed, as a user would. */
export interface Consumer {
  readonly folder: string;
  /** Where the package lies in it. */
  readonly installed: string;
  write(name: string, text: string): void;
  /** Runs a script in the folder, by this Node or another, and gives what it printed. */
  printed(name: string, code: string, node?: string): string;
  remove(): void;
}

/** The tarball to try: the one that the environment names, else one packed into a folder from what is built. */
function tarballIn(folder: string): string {
  const given = process.env.VELADIS_TARBALL;
  if (given !== undefined) return resolve(given);
  ran("npm", ["pack", "--ignore-scripts", "--pack-destination", folder], root, { quiet: false });
  return `./${readdirSync(folder).find((name) => name.endsWith(".tgz"))}`;
}

/** Installs what is to be published: packed from `dist/`, or the tarball of `VELADIS_TARBALL`. */
export function newConsumer(): Consumer {
  const folder = mkdtempSync(join(tmpdir(), "veladis-consumer-"));
  const write = (name: string, text: string): void => writeFileSync(join(folder, name), text);
  const tarball = tarballIn(folder);
  write("package.json", JSON.stringify({ name: "consumer", private: true, type: "module" }));
  const options = ["--ignore-scripts", "--prefer-offline", "--no-audit", "--no-fund"];
  ran("npm", ["install", ...options, tarball], folder, { quiet: false });
  return {
    folder,
    installed: join(folder, "node_modules/veladis"),
    write,
    printed: (name, code, node = process.execPath) => {
      write(name, code);
      return ran(node, [name], folder).trim();
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
