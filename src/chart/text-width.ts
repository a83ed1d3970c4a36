/** Width of a text in pixels, near enough to lay it out without a browser: most letters are half as wide as high. */
export function widthOf(text: string, size = 12): number {
  let units = 0;
  for (const letter of text) {
    if (/[ijl.,:;'|!()[\] ]/.test(letter)) units += 0.31;
    else if (/[mwMW@%]/.test(letter)) units += 0.88;
    else if (/[A-Z]/.test(letter)) units += 0.68;
    else if (letter.charCodeAt(0) > 0x2e7f) units += 1;
    else units += 0.57;
  }
  return units * size;
}

/** A text cut to fit a width, with an ellipsis where something was cut. */
export function shortened(text: string, width: number, size = 12): string {
  if (widthOf(text, size) <= width) return text;
  const letters = [...text];
  let units = 0;
  let kept = 0;
  for (; kept < letters.length; kept++) {
    units += widthOf(letters[kept] as string, 1);
    if ((units + widthOf("…", 1)) * size > width) break;
  }
  return `${letters.slice(0, Math.max(kept, 1)).join("").trimEnd()}…`;
}

/** A text in lines that fit a width, parted at spaces. */
export function wrappedLines(text: string, width: number, size = 12): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(shortened(word, width, size));
  }
  return lines;
}
