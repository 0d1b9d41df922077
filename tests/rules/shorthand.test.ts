/** Ways of writing that are plain at a bench and are told all the same. */
import { rows } from './found.ts';

rows('change-of-reading', [
  ['timing «+2 deg»', 'Write a change under initial.'],
  ['timing «- 2°»', 'taken as the reading itself'],
  ['timing -2 deg'],
  ['idle «+50»', 'Write a change under idle screw.'],
  ['air temperature -5 C'],
  ['initial +2 deg'],
]);

rows('pair-by-slash', [
  ['main jet «70/75»', 'write primary 70, secondary 75', 'main jet primary 70, secondary 75'],
  ['jets «73/82»', 'two places', 'jets primary 73, secondary 82'],
  ['main jet 3/64 in'],
  ['mixture 1 1/2'],
  ['fuel line 5/16 in'],
]);
rows('pair-by-slash', [['vehicle | tyre 165/80 R13']]);

rows('unreadable', [
  ['dwell «60 deg ± 3»', 'write 60 ± 3 deg', 'dwell 60 ± 3 deg'],
  ['dwell «60° ± 3°»', 'write 60 ± 3 °', 'dwell 60 ± 3 °'],
  ['dwell 60 ± 3 deg'],
]);
