import { lstat, mkdir } from "node:fs/promises";
import { join } from "node:path";
import { attempt, cellText, shown, VeladisError } from "../../core/index";
import {
  type BenchDevice,
  type BenchRound,
  type BenchSetting,
  levelText,
  type Plant,
  type PlantMachine,
  resultTitles,
} from "../../plant/index";
import { type SheetRequest, setpointSheet, sheetHtml } from "../../report/index";
import { type BenchSettings, benchPlan, type Shaker } from "../../verification/index";
import { quotedCell } from "../delimited/cells";
import { settingText } from "../print/round-text";
import { wholeFile } from "../table/whole-file";

/** The settings that the steps of a sheet prove; undefined where the list does not have them all. */
function benchSettings(machine: PlantMachine, hertz: number, load: string | undefined): BenchSettings | undefined {
  const { trip, tripDelay, settings, band, tolerance, loop, sensor } = machine;
  const { hysteresis, latching, offDelay, contact, coil, sensorFault } = settings;
  if (trip === undefined || tripDelay === undefined || hysteresis === undefined || latching === undefined)
    return undefined;
  return {
    threshold: `${trip.value} ${trip.unit} ${trip.detector}`,
    ...{ hysteresis, onDelay: tripDelay, latching, frequencies: [{ hertz }] },
    ...(offDelay !== undefined && { offDelay }),
    ...(contact !== undefined && coil !== undefined && { contact, coil }),
    ...(sensorFault !== undefined && { sensorFault }),
    ...(band !== undefined && { band }),
    ...(tolerance !== undefined && { tolerance }),
    ...(loop !== undefined && { loop }),
    ...(sensor !== undefined && { sensor }),
    ...(load !== undefined && { load }),
  };
}

/** What a sheet tells of its device, as the list has it. */
function factsOf(
  { description, cells = {}, check }: PlantMachine,
  { number, known }: BenchDevice,
  setting: BenchSetting,
): Record<string, string> {
  const told: readonly (readonly [name: string, text: string | undefined])[] = [
    ["number of this sheet", number],
    ["machine", description],
    ["setting of the shaker", settingText(setting)],
    ["the device should show", levelText({ ...known, hertz: undefined })],
    ...(
      ["kind", "power", "speed", "sensor", "loop", "band", "alarm", "alarm delay s", "trip", "trip delay s"] as const
    ).map((column) => [column, cells[column]] as const),
    ["last check", check?.date],
  ];
  return Object.fromEntries(told.flatMap(([name, text]) => (text === undefined ? [] : [[name, text]])));
}

/** The sheet of a device in a round: what it should show, lines for what it shows, and the steps that prove the rest. */
function sheetOf(machine: PlantMachine, device: BenchDevice, setting: BenchSetting, bench: Bench): SheetRequest {
  const { number, known } = device;
  const asked = benchSettings(machine, setting.hertz, bench.load);
  const plan = asked === undefined ? undefined : attempt(() => benchPlan(asked, bench.shaker));
  const unplanned =
    plan === undefined
      ? "no steps for trip, reset, delay and latch: the list lacks trip, trip delay, hysteresis or latching"
      : plan.ok
        ? undefined
        : `no steps for trip, reset, delay and latch: ${plan.error.message}`;
  const shows = `${known.unit} ${known.detector}`;
  return {
    machine: machine.tag,
    facts: factsOf(machine, device, setting),
    toFill: [
      `as found, ${shows}`,
      `as left, ${shows}`,
      "checked on (date)",
      "checked by",
      "device: maker, type, serial number",
      "reference shaker: maker, type, serial number",
      "certificate of it, valid until",
    ],
    ...(plan?.ok === true && { plan: plan.value }),
    remarks: [
      `tolerance ${machine.tolerance ?? "not in the list"}`,
      ...(device.isBandKnown ? [] : ["no band in the list: find out whether it holds the frequency before the check"]),
      ...(unplanned === undefined ? [] : [unplanned]),
      // the steps of a plan say them in their own words
      ...(plan?.ok === true ? [] : bench.round.notes),
      `the result goes into results.csv, row ${number}`,
    ],
  };
}

