/** Sessions and their days, as ISO 8601 writes them. */
import { rows } from './found.ts';

rows(
  'not-a-day',
  [
    ['session «2026-5-2»', 'is written 2026-05-02', 'session 2026-05-02'],
    ['session «2026-02-30»', 'no day of the calendar'],
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
    ['«session»', 'has no day'],
    ['«session New springs»'],
    ['session «2026/5/2» New springs', 'written 2026-05-02', 'session 2026-05-02 New springs'],
    ['session «2026.05.02»', 'written 2026-05-02', 'session 2026-05-02'],
    ['session «1 Mar 2026» New springs', 'written 2026-03-01', 'session 2026-03-01 New springs'],
    ['session «March 1st, 2026»', 'written 2026-03-01', 'session 2026-03-01'],
    ['«session 31 Feb 2026»'],
    ['«session 2/5/2026 New springs»'],
    ['session 2026-05-02'],
    ['session 2026-02-30'],
  ],
  'notebook Marsh runner',
);

rows('date-backwards', [
  ['session «2026-05-01»', 'before 2026-05-02'],
  ['session 2026-05-02 09:00 | session «2026-05-02» 09:00', 'Is the day right?'],
  ['session 2026-05-02 09:00 | session «2026-05-02» 8:30', 'not after 09:00'],
  ['session 2026-05-02 09:00 | session 2026-05-02 14:00'],
  ['session 2026-05-02 09:00 | session 2026-05-02'],
  ['session 2026-05-02'],
  ['session 2026-05-04 | session «2025-05-05»', 'before 2026-05-04'],
  ['session «2026-04-01» | session «2026-04-02»', 'before 2026-05-02'],
  ['session first of May | session 2026-05-03'],
]);

rows('revert-nowhere', [
  ['revert to «2026-05-01»', 'No session of 2026-05-01'],
  ['revert to «2026-05-02»', 'the day of this session'],
  ['session 2026-05-03 | revert to 2026-05-02'],
  ['session 2026-05-02 second look | revert to 2026-05-02'],
  ['revert'],
]);
