import type { TripSettings } from "../device/index";
import type { Baseline, Proposal } from "../setpoints/index";
import type {
  AsFoundAsLeft,
  BenchPlan,
  DelayTest,
  KnownCheckResult,
  Linearity,
  SwitchingPoint,
} from "../verification/index";

/** What a setpoint and verification sheet records; everything but the machine may be left out. */
export interface SheetRequest {
  /** What the machine is called, e.g. `"Boiler-feed pump A, drive end, horizontal"`. */
  readonly machine: string;
  /** Facts about machine, sensor and device, by name. */
  readonly facts?: { readonly [name: string]: string };
  readonly baseline?: Baseline;
  readonly proposal?: Proposal;
  /** The settings as they stand in the device. */
  readonly settings?: TripSettings;
  /** The known vibration and where its certificate is. */
  readonly known?: string;
  readonly check?: KnownCheckResult;
  readonly asFoundAsLeft?: AsFoundAsLeft;
  readonly linearity?: Linearity;
  readonly tripPoint?: SwitchingPoint;
  readonly resetPoint?: SwitchingPoint;
  readonly delay?: DelayTest;
  readonly plan?: BenchPlan;
  /** Remarks, one a line. */
  readonly remarks?: readonly string[];
}
