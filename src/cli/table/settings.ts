import type { SignalSource } from "../../amplitude/index";
import type { WrittenAs } from "../delimited/written-as";
import { type SignalColumn, signalColumn } from "../input/signal-column";
import type { FailFrom } from "../options/fail-from";

/** Where a fact of a row stands: in a column of its own, or the same for all rows. */
export interface Mapped {
  readonly column: string | undefined;
  readonly fixed: string | undefined;
}

/** What the options of the table command say. */
export interface TableSettings {
  /** The file to read, or undefined for standard input. */
  readonly file: string | undefined;
  /** Column of the readings. */
  readonly column: string;
  /** How the file is written. */
  readonly written: WrittenAs;
  /** Reading type, or unit where the detector is told apart. */
  readonly from: Mapped;
  readonly detector: Mapped;
  /** Frequency of the vibration; fixed, it may be an order of the running speed such as `1x`. */
  readonly at: Mapped;
  /** Unit of bare numbers in the column of frequencies. */
  readonly atUnit: string | undefined;
  readonly speedColumn: string | undefined;
  /** Unit of bare numbers in the column of running speeds. */
  readonly speedUnit: string | undefined;
  /** The reading with the machine stopped. */
  readonly background: Mapped;
  readonly crestFactor: number | undefined;
  /** What turns readings in volts, mA or per cent into vibrations. */
  readonly source: SignalSource;
  /** Reading types of the columns to add. */
  readonly targets: readonly string[];
  /** Machine in words, the same for all rows. */
  readonly machine: string;
  /** Columns whose words describe the machine of a row. */
  readonly machineColumns: readonly string[];
  /** Id or file of the scheme; left out, the first that is for the machine. */
  readonly scheme: string | undefined;
  /** Limits given in the place of a scheme. */
  readonly limits: string | undefined;
  /** Files of confirmed limits. */
  readonly confirmed: readonly string[];
  readonly strict: boolean;
  /** The file to write, or undefined for standard output. */
  readonly out: string | undefined;
  /** The file for rows that are refused. */
  readonly refused: string | undefined;
  readonly replace: boolean;
  /** Significant digits of added numbers; all if undefined. */
  readonly digits: number | undefined;
  readonly json: boolean;
  /** Whether each row of JSON tells the steps to what was added to it. */
  readonly explain: boolean;
  readonly keepGoing: boolean;
  /** The zone from which on a row that may be so bad is told by the exit code. */
  readonly failFrom: FailFrom | undefined;
}

/** Whether rows are judged and not only converted. */
export function judges({ scheme, limits, machine, machineColumns }: TableSettings): boolean {
  return limits !== undefined || scheme !== undefined || machine.trim() !== "" || machineColumns.length > 0;
}

/** How the readings become vibrations where they are the same signal in all rows. */
export function signalOf({ from, detector, source }: TableSettings): SignalColumn | undefined {
  if (from.fixed === undefined) return undefined;
  return signalColumn(detector.fixed === undefined ? from.fixed : `${from.fixed} ${detector.fixed}`, source);
}
