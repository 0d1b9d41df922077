import { lineSpan } from '../lib/line-syntax.ts';
import { offerOf } from '../lib/written-as.ts';
import { rule } from '../rule.ts';

export const dangerNoted = rule({
  code: 'danger-noted',
  severity: 'warning',
  title: 'A danger that is in no list of faults',
  why: 'Fuel that leaks, a throttle that sticks, brakes, steering, fire and hot or turning parts can hurt somebody. As a fault marked [safety] it stays on the list and holds up a run until it is done; as a remark it is forgotten.',
  standing: 'notation',
  good: 'session 2026-05-02\n  fault fuel line: drips at the carb [safety]\n',
  bad: 'session 2026-05-02\n  fuel line drips at the carb\n',
  on: ['asked'],
  check: ({ line, safety, offers }) =>
    safety
      ? [
          {
            span: lineSpan(line),
            message:
              'This may be dangerous, and it is on no list of what must be put right. Make it a fault marked [safety], so that it stays in sight until it is done.',
            fixes: offers.map((offer) => offerOf(line, offer)),
          },
        ]
      : [],
});
