/** Reads charts as XML, without a browser: enough to find elements, attributes and text, and to refuse what is broken. */
export interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Node[];
  text: string;
}

const entities: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

function plain(text: string): string {
  if (/[<>]|&(?!(amp|lt|gt|quot|#39);)/.test(text)) throw new Error(`not escaped: ${text}`);
  return text.replace(/&(.+?);/g, (_, name: string) => entities[name] as string);
}

/** The tree of an SVG text; throws where tags do not match or a text is not escaped. */
export function parsed(svg: string): Node {
  const root: Node = { name: "", attributes: {}, children: [], text: "" };
  const open = [root];
  let at = 0;
  for (const match of svg.matchAll(/<(\/?)([a-z]+)((?: [\w:-]+="[^"<]*")*)(\/?)>/g)) {
    const [whole, closing, name = "", written = "", single] = match;
    const inside = open.at(-1) as Node;
    inside.text += inside.name === "style" ? svg.slice(at, match.index) : plain(svg.slice(at, match.index));
    at = match.index + whole.length;
    if (closing) {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes nothing`);
      continue;
    }
    const pairs = [...written.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key, plain(value ?? "")]);
    const node: Node = { name, attributes: Object.fromEntries(pairs), children: [], text: "" };
    inside.children.push(node);
    if (!single) open.push(node);
  }
  if (open.length !== 1 || svg.slice(at).trim() !== "") throw new Error("the document does not end where it should");
  return root.children[0] as Node;
}

/** All elements below a node, in order. */
export function all(node: Node, name?: string, kind?: string): Node[] {
  return node.children
    .flatMap((child) => [child, ...all(child)])
    .filter(
      (one) =>
        (name === undefined || one.name === name) &&
        (kind === undefined || one.attributes.class?.split(" ").includes(`veladis-${kind}`)),
    );
}

/** The words of a chart. */
export function words(svg: string): string[] {
  return all(parsed(svg), "text").map(({ text }) => text);
}
