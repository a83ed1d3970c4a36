// Random histories by the trip logic and by a slow model of its rules: `node bench/random-histories.mjs [--count 1000]`.
import { parseArgs } from "node:util";
import { TripLogic, VotedTrip } from "../dist/protection.js";
import { currentLoop } from "../dist/sensor.js";
import { finish, report } from "./measure.mjs";
import { bundled } from "./test-module.mjs";

const { values } = parseArgs({
  options: { count: { type: "string", default: "1000000" }, seed: { type: "string", default: "15" } },
});
const COUNT = Number(values.count);
const { tripDifferences } = await bundled("independent/trip-histories.ts");

const differences = tripDifferences({ TripLogic, VotedTrip, currentLoop }, COUNT, Number(values.seed));
for (const one of differences.slice(0, 10)) console.log(`${one}\n`);
report(`differences in ${COUNT} random histories, voted and single`, differences.length, 0, "");
finish("Trip logic against a slow model");
