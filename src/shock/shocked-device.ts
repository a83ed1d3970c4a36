/** A device that runs at a level: what decides how long a disturbance holds it up. */
export interface ShockedDevice {
  /** Whether its detector forms the RMS, not the peak. */
  readonly rms: boolean;
  /** Time constant of the detector in seconds. */
  readonly tau: number;
  /** Frequency of the running vibration. */
  readonly hertz: number;
  /** The running level as the detector shows it, below `hold`; as `set` and `hold` in the SI unit of the threshold. */
  readonly level: number;
  /** Where the on-delay begins. */
  readonly set: number;
  /** Where it starts over, not above `set`. */
  readonly hold: number;
}
