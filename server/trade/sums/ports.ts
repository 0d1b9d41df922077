/** Ports and hoses: state of a port, ports under manifold vacuum, and the order of coolers (common practice, no source). */

/** `open` and `capped` as written; `thing` is what is connected, without those words; empty for nothing. */
interface PortState {
  readonly capped: boolean;
  readonly open: boolean;
  readonly thing: string;
}

const CAPPED = /\b(?:capped|plugged|blanked|blocked|cap|plug|blank)(?: off)?\b/g;
const OPEN = /\b(?:open|off|nothing|none|disconnected|unconnected|uncapped|unplugged)\b/g;
const JOINING = /\b(?:and|but|then|with)\b|[,;&+]/g;

/** Reads the text after a port's name: `brake booster`, `capped`, `open`, lower case. */
export function portState(on: string): PortState {
  const uncapped = on.replaceAll(CAPPED, ' ');
  const thing = uncapped.replaceAll(OPEN, ' ').replaceAll(JOINING, ' ');
  return {
    capped: uncapped !== on,
    open: uncapped.replaceAll(OPEN, ' ') !== uncapped,
    thing: thing.replaceAll(/\s+/g, ' ').trim(),
  };
}

const UNDER_VACUUM =
  /\b(?:manifold|plenum|vacuum|intake|inlet|carb|carburettor|carburetor|spacer|base plate|baseplate|throttle)\b/;

/** A port behind or at the throttle: air that comes in there is not metered. */
export const isVacuumPort = (name: string): boolean => UNDER_VACUUM.test(name);

const COOLER = /\b(?:cooler|radiator|heat exchanger)\b/;
const AUXILIARY = /\b(?:auxiliary|aux|additional|add on|extra|second|small|stacked plate)\b/;

/** Fault in the order in which a fluid passes its coolers; undefined where there is none. */
type CoolerOrder = 'auxiliary before main' | 'no main';

/** The large cooler takes the bulk of the heat; a small one trims what is left, and is too small to work first or alone. */
export function coolerPositions(path: readonly string[]): CoolerOrder | undefined {
  const auxiliary = path.findIndex((element) => COOLER.test(element) && AUXILIARY.test(element));
  if (auxiliary < 0) return undefined;
  const main = path.findIndex((element) => COOLER.test(element) && !AUXILIARY.test(element));
  if (main < 0) return 'no main';
  return auxiliary < main ? 'auxiliary before main' : undefined;
}
