/** The marks that `zoneMark` sets, to part a text at them; apart from it, since its colours bring the tables of limits. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: its own, which steer the colour alone
export const zoneMarks = /(\u001b\[(?:0|1;(?:30|97);48;2;\d{1,3};\d{1,3};\d{1,3})m)/;
