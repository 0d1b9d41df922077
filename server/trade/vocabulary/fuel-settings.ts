/** Settings of the carburettor and of the fuel system that feeds it. */
import type { PlaceKind } from './quantity.ts';
import { curve, fromMemory, measured, ofKind, ownedBy, text, usual } from './vocabulary-row.ts';

const ANY_CARB: readonly PlaceKind[] = ['carburettor', 'side', 'barrel', 'bank', 'cylinder'];
/** A jet is sized by its number in its maker's series, by its bore, or by its flow. */
const JET = { bare: true, orIn: ['length', 'fuel flow'], places: ANY_CARB } as const;
const JET_NUMBERS = 'numbered in hundredths of a millimetre or in thousandths of an inch';

const CARBURETTOR = ownedBy('carburettor', [
  measured('mixture', 'turn', 'Idle mixture screws, in turns out from lightly seated.', {
    also: 'mixture screw, mixture screws, idle mixture, idle mixture screw, idle mixture screws, mixture turns, idle needle, idle needles, idle mix, idle adjusting needle',
    bare: true,
    places: ANY_CARB,
    band: usual(0.25, 5, 'first setting about 1 1/2 turns out from lightly seated'),
  }),
  measured(
    'idle screw',
    'turn',
    'Screw that holds the throttle plates open at idle, in turns in from first touch.',
    {
      also: 'idle stop, idle stop screw, idle speed screw, speed screw, throttle stop, throttle stop screw, curb idle screw, throttle screw, slow running screw, tickover screw',
      bare: true,
      places: ANY_CARB,
      band: usual(0, 5, 'past a few turns the transfer slot is uncovered'),
      traits: { roadCheck: 'throttle return' },
    },
  ),
  measured(
    'secondary stop',
    'turn',
    'Screw that keeps the secondary plates from closing fully, in turns in from first touch.',
    {
      also: 'secondary stop screw, secondary throttle stop, secondary idle stop, secondaries stop, sec stop, secondary throttle screw',
      bare: true,
      places: ANY_CARB,
      band: usual(0, 4, 'about half a turn keeps the plates from sticking'),
      traits: { roadCheck: 'throttle return' },
    },
  ),
  measured('fast idle screw', 'turn', 'Screw that sets the speed on the fast-idle cam.', {
    also: 'fast idle cam',
    bare: true,
    orIn: ['steps', 'length'],
    places: ANY_CARB,
    band: usual(0, 8, 'a few turns in from touching the cam'),
  }),
  measured('main jet', 'number', 'Jet that meters fuel at part and full throttle.', {
    ...JET,
    also: 'main jets, main, mains, primary jet, primary jets, primary main jet, main jet size, jet, jets, prim jet, prim jets, pri jet, pri jets',
    band: usual(30, 300, JET_NUMBERS),
    traits: { mainJet: true },
  }),
  measured(
    'main needle',
    'turn',
    'Adjustable main jet: its needle or screw, in turns out from lightly seated.',
    {
      also: 'main jet needle, main jet screw, main adjusting needle, high speed needle, load needle, load screw, main needle valve',
      bare: true,
      places: ANY_CARB,
      band: usual(0.25, 6, 'a first setting of 1 to 2 1/2 turns out'),
    },
  ),
  measured('secondary jet', 'number', 'Main jet of the secondary barrels.', {
    ...JET,
    also: 'secondary jets, secondary main jet, secondary main jets, secondary main, sec jet, sec jets',
    band: usual(30, 300, JET_NUMBERS),
    traits: { mainJet: true },
  }),
  measured('idle jet', 'number', 'Jet that meters fuel at idle and just off it.', {
    ...JET,
    also: 'idle jets, pilot jet, pilot jets, slow running jet, slow jet, idle feed, idle feed restriction',
    band: usual(15, 120, JET_NUMBERS),
  }),
  measured('air bleed', 'number', 'Hole that lets air into the main or idle circuit: larger is leaner.', {
    ...JET,
    also: 'air bleeds, main air bleed, high speed air bleed, air corrector, air correction jet, air jet',
    band: usual(20, 400, JET_NUMBERS),
  }),
  measured('idle air bleed', 'number', 'Hole that lets air into the idle circuit: larger is leaner.', {
    ...JET,
    also: 'idle air bleeds, idle bleed, idle air jet',
    band: usual(20, 400, JET_NUMBERS),
  }),
  text('emulsion tube', 'Tube in which air meets the main fuel.', {
    also: 'emulsion tubes, emulsion',
    places: ANY_CARB,
  }),
  measured('power valve', 'inHg', 'Depression below which the power-enrichment valve opens.', {
    also: 'power enrichment valve, enrichment valve, power enrichment, pv',
    bare: true,
    places: ANY_CARB,
    words: 'plugged',
    band: usual(1, 12, 'ratings 2.5 to 10.5 inHg; below the idle depression in gear'),
  }),
  measured('float level', 'in', "Height of the float or of the fuel in the bowl, measured the maker's way.", {
    also: 'float, float height, float setting, floats, bowl level, fuel level',
    words: 'sight, hole, plug, glass',
    places: ANY_CARB,
    band: fromMemory(0.05, 2, 'workshop habit; measured differently by every maker'),
    traits: { measuredFirst: true, roadCheck: 'fuel leaks' },
  }),
  measured('float drop', 'in', 'How far the float can drop.', {
    places: ANY_CARB,
    band: fromMemory(0.1, 2.5, 'workshop habit'),
    traits: { goesWith: 'float level' },
  }),
  text('accelerator pump', 'Setting of the pump that squirts fuel as the throttle opens.', {
    also: 'accelerator pump setting, pump, pump lever, pump linkage, pump hole, accel pump, accel pump setting, acc pump',
    places: ANY_CARB,
    traits: { roadCheck: 'throttle return' },
  }),
  measured('pump shot', 'cc', 'Fuel the accelerator pump delivers in one stroke.', {
    also: 'accelerator pump shot, pump volume, shot, accel pump shot',
    places: ANY_CARB,
    band: fromMemory(0.1, 5, 'workshop habit: 0.5 to 3 cc a stroke'),
  }),
  text('pump cam', 'Cam that works the accelerator pump, and the hole it is fixed in.', {
    also: 'accelerator pump cam, accel pump cam',
    places: ANY_CARB,
  }),
  measured('pump nozzle', 'number', 'Nozzle the accelerator pump squirts through.', {
    ...JET,
    also: 'pump jet, accelerator pump jet, accelerator pump nozzle, discharge nozzle, squirter, accel pump nozzle, squirters, accel pump jet',
    band: usual(15, 150, JET_NUMBERS),
  }),
  measured('choke', 'step', 'Choke setting: how rich and for how long when cold.', {
    also: 'choke setting, automatic choke, choke spring',
    orIn: ['turns', 'angle', 'length', 'percent'],
    places: ANY_CARB,
    words: 'open, closed, off, manual, rich, lean, index',
    band: usual(-10, 30, 'notches from the index mark'),
    traits: { list: true },
  }),
  measured('choke cable', 'in', 'Play in the cable of a hand choke with the knob home.', {
    also: 'choke cable play, choke cable slack',
    band: fromMemory(0, 0.5, 'workshop habit: about 1/16 in'),
  }),
  measured('choke pull off', 'in', 'Opening of the choke plate once the engine has fired.', {
    also: 'pull off, choke opening, choke qualifying, vacuum break',
    places: ANY_CARB,
    band: fromMemory(0.03, 0.5, 'workshop habit: a drill of 1/8 to 1/4 in'),
  }),
  text('needle', 'The jet needle fitted (variable-venturi carburettors).', {
    also: 'needles, jet needle, needle profile',
    places: ANY_CARB,
  }),
  measured('needle clip', 'notch', 'Groove the needle hangs in, counted from the blunt end.', {
    also: 'needle position, clip position, needle groove',
    bare: true,
    places: ANY_CARB,
    band: usual(1, 7, 'needles have three to seven grooves'),
  }),
  text('metering rods', 'Rods that move in the main jets.', { also: 'metering rod, rods', places: ANY_CARB }),
  measured('needle seat', 'in', "Bore of the inlet needle's seat.", {
    also: 'needle and seat, inlet seat, inlet needle, float valve',
    places: ANY_CARB,
    band: fromMemory(0.04, 0.2, 'workshop habit: 0.082 to 0.120 in'),
    traits: { roadCheck: 'fuel leaks' },
  }),
  text('secondary spring', 'Spring that decides when the secondaries open.', {
    also: 'secondary diaphragm spring, secondary opening, sec spring, sec opening',
    places: ANY_CARB,
  }),
  text('dashpot oil', 'Oil in the piston damper (variable-venturi carburettors).', {
    also: 'damper oil, carb oil, piston oil',
    places: ANY_CARB,
  }),
  measured('venturi', 'mm', 'Narrowest bore of the air passage.', {
    also: 'venturi size, choke tube, main venturi',
    places: ANY_CARB,
    band: usual(10, 65, 'from small single carburettors to large four-barrels'),
    traits: { unitsLeftOut: ['mm'] },
  }),
  curve(
    'carb rating',
    'cfm',
    'inHg',
    'Airflow rating of the carburettor, with the depression it is rated at.',
    {
      also: 'carburettor rating, carb size, carburettor size',
      places: ANY_CARB,
      band: usual(20, 1500, 'from small single-barrels to large four-barrels'),
    },
  ),
  text('carb spacer', 'Spacer between carburettor and manifold.', {
    also: 'spacer, carb gasket, carburettor gasket',
  }),
  text('air filter', 'Air filter and its housing.', { also: 'air cleaner, filter, air cleaner lid' }),
]);

