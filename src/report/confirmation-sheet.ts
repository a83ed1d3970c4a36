import { knownText, provenances, withParameters } from "../core/index";
import {
  builtInSchemes,
  type ConfirmableLimit,
  confirmableLimits,
  editionText,
  type Scheme,
  type SchemeRef,
  schemeById,
} from "../severity/index";
import type { Sheet, SheetSection } from "./sheet";

const COLUMNS = ["row", "limit", "value", "known", "agrees", "printed value", "page", "second name", "reread"] as const;

/** Room to write, by how much of it there is to be. */
const line = (length: number): string => "_".repeat(length);

const HOW = [
  "Take your own printed copy of this edition. Go through it line by line, and fill in what IT says, not what you expect.",
  "The copy prints the same value: tick the box. It prints another: leave the box, write the value as printed, and read it again.",
  "Write the page, once below where all stands on one. Leave a line empty that you did not find: only what is filled in is confirmed.",
  "Numbers of a row that stand together are confirmed together: alarm and trip at most, the number and the cap of a law of speed.",
  "A printed value above the one here raises a limit: a second person reads it too and writes their name.",
  "The unit and detector must be those of the line. mil beside um (25.4), peak beside RMS (1.414), peak-to-peak beside peak (2) or beside RMS (2.83) and a shifted decimal point are the usual slips; read the page again and write yes under reread where such a value stands there all the same.",
] as const;

/** Limits of which more than one value is printed, with what is. */
function disputesOf(limits: readonly ConfirmableLimit[]): string[] {
  return limits.flatMap(({ row, limit, disputed }) =>
    disputed === undefined ? [] : [`${row}, ${limit}: ${disputed}`],
  );
}

/** Where limits stand in the standard, as far as that is known, each once. */
function placesOf(limits: readonly ConfirmableLimit[]): string[] {
  const told = limits.map(({ source }) => {
    const { title, where, page } = source;
    const seen = page === undefined || source.provenance === "confirmed" ? undefined : `value here read at ${page}`;
    return [title, where, knownText(source), seen].filter(Boolean).join("; ");
  });
  return [...new Set(told)];
}

function rowsOf(limits: readonly ConfirmableLimit[]): string[][] {
  return limits.map(({ row, limit, shipped, as, source, provenance }) => {
    const signed = provenance === "confirmed";
    const known = signed ? knownText(source) : provenances[provenance].cell;
    const room = signed ? ["", "", "", "", ""] : ["\u2610", line(10), line(6), line(16), line(4)];
    return [row, limit, `${shipped} ${as}`, known, ...room];
  });
}

/** How a person goes from the sheet to a judgement: by the id of a scheme that is built in, by its file with their own. */
function fromPaper(id: string): string[] {
  const isBuiltIn = builtInSchemes.some((one) => one.id === id);
  const [name, file] = isBuiltIn ? [id, `${id}.csv`] : ["your-table.json", "your-table.csv"];
  const judge = isBuiltIn ? "veladis judge ..." : `veladis judge ... --scheme ${name}`;
  return [
    `veladis schemes ${name} --sheet csv > ${file} writes a file with a line for your signature and one line a limit, in the order of this sheet.${isBuiltIn ? "" : ` ${name} stands for the file that holds the table.`}`,
    "In the line of the signature, once: under page, by and on the page, your name, and the day as 2024-03-04; second stays empty there. It holds for every line below; a line on another page, or read by another person, has its own.",
    "In each line: where the box is ticked, write yes under agrees; else the value under printed, and under second the name of a second reader where it raises the limit. Decimals have a point, or a comma where the spreadsheet wrote the whole file so. Leave a line empty that you did not find.",
    "A value that looks like a slip and stands in the copy all the same: yes under reread, after reading the page again.",
    `${judge} --confirmed ${file} takes it, and so does every command that judges. One line that is wrong refuses the file.`,
  ];
}

function sections(title: string, limits: readonly ConfirmableLimit[]): SheetSection[] {
  const disputes = disputesOf(limits);
  const [{ scheme: id, standard, edition }] = limits as [ConfirmableLimit];
  return [
    { title: "The table", text: [title], list: placesOf(limits) },
    ...(disputes.length > 0 ? [{ title: "Read with care: disputed limits", list: disputes }] : []),
    { title: "How to fill it in", list: HOW },
    {
      title: `Limits of ${editionText({ standard, edition })}`,
      table: { columns: COLUMNS, rows: rowsOf(limits) },
    },
    {
      title: "From paper to file",
      list: fromPaper(id),
    },
  ];
}

/**
 * A check sheet for paper: every limit of a scheme with its row, unit, value and how that is known, with room for what a
 * person reads in their own printed copy, and who signs for it. What is filled in goes into a file of confirmations.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @throws {@link VeladisError} as {@link confirmableLimits} of `veladis/severity`
 * @example
 * ```ts
 * import { confirmationSheet, sheetHtml } from "veladis/protection";
 *
 * const sheet = confirmationSheet("iso-10816-7-2009");
 * sheet.sections.at(-2)?.table?.rows[0]?.slice(0, 3); // => ["category I, power up to 200 kW", "A/B", "2.5 mm/s rms"]
 * sheetHtml(sheet).includes("Edition of the copy in hand"); // => true
 * ```
 */
export function confirmationSheet(scheme: SchemeRef): Sheet {
  return withParameters({ scheme }, () => {
    const limits = confirmableLimits(scheme);
    // of a scheme that leaves parts out, what the checked copy of it has
    const [{ scheme: id, standard, edition }] = limits as [ConfirmableLimit];
    const { title = standard } = (typeof scheme === "string" ? schemeById(scheme) : scheme) as Partial<Scheme>;
    return {
      title: "Check sheet for a table of limits",
      subject: `${standard}, edition ${edition} (${id})`,
      cautions: [
        "A limit that is confirmed wrongly judges every machine that it is used for. Read the standard itself, of this edition; not another sheet, not memory.",
        "Limits of the machine's maker, site rules, local codes and licensed practice govern.",
      ],
      sections: sections(title, limits),
      blanks: [
        "Edition of the copy in hand",
        "Page, where all stands on one",
        "Name",
        "Date",
        "Signature",
        "Second name, where a limit is raised",
        "Date",
        "Signature",
      ],
      data: { scheme: id, limits },
    };
  });
}
