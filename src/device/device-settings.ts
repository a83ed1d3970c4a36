/**
 * All settings of a device, of whichever function: an object that was written for one of them serves the others, and
 * a key that is none of these was mistyped.
 */
export const deviceSettings = /* @__PURE__ */ Object.freeze({
  threshold: true,
  hysteresis: true,
  onDelay: true,
  offDelay: true,
  timerResets: true,
  sensorFault: true,
  startInhibit: true,
  multiplier: true,
  latching: true,
  contact: true,
  coil: true,
  detector: true,
  highPass: true,
  frequencies: true,
  band: true,
  load: true,
  tolerance: true,
  loop: true,
  sensor: true,
} as const);
