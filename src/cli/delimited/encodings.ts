/** The encoding of a file: of UTF-16 also which byte comes first. */
export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "latin-1";

/**
 * What bytes 0x80 to 0x9f are in a file of Latin-1: as the Encoding Standard of the web has it, index windows-1252.
 * Five of them mean nothing and stay as they are.
 */
const high = "€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ";

/** The text of bytes in Latin-1. */
export function latin1Text(bytes: Buffer): string {
  return bytes.toString("latin1").replace(/[\u0080-\u009f]/g, (one) => high[one.charCodeAt(0) - 0x80] as string);
}

/** The bytes of a text in Latin-1, or undefined where it has no byte for a character. */
export function latin1Bytes(text: string): Buffer | undefined {
  let lost = false;
  const plain = text.replace(/[\u0080-\u009f\u0100-\uffff]/g, (one) => {
    const at = high.indexOf(one);
    if (at < 0) lost = true;
    return String.fromCharCode(0x80 + at);
  });
  return lost ? undefined : Buffer.from(plain, "latin1");
}
