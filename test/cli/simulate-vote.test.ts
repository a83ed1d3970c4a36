import { VotedTrip } from "veladis/protection";
import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

/** Three bearings of turbine 1 through a rub, invented: front to its danger level, rear to its alert, the generator at rest. */
const rows = [
  "0,62,48,41",
  "5,88,57,44",
  "12,164,97,47",
  "20,176,104,48",
  "25,181,112,49",
  "30,148,98,47",
  "60,71,52,42",
];
const file = `${["seconds,front,rear,generator", ...rows].join("\n")}\n`;
const common = [
  ...["simulate", "--from", "um pp", "--column", "front,rear,generator", "--threshold", "160 um pp"],
  ...["--hysteresis", "5 %", "--delay", "1", "--timer-resets", "threshold", "--latching"],
];
const mixed = ["--vote", "1 danger and 1 alert of 3", "--alert", "100 um pp", "--alert-delay", "1"];
const plain = (text: string) => text.replace(/ +/g, " ");

describe("simulate --vote", () => {
  it("names the first out at the trip of the vote: a channel that was first and cleared before is not", async () => {
    const cleared = "t,front,rear,generator\n0,1,1,1\n10,9,1,1\n20,9,9,1\n30,1,9,1\n40,1,9,9\n50,9,9,9\n60,9,9,9\n";
    const { out } = await veladis(
      [
        "simulate",
        "--from",
        "mm/s rms",
        "--column",
        "front,rear,generator",
        "--vote",
        "3oo3",
        "--threshold",
        "6 mm/s rms",
      ].concat(["--hysteresis", "5 %", "--delay", "1", "--timer-resets", "threshold", "--latching"]),
      cleared,
    );
    expect(plain(out)).toContain("\n 51 vote trip - first out rear\n");
    expect(plain(out)).toContain("\nas set trip at 51 s, first out rear\n");
    expect(plain(out)).toContain("first out rear\n\nchannel");
    expect(plain(out)).toContain("\n 11 front trip 9.00\n");
  });

  it("trips a mixed vote once a second bearing is at its alert, and tells the first out", async () => {
    const { out, code } = await veladis([...common, ...mixed], file);
    expect(code).toBe(0);
    expect(plain(out)).toContain("\n 13 front trip 164 first out\n");
    expect(plain(out)).toContain("\n 21 rear alert trip 104\n 21 vote trip - first out front\n");
    expect(plain(out)).toContain("\nas set trip at 21 s, first out front\n");
    expect(plain(out)).toContain("\n1oo3 trip at 13 s, first out front\n2oo3 no trip\n");
  });

  it("prints as data what the library says", async () => {
    const { out } = await veladis([...common, ...mixed, "--json"], file);
    const { settings, events, end } = JSON.parse(out);
    const columns = rows.map((row) => row.split(",").map(Number));
    const histories = Object.fromEntries(
      ["front", "rear", "generator"].map((name, i) => [name, columns.map((row) => row[i + 1] as number)]),
    );
    const trip = new VotedTrip(settings);
    const times = columns.map(([time]) => time as number);
    expect(events).toEqual(JSON.parse(JSON.stringify(trip.run(histories, times))));
    expect(end.firstOut).toBe("front");
  });

  it("tells what a bypass costs, and what would have come without it", async () => {
    const bypassed = ["--vote", "1oo3", "--commands", "bypass on front at 3"];
    const { out } = await veladis([...common, ...bypassed], file);
    expect(out).toContain("\nwith front bypassed 1oo3 becomes 1oo2\n");
    expect(plain(out)).toContain("\nas set no trip\n");
    expect(plain(out)).toContain("\nwithout the bypass trip at 13 s, first out front\n");
    const pair = ["--vote", "3oo3", "--commands", "bypass on rear at 3"];
    const never = await veladis([...common, ...pair], file);
    expect(never.out).toContain("at the end no trip is possible");
    expect(plain(never.out)).toContain("\n 3 vote protection lost -\n");
  });

  it("a channel that fails counts as told", async () => {
    const failed = file.replace("25,181,112,49", "25,181,,49");
    const bad = ["--vote", "2oo3", "--sensor-fault", "bad"];
    const forTrip = await veladis([...common, ...bad, "--bad-channel", "votes to trip"], failed);
    expect(plain(forTrip.out)).toContain("\nas set trip at 25 s, first out front\n");
    const silent = await veladis([...common, ...bad, "--bad-channel", "does not vote"], failed);
    expect(plain(silent.out)).toContain("\nas set no trip\n");
  });
});
