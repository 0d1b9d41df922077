import { kindOfPart } from '../model/step.ts';
import { NO_PROBLEMS, rule } from './rule.ts';

export const notFitted = rule({
  code: 'not-fitted',
  severity: 'information',
  title: 'Taking off a part that is not on',
  why: 'Settings are put aside with the part that was fitted. Where another one is on, or none was named, nothing is put aside.',
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
        message: `"${name}" is not on the engine: ${on}. Nothing is changed by this line.`,
        related: fitted ? [{ origin: fitted.by, message: `${fitted.written} was fitted` }] : [],
      },
    ];
  },
});
