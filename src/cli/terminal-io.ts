import { visibleLines, visibleText } from "../core/index";
import type { Io } from "./input/io";
import { zoneMarks } from "./print/zone-marks";

/** What stands between cells and at the end of rows, and steers nothing. */
const layout = /(\t|\r\n)/;

/** A text that steers no terminal; what a pattern captures stays. */
function safeBut(captured: RegExp, text: string): string {
  // of a split text every second part was captured
  return text
    .split(captured)
    .map((part, i) => (i % 2 === 0 ? visibleLines(part) : part))
    .join("");
}

/**
 * The same input and output, but that nothing printed steers a terminal: what comes from outside is escaped where it is
 * put into a text, and this catches what was not. The colours of zones stay where a person reads them. Bytes are data,
 * and pass as they are but to a terminal, where they are shown as text.
 */
export function terminalIo(io: Io): Io {
  const safe = (text: string): string => (io.colour ? safeBut(zoneMarks, text) : visibleLines(text));
  const shownBytes = (bytes: Uint8Array): string => safeBut(layout, new TextDecoder().decode(bytes));
  const { progress } = io;
  const safely: Pick<Io, "out" | "err" | "progress"> = {
    out: (text) => io.out(typeof text === "string" ? safe(text) : io.terminal ? shownBytes(text) : text),
    err: (text) => io.err(safe(text)),
    ...(progress && { progress: (text: string) => progress(visibleText(text)) }),
  };
  // all else is that of the other, whose input is not opened before it is asked for
  return Object.assign(Object.create(io), safely);
}
