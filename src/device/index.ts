export { bandResponse, type DeviceBand } from "./band-response";
export { bandUse } from "./band-use";
export { type Device, deviceType, requireDevice, roundings } from "./device";
export { deviceSettings } from "./device-settings";
export { loopUse } from "./loop-use";
export { multiplierOfText } from "./multiplier-of-text";
export {
  coils,
  contacts,
  isFailSafe,
  type RelaySettings,
  type RelayStatus,
  relayNow,
  relayStatus,
  requireCoil,
  requireContact,
  requireLatching,
  requireRelay,
} from "./relay";
export { type StoredSetpoint, setpointInDevice, storedSetpoint } from "./stored-setpoint";
export { resetLevel, TIME_TOLERANCE, type TripRules, thresholdOf, tripRules } from "./trip-rules";
export { type ChannelSettings, sensorFaults, type TripSettings, timerResets } from "./trip-settings";
