import { visibleLines, visibleText } from "../core/index";
import type { Io } from "./input/io";
import { zoneMarks } from "./print/zone-mark";

/**
 * The same input and output, but that no text printed steers a terminal: what comes from outside is escaped where it is
 * put into a text, and this catches what was not. The colours of zones stay where a person reads them; bytes are data,
 * and pass as they are.
 */
export function terminalIo(io: Io): Io {
  const parts = (text: string): string[] => (io.colour ? text.split(zoneMarks) : [text]);
  // of a split text every second part is a mark
  const safe = (text: string): string =>
    parts(text)
      .map((part, i) => (i % 2 === 0 ? visibleLines(part) : part))
      .join("");
  const { progress } = io;
  return {
    ...io,
    out: (text) => io.out(typeof text === "string" ? safe(text) : text),
    err: (text) => io.err(safe(text)),
    ...(progress && { progress: (text: string) => progress(visibleText(text)) }),
  };
}
