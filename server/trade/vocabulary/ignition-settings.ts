/** Settings of the ignition, of the engine's own parts and of the vehicle. */
import { curve, fromMemory, measured, ofKind, ownedBy, published, text, usual } from './vocabulary-row.ts';

const DISTRIBUTOR = ownedBy('distributor', [
  measured('initial', 'deg', 'Spark advance without weights or vacuum, set by turning the distributor.', {
    also: 'initial timing, initial advance, base timing, static timing, static advance, initial lead, base advance, static, base',
    bare: true,
    band: usual(0, 20, 'street engines run 6 to 12 deg, a few up to 20'),
    traits: { totals: ['total', 'timing at idle', 'cruise total'] },
  }),
  curve('mechanical', 'deg', 'rpm', 'Advance the weights add as speed rises: degrees at engine rpm.', {
    also: 'mechanical advance, mechanical curve, centrifugal, centrifugal advance, mech, mech advance, curve, advance curve, centrifugal curve, distributor curve, mech curve, bob weight advance',
    bare: true,
    band: published(
      0,
      42,
      'TM 10-3930-623-12 par. 4-21: some engines use as much as 42 degrees at high speed',
    ),
    traits: { totals: ['total', 'timing at idle', 'cruise total', 'all in', 'slope'] },
  }),
  measured('mechanical limit', 'deg', 'The most the weights can add before they meet their stop.', {
    also: 'mechanical stop, centrifugal limit, mech limit, advance limit, advance stop, limit mechanical, limit mechanical to, mechanical advance limit',
    bare: true,
    band: usual(6, 36, 'street distributors give 20 to 25 crank degrees, factory curves up to 32'),
    traits: { totals: ['total', 'cruise total', 'all in'], goesWith: 'mechanical' },
  }),
  curve(
    'vacuum advance',
    'deg',
    'inHg',
    'Advance the vacuum canister adds at light load: degrees at manifold depression.',
    {
      also: 'vac advance, vacuum curve, vacuum canister, canister, vac can, vacuum can, advance can, vac adv, vacuum adv, vac canister, vac curve',
      bare: true,
      words: 'manifold, ported, plugged',
      band: usual(0, 24, 'canisters add 8 to 16 crank degrees, some 20 and more'),
      traits: { totals: ['cruise total', 'timing at idle'] },
    },
  ),
  measured('vacuum limit', 'deg', 'The most the vacuum canister can add before it meets its stop.', {
    also: 'vacuum stop, vac limit, vacuum advance limit, canister limit, canister stop',
    bare: true,
    band: usual(4, 24, 'canisters add 8 to 16 crank degrees, some 20 and more'),
    traits: { totals: ['cruise total', 'timing at idle'], goesWith: 'vacuum advance' },
  }),
  text('vacuum source', 'Where the canister takes its vacuum: manifold, ported, or plugged off.', {
    also: 'vacuum advance source, canister source',
    words: 'manifold, ported, plugged',
    traits: { totals: ['cruise total', 'timing at idle'], goesWith: 'vacuum advance' },
  }),
  text('advance springs', 'Springs that hold the weights in: lighter ones bring the advance in sooner.', {
    also: 'springs, distributor springs, weight springs, advance spring',
    places: ['side', 'barrel'],
    traits: { goesWith: 'mechanical' },
  }),
  text('advance weights', 'The weights that move the advance.', {
    also: 'weights, bob weights',
    traits: { goesWith: 'mechanical' },
  }),
  measured('dwell', 'deg', 'Distributor degrees with the points closed, as a dwell meter reads them.', {
    also: 'dwell angle, points dwell, cam angle',
    orIn: ['percent'],
    ofDistributor: true,
    band: usual(20, 65, 'four cylinders 45 to 60, six 30 to 40, eight 26 to 34 deg of the distributor'),
    traits: { unitsLeftOut: ['deg'], measuredFirst: true, goesWith: 'points gap' },
  }),
  measured('points gap', 'in', 'Opening of the contact points on the peak of the cam.', {
    also: 'points, point gap, contact gap, contact breaker gap, breaker gap, contact points, magneto points, mag points',
    band: fromMemory(0.01, 0.025, 'workshop habit: 0.014 to 0.020 in'),
    traits: { unitsLeftOut: ['thou', 'in', 'mm'], measuredFirst: true },
  }),
  text('ignition source', 'What triggers the spark: points, electronic or magneto.', {
    also: 'ignition, trigger, ignition trigger',
    words: 'points, electronic, magneto',
  }),
  measured('impulse lag', 'deg', "How far a magneto's impulse coupling retards the spark for starting.", {
    also: 'impulse, impulse coupling, impulse lag angle, lag angle',
    bare: true,
    band: usual(5, 50, 'magnetos are built with lags of 15 to 35 deg'),
  }),
  measured('condenser', 'uF', 'Capacitor across the points.', {
    also: 'capacitor',
    band: fromMemory(0.1, 0.4, 'workshop habit: about 0.2 to 0.3 µF'),
    traits: { unitsLeftOut: ['uF'] },
  }),
  text('coil', 'The ignition coil fitted.', { also: 'ignition coil' }),
  measured('ballast', 'ohm', 'Resistance in line with the coil.', {
    also: 'ballast resistor, coil ballast, resistor',
    band: fromMemory(0.3, 4, 'workshop habit: about 0.5 to 1.8 ohm'),
  }),
  text('distributor cap', 'The distributor cap fitted.', { also: 'cap' }),
  text('rotor', 'The rotor arm fitted.', { also: 'rotor arm' }),
  measured('boost retard', 'deg/psi', 'Timing taken out per psi of boost.', {
    also: 'retard per psi',
    band: usual(0.25, 3, 'about 1 deg per psi'),
  }),
]);

