import { wrapped } from "./wrapped";

/** Texts behind a label, each on lines of its own; nothing for no texts. */
export function labelled(label: string, texts: readonly string[], indent = 10): string {
  const margin = " ".repeat(indent);
  return texts.map((text, i) => wrapped(text, margin, i === 0 ? label.padEnd(indent) : margin)).join("");
}
