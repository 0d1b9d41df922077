/** All forms of a clause, in the order in which they are tried; the first whose reading holds is taken. */
import type { Form } from './form.ts';
import { WORDS } from './forms/looks.ts';
import { VALUES } from './forms/values.ts';

export const FORMS: readonly Form[] = [...WORDS, ...VALUES];
