import { significant } from "../reading/index";

/** A length along the axis of a probe. */
export interface ProbeLength {
  readonly um: number;
  readonly mil: number;
}

const UM_PER_MIL = 25.4;

/** A length in both units. */
export function probeLength(um: number): ProbeLength {
  return Object.freeze({ um, mil: um / UM_PER_MIL });
}

/** A length in words, in both units. */
export function probeLengthText({ um, mil }: ProbeLength): string {
  return `${significant(um, 4)} um (${significant(mil, 4)} mil)`;
}

/** A sensitivity in mV/um in words, in both units. */
export function probeSensitivityText(perUm: number): string {
  return `${significant(perUm, 4)} mV/um (${significant(perUm * UM_PER_MIL, 4)} mV/mil)`;
}

/** A direct voltage in words. */
export function voltsText(volts: number): string {
  return `${significant(volts, 4)} V`;
}
