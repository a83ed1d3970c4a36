import type { Amplitude } from "../reading/index";

/** A level with its frequency as a cell that is read again: `7 mm/s rms at 79.4 Hz`, in four digits. */
export function levelText({ value, unit, detector, hertz }: Amplitude): string {
  const level = `${Number(value.toPrecision(4))} ${unit} ${detector}`;
  return hertz === undefined ? level : `${level} at ${Number(hertz.toPrecision(6))} Hz`;
}
