/** Floors that are mutated together, and held by the tests of the same folders. */
export const groups = {
  amplitudes: ["core", "units", "detectors", "frequency", "amplitude"],
  severity: ["severity"],
  protection: ["protection", "verification"],
};

/** The group of this run, told by the environment. */
export const floors = () => groups[process.env.MUTATION_GROUP ?? "amplitudes"];
