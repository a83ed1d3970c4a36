import { standardText } from "./edition-text";
import type { KnownFacts } from "./machine";
import type { Scheme } from "./scheme";
import { builtInSchemes } from "./schemes/index";
import { isForKind } from "./verdict";

/** Facts not given that are taken as usual, with the value that is taken. */
export type UsualCase = Readonly<Partial<Record<"condition" | "place", string>>>;

/** Whether a new machine of one of these kinds would be judged by other schemes; undefined for any kind. */
function hasAcceptance(
  schemes: readonly Scheme[],
  types: readonly string[] | undefined,
  place: Scheme["place"],
): boolean {
  return schemes.some(
    (one) =>
      one.kind === "acceptance" &&
      one.place === place &&
      (types === undefined || types.some((type) => isForKind(one, type))),
  );
}

/** What is taken where the schemes for a machine are searched: in service, and read on the housing. */
export function usualCaseAmong(schemes: readonly Scheme[], known: KnownFacts, place: Scheme["place"]): UsualCase {
  const types = known.type === undefined ? [] : [known.type as string];
  const isOpen = known.condition === undefined && hasAcceptance(schemes, types, place);
  return {
    ...(isOpen && { condition: "in service" }),
    ...(known.place === undefined && place === "housing" && { place }),
  };
}

/** What is taken where one scheme is named: that the machine and the reading are such as it is for. */
export function usualCaseOf(scheme: Scheme, known: KnownFacts): UsualCase {
  const { kind, place, machines } = scheme;
  const types = known.type === undefined ? machines : [known.type as string];
  const isOpen = kind === "acceptance" || hasAcceptance(builtInSchemes, types, place);
  const condition = kind === "acceptance" ? "new" : "in service";
  return {
    ...(known.condition === undefined && isOpen && { condition }),
    ...(known.place === undefined && { place }),
  };
}

/** What was taken as usual, in words. */
export function usualTexts(usual: UsualCase): string[] {
  return Object.entries(usual).map(([fact, value]) => `${fact} ${value}: not given, assumed`);
}

/** What is said of a condition that a scheme is not for and does not refuse itself, in words. */
export function conditionAside({ kind, standard, edition, within }: Scheme, { condition }: KnownFacts): string[] {
  const wanted = kind === "acceptance" ? "new" : "in service";
  if (condition === undefined || condition === wanted || within?.condition !== undefined) return [];
  return [
    `condition ${condition}: plays no part in ${standardText({ standard, edition })}, whose limits are for a machine ${wanted === "new" ? "that is new" : "in service"}`,
  ];
}
