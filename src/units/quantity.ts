import { frozen } from "../core/index";

/** The three quantities of vibration, with how many times each is the time derivative of displacement. */
export const quantities = /* @__PURE__ */ frozen({
  displacement: 0,
  velocity: 1,
  acceleration: 2,
} as const);

/** A quantity of vibration. */
export type Quantity = keyof typeof quantities;
