import type { ListName } from "./lists";

/** One option of a command: parsing, help, completion and the reference on the site are made of it. */
export interface OptionRow {
  /** What stands behind the option, such as `<reading>`; an option without one is a switch. */
  readonly argument?: string;
  /** What it says, in a line of help. */
  readonly help: string;
  /** A value as a shell takes it, with its quotation marks. */
  readonly example?: string;
  /** All values there are; another is refused. */
  readonly values?: readonly string[];
  /** The list of the library that the values are of, to complete them; what is wrong the library refuses. */
  readonly list?: ListName;
  /** The value that stands when none is given. */
  readonly default?: string;
  /** What holds when no value is given, where that is no value: for the reader alone. */
  readonly otherwise?: string;
  /** The option may be given several times. */
  readonly several?: true;
  /** The heading under which it stands in help. */
  readonly group?: string;
}

/** The options of a command by name. */
export type OptionRows = Readonly<Record<string, OptionRow>>;

/** A value of an option: a word of its closed list where it has one. */
export type Word<Row extends OptionRow> = Row extends { readonly values: readonly (infer One extends string)[] }
  ? One
  : string;

type Value<Row extends OptionRow> = Row extends { readonly argument: string }
  ? Row extends { readonly several: true }
    ? readonly Word<Row>[]
    : Row extends { readonly default: string }
      ? Word<Row>
      : Word<Row> | undefined
  : boolean;

/** What the options of a command say. */
export type Values<Rows extends OptionRows> = { readonly [Name in keyof Rows]: Value<Rows[Name]> };

/** What stands behind the name of a command. */
export interface ParsedOptions<Rows extends OptionRows = OptionRows> {
  readonly values: Values<Rows>;
  /** What is no option. */
  readonly texts: readonly string[];
  readonly options: Rows;
}

/** The same options under a heading. */
export function grouped<const Rows extends OptionRows>(
  group: string,
  rows: Rows,
): { readonly [Name in keyof Rows]: Rows[Name] & { readonly group: string } } {
  const under = Object.entries(rows).map(([name, row]) => [name, { ...row, group }]);
  return Object.fromEntries(under);
}
