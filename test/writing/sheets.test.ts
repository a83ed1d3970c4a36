import MarkdownIt from "markdown-it";
import { type DefaultTreeAdapterTypes, parse } from "parse5";
import {
  baseline,
  checkAgainstKnown,
  proposeSetpoints,
  setpointSheet,
  sheetHtml,
  sheetJson,
  sheetMarkdown,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { hostileTexts, obeyed, shownAs } from "./hostile-texts";

const readings = baseline([2, 2.1, 1.9, 2, 2.2, 2, 2.1, 1.9, 2, 2.05], { as: "mm/s rms" });

/** A sheet with the text wherever a text from outside may stand. */
function sheetOf(text: string) {
  return setpointSheet({
    machine: text,
    facts: { [`sensor ${text}`]: text, device: text },
    baseline: readings,
    proposal: proposeSetpoints({
      baseline: readings,
      limits: { "B/C": "0.3 in/s pk", "C/D": "0.45 in/s pk", source: text },
      machine: "fan 1485 r/min",
    }),
    known: text,
    check: checkAgainstKnown({ known: "8 mm/s rms", indicated: "7.3 mm/s rms", tolerance: "5 %" }),
    remarks: [text, `a ${text}`],
  });
}

/** A text on one line, as all white space within is one space on a page. */
const onLine = (text: string): string => shownAs(text.replace(/[\t\n\r\u2028\u2029]/g, " "));
const squeezed = (text: string): string => text.replace(/\s+/g, " ").trim();

type Node = DefaultTreeAdapterTypes.Node;

/** Elements with their attributes, and nothing of their texts. */
function skeleton(node: Node): string {
  if (node.nodeName === "#text") return "";
  const attributes = "attrs" in node ? node.attrs.map(({ name, value }) => ` ${name}=${value}`).join("") : "";
  const children = "childNodes" in node ? node.childNodes.map(skeleton).join("") : "";
  return `<${node.nodeName}${attributes}>${children}`;
}

function textsOf(node: Node): string[] {
  if (node.nodeName === "#text") return [(node as DefaultTreeAdapterTypes.TextNode).value];
  return "childNodes" in node ? node.childNodes.flatMap(textsOf) : [];
}

const markdown = new MarkdownIt({ html: true, linkify: true });
markdown.linkify.set({ fuzzyLink: false });

/** The tokens that Markdown is made of, without the texts. */
function tokensOf(text: string): string {
  const tokens = markdown.parse(text, {});
  return tokens
    .flatMap((token) => (token.type === "inline" ? (token.children ?? []) : [token]))
    .filter(({ type }) => type !== "text" && type !== "text_special")
    .map(({ type, tag }) => `${type} ${tag}`)
    .join("\n");
}

/** The words that each block of Markdown shows. */
function wordsOf(text: string): string[] {
  return markdown
    .parse(text, {})
    .filter(({ type }) => type === "inline")
    .map(({ children }) => (children ?? []).map(({ content }) => content).join(""));
}

const plain = sheetOf("plain");

describe.each(hostileTexts.map((text) => [JSON.stringify(text), text] as const))("%s on a sheet", (_, text) => {
  const sheet = sheetOf(text);

  it("is a text of the page", () => {
    const html = sheetHtml(sheet);
    const tree = parse(html);
    expect(skeleton(tree)).toBe(skeleton(parse(sheetHtml(plain))));
    const texts = textsOf(tree).map(squeezed);
    const shown = squeezed(onLine(text));
    // title, heading, name and value of facts, known, remarks
    expect(texts.filter((one) => one === shown).length).toBeGreaterThanOrEqual(4);
    expect(texts).toContain(squeezed(`sensor ${onLine(text)}`));
    expect(texts).toContain(squeezed(`Known vibration: ${onLine(text)}`));
    expect(obeyed(html)).toBeUndefined();
  });

  it("is a text of Markdown", () => {
    const written = sheetMarkdown(sheet);
    expect(tokensOf(written)).toBe(tokensOf(sheetMarkdown(plain)));
    const shown = squeezed(onLine(text));
    const words = wordsOf(written).map(squeezed);
    expect(words.filter((one) => one === shown).length).toBeGreaterThanOrEqual(4);
    expect(words).toContain(squeezed(`sensor ${onLine(text)}`));
    expect(obeyed(written)).toBeUndefined();
  });

  it("is whole in JSON, in characters that no terminal obeys", () => {
    const written = sheetJson(sheet);
    expect(obeyed(written)).toBeUndefined();
    expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(sheet)));
    expect(JSON.parse(written).subject).toBe(text);
  });
});

describe("the language of a page", () => {
  it.each(['"><script>', "en\u0000"])("%j is an attribute", (language) => {
    const html = parse(sheetHtml(plain, language)).childNodes.find(({ nodeName }) => nodeName === "html");
    expect((html as DefaultTreeAdapterTypes.Element).attrs).toEqual([{ name: "lang", value: shownAs(language) }]);
  });
});
