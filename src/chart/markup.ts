import { requireFinite } from "../core/index";

/** Characters that XML gives a meaning, and what stands for them. */
const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Control characters and halves of surrogate pairs, which no XML document may hold. */
const forbidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text as it may stand in markup, in an attribute or between tags. */
export function escaped(text: string): string {
  return text.replace(forbidden, "\ufffd").replace(/[&<>"']/g, (one) => entities[one] as string);
}

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
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? rounded(value) : escaped(String(value))}"`)
    .join("");
  const content = inner.join("");
  return content === "" ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** A line of text at a place. */
export function label(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return text === "" ? "" : tag("text", { x, y, ...attributes }, escaped(text));
}

/** A point of a drawing, in pixels. */
export type Place = readonly [x: number, y: number];

/** A straight line. */
export function stroke([x1, y1]: Place, [x2, y2]: Place, kind: string): string {
  return tag("line", { class: kind, x1, y1, x2, y2 });
}
