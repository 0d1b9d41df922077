import { didYouMean, guessAmong } from './nearest.ts';
import { NO_PROBLEMS, replaceWith, rule } from './rule.ts';

export const doneNothingOpen = rule({
  code: 'done-nothing-open',
  severity: 'warning',
  title: 'Done, but nothing of that name is open',
  why: 'What is done must have been a todo or a fault above under the same name. With another name the first one stays open.',
  standing: 'notation',
  good: 'session 2026-05-02\n  todo choke: hook the cable up\n  done choke: cable hooked up\n',
  bad: 'session 2026-05-02\n  todo choke: hook the cable up\n  done chok: cable hooked up\n',
  on: ['item'],
  check({ word, id, idSpan }, { before: { items } }) {
    if (word !== 'done' || id === '' || items.has(id)) return NO_PROBLEMS;
    const guess = guessAmong(id, items.keys());
    const nearest = guess.words[0];
    const open = items.size === 0 ? 'nothing is' : `open are: ${[...items.keys()].slice(0, 5).join(', ')}`;
    return [
      {
        span: idSpan,
        message: `No "${id}" is open; ${open}.${didYouMean(guess)}`,
        fixes: guess.sure && nearest ? [replaceWith(idSpan, nearest)] : [],
      },
    ];
  },
});
