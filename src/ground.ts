/** The floors that `veladis` is made of, whole: the build makes one file of them, from which all others take what they need. */
export * from "./amplitude/index";
export * from "./core/index";
export * from "./detectors/index";
export * from "./frequency/index";
export * from "./reading/index";
export * from "./units/index";