/** Names of files for numbers: letters, digits and a few signs, each once whatever the disk makes of large letters. */
function fileNames(numbers: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return numbers.map((number) => {
    const plain = number
      .replace(/[^A-Za-z0-9._-]+/g, "_")
      .replace(/^[.-]+/, "_")
      .slice(0, 100);
    let name = plain;
    for (let i = 2; taken.has(name.toLowerCase()); i++) name = `${plain}-${i}`;
    taken.add(name.toLowerCase());
    return `${name}.html`;
  });
}

/** The file of results to be filled in: number, tag, known level and tolerance stand there. */
function resultsCsv({ round, plant, decimalComma }: Bench): string {
  const separator = decimalComma ? ";" : ",";
  const tolerances = new Map(plant.machines.map(({ line, tolerance }) => [line, tolerance ?? ""]));
  const line = (cells: readonly string[]): string =>
    `${cells.map((cell) => quotedCell(cellText(cell), separator)).join(separator)}\n`;
  const number = (text: string): string => (decimalComma ? text.replace(/(?<=\d)\.(?=\d)/g, ",") : text);
  const rows = round.settings.flatMap(({ devices }) =>
    devices.map((one) =>
      line([one.number, one.tag, "", number(levelText(one.known)), "", "", number(tolerances.get(one.line) ?? ""), ""]),
    ),
  );
  return line(resultTitles) + rows.join("");
}

/** A round, and what it is made with. */
export interface Bench {
  readonly round: BenchRound;
  readonly plant: Plant;
  readonly shaker: Shaker;
  readonly load: string | undefined;
  readonly decimalComma: boolean;
  /** Whether a file of results has been filled in by nobody yet. */
  isOpen(path: string): Promise<boolean>;
}

async function write(path: string, text: string, replace: boolean): Promise<void> {
  const file = await wholeFile(path, replace);
  try {
    await file.write(Buffer.from(text));
    await file.commit();
  } catch (error) {
    await file.discard();
    throw error;
  }
}

/**
 * Writes the sheets of a round and the file of results to be filled in into a folder; resolves to how many sheets.
 *
 * @throws {@link VeladisError} `unwritable`, and `missing-option` where one of the files is there that is not to be replaced
 */
export async function writeSheets(folder: string, bench: Bench, replace: boolean): Promise<number> {
  const machines = new Map(bench.plant.machines.map((one) => [one.line, one]));
  const devices = bench.round.settings.flatMap((setting) => setting.devices.map((device) => ({ device, setting })));
  const names = fileNames(devices.map(({ device }) => device.number));
  await mkdir(folder, { recursive: true }).catch(({ code }: NodeJS.ErrnoException) => {
    throw new VeladisError("unwritable", {
      expected: "a folder for the sheets",
      received: `${shown(folder)}: ${code}`,
      option: "sheets",
    });
  });
  for (const name of replace ? [] : [...names, "results.csv"]) {
    // looked at before the first is written, so that a round stands in its folder whole
    if ((await lstat(join(folder, name)).catch(() => undefined)) === undefined) continue;
    throw new VeladisError("missing-option", {
      expected: "a folder without the sheets of this round, or --replace",
      received: `${shown(join(folder, name))}, which is there`,
      option: "sheets",
    });
  }
  const results = join(folder, "results.csv");
  if ((await lstat(results).catch(() => undefined)) !== undefined && !(await bench.isOpen(results))) {
    throw new VeladisError("unwritable", {
      expected: "a folder whose results.csv nobody has filled in: what came back from the bench is replaced by nothing",
      received: `${shown(results)}, with results in it`,
      option: "sheets",
    });
  }
  for (const [i, { device, setting }] of devices.entries()) {
    const request = sheetOf(machines.get(device.line) as PlantMachine, device, setting, bench);
    await write(join(folder, names[i] as string), sheetHtml(setpointSheet(request)), replace);
  }
  await write(results, resultsCsv(bench), replace);
  return devices.length;
}
