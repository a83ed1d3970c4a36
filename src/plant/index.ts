export { type JudgeRouteOptions, judgeRoute } from "./judge-route";
export { machineVerdict } from "./machine-verdict";
export { scheduleSetpoints } from "./schedule-setpoints";
