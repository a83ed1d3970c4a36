import { bandResponse } from "../device/index";
import { format, significant } from "../reading/index";
import { statedAlone, statedText } from "../uncertainty/index";
import type { BenchSettings } from "./bench-settings";
import type { BenchStep } from "./bench-step";
import { frequencyText } from "./bench-told";
import type { Shaker } from "./shaker";

/** Share of the level that a device reads at the -3 dB edge of its band, less what its other edge takes off. */
export const IN_BAND = 0.7;

/** Disconnected for the test, the device protects nothing: said before the first step. */
const BEFORE: readonly string[] = /* @__PURE__ */ Object.freeze([
  "before: record the setting as found, and under the site's procedure disconnect this device from the trip of the running machine",
  "while it is disconnected the machine has no vibration trip from this device: stop it, or protect it in another way the site approves",
]);

/** Share of the level that the device nominally reads at a frequency. */
export function responseOf({ band }: BenchSettings, hertz: number): number {
  return band === undefined ? 1 : bandResponse({ hertz }, band);
}

/** Steps by their numbers: `steps 1 to 3, 5`. */
export function stepsText(steps: readonly Pick<BenchStep, "number">[]): string {
  const runs: [number, number][] = [];
  for (const { number } of steps) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  const texts = runs.map(([from, to]) =>
    from === to ? `${from}` : `${from}${to === from + 1 ? " and" : " to"} ${to}`,
  );
  return `step${steps.length === 1 ? "" : "s"} ${texts.join(", ")}`;
}

/** What a shaker leaves unproven. */
function unproven({ level }: Shaker, sets: boolean, steps: readonly BenchStep[]): string[] {
  const asked = steps.filter((step) => step.level !== null);
  const can = asked.filter(({ possible }) => possible);
  if (can.length === asked.length) return [];
  const cannot = `cannot do ${stepsText(asked.filter(({ possible }) => !possible))}`;
  const way = "or inject a signal in place of the sensor, by a plan of its own";
  if (can.length === 0) {
    return [
      `this shaker can do none of the ${asked.length} steps that need it, and nothing of reading, trip and reset is proven: take another shaker, another frequency in the band, ${way}`,
    ];
  }
  const which = `this shaker can do ${stepsText(can)}; it ${cannot}`;
  if (level === undefined) {
    return [
      `${which}: what those prove stays unproven${sets ? "" : ", and no trip is proven"}; take another shaker, another frequency in the band, ${way}`,
    ];
  }
  const written = typeof level === "string" ? level : format(level);
  return [
    which,
    `the shaker gives one level, ${written}: ${sets ? "that the output sets there proves a threshold at or below it, and not where it is set" : "it proves the reading there, and no trip"}; to prove the setting take a shaker that can be set, ${way}`,
  ];
}

/** An uncertainty as it was stated, and what was taken of one without a coverage factor. */
function uncertaintyWords(text: string): string {
  const stated = statedAlone(text);
  return `${statedText(stated)}${stated.coverage === undefined ? ", taken as a bound with equal chance within" : ""}`;
}

/** On the steps, and on what is done after the last. */
export function notesOn(settings: BenchSettings, shaker: Shaker, hertz: readonly number[]): string[] {
  const { tolerance = "5 %" } = settings;
  return [
    ...(shaker.level === undefined
      ? [
          `levels that prove threshold and reset level lie away from them by what device and shaker may be off, and are rounded further away, ${shaker.resolution === undefined ? "to three digits" : `to whole steps of ${shaker.resolution}`}`,
        ]
      : []),
    ...(shaker.frequencies === undefined
      ? []
      : [
          `frequencies that the shaker has: ${shaker.frequencies.map(frequencyText).join(", ")}; those to test at can be chosen`,
        ]),
    "mount the sensor as on the machine (stud torque, cable tied down); levels of a sine, one frequency at a time",
    `readings are held against ${tolerance}${shaker.uncertainty === undefined ? "" : `; the shaker's own uncertainty is ${uncertaintyWords(shaker.uncertainty)}`}`,
    ...hertz.flatMap((one) => {
      const share = responseOf(settings, one);
      return share > 0.98
        ? []
        : [
            share < IN_BAND
              ? `${significant(one)} Hz lies outside the band: the device nominally reads ${significant(share)} of the level there, and sees little of such a vibration; no level proves a setting`
              : `at ${significant(one)} Hz a device of this band nominally reads ${significant(share)} of the level, so it takes ${significant(1 / share)} times the level for the same reading`,
          ];
    }),
    "after: put every setting back, reconnect the device to the trip, lift every bypass, prove the whole path to the machine's trip, and record who did so and when",
  ];
}

/** What is said before the first step: what this shaker leaves unproven, then what is done for safety. */
export function saidBefore(shaker: Shaker, sets: boolean, steps: readonly BenchStep[]): readonly string[] {
  return Object.freeze([...unproven(shaker, sets, steps), ...BEFORE]);
}
