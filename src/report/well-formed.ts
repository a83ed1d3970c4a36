const LONE = "[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])|(?<![\\uD800-\\uDBFF])[\\uDC00-\\uDFFF]";

/** A text that can be written into an address: half a character is replaced. */
export function wellFormed(text: string): string {
  return text.replace(new RegExp(LONE, "g"), "\uFFFD");
}
