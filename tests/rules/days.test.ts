/** Sessions and their days, as ISO 8601 writes them. */
import { rows } from './found.ts';

rows(
  'not-a-day',
  [
    [
      'session «2026-5-2»',
      'Write 2026-5-2 as 2026-05-02: two digits each for month and day.',
      'session 2026-05-02',
    ],
    ['session «2026-02-30»', 'Write year-month-day, such as 2026-05-02.'],
    ['session «2025-02-29»'],
    ['session 2024-02-29'],
    ['session «2026-13-01»'],
    ['session 2026-05-02 | revert to «2026-02-30»'],
    ['session «02-05-2026»', 'year-month-day'],
  ],
  'notebook Marsh runner',
);

rows(
  'no-date',
  [
    ['«session»', 'This session has no date. Write year-month-day after "session", such as 2026-05-02.'],
    ['«session New springs»'],
    [
      'session «2026/5/2» New springs',
      'Write the date as 2026-05-02, with hyphens.',
      'session 2026-05-02 New springs',
    ],
    ['session «2026.05.02»', 'Write the date as 2026-05-02, with hyphens.', 'session 2026-05-02'],
    ['«session 31 Feb 2026»'],
    ['session 2026-05-02'],
    ['session 2026-02-30'],
  ],
  'notebook Marsh runner',
);

rows('date-backwards', [
  ['session «2026-05-01»', 'before 2026-05-02'],
  ['session 2026-05-02 09:00 | session «2026-05-02» 09:00', 'Is the date right?'],
  ['session 2026-05-02 09:00 | session «2026-05-02» 8:30', 'not after 09:00'],
  ['session 2026-05-02 09:00 | session 2026-05-02 14:00'],
  ['session 2026-05-02 09:00 | session 2026-05-02'],
  ['session 2026-05-02'],
  ['session 2026-05-04 | session «2025-05-05»', 'before 2026-05-04'],
  ['session «2026-04-01» | session «2026-04-02»', 'before 2026-05-02'],
  ['session first of May | session 2026-05-03'],
]);

rows('revert-nowhere', [
  ['revert to «2026-05-01»', 'There is no session of 2026-05-01 above, so nothing is changed.'],
  ['revert to «2026-05-02»', "2026-05-02 is this session's own date."],
  ['session 2026-05-03 | revert to 2026-05-02'],
  ['session 2026-05-02 second look | revert to 2026-05-02'],
  ['revert'],
]);
