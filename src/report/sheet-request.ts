import type { TripSettings } from "../device/index";
import type { Baseline, Proposal } from "../setpoints/index";
import type {
  AsFoundAsLeft,
  BenchPlan,
  CheckPoints,
  DelayTest,
  InjectionPlan,
  KnownCheckResult,
  Linearity,
  SwitchingPoint,
} from "../verification/index";

/** A picture on a sheet. */
export interface SheetPicture {
  /** An SVG document of its own. */
  readonly svg: string;
  /** The same in words. */
  readonly text: string;
  /** The file that it is in, for Markdown, which holds no pictures. */
  readonly file?: string;
}

/** What a setpoint and verification sheet records; everything but the machine may be left out. */
export interface SheetRequest {
  /** What the machine is called, e.g. `"Boiler-feed pump A, drive end, horizontal"`. */
  readonly machine: string;
  /** Facts about machine, sensor and device, by name. */
  readonly facts?: { readonly [name: string]: string };
  /** Names of facts that are left to be filled in by hand. */
  readonly toFill?: readonly string[];
  /** A picture of what the sheet says. */
  readonly picture?: SheetPicture;
  readonly baseline?: Baseline;
  readonly proposal?: Proposal;
  /** The settings as they stand in the device. */
  readonly settings?: TripSettings;
  /** The known vibration and where its certificate is. */
  readonly known?: string;
  readonly check?: KnownCheckResult;
  readonly asFoundAsLeft?: AsFoundAsLeft;
  readonly linearity?: Linearity;
  /** Several checks, each with unit and frequency of its own. */
  readonly points?: CheckPoints;
  readonly tripPoint?: SwitchingPoint;
  readonly resetPoint?: SwitchingPoint;
  readonly delay?: DelayTest;
  readonly plan?: BenchPlan | InjectionPlan;
  /** Remarks, one a line. */
  readonly remarks?: readonly string[];
}