const FUEL_SYSTEM = ownedBy('fuel system', [
  measured('fuel regulator', 'psi', 'Pressure the fuel regulator is set to.', {
    also: 'regulator, fuel pressure regulator, regulator pressure',
    band: usual(1, 8, 'needle-and-seat carburettors 4 to 7, side-draughts 1.5 to 4 psi; over 8 floods'),
    traits: { goesWith: 'carburettor', roadCheck: 'fuel leaks' },
  }),
  measured('fuel line', 'in', 'Bore of the fuel line.', {
    also: 'fuel hose, fuel pipe, fuel line size, feed line',
    band: usual(0.18, 0.8, '1/4 to 5/8 in'),
    traits: { roadCheck: 'fuel leaks' },
  }),
  measured('return line', 'in', 'Bore of the line back to the tank.', {
    also: 'fuel return, fuel return line',
    band: usual(0.1, 0.8, '1/8 to 1/2 in'),
  }),
  measured(
    'needle height',
    'in',
    'Height of the float needle above the point where fuel pressure is measured.',
    {
      also: 'height of needle, fuel rise',
      band: usual(-60, 120, 'from tanks above the carburettor to pumps under the floor'),
    },
  ),
  text('fuel pump', 'The fuel pump fitted.', { also: 'lift pump' }),
  text('fuel filter', 'The fuel filters fitted.', { also: 'fuel filters' }),
  text('fuel grade', 'The fuel in the tank.', { also: 'petrol grade, gas grade, octane, pump fuel' }),
]);

export const FUEL_SETTINGS = ofKind('setting', [...CARBURETTOR, ...FUEL_SYSTEM]);
