import { requireText } from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { type Amplitude, format, significant } from "../reading/index";
import type { BenchSettings } from "./bench-settings";
import type { BenchFact } from "./bench-step";
import type { Shaker } from "./shaker";

type Told = readonly BenchFact[];

/** Rows of what was told; what was not is left out. */
export function toldRows(all: readonly (readonly [name: string, text: string | undefined])[]): Told {
  return all.flatMap(([name, text]) => (text === undefined ? [] : [Object.freeze({ name, text })]));
}

/** A level as it was told. */
function levelText(level: string | Amplitude): string {
  return typeof level === "string" ? level : format(level, { digits: 4 });
}

/** A frequency in hertz with the speed of it beside. */
export function frequencyText(frequency: Frequency): string {
  const hertz = hertzOf(frequency);
  return `${significant(hertz, 4)} Hz (${significant(60 * hertz, 4)} r/min)`;
}

/** The settings of a device in words, for the record. */
export function settingsTold(settings: BenchSettings, threshold: Amplitude, reset: Amplitude): Told {
  const { hysteresis, onDelay, offDelay, latching, contact, coil, sensorFault, band, tolerance, loop, sensor } =
    settings;
  return toldRows([
    ["threshold, as stored", format(threshold, { digits: 4 })],
    ["hysteresis", `${hysteresis}, clears below ${format(reset, { digits: 4 })}`],
    ["on-delay", `${onDelay} s`],
    ["off-delay", offDelay === undefined ? undefined : `${offDelay} s`],
    ["output", latching ? "latching, reset by hand" : "clears by itself"],
    ["contact", contact],
    ["coil", coil],
    ["sensor fault", sensorFault],
    ["band", band && `${frequencyText(band.lowest)} to ${frequencyText(band.highest)}`],
    ["tolerance", tolerance ?? "5 %"],
    ["loop", loop],
    ["sensor", sensor],
  ]);
}

/** The shaker in words, for the record. */
export function shakerTold(shaker: Shaker, load: string): Told {
  const { name, lowest, highest, frequencies, level, displacement, velocity, acceleration, force } = shaker;
  const { movingMass, payload, resolution, uncertainty } = shaker;
  const isOne = hertzOf(lowest) === hertzOf(highest);
  const range = isOne ? frequencyText(lowest) : `${frequencyText(lowest)} to ${frequencyText(highest)}`;
  return toldRows([
    ["shaker", name && requireText(name, "the name of a shaker", { option: "name" })],
    ["shaker, frequencies", frequencies === undefined ? range : frequencies.map(frequencyText).join(", ")],
    ["shaker, one level", level === undefined ? undefined : levelText(level)],
    ["shaker, stroke", displacement],
    ["shaker, velocity", velocity],
    ["shaker, acceleration", acceleration],
    ["shaker, force", force && `${force.newtons} N`],
    ["shaker, moving mass", movingMass],
    ["shaker, payload", payload],
    ["shaker, resolution", resolution],
    ["shaker, uncertainty", uncertainty],
    ["mass on the shaker", load],
  ]);
}
