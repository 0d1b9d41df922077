import { lastKeys } from '../../model/state/immutable.ts';
import { didYouMean, type Guess, guessAmong } from '../lib/did-you-mean.ts';
import { NO_PROBLEMS, replaceWith, rule } from '../rule.ts';

export const doneNothingOpen = rule({
  code: 'done-nothing-open',
  severity: 'warning',
  title: 'Done, but nothing of that name is open',
  why: '"done" closes a todo, a fault or a reminder of the same name above. Under another name the first one stays open.',
  standing: 'notation',
  good: 'session 2026-05-02\n  todo strainer: brush the basket out\n  done strainer: basket brushed out\n',
  bad: 'session 2026-05-02\n  todo strainer: brush the basket out\n  done strainr: basket brushed out\n',
  on: ['item'],
  check({ word, id, idSpan }, { before: { items, rechecks } }) {
    if (word !== 'done' || id === '' || items.has(id) || rechecks.has(id)) return NO_PROBLEMS;
    const names = [...lastKeys(items, MOST_GUESSED), ...lastKeys(rechecks, MOST_GUESSED)];
    const guess = longer(id, names) ?? guessAmong(id, names);
    const nearest = guess.words[0];
    const open =
      names.length === 0
        ? 'there is no open todo, fault or reminder'
        : `open are: ${names.slice(0, 5).join(', ')}`;
    return [
      {
        span: idSpan,
        message: `Nothing called "${id}" is open; ${open}.${didYouMean(guess)}`,
        fixes: guess.sure && nearest ? [replaceWith(idSpan, nearest)] : [],
      },
    ];
  },
});

/** Names of each sort among which a misspelt one is looked for, the latest: a longer list is nobody's work. */
const MOST_GUESSED = 100;

/** `done brakes adjusted` of the fault `brakes`, `done gasket` of `gasket at the rear`: the only one that begins the same. */
function longer(id: string, names: readonly string[]): Guess | undefined {
  const begun = names.filter((name) => id.startsWith(`${name} `));
  if (begun.length === 1)
    return { words: [`${begun[0]}: ${id.slice((begun[0] as string).length + 1)}`], sure: true };
  const alike = names.filter((name) => name.startsWith(`${id} `));
  return alike.length === 1 ? { words: alike, sure: true } : undefined;
}
