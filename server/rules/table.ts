/** Every rule, in the order in which the pages list them. */
import type { Rule } from './rule.ts';
import { unreadable } from './unreadable.ts';

export const RULES: readonly Rule[] = [unreadable];
