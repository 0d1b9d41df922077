/** Which notebooks use which, from the addresses that each one uses. */

type TargetsOf = (address: string) => Iterable<string>;

/** Those and all that they lead to, through others too; the nearest first. */
export function reachableFrom(addresses: Iterable<string>, targetsOf: TargetsOf): ReadonlySet<string> {
  const reached = new Set(addresses);
  for (const address of reached) for (const target of targetsOf(address)) reached.add(target);
  return reached;
}

/** The same graph the other way round: from a notebook to those that use it. */
export function usersAmong(addresses: Iterable<string>, targetsOf: TargetsOf): TargetsOf {
  const users = new Map<string, Set<string>>();
  for (const address of addresses)
    for (const target of targetsOf(address)) {
      const known = users.get(target);
      if (known) known.add(address);
      else users.set(target, new Set([address]));
    }
  return (address) => users.get(address) ?? [];
}
