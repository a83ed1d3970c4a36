/** What may stand between the cells of a row. A file of one column has `none`: a character that no text holds. */
export const separators = { comma: ",", semicolon: ";", tab: "\t", pipe: "|", none: "\0" } as const;

/** The name of a separator: a key of {@link separators}. */
export type SeparatorName = keyof typeof separators;
