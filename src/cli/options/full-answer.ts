import { VeladisError } from "../../core/index";

/** Whether all that a verdict rests on is to be printed; refused beside data, which always has it. */
export function fullAnswer({ full, json }: { readonly full: boolean; readonly json: boolean }): boolean {
  if (!full || !json) return full;
  throw new VeladisError("unknown-option", {
    expected: "--full for an answer to read: --json always tells all",
    received: "--full with --json",
    option: "full",
  });
}
