/** What commands of two words are for, by their first word. To add a group, add its row here. */
export const commandGroups = {
  plant: "A plant's list: every machine with its limits, its switch and its proof, in one file of delimited text",
} as const satisfies Record<string, string>;

/** The first word of commands of two words: a key of {@link commandGroups}. */
export type CommandGroup = keyof typeof commandGroups;
