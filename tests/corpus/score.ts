/** Prints how the corpus is read: counts for each class, and each line that is not read as it was meant. */
import type { Outcome, Result } from './run.ts';
import { results } from './run.ts';

const only = process.argv[2];
const all = results();
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
