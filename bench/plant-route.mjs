// A route of 100,000 readings over 1,000 machines of 30 kinds, judged by tag: the whole command, beyond the start of the process.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { finish, report } from "./measure.mjs";

const kinds = Array.from({ length: 30 }, (_, i) => {
  const speed = [985, 1485, 2975][i % 3];
  if (i % 3 === 0)
    return `pump,${[15, 45, 90, 132, 250][i % 5]} kW,${speed} r/min,,housing,${i % 2 ? "category II" : "category I"}`;
  if (i % 3 === 1) return `fan,${[30, 55, 110, 200][i % 4]} kW,600 to ${speed} r/min,rigid,housing,BV-3`;
  return `motor,${[30, 75, 160, 400][i % 4]} kW,${speed} r/min,flexible,housing,`;
});
const folder = mkdtempSync(join(tmpdir(), "veladis-route-"));
const [list, route, one] = ["plant.csv", "route.csv", "one.csv"].map((name) => join(folder, name));
const machines = Array.from(
  { length: 1000 },
  (_, i) => `KW-${i},${kinds[i % 30]},${(1 + (i % 30) / 20).toFixed(2)} mm/s rms`,
);
writeFileSync(list, `tag,kind,power,speed,support,place,nameplate,baseline\n${machines.join("\n")}\n`);
const rows = Array.from({ length: 100_000 }, (_, i) => {
  const level = 0.1 + ((i * 7919) % 120) / 10;
  const [value, unit] = i % 4 === 3 ? [(level / 18).toFixed(4), "in/s pk"] : [level.toFixed(2), "mm/s rms"];
  return `KW-${i % 1000},bearing ${Math.floor(i / 3000) + 1} ${["H", "V", "A"][Math.floor(i / 1000) % 3]},${value},${unit},2026-04-${10 + (i % 20)}`;
});
const heading = "tag,point,value,unit,date\n";
writeFileSync(route, `${heading}${rows.join("\n")}\n`);
writeFileSync(one, `${heading}${rows[0]}\n`);

/** The least time of some runs of the command, in seconds. */
function seconds(file, more) {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 7; run++) {
    const begun = process.hrtime.bigint();
    execFileSync(process.execPath, [process.env.VELADIS ?? "dist/cli.js", "plant", "judge", list, file, ...more], {
      stdio: ["ignore", "ignore", "ignore"],
      maxBuffer: 1 << 30,
    });
    best = Math.min(best, Number(process.hrtime.bigint() - begun) / 1e9);
  }
  return best;
}

try {
  const start = seconds(one, ["--csv"]);
  report("a route of 100,000 readings to CSV, beyond a route of one", seconds(route, ["--csv"]) - start, 1, "s");
  console.log(`      the list of 1,000 machines and one reading: ${start.toFixed(2)} s`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
finish("A plant's route");
