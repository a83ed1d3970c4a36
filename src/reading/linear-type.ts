import { type ErrorPlace, inPlace, requireText, shown, VeladisError } from "../core/index";
import { type ParsedType, parsedType } from "./parsed-type";

const AS: ErrorPlace = { parameter: "as" };

const FORM = 'a unit and a detector for the answer, such as "mm/s rms"';

/**
 * The amplitude type that a text names, taken apart; a level is refused, since what is asked for is an amount.
 *
 * @throws {@link VeladisError} `wrong-type`, `syntax`, `out-of-range` for a level, `unknown-unit`, `unknown-detector`,
 *   `missing-detector`
 */
export function linearType(as: string, place = AS): ParsedType {
  const found = inPlace(place, () => parsedType(requireText(as, FORM)));
  if (found.reference === 0) return found;
  throw new VeladisError("out-of-range", {
    expected: 'a linear unit for the answer, such as "mm/s rms"; convert the answer to have it as a level',
    received: shown(as),
    ...place,
  });
}
