import { attempt } from "../../core/index";
import type { PlantMachine } from "../../plant/index";
import { asFoundAsLeft, checkAgainstKnown } from "../../verification/index";
import type { MachineReport } from "./machine-report";

/** The last check of a device as found and as left, and what it means; why not, where it cannot be judged. */
export function machineChecks({ check }: PlantMachine): Pick<MachineReport, "checks" | "checkNotes"> {
  const { known, asFound, asLeft, tolerance } = check ?? {};
  if (check === undefined) return { checks: [], checkNotes: [] };
  const lacking = Object.entries({ known, tolerance, "as found or as left": asFound ?? asLeft }).flatMap(
    ([name, value]) => (value === undefined ? [name] : []),
  );
  if (known === undefined || tolerance === undefined || lacking.length > 0) {
    return { checks: [], checkNotes: [`Not judged, since the list lacks of this check: ${lacking.join(", ")}.`] };
  }
  const judged = attempt(() => {
    if (asFound === undefined || asLeft === undefined) {
      const name = asFound === undefined ? "as left" : "as found";
      const indicated = (asFound ?? asLeft) as NonNullable<typeof asFound>;
      return { checks: [{ name, check: checkAgainstKnown({ known, indicated, tolerance }) }] as const, checkNotes: [] };
    }
    const pair = asFoundAsLeft({ known, asFound, asLeft, tolerance });
    const checks = [
      { name: "as found", check: pair.asFound },
      { name: "as left", check: pair.asLeft },
    ] as const;
    const left = pair.asLeft.verdict === "pass" ? [] : ["As left it does not pass: do not rely on it for protection."];
    return { checks, checkNotes: [pair.meaning, ...left] };
  });
  return judged.ok ? judged.value : { checks: [], checkNotes: [`Not judged: ${judged.error.message}`] };
}
