import { NO_PROBLEMS, rule } from '../rule.ts';

export const ownWordIncomplete = rule({
  code: 'own-word-incomplete',
  severity: 'warning',
  title: 'Own word without "setting" or "reading"',
  why: 'A word of your own is either a setting, which holds until it is changed, or a reading, which is one moment. Without one of the two it is not known further down.',
  standing: 'notation',
  good: 'words\n  flap gap: setting, 2..5 mm, "gap with the flap shut"\n',
  bad: 'words\n  flap gap: 2..5 mm, "gap with the flap shut"\n',
  on: ['word'],
  check: ({ quantity, name, nameSpan }) =>
    quantity
      ? NO_PROBLEMS
      : [{ span: nameSpan, message: `Is "${name}" a setting or a reading? Write one of the two after it.` }],
});
