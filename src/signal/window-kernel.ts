import { type WindowName, windows } from "./windows";

function sinc(x: number): number {
  return x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
}

/**
 * What a window leaves of a tone on a line `off` bins away from it, 1 at 0: the window's transform, for a record of
 * a hundred samples or more.
 */
export function windowKernel(window: WindowName, off: number): number {
  const { terms } = windows[window];
  let sum = (terms[0] as number) * sinc(off);
  for (let m = 1; m < terms.length; m++) sum += ((terms[m] as number) / 2) * (sinc(off - m) + sinc(off + m));
  return sum / (terms[0] as number);
}
