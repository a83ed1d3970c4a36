import { convertAmplitude } from "../../amplitude/index";
import { shown, VeladisError } from "../../core/index";
import { bandOfText } from "../../frequency/index";
import { format, parsedType, significant, typeOf } from "../../reading/index";
import { densityUnit, profileOverall, profileSlopes } from "../../signal/index";
import type { UnitSymbol } from "../../units/index";
import { accountText } from "../delimited/account-text";
import { headingSays } from "../delimited/heading-says";
import { writtenAs } from "../delimited/written-as";
import { csvFrequencies } from "../input/csv-frequencies";
import { densityIn } from "../input/density-heading";
import type { Io } from "../input/io";
import { namedFile } from "../input/open-file";
import { saysDbAnOctave } from "../input/slope-heading";
import { onlyColumn } from "../options/only-column";
import type { ParsedOptions } from "../options/option-row";
import { digitsOf } from "../options/option-values";
import { requireFitting } from "../options/options-beside";
import { isParquet } from "../parquet/written-parquet";
import { exitCodes } from "../print/exit-codes";
import { type Explained, explainedSteps, explainedText } from "../print/explained";
import { jsonLine } from "../print/json-line";
import { bandOfProfile, pointsOf } from "../record/profile-points";
import { profileText } from "../record/profile-text";
import { rowsOfFile } from "../record/rows-of-file";
import type { overallPage } from "./overall-page";

const fitting = [
  ...["density", "unit", "to", "band", "column", "at-column", "at-unit", "slope-column", "digits", "explain", "json"],
  ...["separator", "decimal-comma", "header-line", "encoding", "remarks", "quotes", "file-units"],
];

/** The unit whose square the densities are in: as it is told, else as the heading says. */
function squaredUnit(heading: string, told: string | undefined, fileUnits: "none" | undefined): UnitSymbol {
  const said = fileUnits === "none" ? undefined : densityIn(heading);
  const asked = told === undefined ? undefined : densityUnit(told);
  const other = fileUnits === "none" ? undefined : headingSays(heading).find(({ unit, level }) => unit ?? level);
  if (said === undefined && other !== undefined) {
    throw new VeladisError("unknown-option", {
      expected: "a column of densities such as g2/Hz; the lines of a spectrum take --spectrum",
      received: `the heading ${shown(heading.trim())}, which says ${shown(other.written)}`,
    });
  }
  if (asked !== undefined && said !== undefined && asked !== said) {
    throw new VeladisError("unknown-option", {
      expected: "the unit of the densities as their heading says it, or --file-units none where the heading is wrong",
      received: `--unit ${shown(told)}, and the heading ${shown(heading.trim())}`,
    });
  }
  const unit = asked ?? said;
  if (unit !== undefined) return unit;
  throw new VeladisError("missing-option", {
    expected: "--unit, the unit of the densities, such as g2/Hz or (mm/s)2/Hz",
    received: `the heading ${shown(heading.trim())}, which says none`,
  });
}

/** The RMS level of the points of a spectral density in a file, and its peak where the vibration is Gaussian. */
export async function printProfile(given: ParsedOptions<typeof overallPage.options>, io: Io): Promise<number> {
  const { values, texts } = given;
  requireFitting(given, "the points of a density", (name) => fitting.includes(name));
  const digits = digitsOf(values.digits);
  const file = namedFile(texts[0]);
  const source = await rowsOfFile(
    io,
    { file, format: isParquet(file) ? "parquet" : "csv", written: writtenAs(values) },
    "a file of densities, as in veladis overall --density profile.csv",
  );
  const name = file ?? "standard input";
  let squared: UnitSymbol = "g";
  const slopes = values["slope-column"];
  let taken: string | undefined;
  const rows = await csvFrequencies(source.reader, {
    file: name,
    written: source.written,
    frequency: { column: values["at-column"], unit: values["at-unit"], shaft: undefined },
    column: onlyColumn(values.column),
    beside: slopes,
    what: "a density",
    told: (headings, index, slope) => {
      if (slope !== undefined && (values["file-units"] === "none" || !saysDbAnOctave(headings[slope] as string))) {
        taken = `slopes of column ${slope + 1} taken as dB an octave, which ${values["file-units"] === "none" ? "its heading was not asked for" : "its heading does not say"}`;
      }
      squared = squaredUnit(headings[index] as string, values.unit, values["file-units"]);
      return { negative: false, empty: slopes !== undefined };
    },
  });
  const whole = pointsOf(rows);
  const points = values.band === undefined ? whole : bandOfProfile(whole, bandOfText(values.band));
  const unit = squared.includes("/") ? `(${squared})2/Hz` : `${squared}2/Hz`;
  const asked = (values.to ?? typeOf(squared, "rms").type).split(",").map(parsedType);
  const levels = asked.map(({ unit: as, detector }) =>
    profileOverall(points, { unit: unit as "g2/Hz", as: `${as} ${detector}` }),
  );
  const written = levels.map((level, i) => convertAmplitude(level, (asked[i] as (typeof asked)[number]).type));
  const shownLevels = written.map((level) => format(level, { digits }));
  io.err(accountText(rows.account, rows.counts, values.json));
  if (values.json) {
    const lines = levels.map((level, i) =>
      jsonLine("profile overall", level, {
        ...{ file: name, text: shownLevels[i], slopes: profileSlopes(points) },
        ...(taken !== undefined && { assumedSlopes: taken }),
        ...explainedSteps(values.explain, ["", level]),
      }),
    );
    await io.out(lines.join(""));
    return exitCodes.done;
  }
  const explained = written.map((level, i): Explained => [shownLevels[i] as string, level]);
  await io.out(
    profileText({
      name,
      unit,
      points,
      taken,
      levels: shownLevels,
      peaks: levels.map(({ peak }) => format(peak, { digits })),
      slopes: profileSlopes(points).map((one) => significant(one, digits)),
      digits,
    }) + (values.explain ? explainedText(explained) : ""),
  );
  return exitCodes.done;
}
