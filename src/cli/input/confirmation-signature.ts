import { shown, VeladisError } from "../../core/index";
import type { ConfirmationColumn } from "./confirmation-columns";

/** The line of a file of confirmations in which a person signs once for those below it: what stands under row and limit. */
export const signatureLine = /* @__PURE__ */ Object.freeze({ row: "every line below", limit: "signature" } as const);

/** The cells of a row by their columns. */
export type ConfirmationCells = Readonly<Partial<Record<ConfirmationColumn, string>>>;

/** Page, name and day, as far as they are filled in. */
export type Signature = Readonly<Partial<Record<"page" | "by" | "on", string>>>;

/** Cells of a line that nobody fills in beside a signature: a second person reads a value that is raised, and no other. */
const others = ["agrees", "printed", "second", "reread"] as const;

function isSignature({ limit = "", row = "" }: ConfirmationCells): boolean {
  const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, " ");
  return plain(limit) === signatureLine.limit && plain(row) === signatureLine.row;
}

/** What signatures are kept by: a scheme in its edition. */
function keyOf({ scheme = "", edition = "" }: ConfirmationCells): string {
  return `${scheme.toLowerCase()}\t${edition}`;
}

/** The signatures of a file, each for the rows of its scheme below it. */
export function signatures() {
  const found = new Map<string, Signature>();

  /**
   * Whether a row is a signature, which is kept then.
   *
   * @throws {@link VeladisError} `syntax` for one with a value, and for a second one
   */
  const take = (row: ConfirmationCells, at: string): boolean => {
    if (!isSignature(row)) return false;
    const filled = others.filter((name) => (row[name] ?? "") !== "");
    if (filled.length > 0) {
      throw new VeladisError("syntax", {
        expected: `${at}: page, by and on alone in the line of the signature; each value in its own line, and beside one that is raised the second name`,
        received: filled.map((name) => `${name} ${shown(row[name])}`).join(", "),
      });
    }
    if (found.has(keyOf(row))) {
      throw new VeladisError("syntax", {
        expected: `${at}: one signature for ${row.scheme}; lines that another person read have their own name and day`,
        received: "a second one",
      });
    }
    const { page = "", by = "", on = "" } = row;
    found.set(keyOf(row), { page, by, on });
    return true;
  };

  /** A row with what the signature above it says: the page where it has none; name and day where it has neither. */
  const signed = (row: ConfirmationCells): ConfirmationCells => {
    const { page = "", ...who } = found.get(keyOf(row)) ?? {};
    const isOwn = [row.by, row.on].some((cell = "") => cell !== "");
    return { ...row, ...(!isOwn && who), ...((row.page ?? "") === "" && { page }) };
  };

  return { take, signed };
}
