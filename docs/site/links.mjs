/**
 * A plug-in of typedoc: a name that a comment links to and that its own file does not import is looked up among the
 * public names of all entries; and a guide that names no category of its own is a worked example.
 */
export function load(app) {
  app.converter.on("createDocument", (_, guide) => {
    guide.frontmatter.category ??= "Worked examples";
  });
  app.converter.addUnknownSymbolResolver((reference, reflection) => {
    const path = reference.symbolReference?.path?.map((part) => part.path);
    if (!path || reference.moduleSource !== undefined) return undefined;
    for (const module of reflection.project.children ?? []) {
      const target = path.reduce((at, name) => at?.getChildByName([name]), module);
      if (target) return { target, caption: path.join(".") };
    }
    return undefined;
  });
}
