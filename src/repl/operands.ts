import { convertAmplitude } from "../amplitude/index";
import { VeladisError } from "../core/index";
import { type Amplitude, amplitudeOf, format, typeOf, writtenIn } from "../reading/index";

/** The unit and detector of a reading, also where it is written as a level: arithmetic is on linear values. */
export function linearTypeOf({ unit, detector }: Amplitude): string {
  return typeOf(unit, detector).type;
}

/** The reading in a type of its own quantity; where it is written otherwise, by a conversion that its history tells. */
export function inType(reading: Amplitude, type: string): Amplitude {
  return writtenIn(reading) === type ? reading : convertAmplitude(reading, type);
}

function requireAlike(first: Amplitude, reading: Amplitude, doing: string): void {
  if (reading.quantity !== first.quantity) {
    throw new VeladisError("wrong-quantity", {
      expected: `readings of one quantity to ${doing}; convert one of them first, on a line of its own, as in c2 = c to g rms`,
      received: `${format(first)} (${first.quantity}) and ${format(reading)} (${reading.quantity})`,
    });
  }
  if (reading.detector !== first.detector) {
    throw new VeladisError("wrong-detector", {
      expected: `readings by one detector to ${doing}, since ${first.detector} and ${reading.detector} never mix; convert one of them first, on a line of its own, as in c2 = c to g rms`,
      received: `${format(first)} and ${format(reading)}`,
    });
  }
}

/**
 * Readings in the unit of the first, if they are of one quantity and one detector.
 *
 * @throws {@link VeladisError} `wrong-quantity` or `wrong-detector`, with the reason
 */
export function operands(readings: readonly Amplitude[], doing: string): Amplitude[] {
  const checked = readings.map(amplitudeOf);
  const first = checked[0] as Amplitude;
  for (const reading of checked) requireAlike(first, reading, doing);
  return checked.map((reading) => inType(reading, linearTypeOf(first)));
}

/** The values of two readings in the unit of the first. */
export function valuesOf(a: Amplitude, b: Amplitude, doing: string): [x: number, y: number] {
  const [one, other] = operands([a, b], doing) as [Amplitude, Amplitude];
  return [one.value, other.value];
}
