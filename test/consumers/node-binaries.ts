import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "../examples/fences";

/** A version of Node to run under, or why there is none here. */
export type NodeBinary =
  | { readonly version: string; readonly path: string }
  | { readonly version: string; readonly missing: string };

const { engines } = JSON.parse(readFileSync(`${root}/package.json`, "utf8")) as { engines: { node: string } };

/** The oldest version that the manifest admits, then the newest of each line that is kept up. */
const versions = [`${/\d+\.\d+/.exec(engines.node)?.[0]}.0`, "20", "22", "24"];

/** Node of several versions, each from its package on npm for this platform, in a folder that `end` removes. */
export function nodeBinaries(): { binaries: readonly NodeBinary[]; end: () => void } {
  const folder = mkdtempSync(join(tmpdir(), "veladis-nodes-"));
  const platform = `${process.platform === "win32" ? "win" : process.platform}-${process.arch}`;
  writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true }));
  const options = ["--ignore-scripts", "--prefer-offline", "--no-audit", "--no-fund", "--fetch-retries", "1"];
  const binaries = versions.map((wanted): NodeBinary => {
    const spec = `node-${wanted}@npm:node-${platform}@${wanted}`;
    const install = spawnSync("npm", ["install", ...options, spec], { cwd: folder, encoding: "utf8" });
    const path = join(
      folder,
      "node_modules",
      `node-${wanted}`,
      "bin",
      process.platform === "win32" ? "node.exe" : "node",
    );
    const { status, stdout, stderr } = spawnSync(path, ["--version"], { encoding: "utf8" });
    if (status === 0) return { version: stdout.trim(), path };
    const [reason = `it does not run on ${platform}: ${stderr}`] = install.stderr.match(/(?<=error ).*/g) ?? [];
    return { version: wanted, missing: reason };
  });
  return { binaries, end: () => rmSync(folder, { recursive: true, force: true }) };
}
