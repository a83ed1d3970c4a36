import { label, stroke } from "./markup";

/** A number as it stands at an axis: plain, thousands parted by a thin space. */
export function tickText(value: number): string {
  const plain = String(Number(value.toPrecision(6)));
  const [whole = "", ...decimals] = plain.split(".");
  if (whole.length < 5 || plain.includes("e")) return plain;
  return [whole.replace(/\B(?=(\d{3})+$)/g, "\u2009"), ...decimals].join(".");
}

/** A tick: where, and what stands there. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** Ticks that leave at least `gap` pixels between them. */
export function spacedTicks(ticks: readonly Tick[], gap: (text: string) => number): Tick[] {
  const kept: Tick[] = [];
  for (const tick of [...ticks].sort((a, b) => a.at - b.at)) {
    const last = kept.at(-1);
    if (last === undefined || tick.at - last.at >= (gap(tick.text) + gap(last.text)) / 2) kept.push(tick);
  }
  return kept;
}

/** Ticks of a linear axis at round numbers, about as many as are asked for. */
export function roundTicks(scale: { (value: number): number; ticks(count: number): number[] }, count: number): Tick[] {
  return scale.ticks(count).map((value) => ({ at: scale(value), text: tickText(value) }));
}

/** Ticks of a logarithmic axis: decades, with 2 and 5 where there is room. */
export function logTicks(low: number, high: number, place: (value: number) => number, room: number): Tick[] {
  const decade = Math.abs(place(low * 10) - place(low));
  const steps = decade > room * 3 ? [1, 2, 5] : [1];
  const ticks: Tick[] = [];
  for (let power = Math.floor(Math.log10(low)); 10 ** power <= high * (1 + 1e-9); power++) {
    for (const step of steps) {
      const value = Number(`${step}e${power}`);
      if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9))
        ticks.push({ at: place(value), text: tickText(value) });
    }
  }
  return ticks;
}

/** An axis of a plot. */
export interface Axis {
  readonly ticks: readonly Tick[];
  /** Width and height of the plot. */
  readonly width: number;
  readonly height: number;
  readonly unit: string;
}

/** Numbers along the foot of a plot, with lines up through it. */
export function footAxis({ ticks, width, height, unit }: Axis): string {
  return [
    ...ticks.map(({ at }) => stroke([at, 0], [at, height], "grid")),
    stroke([0, height], [width, height], "axis"),
    ...ticks.map(({ at, text }) => label(at, height + 17, text, { "text-anchor": "middle" })),
    label(width, height + 34, unit, { "text-anchor": "end", kind: "unit" }),
  ].join("");
}

/** Numbers along the left side of a plot, with lines across it; the unit stands above. */
export function sideAxis({ ticks, width, height, unit }: Axis, unitAt = -10): string {
  return [
    ...ticks.map(({ at }) => stroke([0, at], [width, at], "grid")),
    stroke([0, 0], [0, height], "axis"),
    ...ticks.map(({ at, text }) => label(-7, at + 4, text, { "text-anchor": "end" })),
    label(-35, unitAt, unit, { kind: "unit" }),
  ].join("");
}
