import { shown, visibleText } from "../../core/index";

/** Tells on standard error which columns of a file play no part. */
export function tellUnread(
  file: string,
  { unread }: { readonly unread: readonly string[] },
  io: { err(text: string): void },
  json: boolean,
): void {
  if (unread.length === 0 || json) return;
  io.err(`${visibleText(`${file}: columns that play no part: ${unread.map((one) => shown(one)).join(", ")}`)}\n`);
}
