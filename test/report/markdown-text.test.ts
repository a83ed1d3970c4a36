import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { markdownText } from "../../src/report/markdown-text";

/** CommonMark with addresses made links, as readers of Markdown do. */
const reader = new MarkdownIt({ html: true, linkify: true });
reader.linkify.set({ fuzzyLink: false });

// what is escaped and what is left as it is, and that a reader of CommonMark (markdown-it) shows the text itself
describe("a text in Markdown is that text", () => {
  it.each([
    ["two  blanks\tand a\nline", "two blanks and a line"],
    ["  about  ", "about"],
    ["name@plant.example", "name\\@plant.example"],
    ["10 @ 25 Hz, @rest, at@", "10 @ 25 Hz, @rest, at@"],
    ["http://plant.example", "http\\://plant.example"],
    ["ratio 3:1", "ratio 3:1"],
    ["1. first", "1\\. first"],
    ["10) tenth", "10\\) tenth"],
    ["1.5 mm/s", "1.5 mm/s"],
    ["fan 1. stop", "fan 1. stop"],
    ["- one", "\\- one"],
    ["+ one", "\\+ one"],
    ["-", "\\-"],
    ["---", "\\---"],
    ["- -", "\\- -"],
    ["-3 dB", "-3 dB"],
    ["-- x", "-- x"],
    ["a --", "a --"],
    ["=", "\\="],
    ["===", "\\==="],
    ["= 3", "= 3"],
    ["a =", "a ="],
    ["R&D, AT&T", "R\\&D, AT\\&T"],
    ["fan & pump", "fan & pump"],
    ["&#62;", "&\\#62;"],
  ])("%j", (text, written) => {
    expect(markdownText(text)).toBe(written);
    const tokens = reader.parse(markdownText(text), {});
    expect(tokens.map(({ type }) => type)).toEqual(["paragraph_open", "inline", "paragraph_close"]);
    expect(tokens[1]?.children?.map(({ content }) => content).join("")).toBe(text.replace(/\s+/g, " ").trim());
    expect(tokens[1]?.children?.some(({ type }) => type.startsWith("link"))).toBe(false);
  });
});