const PLUGS = ownedBy('plugs', [
  measured('plug gap', 'in', 'Gap between the electrodes of the spark plugs.', {
    also: 'spark plug gap, electrode gap, gap',
    places: ['cylinder'],
    band: fromMemory(0.015, 0.065, 'workshop habit: 0.025 to 0.045 in, less under boost'),
    traits: { unitsLeftOut: ['thou', 'in', 'mm'], measuredFirst: true },
  }),
  text('plug type', 'The spark plugs fitted.', {
    also: 'plugs, spark plugs, plug number',
    places: ['cylinder'],
  }),
  text('heat range', "Heat range of the spark plugs, by their maker's own numbers.", {
    also: 'plug heat range',
    traits: { goesWith: 'plug type' },
  }),
  text('plug leads', 'The high-tension leads fitted.', {
    also: 'plug lead, leads, plug wires, plug wire, spark plug wires, ht leads, ignition leads',
  }),
]);

const ENGINE = ownedBy('engine', [
  text('timing mark', 'Mark the timing is read at, and how far it can be trusted.', {
    also: 'timing marks, timing tab, pointer',
  }),
  measured('rev limit', 'rpm', 'Engine speed at which the rev limiter acts.', {
    also: 'rev limiter, speed limiter',
    bare: true,
    band: usual(2000, 12000, 'from slow boat engines to small racing engines'),
  }),
  measured('governed speed', 'rpm', 'No-load speed held by the governor, set by its spring or stop screw.', {
    also: 'governor, governor speed, governor setting, governed, governed rpm, gov, high idle, no load speed',
    bare: true,
    band: usual(500, 4500, 'tractors and trucks 1000 to 2800 rpm'),
    traits: { runningSpeed: true },
  }),
  text('hand throttle', 'Position of the hand throttle, by notch or travel.', {
    also: 'hand throttle lever, throttle lever, throttle hand lever',
    traits: { inOwnWords: true },
  }),
  measured('thermostat', 'F', 'Temperature at which the thermostat opens.', {
    also: 'thermostat opening',
    band: usual(120, 215, 'boats on raw water 140, road cars 160 to 195 F'),
  }),
  measured('radiator cap', 'psi', 'Pressure at which the radiator cap opens.', {
    also: 'pressure cap',
    band: usual(3, 25, 'old cars 4 to 7, later ones 13 to 18 psi'),
  }),
  text('fan', 'The cooling fan fitted and how it is driven.', { also: 'cooling fan, fan clutch' }),
  text('oil grade', 'The oil in the sump.', { also: 'oil, engine oil, oil weight' }),
  text('oil filter', 'The oil filter fitted.'),
  text('coolant', 'What is in the cooling system.', { also: 'coolant mix, antifreeze' }),
  text('breather', 'How the crankcase is ventilated.', {
    also: 'crankcase breather, pcv, pcv valve, crankcase vent',
  }),
  text('hose', 'A hose that was moved, changed or plugged.', { also: 'hoses, vacuum hose, vacuum hoses' }),
  text('exhaust', 'The exhaust fitted from the head back.', {
    also: 'exhaust system, silencer, muffler, headers',
  }),
]);

