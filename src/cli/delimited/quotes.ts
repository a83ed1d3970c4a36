const QUOTE = '"';

/** Whether each quotation mark of a row stands about a whole cell, or is doubled within one. */
export function hasProperQuotes(raw: string, separator: string): boolean {
  let at = 0;
  while (at <= raw.length) {
    if (raw[at] !== QUOTE) {
      const next = raw.indexOf(separator, at);
      const end = next < 0 ? raw.length : next;
      if (raw.slice(at, end).includes(QUOTE)) return false;
      at = end + 1;
      continue;
    }
    let close = raw.indexOf(QUOTE, at + 1);
    while (close >= 0 && raw[close + 1] === QUOTE) close = raw.indexOf(QUOTE, close + 2);
    if (close < 0 || (close + 1 < raw.length && raw[close + 1] !== separator)) return false;
    at = close + 2;
  }
  return true;
}

/** Whether a carriage return stands in a row outside of quotes. */
export function hasLoneReturn(raw: string, quotes: boolean): boolean {
  if (!raw.includes("\r")) return false;
  const outside = quotes ? raw.split(QUOTE).filter((_, i) => i % 2 === 0) : [raw];
  return outside.some((text) => text.includes("\r"));
}

/** The cells of a row, cut at the separators outside of quotes; without the quotation marks. */
export function splitOutsideQuotes(raw: string, separator: string): string[] {
  const cells = [""];
  for (const [i, text] of raw.split(QUOTE).entries()) {
    const [first = "", ...more] = i % 2 === 0 ? text.split(separator) : [text];
    cells[cells.length - 1] += first;
    cells.push(...more);
  }
  return cells;
}
