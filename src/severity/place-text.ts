/** What is said where a displacement of unknown place is judged for both, and they differ. */
export const WORSE_PLACE = "place: not given, and the worse of housing and shaft is taken";

/** True for what was assumed of the place. */
function isOfPlace(text: string): boolean {
  return text.startsWith("place ");
}

/** What was assumed of anything but the place. */
export function withoutPlace(texts: readonly string[]): readonly string[] {
  return texts.filter((text) => !isOfPlace(text));
}
