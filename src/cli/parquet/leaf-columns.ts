import type { SchemaElement, SchemaTree } from "hyparquet";

/** A column that values are stored of: a column of the table, or a part of one that is nested. */
export interface LeafColumn {
  /** Index of the column of the table. */
  readonly top: number;
  readonly path: readonly string[];
  readonly element: SchemaElement;
  /** Levels that say which of the columns above are there, and which lists go on; zero where none are stored. */
  readonly definition: number;
  readonly repetition: number;
}

/** All leaves of a schema, in the order in which a row group stores them. */
export function leafColumns({ children }: SchemaTree): LeafColumn[] {
  const leaves: LeafColumn[] = [];
  const visit = (node: SchemaTree, top: number, above: readonly [number, number]): void => {
    const { repetition_type: how } = node.element;
    const definition = above[0] + (how === "REQUIRED" ? 0 : 1);
    const repetition = above[1] + (how === "REPEATED" ? 1 : 0);
    if (node.children.length === 0) {
      leaves.push({ top, path: node.path, element: node.element, definition, repetition });
    }
    for (const child of node.children) visit(child, top, [definition, repetition]);
  };
  for (const [top, child] of children.entries()) visit(child, top, [0, 0]);
  return leaves;
}
