export { type Band, bandResponse } from "./band-response";
export { checkedDevice, type Device, deviceType, roundings, type StoredSetpoint, storedSetpoint } from "./device";
export { deviceSettings } from "./device-settings";
export {
  checkedCoil,
  checkedContact,
  checkedLatching,
  checkedRelay,
  coils,
  contacts,
  isFailSafe,
  type RelaySettings,
  type RelayStatus,
  relayNow,
  relayStatus,
} from "./relay";
export { resetLevel, TOLERANCE, type TripRules, thresholdOf, tripRules } from "./trip-rules";
export { type ChannelSettings, sensorFaults, type TripSettings, timerResets } from "./trip-settings";
export { yesOrNo } from "./yes-or-no";
