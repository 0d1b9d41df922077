import { backwards } from './meters.ts';
import { rule } from './rule.ts';

export const hoursBackwards = rule({
  code: 'hours-backwards',
  severity: 'warning',
  title: 'An hour meter that runs backwards',
  why: 'It only counts up: hours less than the last ones are a slip of the pen, or the meter is another. Reminders count by it.',
  standing: 'notation',
  good: 'session 2026-05-02\n  hours 1200 h\nsession 2026-05-09\n  hours 1320 h\n',
  bad: 'session 2026-05-02\n  hours 1200 h\nsession 2026-05-09\n  hours 1020 h\n',
  on: ['reading'],
  about: ({ name }) => name === 'hours',
  check: (entry, context) => backwards(entry, context, 'h'),
});
