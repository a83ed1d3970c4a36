import { markupText, requireFinite } from "../core/index";

/** A length or place to a hundredth of a pixel, so that output does not hang on the last bit. */
export function rounded(value: number): number {
  return requireFinite(Math.round(value * 100) / 100 + 0, "numbers that a chart can place");
}

/** What an attribute may be; those that are undefined are left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element with its attributes, escaped, around markup that is safe already. */
export function tag(name: string, attributes: Attributes, ...inner: readonly string[]): string {
  const written = Object.entries(attributes)
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
export function stroke([x1, y1]: Place, [x2, y2]: Place, kind: string): string {
  return tag("line", { class: kind, x1, y1, x2, y2 });
}
