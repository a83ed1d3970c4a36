const WIDTH = 100;

/** The text cut into lines between words; a word longer than a line, such as a page's address, stays whole. */
function wrapped(text: string, width: number): string[] {
  return text.split(" ").reduce<string[]>((lines, word) => {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
    return lines;
  }, []);
}

/** Texts behind a label, each on lines of its own; nothing for no texts. */
export function labelled(label: string, texts: readonly string[], indent = 10): string {
  return texts
    .flatMap((text) => wrapped(text, WIDTH - indent))
    .map((line, i) => `${(i === 0 ? label : "").padEnd(indent)}${line}\n`)
    .join("");
}
