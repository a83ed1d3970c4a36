import { shown, VeladisError } from "../core/index";

/** Signs that take no room: soft hyphen, joiners, marks of direction, fillers. */
const invisible =
  /\u034f|[\u00ad\u061c\u115f\u1160\u17b4\u17b5\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\u3164\ufeff\uffa0]/;

/**
 * The tag itself, where every sign of it can be seen: two tags that look alike would be two machines.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function visibleTag(tag: string): string {
  const at = tag.search(invisible);
  if (at < 0) return tag;
  const code = tag.charCodeAt(at).toString(16).toUpperCase().padStart(4, "0");
  throw new VeladisError("syntax", {
    expected: "a tag of signs that can be seen: type it anew",
    received: `${shown(tag)}, with the invisible sign U+${code}`,
  });
}
