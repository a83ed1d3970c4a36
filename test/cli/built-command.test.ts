import { execFileSync, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../examples/fences";
import { veladis } from "./in-process";

describe("the built command", () => {
  const cli = `${root}/dist/cli.js`;

  it("never loads mathjs or csv-parse for one line", () => {
    const { stderr, stdout } = spawnSync(process.execPath, [cli, "1 in/s pk to mm/s pk"], {
      encoding: "utf8",
      env: { ...process.env, NODE_DEBUG: "module,esm" },
    });
    expect(stdout).toBe("1 in/s pk = 25.4 mm/s pk\n");
    expect(stderr).not.toMatch(/mathjs|csv-parse/);
  });

  it("prints help with examples, and the version", async () => {
    const help = await veladis(["--help"]);
    expect(help).toMatchObject({ code: 0, err: "" });
    expect(help.out).toMatch(/veladis "0\.25 in\/s pk at 1500 r\/min to mm\/s rms"/);
    expect((await veladis(["convert", "--help"])).out.length).toBeLessThan(help.out.length);
    expect((await veladis(["--version"])).out).toBe("0.1.0\n");
  });

  it("ends quietly when its reader has seen enough", async () => {
    const lines = "1 mm/s rms\n".repeat(50_000);
    const child = spawn("bash", [
      "-c",
      `"${process.execPath}" "${cli}" --to "in/s pk" | head -n 1; exit \${PIPESTATUS[0]}`,
    ]);
    let err = "";
    child.stderr.on("data", (text) => {
      err += text;
    });
    child.stdin.on("error", () => undefined);
    child.stdin.end(lines);
    const code = await new Promise((resolve) => child.on("close", resolve));
    // 128 and SIGPIPE, as a shell tells of any command whose reader has gone
    expect({ code, err }).toEqual({ code: 141, err: "" });
  });

  it("a date without a zone is the same wherever it is read", () => {
    // clocks go forward in Berlin on 29 March 2026 at 02:00, so that 02:30 is no time there
    const path = join(mkdtempSync(join(tmpdir(), "veladis-built-")), "local.csv");
    const words = ["simulate", "--hysteresis", "5 %", "--timer-resets", "threshold", "--latching", "--delay", "2"];
    const gs = [...words, "--from", "g rms", "--threshold", "12.05 g rms"];
    writeFileSync(path, "time,level\n2026-03-29 01:59:59,3\n2026-03-29 02:30:00,13\n2026-03-29 03:00:01,3\n");
    const outputs = ["UTC", "Europe/Berlin", "America/New_York", "Asia/Kathmandu"].map((TZ) =>
      execFileSync(process.execPath, [cli, ...gs, "--file", path, "--json"], {
        encoding: "utf8",
        stdio: ["ignore", "pipe", "ignore"],
        env: { ...process.env, TZ },
      }),
    );
    expect(new Set(outputs).size).toBe(1);
    expect(JSON.parse(outputs[0] as string)).toMatchObject({
      begins: "2026-03-29 01:59:59",
      events: [{ event: "trip", time: 1803, clock: "2026-03-29 02:30:02" }],
      end: { time: 3602 },
    });
  });
});
