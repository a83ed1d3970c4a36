import { extname } from "node:path";
import type { ChartTheme } from "../../chart/index";
import { markupText, shown, VeladisError } from "../../core/index";
import { wholeFile } from "../table/whole-file";

/** Draws a chart in a theme, as SVG. */
export type Draw = (theme: ChartTheme) => Promise<string>;

/** A PNG twice as wide as its chart, so that small print stays sharp. */
async function pngOf(draw: Draw): Promise<Uint8Array> {
  const { Resvg } = await import("@resvg/resvg-js").catch(() => {
    throw new VeladisError("unwritable", {
      expected:
        "the package @resvg/resvg-js beside veladis, to write PNG: npm install @resvg/resvg-js; .svg and .html need none",
      received: "nothing",
      option: "chart",
    });
  });
  const letters =
    '<svg xmlns="http://www.w3.org/2000/svg" width="99" height="20"><text y="15" font-family="sans-serif">8</text></svg>';
  if (new Resvg(letters).innerBBox() === undefined) {
    throw new VeladisError("unwritable", {
      expected:
        "fonts on this computer, to write PNG: without them its words would be missing; .svg and .html need none",
      received: "none",
      option: "chart",
    });
  }
  return new Resvg(await draw("light"), { fitTo: { mode: "zoom", value: 2 } }).render().asPng();
}

/** A page with nothing but the chart, in the colours of its reader's system. */
async function pageOf(draw: Draw): Promise<string> {
  const svg = await draw("auto");
  const title = /<title>(.*?)<\/title>/s.exec(svg)?.[1] ?? markupText("Chart");
  return `<!doctype html>\n<html lang="en">\n<meta charset="utf-8">\n<meta name="viewport" content="width=device-width">\n<meta name="color-scheme" content="light dark">\n<title>${title}</title>\n<style>body{margin:0}svg{display:block;max-width:100%;height:auto}</style>\n${svg}\n</html>\n`;
}

const writers: Readonly<Record<string, (draw: Draw) => Promise<Uint8Array>>> = {
  ".svg": async (draw) => Buffer.from(`${await draw("light")}\n`),
  ".html": async (draw) => Buffer.from(await pageOf(draw)),
  ".png": pngOf,
};

/**
 * The chart as a sheet holds it: drawn where it can show it, in its file where `--chart` names one; none for data.
 */
export async function sheetPicture(
  sheet: "markdown" | "html" | "json",
  file: string | undefined,
  draw: Draw,
): Promise<{ readonly picture?: { readonly svg: string; readonly text: string; readonly file?: string } }> {
  if (sheet === "json") return {};
  const svg = await draw("light");
  const said = /<desc>(.*?)<\/desc>/s.exec(svg)?.[1] ?? "the chart";
  const text = said.replace(/&(amp|lt|gt|quot|#39);/g, (_, one: string) => plainOf[one] ?? " ");
  return { picture: { svg, text, ...(file !== undefined && { file }) } };
}

const plainOf: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

interface GivenChart {
  readonly chart: string | undefined;
  readonly replace: boolean;
}

/**
 * Refuses a name that says no form, before anything is read.
 *
 * @throws {@link VeladisError} `unknown-option`, and `missing-option` for `--replace` alone
 */
export function requireChart({ chart, replace }: GivenChart): void {
  if (chart === undefined) {
    if (!replace) return;
    throw new VeladisError("missing-option", { expected: "--chart beside --replace", received: "--replace alone" });
  }
  if (Object.hasOwn(writers, extname(chart).toLowerCase())) return;
  throw new VeladisError("unknown-option", {
    expected: "--chart with the name of a file that ends in .svg, .html or .png",
    received: shown(chart),
    option: "chart",
  });
}

/**
 * Writes a chart to the file that `--chart` names, whole or not at all; nothing where none is asked for.
 *
 * @param inputs - files that are read, which a picture never replaces
 * @throws {@link VeladisError} `unwritable`, and `missing-option` where a file is there that is not to be replaced
 */
export async function writeChart(
  { chart, replace }: GivenChart,
  inputs: readonly (string | undefined)[],
  draw: Draw,
): Promise<void> {
  if (chart === undefined) return;
  const bytes = await (writers[extname(chart).toLowerCase()] as (typeof writers)[string])(draw);
  const file = await wholeFile(chart, replace, inputs);
  try {
    await file.write(bytes);
    await file.flush();
    await file.commit();
  } catch (error) {
    await file.discard();
    throw error;
  }
}
