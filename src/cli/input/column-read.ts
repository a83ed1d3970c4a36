import { shown } from "../../core/index";

/** A column that was read. */
export interface ColumnRead {
  /** From 1. */
  readonly number: number;
  readonly heading: string;
}

/** The columns of a series that were read, by what stands in them. */
export type ColumnsRead = Readonly<
  Partial<Record<"level" | "mode" | "time" | "known" | "indicated" | "frequency" | "point", ColumnRead>>
> & {
  /** Those of further channels. */
  readonly others?: readonly ColumnRead[];
};

/** The column of this index. */
export function columnRead(header: readonly string[], index: number): ColumnRead {
  return { number: index + 1, heading: (header[index] as string).trim() };
}

function columnText({ number, heading }: ColumnRead): string {
  return `column ${number} ${shown(heading)}`;
}

/** The columns of levels and times, in words. */
export function columnsText({ level, others = [], mode, time }: ColumnsRead): string {
  const more = others.map((one) => ` and ${columnText(one)}`).join("");
  const texts = [
    level && `levels in ${columnText(level)}${more}`,
    mode && `modes in ${columnText(mode)}`,
    time && `times in ${columnText(time)}`,
  ];
  return texts.filter((text) => text !== undefined).join(", ");
}
