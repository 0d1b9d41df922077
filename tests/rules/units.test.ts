/** Units that are missing, unknown or of the wrong kind. */
import { rows } from './found.ts';

rows('wrong-unit', [
  ['initial 9 «F»', 'F is a temperature; initial is an angle, in deg.'],
  ['water 180 «psi»', 'psi is a pressure; water is a temperature, in F'],
  ['water 180 «deg»', 'an angle'],
  ['mechanical 0 deg @ 900 «F»', 'after @ stands a rotation, in rpm'],
  ['mechanical 0 «psi» @ 900 rpm'],
  ['vacuum advance 0 deg @ 4 inHg, 12 deg @ 12 «rpm»', 'in inHg'],
  ['weather 14 C, 1011 hPa, 62 «rpm»', 'weather is told by temperature (C), pressure (hPa), humidity (%RH)'],
  ['tube 402 415 398 240 «psi»'],
  ['main jet 130 «psi»', 'main jet is a bare number, or a length or a fuel flow'],
  ['fuel pressure 6 «lbs»', 'Did you mean psi?', 'fuel pressure 6 psi'],
  ['depression 17 «in» hot', 'Did you mean inHg?', 'depression 17 inHg hot'],
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
  ['initial 9 «zork»', 'taken to be in deg'],
  ['tube 402 415 398 «zork»'],
  ['idle 850 steady'],
  ['water 180 hot'],
  ['torque 58 lb-ft'],
  ['vacuum advance 12 deg ported'],
]);

rows('missing-unit', [
  ['water «180»', 'taken as F'],
  ['initial «9»', 'taken as deg', 'initial 9 deg'],
  ['water «180» hot'],
  ['weather «14»', 'told apart by units'],
  ['weather «14», 1011 hPa', 'told apart by units'],
  ['vacuum advance 0 deg @ «4», 12 deg @ 12', 'taken as inHg'],
  ['mechanical 0 deg @ 900, 8 deg @ 1500'],
  ['tube 402 415 398 240 F'],
  ['tube «402» 415 398 240'],
  ['initial 9 deg | initial +2'],
  ['initial +«2»', 'taken as deg', 'initial +2 deg'],
  ['idle 850'],
  ['mixture 1 1/2'],
  ['main jet 130'],
  ['lambda 0.9'],
]);
rows('missing-unit', [['total <= «34»', 'taken as deg', 'total <= 34 deg']], 'limits');
rows('missing-unit', [['head bolts torque «58»', 'taken as lb-ft']], 'specs');

rows('too-many-values', [
  ['initial 9 deg «12 deg»', 'takes one value'],
  ['idle 820 «850 rpm»', 'Anything between two values is written 450..580.'],
  ['oil pressure 60 psi cold, «25 psi» hot', 'Give each a line of its own.'],
  ['mechanical 0 deg @ 900 rpm, 8 deg @ 1500 rpm'],
  ['tube 402 415 F'],
  ['mixture 1 1/4 1 1/2 turns'],
  ['weather 14 C, 1011 hPa'],
  ['idle 820..850 rpm'],
]);
