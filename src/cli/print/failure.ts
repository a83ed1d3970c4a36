import { jsonText, VeladisError, visibleText } from "../../core/index";

/** Where a refused input stood, for the message. */
export interface Place {
  readonly line?: number;
  readonly file?: string;
}

function placed({ file, line }: Place): string {
  return [file, line === undefined ? undefined : `line ${line}`].filter(Boolean).join(", ");
}

/**
 * The text for standard error that says why an input was refused; anything but a {@link VeladisError} is thrown on.
 *
 * One line of JSON, or a line each for what was expected, received and allowed.
 */
export function failureText(error: unknown, json: boolean, place: Place = {}): string {
  if (!(error instanceof VeladisError)) throw error;
  if (json) {
    const { name, ...detail } = error;
    return `${jsonText({ error: { ...place, ...detail, message: error.message } })}\n`;
  }
  const where = placed(place);
  const rows = [
    [`veladis${where && `: ${where}`}`, error.code],
    ["  expected", error.expected],
    ["  received", error.received],
    ["  did you mean", error.didYouMean?.join(", ")],
    ["  allowed", error.allowed?.join(", ")],
  ].filter(([, value]) => value !== undefined);
  return `${rows.map(([name, value]) => visibleText(`${name}: ${value}`)).join("\n")}\n`;
}