const VALVE_GEAR = ownedBy('valve gear', [
  measured('valve lash', 'in', 'Clearance in the valve gear with the valve closed.', {
    also: 'lash, valve clearance, valve clearances, tappet clearance, tappets, valves',
    places: ['valve', 'cylinder'],
    band: fromMemory(0.002, 0.035, 'workshop habit: 0.004 to 0.028 in; the maker gives it, hot or cold'),
    traits: { unitsLeftOut: ['thou', 'in', 'mm'], measuredFirst: true },
  }),
  measured(
    'lifter preload',
    'turn',
    'How far the rocker nut is turned past zero lash on hydraulic lifters.',
    {
      also: 'preload',
      bare: true,
      band: fromMemory(0, 2, 'workshop habit: 1/4 to 1 turn'),
    },
  ),
  measured(
    'cam timing',
    'deg',
    'How far the camshaft is advanced or retarded from its own mark, in crank degrees.',
    {
      words: 'advanced, retarded',
      also: 'cam advance, camshaft timing',
      band: usual(-12, 12, 'offset keys and bushes go to about 8 deg'),
    },
  ),
  measured('rocker ratio', 'ratio', 'Valve lift over cam lift.', {
    bare: true,
    places: ['valve'],
    band: usual(1, 2, 'pushrod engines 1.2 to 1.8'),
  }),
  text('valve springs', 'The valve springs fitted.', { also: 'valve spring', places: ['valve'] }),
]);

const BLOWER = ownedBy('blower', [
  measured('blower ratio', 'ratio', 'Blower turns per crank turn.', {
    also: 'blower drive ratio, blower drive, supercharger ratio, pulley ratio',
    bare: true,
    band: usual(0.5, 4, 'belt-driven blowers 0.8 to 3'),
  }),
  text('blower pulley', 'The pulleys or belt on the blower.', {
    also: 'blower belt',
    traits: { goesWith: 'blower ratio' },
  }),
  measured('wastegate', 'psi', 'Boost at which the wastegate opens.', {
    also: 'wastegate pressure, boost limit',
    band: usual(2, 40, 'street engines 4 to 15 psi'),
  }),
]);

const VEHICLE = ownedBy('vehicle', [
  text('throttle spring', 'Springs that close the throttle; two on road vehicles.', {
    also: 'throttle springs, return spring, throttle return spring, throttle return springs',
    traits: { roadCheck: 'throttle return' },
  }),
  text('throttle linkage', 'Linkage or cable from the pedal or lever to the throttle.', {
    also: 'throttle cable, linkage',
  }),
]);

const MANIFOLD = ownedBy('manifold', [
  text('intake heat', 'How the intake is warmed: crossover, water, hot-air tap.', {
    also: 'heat riser, heat crossover, manifold heat, hot air',
  }),
]);

const TYRES = ownedBy('tyres', [
  measured('tyre pressure', 'psi', 'Cold tyre pressure.', {
    also: 'tire pressure, tyre pressures, tire pressures',
    places: ['side'],
    band: usual(8, 80, 'road cars 24 to 40 psi'),
    traits: { measuredFirst: true },
  }),
]);

const PROPELLER = ownedBy('propeller', [
  text('propeller', 'The propeller fitted.', { also: 'prop' }),
  measured('propeller pitch', 'in', 'How far the propeller would move in one turn through a solid.', {
    also: 'prop pitch, pitch',
    band: usual(3, 60, 'launches and outboards about 7 to 27 in'),
    traits: { unitsLeftOut: ['in'] },
  }),
]);

const GEARBOX = ownedBy('gearbox', [
  text('kickdown', 'How the kickdown or throttle-valve linkage is set.', {
    also: 'kickdown linkage, kickdown cable',
  }),
]);

export const IGNITION_SETTINGS = ofKind('setting', [
  ...DISTRIBUTOR,
  ...PLUGS,
  ...ENGINE,
  ...VALVE_GEAR,
  ...BLOWER,
  ...MANIFOLD,
  ...GEARBOX,
  ...PROPELLER,
  ...TYRES,
  ...VEHICLE,
]);
