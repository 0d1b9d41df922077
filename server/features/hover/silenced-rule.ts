/** Hover of a code in a comment `; meant: CODE`: the rule it silences. */
import { touches } from '../../model/snapshot/locate.ts';
import { ruleOf } from '../../rules/check.ts';
import { meantIn } from '../../rules/silencing.ts';
import { plain, stacked, strong } from '../markdown.ts';
import type { HoverAnswer, HoverQuestion } from './question.ts';

/** Undefined where the cursor is on no code of a rule. */
export function meantHover({ reading, column }: HoverQuestion): HoverAnswer | undefined {
  const meant = meantIn(reading.entry.line).find(({ span }) => touches(span, column));
  const rule = meant && ruleOf(meant.code);
  return (
    rule && { span: meant.span, text: stacked([strong(`${rule.title} (${rule.code})`), plain(rule.why)]) }
  );
}
