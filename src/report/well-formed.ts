/** A text that can be written into an address: half a character is replaced. */
export function wellFormed(text: string): string {
  // read by whole characters, so that only a half that stands alone is one of these
  return text.replace(/[\ud800-\udfff]/gu, "\uFFFD");
}
