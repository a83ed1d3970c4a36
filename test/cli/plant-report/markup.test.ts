import fc from "fast-check";
import { expect, it } from "vitest";
import { escapedElsewhere, markup } from "../../../src/cli/plant-report/markup";

it("escapes every text of a template, in tags and between them", () => {
  const evil = `"><script>alert('x')</script>&\u202e`;
  expect(markup`<p title="${evil}">${evil}</p>`.text).toBe(
    '<p title="&quot;&gt;&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&amp;\\u202e">&quot;&gt;&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&amp;\\u202e</p>',
  );
});

it("keeps markup as it is, joins lists, and leaves out what is not there", () => {
  const items = ["a", "b<"].map((one) => markup`<li>${one}</li>`);
  expect(markup`<ul>${items}${undefined}${false}${3}</ul>`.text).toBe("<ul><li>a</li><li>b&lt;</li>3</ul>");
  expect(markup`${escapedElsewhere("<svg/>")}`.text).toBe("<svg/>");
});

it("of any text holds no tag and no end of an attribute", () => {
  fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => !/[<>"']/.test(markup`${text}`.text)));
});
