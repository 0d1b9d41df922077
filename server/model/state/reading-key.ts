/** How readings are told apart: by what they are of, where, and under which conditions. */
import type { Said } from '../entry/entry.ts';

/** Two readings with the same key are of the same quantity, in the same place, under the same conditions. */
export function readingKey(name: string, said: Said): string {
  const under = [...said.heard];
  for (const { value } of said.conditions) {
    if (value?.interval) under.push(`${value.interval.low}..${value.interval.high}${value.unit?.id ?? ''}`);
  }
  return `${name}|${said.place?.text ?? ''}|${under.sort().join('|')}`;
}
