import type { Detector } from "../detectors/index";
import type { UnitQuantities, UnitSpelling } from "../units/index";
import type { LevelReferenceName, levelReferences } from "./references";

/** A linear amplitude type, `<unit> <detector>`: `"in/s pk"`, `"mm/s rms"`, `"um pp"`. */
export type AmplitudeType = `${UnitSpelling} ${Detector}`;

/** A decibel level of an RMS value, with its reference written out or named. */
export type LevelType = `dB re ${number} ${UnitSpelling}` | `dB re ${LevelReferenceName}`;

/** Everything a reading can be written in. */
export type ReadingType = AmplitudeType | LevelType;

/** A text that names a reading type: an editor completes the spellings that the types know, run time checks it and reads the others. */
export type ReadingTypeText = ReadingType | (string & {});

/** The quantity that a reading type measures. */
export type QuantityOf<Type extends ReadingType> = Type extends `dB re ${infer Name extends LevelReferenceName}`
  ? UnitQuantities[(typeof levelReferences)[Name]["unit"]]
  : Type extends `dB re ${number} ${infer Unit extends UnitSpelling}`
    ? UnitQuantities[Unit]
    : // a detector of two words ends as one of one word does, and has to be tried first
      Type extends `${infer Unit extends UnitSpelling} ${Extract<Detector, `${string} ${string}`>}`
      ? UnitQuantities[Unit]
      : Type extends `${infer Unit extends UnitSpelling} ${Exclude<Detector, Extract<Detector, `${string} ${string}`>>}`
        ? UnitQuantities[Unit]
        : never;
