import { detectors } from "../../detectors/index";
import { coils, contacts, roundings, sensorFaults } from "../../device/index";
import { frequencyUnits } from "../../frequency/index";
import { changedSettings } from "../../plant/index";
import { builtInSchemes } from "../../severity/index";
import { bandEdges, trends, windows } from "../../signal/index";
import { sqlDialects } from "../../sql/index";
import { badChannels } from "../../trip/index";
import { units } from "../../units/index";
import { decisionRules } from "../../verification/index";
import { rawFormats } from "../input/raw-samples";

/** Lists of the library from which the values of options are completed; loaded for that alone. */
export const lists = {
  schemes: () => builtInSchemes.map(({ id }) => id),
  units: () => Object.keys(units),
  detectors: () => Object.keys(detectors),
  types: () => Object.keys(units).flatMap((unit) => Object.keys(detectors).map((detector) => `${unit} ${detector}`)),
  "frequency units": () => Object.keys(frequencyUnits),
  relays: () => contacts.flatMap((contact) => coils.map((coil) => `${contact}, ${coil}`)),
  "sensor faults": () => [...sensorFaults],
  "bad channels": () => [...badChannels],
  roundings: () => [...roundings],
  // a value that begins with a dash looks like an option
  edges: () => Object.keys(bandEdges).map((rule) => rule.replace(/^-| /g, "")),
  windows: () => Object.keys(windows),
  trends: () => Object.keys(trends),
  "changed settings": () => [...changedSettings],
  "decision rules": () => Object.keys(decisionRules),
  engines: () => [...sqlDialects],
  formats: () => ["csv", "parquet", "wav", ...Object.keys(rawFormats)],
} as const satisfies Record<string, () => readonly string[]>;

/** The name of a list: a key of {@link lists}. */
export type ListName = keyof typeof lists;
