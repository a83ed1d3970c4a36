/** Texts that some medium would obey: all of them go through every way out. */
// biome-ignore format: a row of a table is a line
export const hostileTexts: readonly string[] = [
  // a terminal
  "\u001b[31mred\u001b[0m", "\u001b]0;title\u0007", "\u001b[2J\u001b[H", "a\rINJECTED", "a\nINJECTED", "a\r\nINJECTED", "a\bb",
  "\u009b2Jx", "\u009d0;t\u009c", "x\u0000y", "x\u007fy", "x\u0085INJECTED", "a\u2028INJECTED", "a\u2029INJECTED", "a\tb",
  "\u202egnp.exe\u202c", "\u2066x\u2069", "\u2067x", "\u202ax", "x\ud800", "\udc00x", "x\ufffe", "x\uffff",
  // a spreadsheet
  "=1+1", "+1+1", "-1+1", "@SUM(A1)", "=HYPERLINK(\"http://e.example\",\"x\")", "'=1", "''=1", " =1", "\t=1", "\r=1", "\uff1d1", "\uff201",
  "=cmd|' /C calc'!A0", "a\",=1",
  // a page
  "<script>alert(1)</script>", "</title><img src=x onerror=alert(1)>", "</text><script>x</script>", "&lt;b&gt;", "&#60;b&#62;", "&amp;",
  "\" onload=\"x", "' onload='x", "]]>", "<!-- x", "--> x", "<![CDATA[x", "<?xml x?>", "<style>*{}</style>", "javascript:x",
  // SQL
  "'; DROP TABLE t; --", "\" ; DROP TABLE t; --", "*/ ; DROP TABLE t; /*", "/*", "*/", "/*/", "*/*", "**/", "/ * x * /", "-- x", "\\", "\\'", "'\\", "$1 :x ?", "$$", "$\u007bHOME}",
  // Markdown
  "| a | b |", "`code`", "```", "~~~", "~~x~~", "[x](javascript:alert(1))", "![x](http://e.example/x.png)", "<http://e.example>", "http://e.example/x",
  "www.e.example", "a@e.example", "# h", "x #", "1. x", "1.", "1) x", "- x", "-", "+ x", "* x", "---", "- - -", "===", "***", "___", "$x$", "*b*", "__b__", "> q", "\\|", "a\\", "[x]: http://e.example", "<b>", "    code", "!", "x\n---", "x\n===", "x\n\n# h",
];

/** What a text is shown as, by a table of its own: controls, separators, turns of direction and what XML lacks as codes. */
export function shownAs(text: string): string {
  return [...text]
    .map((one) => {
      const code = one.codePointAt(0) as number;
      const isHidden =
        code < 0x20 ||
        (code >= 0x7f && code <= 0x9f) ||
        (code >= 0x2028 && code <= 0x202e) ||
        (code >= 0x2066 && code <= 0x2069) ||
        (code >= 0xd800 && code <= 0xdfff) ||
        code === 0xfffe ||
        code === 0xffff;
      return isHidden ? `\\u${code.toString(16).padStart(4, "0")}` : one;
    })
    .join("");
}

/** The first character of an output that a terminal obeys, with what stands about it; none where there is none. */
export function obeyed(output: string): string | undefined {
  for (let i = 0; i < output.length; i++) {
    const one = output[i] as string;
    if (one !== "\n" && shownAs(one) !== one && !isHalfOfPair(output, i)) {
      return JSON.stringify(output.slice(Math.max(0, i - 30), i + 10));
    }
  }
  return /^\s*INJECTED/m.test(output) ? "a line of its own" : undefined;
}

function isHalfOfPair(text: string, at: number): boolean {
  const pair = (from: number): boolean => /^[\ud800-\udbff][\udc00-\udfff]$/.test(text.slice(from, from + 2));
  return pair(at) || (at > 0 && pair(at - 1));
}
