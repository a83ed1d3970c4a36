import type { Detector } from "../detectors/index";
import type { UnitQuantities, UnitSpelling } from "../units/index";
import type { LevelReferenceName, levelReferences } from "./references";

/** A linear amplitude type, `<unit> <detector>`: `"in/s pk"`, `"mm/s rms"`, `"um pp"`. */
export type AmplitudeType = `${UnitSpelling} ${Detector}`;

/** A decibel level of an RMS value, with its reference written out or named. */
export type LevelType = `dB re ${number} ${UnitSpelling}` | `dB re ${LevelReferenceName}`;

/** Everything a reading can be written in. */
export type ReadingType = AmplitudeType | LevelType;

/** Detectors of two words: they end as one of one word does, and have to be tried first. */
type OfTwoWords = Extract<Detector, `${string} ${string}`>;

/** The quantity that a reading type measures. */
export type QuantityOf<Type extends ReadingType> = Type extends `dB re ${infer Name extends LevelReferenceName}`
  ? UnitQuantities[(typeof levelReferences)[Name]["unit"]]
  : Type extends `dB re ${number} ${infer Unit extends UnitSpelling}`
    ? UnitQuantities[Unit]
    : Type extends `${infer Unit extends UnitSpelling} ${OfTwoWords}`
      ? UnitQuantities[Unit]
      : Type extends `${infer Unit extends UnitSpelling} ${Exclude<Detector, OfTwoWords>}`
        ? UnitQuantities[Unit]
        : never;
