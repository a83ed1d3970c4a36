import { hertz as hertzOf } from "../frequency/index";
import { significant } from "../reading/index";
import type { DeviceBand } from "./band-response";

/** Where a frequency lies in the band of a device. */
interface BandUse {
  readonly place: "within" | "at the edge" | "outside";
  /** What is to be known of it, behind the frequency; null for one within. */
  readonly remark: string | null;
}

/**
 * Where a running frequency lies in the band of a device. A band is stated by its -3 dB edges; by ISO 2954 it is flat within
 * 10 % only from about 1.26 times the lower one.
 */
export function bandUse(hertz: number, band: Pick<DeviceBand, "lowest" | "highest">): BandUse {
  const [low, high] = [hertzOf(band.lowest), hertzOf(band.highest)];
  if (hertz >= low * 1.26 && hertz <= high) return { place: "within", remark: null };
  if (hertz > high) {
    return { place: "outside", remark: `above the band of ${significant(low)} to ${significant(high)} Hz` };
  }
  if (hertz < low) {
    const remark = `below the band of ${significant(low)} to ${significant(high)} Hz, so the shaft's own vibration is read low or not at all`;
    return { place: "outside", remark };
  }
  const remark = `at the lower edge of the band (${significant(low)} Hz), where a device reads as little as 0.707 of it`;
  return { place: "at the edge", remark };
}
