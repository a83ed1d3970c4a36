import { parseNumeral, shown, VeladisError } from "../core/index";
import type { ChannelSettings } from "./trip-settings";

/**
 * Factor and time of a multiplied setpoint, of a text such as `"2 for 30 s"` or `"2 times for 30 s"`.
 *
 * @throws {@link VeladisError} `syntax`, `not-a-number`
 */
export function multiplierOfText(written: string): NonNullable<ChannelSettings["multiplier"]> {
  const [factor, seconds, ...more] = written.split(/\s+for\s+/);
  if (factor === undefined || seconds === undefined || more.length > 0) {
    throw new VeladisError("syntax", {
      expected: 'a factor and a time in s, such as "2 for 30"',
      received: shown(written),
    });
  }
  return {
    factor: parseNumeral(factor.replace(/\s+times$/, ""), "a factor"),
    seconds: parseNumeral(seconds.replace(/\s*s$/, ""), "a time in s"),
  };
}
