/** Values held to the bands of the vocabulary, and the slips that may explain one outside. */
import { rows } from './found.ts';

rows('outside-band', [
  ['idle «2400 rpm»', 'above the usual 400..1800 rpm (common practice, no source'],
  ['idle «30 rpm»', 'below the usual'],
  ['total «50 deg» @ 3200 rpm', 'published: TM 10-3930-623-12'],
  ['mechanical 0 deg @ 900 rpm, «60 deg» @ 3200 rpm'],
  ['weather 14 C, 1011 hPa, «140 %»', '0..100 %'],
  ['weather «-60 C», 1011 hPa', '-60 C is below the usual -40..55 C'],
  ['weather -30 C, 1011 hPa'],
  [
    'mechanical «-5 deg» @ 900 rpm, 8 deg @ 1500 rpm',
    'Mechanical -5 deg is below the usual 0..42 deg (published: TM 10-3930-623-12 par. 4-21: some engines use as much as 42 degrees at high speed).',
  ],
  ['initial «22 deg»', 'above the usual 0..20 deg'],
  ['compression «11 psi»', 'below the usual'],
  ['weather 14 C, «1200 hPa»', '500..1090 hPa'],
  ['mixture 1 turn | mixture «out 6 turns»', 'This makes mixture 7 turns, above'],
  ['idle > 800 rpm'],
  ['idle 1800 rpm'],
  ['idle 1700..2400 rpm'],
  ['points gap 0.025 in'],
  ['points gap 25 thou'],
  ['water 60 F cold'],
  ['mixture in 9 turns'],
  ['idle 2400 rpm ; meant: outside-band'],
]);
rows('outside-band', [['bore «400 mm»'], ['bore 86 mm']], 'engine');
rows(
  'outside-band',
  [
    [
      'session 2026-05-02 | flap gap «9 mm»',
      'Flap gap 9 mm is above the usual 2..5 mm (from this notebook).',
    ],
    ['session 2026-05-02 | flap gap 3 mm'],
  ],
  'words\n  flap gap: setting, 2..5 mm',
);

rows('ten-times', [
  ['idle «75 rpm»', 'Did you mean 750?', 'idle 750 rpm'],
  ['idle «7500 rpm»', 'Did you mean 750?', 'idle 750 rpm'],
  ['initial «90 deg»', 'Did you mean 9?', 'initial 9 deg'],
  ['points gap «.16 in»', 'Did you mean 0.016?', 'points gap 0.016 in'],
  ['tube 388 «3840» 392 396 F', 'Did you mean 384?', 'tube 388 384 392 396 F'],
  ['idle 750 rpm'],
  ['idle 2400 rpm'],
]);

rows('degrees-mixed-up', [
  ['water «82 F»', 'Did you mean C?', 'water 82 C'],
  ['water «180 C»', 'Did you mean F?', 'water 180 F'],
  ['weather «68 C», 1011 hPa', 'Did you mean F?', 'weather 68 F, 1011 hPa'],
  ['oil temperature «95 F»', 'Did you mean C?', 'oil temperature 95 C'],
  ['water «82»', 'Did you mean C?', 'water 82 C'],
  ['water 82 C'],
  ['water 70 F cold'],
]);

rows('units-mixed-up', [
  ['points gap «0.4 in»', 'Did you mean mm?', 'points gap 0.4 mm'],
  ['points gap «16 in»', 'Did you mean thou?', 'points gap 16 thou'],
  ['plug gap «0.9 in»', 'Did you mean mm?', 'plug gap 0.9 mm'],
  ['tyre pressure «190 psi»', 'Did you mean kPa?', 'tyre pressure 190 kPa'],
  ['depression «14 psi»', 'Did you mean inHg?', 'depression 14 inHg'],
  ['power valve 12.5 inHg'],
  ['points gap 0.4 mm'],
  ['water 82 F'],
]);
