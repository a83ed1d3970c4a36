import { attempt } from "../../core/index";
import { densityUnit } from "../../signal/index";
import type { UnitSymbol } from "../../units/index";

/** The texts of a heading that may be a unit of density: its brackets, its words, the whole. */
function candidates(heading: string): string[] {
  const inside = /[[({<](.*)[\])}>]\s*$/.exec(heading)?.[1];
  const words = heading.trim().split(/\s+|,|_(?!2)/);
  return [inside, heading, words.at(-1)].filter((text) => text !== undefined);
}

/** The unit whose square a heading says as a density, as in `PSD (g2/Hz)`; undefined for none. */
export function densityIn(heading: string): UnitSymbol | undefined {
  for (const text of candidates(heading)) {
    const unit = /hz|s3|s$/i.test(text) ? attempt(() => densityUnit(text)) : undefined;
    if (unit?.ok) return unit.value;
  }
  return undefined;
}
