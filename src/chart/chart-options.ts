import { requireChoice, requireFinite, requireKnownOptions, shown, VeladisError } from "../core/index";
import { type ChartTheme, chartThemes } from "./style";

/** What every chart can be told. */
export interface ChartOptions {
  /** Width in pixels, 280 to 2000; 640 if not given. The chart shrinks with its frame, and is laid out anew here. */
  readonly width?: number;
  /** Height of the plot itself in pixels, 80 to 2000. */
  readonly height?: number;
  /** The heading; each chart has one of its own. */
  readonly title?: string;
  /** What a reader who does not see the chart is told; each chart writes one from its data. */
  readonly description?: string;
  /** `"auto"` (the reader's system and the page decide), `"light"` or `"dark"`. */
  readonly theme?: ChartTheme;
}

function size(given: number | undefined, usual: number, least: number, what: string): number {
  const place = { option: /\w+$/.exec(what.replace(/ of .*/, ""))?.[0] as string };
  if (given === undefined) return usual;
  const expected = `${what} from ${least} to 2000 pixels`;
  if (requireFinite(given, expected, place) >= least && given <= 2000) return given;
  throw new VeladisError("out-of-range", { expected, received: shown(given), ...place });
}

/** The width of a chart, checked. */
export function requireWidth({ width }: ChartOptions): number {
  return size(width, 640, 280, "a width");
}

/** The height of its plot, checked. */
export function requireHeight({ height }: ChartOptions, usual: number): number {
  return size(height, usual, 80, "a height of the plot");
}

/** The theme, checked. */
export function requireTheme({ theme = "auto" }: ChartOptions): ChartTheme {
  return requireChoice(theme, chartThemes, "a theme", { option: "theme" });
}

/** A text of the chart's own, or of its user. */
export function textOrDefault(given: string | undefined, usual: string, what: string, option: string): string {
  if (given === undefined) return usual;
  if (typeof given === "string" && given.length <= 10_000) return given;
  throw new VeladisError("wrong-type", {
    expected: `${what} of up to 10 000 letters`,
    received: shown(given),
    option,
  });
}

/** What every chart but one without a height of its own can be told. */
const shared = /* @__PURE__ */ Object.freeze({ width: true, title: true, description: true, theme: true });

/**
 * Options of a chart, none of which is a stranger: a mistyped one would be left out of the chart, and nobody would see it.
 *
 * @param own - those of the chart besides the shared ones
 */
export function requireOptions<Options extends object>(
  options: Options,
  own: Readonly<Record<Exclude<keyof Options, keyof typeof shared>, true>>,
  form: string,
): Options {
  return requireKnownOptions(options, { ...own, ...shared }, { what: "an option of this chart", form });
}
