/** Port map, and the path of each fluid in order. */

import { saidAt } from '../../model/snapshot/locate.ts';
import type { Port } from '../../model/state/state.ts';
import { coolerPositions, isVacuumPort, portState } from '../../trade/sums/ports.ts';
import { type Figure, type FigureContext, figure, type Working } from '../figure.ts';

export const PORTS: Working = { topic: 'ports', about: ['port', 'vacuum source', 'hose'], work: ports };

const PRACTICE = { topic: 'ports', standing: 'common practice' } as const;
type Named = readonly [name: string, port: Port];

/** On a fluid's line its own path alone, else the map first and then all paths. */
function ports(moment: FigureContext, word?: string): readonly Figure[] {
  const all = [...moment.state.ports];
  const paths = all.filter(([, { path }]) => path.length > 0);
  const single = all.filter(([, { path }]) => path.length === 0);
  const own = word === 'port' ? nameOnLine(moment) : undefined;
  const asked = paths.find(([name]) => name === own);
  if (asked) return [pathFigure(asked)];
  const ways = word === undefined ? paths.map(pathFigure) : [];
  return [...(single.length > 0 ? [mapFigure(single)] : []), ...ways];
}

function nameOnLine({ snapshot, line }: FigureContext): string | undefined {
  const [entry] = saidAt(snapshot, line).map((said) => said.entry);
  return entry?.kind === 'port' ? entry.name : undefined;
}

const STATES = ['connected', 'capped', 'open', 'connected and capped', 'not given'] as const;

function mapFigure(single: readonly Named[]): Figure {
  const rows = single.map(([name, port]) => ({ name, port, state: stateOf(port) }));
  const counts = STATES.flatMap((state) => {
    const count = rows.filter((row) => row.state === state).length;
    return count > 0 ? [`${count} ${state}`] : [];
  });
  const doubled = doubledThings(single);
  const leaks = rows.filter(({ name, state }) => state === 'open' && isVacuumPort(name));
  const odd = [
    ...leaks.map(({ name }) => `${name} is open: a vacuum leak`),
    ...doubled.map((thing) => `${thing} is on two ports`),
  ];
  return figure({
    ...PRACTICE,
    name: 'ports',
    text: [counts.join(', '), ...odd].join('; '),
    formula: 'every port is connected to one thing or capped',
    working: counts.join(' + '),
    inputs: single.map(([name, port]) => ({ name, value: port.on || 'not given', by: port.by })),
    source: 'an open port behind the throttle lets in unmetered air',
    rows: [
      ['port', 'on it', 'state'],
      ...rows.map(({ name, port, state }) => [name, portState(port.on).thing || movedText(port), state]),
    ],
  });
}

const movedText = ({ movedTo }: Port): string => (movedTo === undefined ? '-' : `moved to ${movedTo}`);

function stateOf({ on }: Port): (typeof STATES)[number] {
  const { capped, open, thing } = portState(on);
  if (thing !== '' && capped) return 'connected and capped';
  if (open && thing === '') return 'open';
  if (thing !== '') return 'connected';
  return capped ? 'capped' : 'not given';
}

function doubledThings(single: readonly Named[]): readonly string[] {
  const [once, doubled] = [new Set<string>(), new Set<string>()];
  for (const [, { on }] of single) {
    const { thing } = portState(on);
    if (thing !== '') (once.has(thing) ? doubled : once).add(thing);
  }
  return [...doubled];
}

const ORDER_TEXT = {
  'auxiliary before main': 'the small cooler gets the hottest fluid: run it through the large one first',
  'no main': 'a small cooler on its own is meant to trim what a large one leaves',
} as const;

function pathFigure([name, port]: Named): Figure {
  const order = coolerPositions(port.path);
  const way = port.path.join(' -> ');
  return figure({
    ...PRACTICE,
    name: `path of the ${name}`,
    text: order ? `${way}; ${ORDER_TEXT[order]}` : way,
    formula: 'in flow order',
    working: `${port.path.length} in order`,
    inputs: [{ name, value: way, by: port.by }],
    source: 'the large cooler takes the bulk of the heat, a small one trims the rest',
    caution: /fuel/.test(name)
      ? 'Fuel under pressure: no flame or spark near, extinguisher at hand.'
      : undefined,
  });
}
