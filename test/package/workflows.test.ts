/** What the workflows may run, and who may sign. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { root } from "../examples/fences";

const folder = `${root}/.github/workflows`;
const workflows = readdirSync(folder).map((name) => [name, readFileSync(`${folder}/${name}`, "utf8")] as const);

/** The jobs of a workflow: each by its name, with its lines. */
function jobsOf(text: string): [name: string, body: string][] {
  const [, jobs = ""] = text.split(/^jobs:\n/m);
  return [...jobs.matchAll(/^ {2}(\w+):\n((?: {4}.*\n|\n| {2}#.*\n)*)/gm)].map(([, name, body]) => [
    name as string,
    body as string,
  ]);
}

describe.each(workflows)("%s", (_, text) => {
  it("pins each action by the digest of its commit, and names the release beside it", () => {
    const uses = [...text.matchAll(/uses: (.*)/g)].map(([, one]) => one);
    expect(uses.length).toBeGreaterThan(0);
    for (const one of uses) expect(one).toMatch(/^[\w-]+\/[\w-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+$/);
  });

  it("pulls no image by a tag", () => {
    for (const [, image] of text.matchAll(/(?:container|image): (.*)/g)) expect(image).toMatch(/@sha256:[0-9a-f]{64}$/);
  });

  it("gives no right to all jobs, and keeps no credentials in a checkout", () => {
    expect(text).toMatch(/^permissions: \{\}$/m);
    expect(text.match(/persist-credentials: false/g)?.length).toBe(text.match(/actions\/checkout@/g)?.length);
  });

  it("lets a job that may sign run nothing of the project", () => {
    for (const [, body] of jobsOf(text).filter(([, one]) => one.includes("id-token"))) {
      expect(body).not.toMatch(/checkout|run: \|/);
      expect(body.match(/run: .*/g)).toEqual([
        'run: echo "$SHA256  $TARBALL" | sha256sum --check --strict',
        'run: npm publish "./$TARBALL" --provenance --access public --ignore-scripts',
      ]);
    }
  });
});

it("one job may sign: that which uploads", () => {
  const signing = workflows.flatMap(([name, text]) =>
    jobsOf(text)
      .filter(([, body]) => body.includes("id-token: write"))
      .map(([job]) => `${name} ${job}`),
  );
  expect(signing).toEqual(["publish.yml publish"]);
});
