import * as plants from "veladis/plant";
import type { Call } from "./calls";

/** A public function of `veladis/plant` with arguments that it answers, unfrozen as a caller may have made them. */
function call(name: keyof typeof plants, ...args: unknown[]): Call {
  return {
    name,
    args: () => structuredClone(args),
    run: (...given) => (plants as unknown as Record<string, (...all: unknown[]) => unknown>)[name]?.(...given),
  };
}

const plant = plants.parsePlant({
  heading: [
    ...["tag", "kind", "alarm", "trip", "band", "loop", "check date", "known", "as found", "as left", "tolerance"],
    ...["interval months", "room"],
  ],
  rows: [
    [
      ...["A", "fan", "5.6 mm/s rms", "9 mm/s rms", "10 Hz to 1000 Hz", "0 to 20 mm/s rms", "2025-10-31"],
      ...["8 mm/s rms at 40 Hz", "7.3 mm/s rms", "7.9 mm/s rms", "5 %", "12", "K2"],
    ],
    ["B", "pump", "", "7.6 mm/s rms", "", "", "", "", "", "", "", "12", ""],
  ],
});
const on = "2026-12-01";
const shaker = { lowest: "8 Hz", highest: "3 kHz", displacement: "5 mm pp", acceleration: "6 g pk" } as const;
const rows = [
  ["A-2026-12-01", "A", "2026-12-03", "8 mm/s rms at 40 Hz", "7.3 mm/s rms", "7.9 mm/s rms", "", "shift B"],
];
const read = { on: "2026-12-05", decimal: ".", dates: "day-first" } as const;
const results = { heading: [...plants.resultTitles], rows, lines: [2] };
const record = {
  heading: [...plants.changeTitles],
  rows: [
    ["2026-10-01", "A", "trip", "8 mm/s rms", "9 mm/s rms", "trial", "shift B", "engineer", "2026-10-31", "2026-10-30"],
    ["2026-11-01", "B", "bypass", "", "trip", "sensor", "shift B", "", "", ""],
  ],
  lines: [2, 3],
};
const { changes } = plants.parseChanges(record);

/** What `veladis/plant` tells of checks and of a record of changes. */
export const plantCheckCalls: readonly Call[] = [
  call("dueChecks", plant, { on, ahead: 30 }),
  call("benchRound", plant, plants.dueChecks(plant, { on }), shaker, { on, load: "0.2 kg", frequencies: ["80 Hz"] }),
  call("takeResults", plant, results, read),
  call("doubtfulPeriods", plant, plants.takeResults(plant, results, read).results),
  call("parseChanges", record, { decimal: ".", dates: "day-first" }),
  call("auditChanges", plant, changes, { on, before: structuredClone(plant) }),
  call("changeCautions", changes[0]),
];
