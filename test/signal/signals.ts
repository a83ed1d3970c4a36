import { readFileSync } from "node:fs";
import results from "../references/scipy-signal.json";

export { results };

/** Noise of a linear congruential generator, -0.5 to 0.5: the same integers in every language. */
export function noise(length: number): Float64Array {
  let state = 20261125;
  return Float64Array.from({ length }, () => {
    state = (Math.imul(1664525, state) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  });
}

/** Offset, drift, three tones, noise and an impact every 0.1 s: invented, no machine's vibration. */
export function invented(length: number, rate: number): Float64Array {
  const random = noise(length);
  const period = Math.floor(rate / 10);
  return random.map((r, i) => {
    const t = i / rate;
    const since = i % period;
    return (
      0.3 +
      0.05 * t +
      1.2 * Math.sin(2 * Math.PI * 24.7 * t) +
      0.4 * Math.sin(2 * Math.PI * 49.4 * t + 1) +
      0.25 * Math.sin(2 * Math.PI * 333.3 * t + 2) +
      0.5 * r +
      2 * Math.exp(-since / 20) * Math.cos(0.9 * since)
    );
  });
}

/** A sum of sines: amplitude (peak), frequency in hertz, phase. */
export function tones(length: number, rate: number, ...parts: readonly (readonly [number, number, number?])[]) {
  return Float64Array.from({ length }, (_, i) =>
    parts.reduce((sum, [size, hertz, phase = 0]) => sum + size * Math.sin((2 * Math.PI * hertz * i) / rate + phase), 0),
  );
}

function column(name: string): Float64Array {
  const text = readFileSync(new URL(`../references/${name}`, import.meta.url), "utf8");
  return Float64Array.from(text.trim().split("\n").slice(1), Number);
}

export type SignalName = keyof typeof results.signals;

/** The signals of the fixtures, by name. */
export const signals: Readonly<Record<SignalName, () => Float64Array>> = {
  even: () => invented(8192, 5120),
  mixed: () => invented(10000, 10240),
  odd: () => invented(4995, 2560),
  prime: () => invented(4099, 2560),
  blower: () => column("measured-blower-gearbox-r0.csv"),
  fan: () => column("measured-fan-3-60-x.csv"),
};

export const names = Object.keys(signals) as SignalName[];
