import { cached, VeladisError } from "../core/index";
import { type Amplitude, parsedType } from "../reading/index";
import type { Quantity } from "../units/index";

/** The quantity that a step of a history is written in; none where it is no vibration yet, as in mA or mV. */
const quantityIn = /* @__PURE__ */ cached((type): Quantity | "none" => {
  try {
    return parsedType(type).quantity;
  } catch (error) {
    if (error instanceof VeladisError) return "none";
    throw error;
  }
});

/**
 * True for a displacement, and for a velocity or an acceleration whose history begins with one: what was measured on a
 * shaft stays of the shaft, in whatever it is written.
 */
export function isOfDisplacement({ quantity, history }: Amplitude): boolean {
  if (quantity === "displacement") return true;
  return (
    history?.some(({ type, of = [] }) => {
      const isFirst = of.every((at) => quantityIn((history[at] as { type: string }).type) === "none");
      return isFirst && quantityIn(type) === "displacement";
    }) ?? false
  );
}
