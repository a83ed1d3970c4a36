import { shown, visibleText } from "../../core/index";
import type { Io } from "../input/io";

/** Tells on standard error which columns of a file play no part. */
export function tellUnread(
  file: string,
  { unread }: { readonly unread: readonly string[] },
  io: Pick<Io, "err">,
  json: boolean,
): void {
  if (unread.length === 0 || json) return;
  io.err(`${visibleText(`${file}: columns that play no part: ${unread.map((one) => shown(one)).join(", ")}`)}\n`);
}
