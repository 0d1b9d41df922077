/** Facts to lines of the notation: places of one word on one line, as they would be written. */
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Fact } from './form.ts';

export function linesOf(facts: readonly Fact[], time: string | undefined): readonly string[] {
  const groups: Fact[][] = [];
  for (const fact of facts) {
    const last = groups.at(-1)?.at(-1);
    if (last && last.name === fact.name && last.place && fact.place) groups.at(-1)?.push(fact);
    else groups.push([fact]);
  }
  const lines = groups.map((group) => lineOf(inSameState(group)));
  return time ? lines.map((line) => `${time}  ${line}`) : lines;
}

/** `front 5, rear 4 at idle`: a condition said last holds for all of them. */
function inSameState(facts: readonly Fact[]): readonly Fact[] {
  const states = facts.at(-1)?.states ?? [];
  const isLast = states.length > 0 && facts.slice(0, -1).every((fact) => fact.states.length === 0);
  return isLast ? facts.map((fact) => ({ ...fact, states })) : facts;
}

function lineOf(facts: readonly Fact[]): string {
  const [first] = facts as readonly [Fact, ...Fact[]];
  return `${first.name} ${facts.map(saidOf).join(', ')}`;
}

function saidOf({ name, place, value, states, remark }: Fact): string {
  const quoted = states.filter((state) => state.startsWith('"')).map((state) => state.slice(1, -1));
  const conditions = states.filter((state) => !state.startsWith('"'));
  const said = [remark, ...quoted].filter(Boolean).join(', ');
  const shown =
    said === '' ? '' : PLAIN.has(said) || isOwnWord(name, said) ? said : `"${said.replaceAll(';', ',')}"`;
  return [place, value, ...conditions, shown].filter(Boolean).join(' ');
}

/** `choke 2 notches rich`: a word that the setting itself takes. */
const isOwnWord = (name: string, said: string): boolean =>
  findQuantity(name.split(' '))?.quantity.words?.includes(said) ?? false;

/** Remarks that readings are compared by; they stand without quotes. */
const PLAIN = new Set(['hot', 'cold', 'warm', 'wet', 'dry', 'steady', 'infrared']);
