import { kindOfPart } from '../../model/state/fitted-parts.ts';
import { NO_PROBLEMS, rule } from '../rule.ts';

export const notFitted = rule({
  code: 'not-fitted',
  severity: 'information',
  title: 'Removing a part that is not fitted',
  why: 'Settings are put aside with the part that was fitted. If another one is fitted, or none was named, nothing is put aside.',
  standing: 'notation',
  good: 'parts\n  carb twin "pair of side-draughts"\nsession 2026-05-02\n  fit carb twin\n  remove carb twin\n',
  bad: 'parts\n  carb twin "pair of side-draughts"\nsession 2026-05-02\n  remove carb twin\n',
  on: ['fit'],
  check({ word, name, nameSpan }, { before }) {
    const kind = word === 'remove' ? kindOfPart(before, name) : undefined;
    const fitted = kind && before.fitted.get(kind);
    if (!kind || fitted?.name === name) return NO_PROBLEMS;
    const on = fitted ? `${fitted.written} is` : `no ${kind} was fitted by name`;
    return [
      {
        span: nameSpan,
        message: `"${name}" is not fitted: ${on}. This line changes nothing.`,
        related: fitted ? [{ origin: fitted.by, message: `${fitted.written} fitted here` }] : [],
      },
    ];
  },
});
