import type { JudgedRoute, RefusedReading } from "../../plant/index";

/** Machines of the list that a refused reading leaves without a verdict, wholly or in part. */
export interface RefusedMachines {
  /** Every reading of it was refused: nothing is known of it. */
  readonly notJudged: readonly string[];
  /** Some were: its zone is that of the others. */
  readonly partly: readonly string[];
}

/** Whether a reading was refused because no row of the list has its tag. */
function isStranger({ code, column, tag }: RefusedReading): boolean {
  return tag === "" || (code === "unknown-option" && column === "tag");
}

/** The machines whose readings on the route were refused, in its order. */
export function refusedMachines({ verdicts, refused }: Pick<JudgedRoute, "verdicts" | "refused">): RefusedMachines {
  const judged = new Set(verdicts.map(({ tag }) => tag));
  const own = refused.filter((one) => one.from === "route" && !isStranger(one));
  const tags = [...new Set(own.map(({ tag }) => tag))];
  return {
    notJudged: tags.filter((tag) => !judged.has(tag)),
    partly: tags.filter((tag) => judged.has(tag)),
  };
}
