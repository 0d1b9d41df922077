import { NO_PROBLEMS, rule } from './rule.ts';

export const ownWordIncomplete = rule({
  code: 'own-word-incomplete',
  severity: 'warning',
  title: 'A word of the notebook without its kind',
  why: 'A word of your own is a setting, which holds until changed, or a reading, which is a moment. Without one of the two it is not known further down.',
  standing: 'notation',
  good: 'words\n  flap gap: setting, 2..5 mm, "gap with the flap shut"\n',
  bad: 'words\n  flap gap: 2..5 mm, "gap with the flap shut"\n',
  on: ['word'],
  check: ({ quantity, name, nameSpan }) =>
    quantity
      ? NO_PROBLEMS
      : [{ span: nameSpan, message: `"${name}" needs its kind: write setting or reading after it.` }],
});
