/** All forms of a clause, in the order in which they are tried; the first that has a meaning is taken. */
import type { Form } from './form.ts';
import { CYLINDERS } from './forms/cylinders.ts';
import { FASTENERS } from './forms/fasteners.ts';
import { WORDS } from './forms/looks.ts';
import { OILS } from './forms/oils.ts';
import { PAIRS } from './forms/pairs.ts';
import { RUNS } from './forms/runs.ts';
import { TEXTS } from './forms/texts.ts';
import { VALUES } from './forms/values.ts';

export const FORMS: readonly Form[] = [
  ...WORDS,
  ...OILS,
  ...TEXTS,
  ...CYLINDERS,
  ...PAIRS,
  ...RUNS,
  ...VALUES,
  ...FASTENERS,
];
