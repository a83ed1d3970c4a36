import { trendChart } from "../../chart/index";
import type { PageCharts } from "./chart-figure";
import { bullets, section } from "./list-parts";
import type { MachineReport, ReportHistory } from "./machine-report";
import { type Markup, markup } from "./markup";
import { NARROW } from "./reading-section";

const WIDE = 860;

/** The readings over time, with the setpoints as they are set; drawn for a wide and for a narrow page. */
export function historySection({ histories, machine }: MachineReport, charts: PageCharts): Markup | undefined {
  const levels = {
    ...(machine.baseline && { baseline: machine.baseline.level }),
    ...(machine.alarm && { alarm: machine.alarm }),
    ...(machine.trip && { trip: machine.trip }),
  };
  const parts = histories.map((history: ReportHistory) => {
    const { name, as, readings, timeUnit, notes } = history;
    const draw = (width: number): string =>
      trendChart({ readings, as, width, title: name, ...(timeUnit && { timeUnit }), ...levels });
    return markup`${charts.figure(draw(WIDE), "wide")}${charts.figure(draw(NARROW), "narrow")}${bullets(notes)}`;
  });
  return section("history", "History", ...parts);
}
