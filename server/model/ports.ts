/** The ports as they stand: each with what is on it, and the section that said so. */
import { portState } from '../trade/ports.ts';
import type { Carried, Port } from './carry.ts';
import type { Origin, PortEntry } from './notebook.ts';

/** A later section may put a hose on another port: the port it was on is then without it, and nobody has said what it has now. */
export function withPort(ports: Carried['ports'], entry: PortEntry, head: Origin | undefined, by: Origin) {
  const path = entry.path.map((word) => word.text);
  const on = entry.on ?? '';
  const { thing } = portState(on);
  const after = new Map(ports);
  for (const [name, port] of ports)
    if (thing !== '' && path.length === 0 && isMoved(port, thing, head) && name !== entry.name)
      after.set(name, { ...port, on: '', movedTo: entry.name });
  return after.set(entry.name, { on, path, by, within: head, movedTo: undefined });
}

const isMoved = (port: Port, thing: string, head: Origin | undefined): boolean =>
  !sameSection(port.within, head) && port.path.length === 0 && portState(port.on).thing === thing;

export const sameSection = (a: Origin | undefined, b: Origin | undefined): boolean =>
  a?.ref.line === b?.ref.line;
