import type { Amplitude } from "../reading/index";

/** The current of a loop at the start of its range, in mA, with an allowance for float noise. */
const LIVE_ZERO = 4.000000001;

/** What a device shows at a known level. */
interface Shown {
  /** As it was shown. */
  readonly shown: Pick<Amplitude, "history">;
  /** In unit and detector of the known level. */
  readonly indicated: Pick<Amplitude, "value">;
  /** Indicated less known. */
  readonly error: number;
}

/**
 * Whether a device shows nothing at a known level: zero, or no more than the live zero of its loop. A dead one shows that
 * too, so it passes nothing, however wide the uncertainty.
 */
export function showsNothing({ shown, indicated, error }: Shown): boolean {
  const currents = (shown.history ?? []).filter(({ type }) => type === "mA");
  const isLiveZero = currents.length > 0 && currents.every(({ value }) => value <= LIVE_ZERO);
  return indicated.value <= 0 || (isLiveZero && error < 0);
}
