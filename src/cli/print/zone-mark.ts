import { severityColour } from "../../severity/index";

/** The three numbers of a colour such as `#1d3557`. */
function channels(colour: string): [number, number, number] {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  return [r, g, b];
}

/** A zone's letter or word; where a person reads it, on its colour besides, in black or white by its lightness. */
export function zoneMark(zone: string, at: number, count: number, colour: boolean): string {
  if (!colour) return zone;
  const [r, g, b] = channels(severityColour(at, count));
  const ink = 0.299 * r + 0.587 * g + 0.114 * b > 140 ? 30 : 97;
  return `\u001b[1;${ink};48;2;${r};${g};${b}m ${zone} \u001b[0m`;
}
