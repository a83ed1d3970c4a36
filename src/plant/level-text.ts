import type { Amplitude } from "../reading/index";

/** A level with its frequency as a cell that is read again: `7 mm/s rms at 79.4 Hz`, in four digits. */
export function levelText({ value, unit, detector, hertz }: Amplitude): string {
  const level = `${Number(value.toPrecision(4))} ${unit} ${detector}`;
  return hertz === undefined ? level : `${level} at ${Number(hertz.toPrecision(6))} Hz`;
}

/** The size of a share in percent, in one decimal; a half that arithmetic left a hair short is rounded up all the same. */
export function percentText(percent: number): string {
  return (Math.abs(percent) * (1 + 1e-12)).toFixed(1);
}
