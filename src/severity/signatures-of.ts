import { knownText, type Source } from "../core/index";

/** A limit with where it comes from. */
interface Signed {
  readonly name: string;
  readonly as: string;
  readonly source: Source;
}

/**
 * Who confirmed limits, when and on which page, each reader once; with the limits of each where not one of them confirmed
 * all.
 */
export function signaturesOf(all: readonly Signed[]): readonly string[] {
  const signed = all.filter(({ source }) => source.provenance === "confirmed");
  const texts = [...new Set(signed.map(({ source }) => knownText(source)))];
  if (texts.length < 2 && signed.length === all.length) return texts;
  return texts.map((text) => {
    const own = signed.filter(({ source }) => knownText(source) === text);
    const units = [...new Set(own.map(({ as }) => as))];
    const limits = units.map((unit) => {
      const names = own.filter(({ as }) => as === unit).map(({ name }) => name);
      return `${names.join(", ")} ${unit}`;
    });
    return `${limits.join("; ")} ${text}`;
  });
}
