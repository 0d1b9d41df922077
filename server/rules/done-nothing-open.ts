import { didYouMean, guessAmong } from './nearest.ts';
import { NO_PROBLEMS, replaceWith, rule } from './rule.ts';

export const doneNothingOpen = rule({
  code: 'done-nothing-open',
  severity: 'warning',
  title: 'Done, but nothing of that name is open',
  why: 'What is done must have been a todo, a fault or a reminder above under the same name. With another name the first one stays open.',
  standing: 'notation',
  good: 'session 2026-05-02\n  todo choke: hook the cable up\n  done choke: cable hooked up\n',
  bad: 'session 2026-05-02\n  todo choke: hook the cable up\n  done chok: cable hooked up\n',
  on: ['item'],
  check({ word, id, idSpan }, { before: { items, rechecks } }) {
    if (word !== 'done' || id === '' || items.has(id) || rechecks.has(id)) return NO_PROBLEMS;
    const names = [...items.keys(), ...rechecks.keys()];
    const guess = guessAmong(id, names);
    const nearest = guess.words[0];
    const open = names.length === 0 ? 'nothing is' : `open are: ${names.slice(0, 5).join(', ')}`;
    return [
      {
        span: idSpan,
        message: `No "${id}" is open; ${open}.${didYouMean(guess)}`,
        fixes: guess.sure && nearest ? [replaceWith(idSpan, nearest)] : [],
      },
    ];
  },
});
