import { visibleText } from "./visible-text";

/** Characters that HTML and XML give a meaning, and what stands for them. */
const entities: Readonly<Record<string, string>> = /* @__PURE__ */ Object.freeze({
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
});

/** A text as it may stand in HTML and in SVG, in an attribute or between tags; line ends and tabs are spaces there. */
export function markupText(text: string): string {
  const plain = visibleText(text.replace(/[\t\n\r\u2028\u2029]/g, " "));
  return plain.replace(/[&<>"']/g, (one) => entities[one] as string);
}
