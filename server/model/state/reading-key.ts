/** Key of a reading: quantity, place and conditions. */
import type { Statement } from '../entry/entry.ts';

/** Two readings with the same key are of the same quantity, in the same place, under the same conditions. */
export function readingKey(name: string, said: Statement): string {
  const under = [...said.qualifiers];
  for (const { value } of said.conditions) {
    if (value?.interval) under.push(`${value.interval.low}..${value.interval.high}${value.unit?.id ?? ''}`);
  }
  return `${name}|${said.place?.text ?? ''}|${under.sort().join('|')}`;
}
