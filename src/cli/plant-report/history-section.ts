import { convertAmplitude } from "../../amplitude/index";
import { trendChart } from "../../chart/index";
import { attempt } from "../../core/index";
import type { PlantMachine } from "../../plant/index";
import { type Amplitude, format } from "../../reading/index";
import type { PageCharts } from "./chart-figure";
import { bullets, section } from "./list-parts";
import type { MachineReport } from "./machine-report";
import { type Markup, markup } from "./markup";
import { NARROW } from "./reading-section";

const WIDE = 860;

/** The setpoints and the baseline that can be told in a type, and why the others cannot. */
function levelsIn({ baseline, alarm, trip }: PlantMachine, as: string) {
  const levels: { baseline?: Amplitude; alarm?: Amplitude; trip?: Amplitude } = {};
  const notes: string[] = [];
  for (const [name, level] of Object.entries({ baseline: baseline?.level, alarm, trip })) {
    if (level === undefined) continue;
    const found = attempt(() => convertAmplitude(level, as));
    if (found.ok) levels[name as keyof typeof levels] = level;
    else notes.push(`The ${name} of ${format(level)} is not drawn: ${found.error.message}`);
  }
  return { levels, notes };
}

/** The readings over time, with the setpoints as they are set; drawn for a wide and for a narrow page. */
export function historySection({ histories, machine }: MachineReport, charts: PageCharts): Markup | undefined {
  const parts = histories.map((history) => {
    const { name, as, readings, timeUnit, notes } = history;
    if (readings.length === 0) return bullets(notes);
    const { levels, notes: leftOut } = levelsIn(machine, as);
    const draw = (width: number): string =>
      trendChart({ readings, as: as as "mm/s rms", width, title: name, ...(timeUnit && { timeUnit }), ...levels });
    const drawn = attempt(() => [charts.figure(draw(WIDE), "wide"), charts.figure(draw(NARROW), "narrow")]);
    const why = drawn.ok ? [] : [`${name}: not drawn: ${drawn.error.message}`];
    return markup`${drawn.ok && drawn.value}${bullets([...why, ...notes, ...leftOut])}`;
  });
  return section("history", "History", ...parts);
}
