import { lazily, shown, VeladisError } from "../core/index";
import type { Machine } from "./machine";

/** What varies the frequency of a motor's line. */
const drive = /* @__PURE__ */ lazily(
  () =>
    /(?<![\w-])(?:V[FSV]D|VVVF|ASD|(?:frequency[\s-])?(?:inverter|converter)(?:[\s-](?:fed|driven|duty))?|(?:variable|adjustable|regulated|two|2|multi)[\s-](?:speed|frequency)(?:[\s-]drive)?|(?:frequency|speed)[\s-](?:controlled|regulated)|PWM|pole[\s-]changing)(?![\w-])/i,
);

/**
 * Refuses a speed that comes from poles where a drive varies the frequency of the line: the shaft may turn at any speed that
 * the drive allows, and slower machines may have lower limits.
 *
 * @throws {@link VeladisError} `missing-fact`
 */
export function requireFixedFrequency({ assumedFacts = [] }: Machine, line: string): void {
  const [written] = drive().exec(line) ?? [];
  if (written === undefined || !assumedFacts.some((text) => text.includes("synchronous speed"))) return;
  throw new VeladisError("missing-fact", {
    expected: "the range of speeds that the drive allows, in r/min, such as 600 to 1800 r/min",
    received: `a number of poles and ${shown(written)}`,
    fact: "speed",
  });
}
