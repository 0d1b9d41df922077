/** Prints how the corpus is read: counts for each class, and each line that is not read as it was meant. Arguments: a class, or `all`; files to score instead of the corpus. */

import { ROWS, rowsIn } from './rows.ts';
import type { Outcome, Result } from './run.ts';
import { results } from './run.ts';

const files = process.argv.slice(2).filter((each) => each.endsWith('.tsv'));
const only = process.argv.slice(2).find((each) => !each.endsWith('.tsv'));
const all = results(files.length > 0 ? rowsIn(files) : ROWS);
const classes = ['read', 'ask', 'prose', 'open', 'danger'] as const;
const outcomes: readonly Outcome[] = ['exact', 'offered', 'asked', 'note', 'unread', 'misread'];

for (const kind of classes) {
  const missed = all.filter(({ row, outcome }) => row.class === kind && outcome !== 'exact');
  if (only !== undefined && only !== kind && only !== 'all') continue;
  for (const each of missed) console.log(shown(each));
}
console.log(['class   ', ...outcomes, 'of'].join('\t'));
for (const kind of classes) {
  const own = all.filter(({ row }) => row.class === kind);
  const counts = outcomes.map((outcome) => own.filter((each) => each.outcome === outcome).length);
  console.log([kind.padEnd(8), ...counts, own.length].join('\t'));
}

function shown({ row, reading, outcome }: Result): string {
  const offers = 'offers' in reading ? reading.offers : [];
  return [
    `${outcome.toUpperCase()} ${row.class} ${row.set}${row.day}: ${row.text}`,
    `    meant: ${row.meaning}`,
    `    ${reading.status}: ${reading.as.join(' | ')}`,
    ...offers.map((offer) => `    ? ${offer}`),
  ].join('\n');
}
