/** Finds a ring of files that import one another. */

/** `graph` maps a file to the files it imports; the answer is one ring in order, or undefined when there is none. */
export function findCycle(graph: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const done = new Set<string>();
  const path: string[] = [];
  const visit = (file: string): string[] | undefined => {
    const at = path.indexOf(file);
    if (at >= 0) return path.slice(at);
    if (done.has(file)) return undefined;
    path.push(file);
    for (const next of graph.get(file) ?? []) {
      const ring = visit(next);
      if (ring) return ring;
    }
    path.pop();
    done.add(file);
    return undefined;
  };
  for (const file of graph.keys()) {
    const ring = visit(file);
    if (ring) return ring;
  }
  return undefined;
}
