import { provenances } from "./provenance";
import { requireChoice } from "./require-choice";

/** The shape of a grade of provenance in plain data: one of the table's own, since its words are printed. */
export const provenanceShape = (value: unknown, where: string): unknown =>
  requireChoice(value, Object.keys(provenances), `${where}: how it is known`);
