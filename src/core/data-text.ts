import { visibleText } from "./visible-text";

const LONGEST = 60;

/** Plain data as an error message shows it: as JSON, cut at 60 characters. */
export function dataText(value: unknown): string {
  const text = String(JSON.stringify(value, (_, part) => (typeof part === "bigint" ? `${part}n` : part)));
  return visibleText(text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);
}
