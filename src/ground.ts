// biome-ignore-all assist/source/organizeImports: from the lowest floor up, so that what is near in meaning is near in the file
/** The floors that `veladis` is made of, whole: the build makes one file of them, from which all others take what they need. */
export * from "./core/index";
export * from "./units/index";
export * from "./detectors/index";
export * from "./frequency/index";
export * from "./reading/index";
export * from "./amplitude/index";
