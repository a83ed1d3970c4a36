import type { Source } from "../../core/index";
import { reported } from "./sources";

/** Where the text of the course stands. */
const PAGE =
  "https://github.com/matheus1456/curso-analise-vibracao/blob/a716cdb923a023a8a42ad86239bdf3db04a2636b/scripts/build_docx.js";

/** A table in the text of the course. */
interface CourseText {
  readonly title: string;
  readonly where: string;
  /** Of the course. */
  readonly section: string;
  /** As the course names it. */
  readonly edition: string;
  /** What else is known of these limits. */
  readonly note?: string;
}

/**
 * Limits read in a course handbook of vibration analysis that names the editions it was made from. How its text was
 * made is unknown, so it reports and does not quote.
 */
export function courseHandbook({ title, where, section, edition, note }: CourseText): Source {
  const read = `read in a course handbook, Engenharia de Confiabilidade, section ${section}, which names ${edition}; whether its text was typed from the standard is unknown`;
  return reported(title, where, PAGE, note === undefined ? read : `${read}; ${note}`);
}
