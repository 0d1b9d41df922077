/** What cannot be read: signs, quotes, numbers, times. */
import { rows } from './found.ts';

rows('unreadable', [
  ['initial 9 deg «: 7»', 'Can\'t read ": 7"; it is ignored and the rest of the line is kept.'],
  ['fit carb single «9 deg»'],
  ['check throttle return ok «, 7»'],
  ['note anything goes: 9 : 7 = @ # $'],
  ['idle 850 rpm ; a comment : = $'],
]);

rows('unknown-sign', [
  ['initial 9 deg «$»', '$ (U+0024)'],
  ['initial 9 deg «\u0000»', 'Unexpected character U+0000.'],
  ['initial «\u202E»9 deg', 'U+202E'],
  ['initial «$» % $ $', 'and 2 more like it'],
  ['note costs $ 9'],
]);

rows('unclosed-quote', [
  ['plug #4 «"sooty»', 'This quote is not closed.'],
  ['plug #4 "sooty"'],
  ['points gap 0.016"'],
]);

rows(
  'comma-number',
  [
    ['mixture «1,5» turns', 'write 1.5', 'mixture 1.5 turns'],
    ['points gap «0,016» in', 'write 0.016', 'points gap 0.016 in'],
    ['idle «1,200» rpm', 'write 1200', 'idle 1200 rpm'],
    ['odometer «81,260» km', 'write 81260', 'odometer 81260 km'],
    ['hours «1,2» h', 'write 1.2', 'hours 1.2 h'],
    ['egt «1,200» F', 'write 1200 for one, 1 200 for several'],
    ['tube «388,401,384» F', '388 401 384 for several'],
    ['egt «1,200.5» F'],
    ['weather 14 C, 1011 hPa'],
  ],
  'targets',
);

rows('missing-number', [
  ['initial «~» deg', 'after "~"'],
  ['egt «1200..» F', 'second number'],
  ['egt «1200 ±» F', 'second number'],
  ['egt «<» F', 'after "<"'],
  ['timing 9 deg @ «~»', 'after "~"'],
  ['egt 1200..1300 F'],
]);

rows('divided-by-nought', [
  ['mixture «1/0» turn', '1/0 divides by zero; the value is ignored.'],
  ['mixture «1 1/0» turns'],
  ['mixture 1/10 turn'],
  ['mixture 10/100 turn'],
]);
rows('divided-by-nought', [['compression «8:0»'], ['compression 8.5:1'], ['compression 8:10']], 'engine');

rows('hyphen-range', [
  ['egt «1200-1300» F', 'Read as 1200..1300.', 'egt 1200..1300 F'],
  ['egt «1300-1200» F', 'Write a range as 1300..1200, not with a hyphen.', 'egt 1300..1200 F'],
  ['run 50-80 km/h in top 11.2 s'],
  ['egt «1-2-3» F', 'Separate the values of a list with spaces.'],
  ['mixture 1-1/2 turns'],
  ['initial -2 deg'],
  ['plug type 14-3'],
]);
rows(
  'hyphen-range',
  [['head bolts torque «58-62» lb-ft', '58..62', 'head bolts torque 58..62 lb-ft']],
  'specs',
);
rows('hyphen-range', [['firing order 1-3-4-2'], ['bank left 1-2']], 'engine');

rows('reversed-range', [
  ['egt «1300..1200» F', 'read as 1200..1300', 'egt 1200..1300 F'],
  ['points gap «3/8..1/4» in', 'read as 1/4..3/8', 'points gap 1/4..3/8 in'],
  ['egt 1200..1300 F'],
  ['egt 1300 ± 20 F'],
  ['egt 1300..1300 F'],
  ['air temperature -5..-2 C'],
  ['air temperature -5..2 C'],
  ['air temperature «-2..-5» C', 'from -2 down to -5', 'air temperature -5..-2 C'],
  ['air temperature «2..-5» C', 'read as -5..2', 'air temperature -5..2 C'],
  ['plug gap «1-1/2..1/2» in', 'read as 1/2..1-1/2', 'plug gap 1/2..1-1/2 in'],
]);

rows('not-a-time', [
  ['«09:75» idle 850', '09:75 is not a time of day: hours go to 23, minutes and seconds to 59.'],
  ['«24:00» idle 850'],
  ['«09:30:60» idle 850'],
  ['23:59 idle 850'],
  ['23:59:59 idle 850'],
]);

rows('elapsed-without-unit', [
  ['«+20 idle 850»', '"+20 idle" is not a time.'],
  ['«+20»'],
  ['+20 min idle 850'],
  ['+1.5 h idle 850'],
  ['initial +2 deg'],
]);

rows('line-too-long', [
  [`«note ${'x'.repeat(1996)}»`, 'This line is 2001 characters; lines over 2000 are not read.'],
  [`note ${'x'.repeat(1995)}`],
]);

rows('meant-unknown', [
  ['idle 850 ; meant: «outside-bnad»', 'Did you mean outside-band?', 'idle 850 ; meant: outside-band'],
  ['idle 850 ; meant: outside-band, «zzz»', 'There is no rule "zzz".'],
  ['idle 850 ; MEANT: Outside-Band ten-times'],
  ['idle 850 ; as it was meant: warm'],
  ['idle 850 ; meant: outside-band ; zzz, as it ran'],
]);
