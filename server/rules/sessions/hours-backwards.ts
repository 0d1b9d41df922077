import { backwards } from '../lib/meters.ts';
import { rule } from '../rule.ts';

export const hoursBackwards = rule({
  code: 'hours-backwards',
  severity: 'warning',
  title: 'An hour meter that runs backwards',
  why: 'An hour meter only counts up: fewer hours than last time are a typing error, or the meter was changed. Reminders count by it.',
  standing: 'notation',
  good: 'session 2026-05-02\n  hours 1200 h\nsession 2026-05-09\n  hours 1320 h\n',
  bad: 'session 2026-05-02\n  hours 1200 h\nsession 2026-05-09\n  hours 1020 h\n',
  on: ['reading'],
  about: ({ name }) => name === 'hours',
  check: (entry, context) => backwards(entry, context, 'h'),
});
