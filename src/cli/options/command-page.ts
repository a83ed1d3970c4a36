import type { ListName } from "./lists";
import type { OptionRows } from "./option-row";

/** Texts that a command takes beside its options. */
export interface TextsRow {
  readonly values?: readonly string[];
  readonly list?: ListName;
  /** At most so many; any number if not given. */
  readonly most?: number;
  /** What one of them is, with an example, for who gives too many. */
  readonly what?: string;
}

/** A command as its reader sees it, apart from what runs it, so that help loads nothing else. */
export interface CommandPage<Rows extends OptionRows = OptionRows> {
  /** Its line in the overview. */
  readonly summary: string;
  /** How it is called, in a line. */
  readonly usage: string;
  readonly does: string;
  /** Lines for a shell; each is run by a test. */
  readonly examples: readonly string[];
  /** The words it reads, behind a label each. */
  readonly words?: readonly (readonly [label: string, ...texts: string[]])[];
  /** What it takes beside options; left out, nothing. */
  readonly texts?: TextsRow;
  readonly options: Rows;
  readonly notes?: readonly string[];
}
