/** Bytes of UTF-8 as a text of one character a byte. */
export function bytesOf(text: string): string {
  return /^[\x20-\x7e]*$/.test(text) ? text : Buffer.from(text, "utf8").toString("latin1");
}

/** A text as a cell of delimited text: in quotes where it must be. */
export function quotedCell(text: string, separator: string): string {
  const plain = !text.includes(separator) && !/["\r\n]/.test(text);
  return plain ? text : `"${text.replaceAll('"', '""')}"`;
}
