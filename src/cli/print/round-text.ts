import { counted } from "../../core/index";
import { type BenchRound, levelText } from "../../plant/index";
import { format } from "../../reading/index";
import { dashed, wrapped } from "./wrapped";
import { wrappedTable } from "./wrapped-table";

/** A setting of the shaker: its level, and the same as displacement and acceleration. */
export function settingText({ level, displacement, acceleration }: BenchRound["settings"][number]): string {
  const same = levelText({ ...level, hertz: undefined });
  const others = [displacement, acceleration].map((one) => format(one)).filter((text) => text !== same);
  return `${levelText(level)} (${others.join(", ")})`;
}

/** Devices whose band the list does not have, in a remark. */
function bandless({ settings }: BenchRound): readonly string[] {
  const tags = settings.flatMap(({ devices }) =>
    devices.filter(({ isBandKnown }) => !isBandKnown).map(({ tag }) => tag),
  );
  if (tags.length === 0) return [];
  return [`no band in the list, taken to hold the frequency: ${tags.join(", ")}; find out before the check`];
}

/** A round on the bench: each setting of the shaker with the devices that it serves. */
export function roundText(round: BenchRound): string {
  const { settings, left, notes, source } = round;
  const served = settings.reduce((sum, { devices }) => sum + devices.length, 0);
  const head = `round on the bench: ${counted(settings.length, "setting")} of the shaker for ${counted(served, "device")}${left.length > 0 ? `, ${left.length} left out` : ""} (${source.title})`;
  const rows = settings.flatMap((setting, i) =>
    setting.devices.map(({ number, known }, k) => [
      [k === 0 ? `${i + 1}` : ""],
      [k === 0 ? settingText(setting) : ""],
      [number],
      [levelText({ ...known, hertz: undefined })],
    ]),
  );
  const table = wrappedTable(
    [{ title: "", align: "right" }, { title: "shaker", wraps: true }, { title: "sheet" }, { title: "should show" }],
    rows,
  );
  const outside = left.map(({ tag, why, mend }) => `${tag}: ${why}; ${mend}`);
  return `${wrapped(head)}${rows.length > 0 ? `\n${table}` : ""}${
    outside.length > 0 ? `\nleft out\n${dashed(outside)}` : ""
  }\n${dashed([...bandless(round), ...notes])}`;
}
