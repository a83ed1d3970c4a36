import { createHash } from "node:crypto";

/** Tags that lose no letter on the way to a name. */
const PLAIN = /^[A-Za-z0-9 ._/-]+$/;
/** Names that some systems keep for devices, with any ending. */
const KEPT = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;
const LONGEST = 60;

/** A tag in the letters that a file name may have everywhere; empty for one that has none of them. */
function slugOf(tag: string): string {
  return tag
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, LONGEST)
    .replace(/-+$/, "");
}

/** A few letters that stand for a tag, always the same. */
function mark(tag: string): string {
  return createHash("sha256").update(tag).digest("hex").slice(0, 8);
}

/**
 * The file names of pages, one a tag in their order: small letters, digits and hyphens, so that no two are one on a file
 * system that does not tell capital letters. A tag with other letters, or whose name another has, gets a mark of its own
 * behind it, which does not change with the list.
 *
 * @param reserved - names that pages of other things have, without their ending
 */
export function pageNames(tags: readonly string[], reserved: readonly string[]): string[] {
  const slugs = tags.map(slugOf);
  const counts = new Map<string, number>();
  for (const slug of slugs) counts.set(slug, (counts.get(slug) ?? 0) + 1);
  const taken = new Set(reserved);
  return tags.map((tag, i) => {
    const slug = slugs[i] as string;
    const isPlain = PLAIN.test(tag) && counts.get(slug) === 1 && !taken.has(slug) && !KEPT.test(slug) && slug !== "";
    const base = isPlain ? slug : [slug || "machine", mark(tag)].join("-");
    let name = base;
    for (let next = 2; taken.has(name); next++) name = `${base}-${next}`;
    taken.add(name);
    return `${name}.html`;
  });
}
