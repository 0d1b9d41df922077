/** Units that are missing, unknown or of the wrong kind. */
import { rows } from './found.ts';

rows('wrong-unit', [
  ['initial 9 «F»', '"F" is a temperature; initial is an angle, in deg.'],
  ['water 180 «psi»', '"psi" is a pressure; water is a temperature, in F.'],
  ['water 180 «deg»', 'an angle'],
  ['mechanical 0 deg @ 900 «F»', '"F" is a temperature; after @ goes a rotation, in rpm.'],
  ['mechanical 0 «psi» @ 900 rpm'],
  ['vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 «rpm»', 'in inHg'],
  [
    'weather 14 C, 1011 hPa, 62 «rpm»',
    '"rpm" is a rotation; weather is given as temperature (C), pressure (hPa), humidity (%RH).',
  ],
  ['tube 388 401 384 226 «psi»'],
  ['main jet 130 «psi»', 'main jet is a bare number, or a length or a fuel flow'],
  ['fuel pressure 17 «in» hot', 'Did you mean inHg?', 'fuel pressure 17 inHg hot'],
  ['depression 17 in hot'],
  ['depression 17" at idle'],
  ['power valve 6.5 in'],
  ['vacuum advance 0 deg @ 5", 10 deg @ 12"'],
  ['weather 77 F, 30.10 in, 58%'],
  ['weather 77 F, 3 «in», 58%', 'Did you mean inHg?', 'weather 77 F, 3 inHg, 58%'],
  ['compression «8.4:1»', 'compression is a pressure, in psi'],
  ['main jet 1.3 mm'],
  ['main jet 130'],
  ['dwell 50 %'],
  ['humidity 40 %'],
  ['plug type 9 F'],
]);
rows('wrong-unit', [['head bolts torque 58 «psi»', 'torque'], ['head bolts torque 58 lb-ft']], 'specs');
rows('wrong-unit', [['water <= 195 «psi»'], ['water <= 195 F']], 'limits');

rows('unknown-unit', [
  ['fuel pressure 5 «pzi»', 'Did you mean psi?', 'fuel pressure 5 psi'],
  ['idle 850 «rmp»', 'Did you mean rpm?', 'idle 850 rpm'],
  ['initial 9 static'],
  ['tube 388 401 384 «zork»'],
  ['idle 850 steady'],
  ['water 180 hot'],
  ['torque 58 lb-ft'],
  ['vacuum advance 12 deg ported'],
]);

rows('missing-unit', [
  ['water «180»', 'The unit is missing; read as F.'],
  ['initial 9'],
  ['total 32 @ 3000'],
  ['volts 12.6'],
  ['power valve 6.5'],
  ['plug gap «0.6»', 'The unit is missing; read as mm because of its size.', 'plug gap 0.6 mm'],
  ['valve lash «12»', 'The unit is missing; read as thou because of its size.', 'valve lash 12 thou'],
  [
    'compression «10.5» 10.2 8.1 8.3',
    'The unit is missing; read as bar because of its size.',
    'compression 10.5 10.2 8.1 8.3 bar',
  ],
  ['main jet «1 3/4»', 'The unit is missing; read as turns because of its size.', 'main jet 1 3/4 turns'],
  ['main jet «.090»', 'The unit is missing; read as in because of its size.', 'main jet .090 in'],
  [
    'weather 68 F «30.02» 29 %RH',
    'The unit is missing; read as inHg because of its size.',
    'weather 68 F 30.02 inHg 29 %RH',
  ],
  [
    'weather 68 F «1015» 29 %RH',
    'The unit is missing; read as hPa because of its size.',
    'weather 68 F 1015 hPa 29 %RH',
  ],
  ['water «180» hot'],
  [
    'weather «14»',
    'The unit is missing, so this number is not used: the values of weather (temperature, pressure, humidity) are recognised by their units.',
  ],
  [
    'weather «14», 1011 hPa',
    'The unit is missing, so this number is not used: the values of weather (temperature, pressure, humidity) are recognised by their units.',
  ],
  ['vacuum advance 0 deg @ «4», 12 deg @ 12', 'The unit is missing after @; read as inHg.'],
  ['mechanical 0 deg @ 900, 8 deg @ 1500'],
  ['tube 388 401 384 226 F'],
  ['tube «388» 401 384 226'],
  ['dwell 50 deg | dwell +2'],
  ['dwell +«2»', 'The unit is missing; read as deg.', 'dwell +2 deg'],
  ['idle 850'],
  ['mixture 1 1/2'],
  ['main jet 130'],
  ['lambda 0.9'],
]);
rows(
  'missing-unit',
  [['dwell <= «34»', 'The unit is missing; read as deg.', 'dwell <= 34 deg'], ['total <= 34']],
  'limits',
);
rows('missing-unit', [['head bolts torque «58»', 'The unit is missing; read as lb-ft.']], 'specs');

rows('too-many-values', [
  ['initial 9 deg «12 deg»', 'takes one value'],
  ['idle 820 «850 rpm»', 'Write a range as 190..220.'],
  ['mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm'],
  ['tube 388 401 F'],
  ['mixture 1 1/4 1 1/2 turns'],
  ['weather 14 C, 1011 hPa'],
  ['idle 820..850 rpm'],
]);

// A torque describes nothing: without a spec of that name such a line is kept as words about the head.
rows('wrong-unit', [
  ['head bolts 60 «lb-ft»', 'no spec is called "head bolts". Name it under "specs"'],
  ['manifold nuts 30 «lb-ft»', '"intake manifold nuts torque 30 lb-ft"'],
  ['head bolts torque 60 «lb-ft»', 'no spec is called "head bolts"'],
  ['head 60 «lb-ft»', 'head is described in words'],
  ['head alloy, 42 cc'],
  ['coil 12 V 1.5 ohm'],
  ['head "bolts to 60 lb-ft"'],
  ['torque 60 lb-ft'],
]);
rows(
  'wrong-unit',
  [
    [
      'head bolts torque 60 lb-ft source "table 4" | session 2026-05-02 | head bolts torque 59 lb-ft | head bolts 59 lb-ft',
    ],
  ],
  'specs',
);
