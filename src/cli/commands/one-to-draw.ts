import { VeladisError } from "../../core/index";

/** The option that asks for a picture, if any does. */
export function pictureAsked({
  chart,
  plot,
}: {
  readonly chart: string | undefined;
  readonly plot: boolean;
}): "chart" | "plot" | undefined {
  if (chart !== undefined) return "chart";
  return plot ? "plot" : undefined;
}

/** What refuses a picture of several readings: the bar shows one. */
export function oneToDraw(option: "chart" | "plot", received: string): VeladisError {
  return new VeladisError("out-of-range", {
    expected: `one reading behind the command beside --${option}`,
    received,
    option,
  });
}
