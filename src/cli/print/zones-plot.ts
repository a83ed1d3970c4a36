import { visibleText } from "../../core/index";
import { format, significant, typeOf } from "../../reading/index";
import { digitsBeside, editionText, type Judgement } from "../../severity/index";
import { cellOf, drawnText, namesAtCells } from "./scale-text";

/** Shades of zones, lightest first; the names below say which is which. */
const shades = " ░▒▓█";

/** The reading above its place, its words on the side that has room. */
function readingLine(words: string, at: number, count: number): string {
  const text = `▼ ${words}`;
  if (at + text.length <= count || at < words.length + 1) return " ".repeat(at) + text;
  return `${" ".repeat(at - words.length - 1)}${words} ▼`;
}

/**
 * A bar of the zones of a judgement with the reading above it, in block characters: a value is read back within one cell.
 *
 * @param isUncertain - whether the reading has an uncertainty, which is not drawn
 * @param width - columns of the window
 */
export function zonesPlot(judgement: Judgement, isUncertain: boolean, width: number): string {
  const { zones, limits, judged, bound } = judgement;
  const bounds = Object.values(limits).map(({ printed }) => printed.value);
  const most = Math.max((bounds.at(-1) as number) * 1.4, judged.value * 1.15);
  const count = Math.max(10, width - 1);
  const cells = bounds.map((value) => cellOf(value, most, count));
  const edges = [0, ...cells, count];
  const bar = Array.from({ length: count }, (_, column) => {
    if (cells.includes(column)) return "│";
    const zone = cells.filter((cell) => cell < column).length;
    return shades[Math.min(shades.length - 1, zone)] as string;
  }).join("");
  const names = zones.map((name, i) => {
    const [from, to] = [edges[i] as number, edges[i + 1] as number];
    return { text: name, column: Math.max(from, Math.floor((from + to - name.length) / 2)) };
  });
  const read = `${bound === "exact" ? "" : "at least "}${format(judged, { digits: digitsBeside(judged.value, bounds) })}`;
  const { type } = typeOf(judged.unit, judged.detector);
  const limitsText = bounds.map((value, i) => ({ text: significant(value), column: cells[i] as number }));
  const told = [
    `a column is ${significant(most / count)} ${type}`,
    `▼ is the reading, │ a limit of ${editionText(judgement)}`,
    ...(isUncertain ? ["its uncertainty is not drawn"] : []),
  ];
  return drawnText(
    [
      readingLine(visibleText(read), cellOf(judged.value, most, count), count),
      bar,
      ...namesAtCells(names, count),
      ...namesAtCells(limitsText, count),
    ],
    told.join("; "),
    width,
  );
}
