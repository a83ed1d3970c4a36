import { cached, frozen, requireText, shown, VeladisError } from "../core/index";
import type { Scheme } from "./scheme";

/** A short text that is another where the text is another, but for one chance in 2^64; it holds off slips, not intent. */
export function sealOf(text: string): string {
  let a = 1;
  let b = 2;
  for (let i = 0; i < text.length; i++) {
    a = Math.imul(a ^ text.charCodeAt(i), 0x1000193);
    b = Math.imul(b, 31) + (a >>> 7);
  }
  return `${a >>> 0}-${b >>> 0}`;
}

/**
 * The scheme within a seal, if it is as it was sealed.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `out-of-range` for one that was changed since
 */
export const unsealed: (sealed: string) => Scheme = /* @__PURE__ */ cached((sealed) => {
  const expected = "what sealedScheme made, unchanged since; seal anew";
  const [seal] = requireText(sealed, expected).split(" ", 1) as [string];
  const text = sealed.slice(seal.length + 1);
  if (sealOf(text) === seal) return frozen(JSON.parse(text) as Scheme);
  throw new VeladisError("out-of-range", { expected, received: shown(sealed) });
});
