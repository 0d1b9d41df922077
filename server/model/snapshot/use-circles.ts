/** Cycles of notebooks that use one another, and an order in which all can be read. */

/** Notebook being visited: when it was reached, and the earliest open one that it leads back to. */
interface Reached {
  readonly at: number;
  earliest: number;
  /** What it uses and has not been followed yet, the next one last. */
  readonly waiting: string[];
}

/**
 * Whether two notebooks are in one cycle, or are the same one. These are the strongly connected components of what uses
 * what, by R. Tarjan (SIAM J. Comput. 1, 1972, p. 146): each notebook is looked at once, however often it is asked and however
 * many use it. Without recursion, so that a chain may have any length.
 * @param targetsOf the notebooks that one uses; must give the same at every call.
 */
export function findingCircles(
  targetsOf: (name: string) => readonly string[],
): (one: string, other: string) => boolean {
  const reached = new Map<string, Reached>();
  /** Those reached whose circle may have more in it, in the order they were reached. */
  const open: string[] = [];
  /** By notebook, the one of its circle that was reached first. */
  const circles = new Map<string, string>();

  function enter(name: string, way: string[]): void {
    const at = reached.size;
    reached.set(name, { at, earliest: at, waiting: targetsOf(name).toReversed() });
    open.push(name);
    way.push(name);
  }

  function close(first: string): void {
    for (let name = open.pop(); name !== undefined; name = open.pop()) {
      circles.set(name, first);
      if (name === first) return;
    }
  }

  function follow(from: string): void {
    const way: string[] = [];
    enter(from, way);
    for (let name = way.at(-1); name !== undefined; name = way.at(-1)) {
      const here = reached.get(name) as Reached;
      const target = here.waiting.pop();
      const there = target === undefined ? undefined : reached.get(target);
      if (target === undefined) {
        if (here.earliest === here.at) close(name);
        way.pop();
        leadBack(reached.get(way.at(-1) ?? name), here.earliest);
      } else if (!there) enter(target, way);
      else if (!circles.has(target)) leadBack(here, there.at);
    }
  }

  const circleOf = (name: string): string | undefined => {
    if (!circles.has(name)) follow(name);
    return circles.get(name);
  };
  return (one, other) => circleOf(one) === circleOf(other);
}

function leadBack(from: Reached | undefined, earliest: number): void {
  if (from) from.earliest = Math.min(from.earliest, earliest);
}

/**
 * Notebooks and all that they use, through others too: each after those that it uses itself, but for those of its own circle.
 * Without recursion, as above.
 */
export function usedFirst(
  names: Iterable<string>,
  targetsOf: (name: string) => readonly string[],
): readonly string[] {
  const order: string[] = [];
  const seen = new Set<string>();
  const way: { readonly name: string; readonly waiting: string[] }[] = [];
  const enter = (name: string) => {
    if (seen.has(name)) return;
    seen.add(name);
    way.push({ name, waiting: targetsOf(name).toReversed() });
  };
  for (const start of names) {
    enter(start);
    for (let here = way.at(-1); here; here = way.at(-1)) {
      const target = here.waiting.pop();
      if (target !== undefined) enter(target);
      else {
        order.push(here.name);
        way.pop();
      }
    }
  }
  return order;
}
