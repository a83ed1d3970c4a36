import { type Amplitude, isClipped } from "../../reading/index";

/** Where in the range of its loop a reading lay, where that was outside; to stand behind numbers that do not say it. */
export function stateText({ state }: Pick<Amplitude, "state">): string {
  return isClipped(state) ? ` (${state})` : "";
}
