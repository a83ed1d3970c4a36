import { markupText, requireFinite } from "../core/index";
import { type Kind, lookOf } from "./kinds";

/** A length or place to a hundredth of a pixel, so that output does not hang on the last bit. */
export function rounded(value: number): number {
  return requireFinite(Math.round(value * 100) / 100 + 0, "numbers that a chart can place");
}

/** What an attribute may be; those that are undefined are left out. */
export interface Attributes {
  readonly [name: string]: string | number | readonly Kind[] | undefined;
  /** What the element is: written as its classes and its look. */
  readonly kind?: Kind | readonly Kind[] | undefined;
}

/** The classes of kinds and how they look, to stand before the attributes of the element itself. */
function kindAttributes(kind: Kind | readonly Kind[] | undefined): Attributes {
  if (kind === undefined) return {};
  const of = typeof kind === "string" ? [kind] : kind;
  return { class: of.map((one) => `veladis-${one}`).join(" "), ...lookOf(of) };
}

/** An element with its attributes, escaped, around markup that is safe already. */
export function tag(name: string, { kind, ...own }: Attributes, ...inner: readonly string[]): string {
  const written = Object.entries({ ...kindAttributes(kind), ...own })
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? rounded(value) : markupText(String(value))}"`)
    .join("");
  const content = inner.join("");
  return content === "" ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** A line of text at a place. */
export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return text === "" ? "" : tag("text", { x, y, ...attributes }, markupText(text));
}

/** A point of a drawing, in pixels. */
export type Place = readonly [x: number, y: number];

/** A straight line. */
export function stroke([x1, y1]: Place, [x2, y2]: Place, kind: Kind): string {
  return tag("line", { kind, x1, y1, x2, y2 });
}
