import { isOrWorse } from "../severity/index";

/** True for a verdict that says "or worse", also where the background makes it unreliable. */
export function isOpen({ headline }: { readonly headline: string }): boolean {
  return isOrWorse({ headline: headline.replace(/, NOT RELIABLE.*$/, "") });
}
