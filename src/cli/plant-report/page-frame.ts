import { createHash } from "node:crypto";
import { cautions } from "../../core/index";
import { escapedElsewhere, type Markup, markup } from "./markup";
import { pageStyle } from "./page-style";

/** What says of a file that it is a page of a report, so that a later one may replace it. */
export const PAGE_MARK = '<meta name="veladis-plant-report">';

/** What a page is made of. */
export interface Page {
  readonly title: string;
  /** What the body is marked with, for its rules. */
  readonly kind?: string;
  /** Rules beside those of all pages, such as those of its charts. */
  readonly style?: string;
  readonly script?: string;
  readonly body: Markup;
}

/** What a policy allows of a style sheet or a script: these letters and no others. */
function allowed(text: string): string {
  return `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
}

/**
 * A page that stands alone: it asks for nothing elsewhere, and its policy lets it run nothing but its own script, so that
 * nothing that came from a file could.
 */
export function pageText({ title, kind, style = "", script, body }: Page): string {
  const sheet = pageStyle + style;
  const policy = [
    "default-src 'none'",
    `style-src ${allowed(sheet)}`,
    ...(script === undefined ? [] : [`script-src ${allowed(script)}`]),
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  const { text } = markup`<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
${escapedElsewhere(PAGE_MARK)}
<meta http-equiv="Content-Security-Policy" content="${escapedElsewhere(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${escapedElsewhere(sheet)}</style>
</head>
<body${kind !== undefined && markup` class="${kind}"`}>
${body}${script !== undefined && escapedElsewhere(`<script>${script}</script>\n`)}</body>
</html>
`;
  return text;
}

/** The cautions that every page carries, whole. */
export function cautionsBox(): Markup {
  return markup`<div class="cautions" role="note" aria-label="Cautions">
${cautions.map((one) => markup`<p>${one}</p>\n`)}</div>
`;
}
