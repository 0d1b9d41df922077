/** Readings: what was seen, heard or measured at one moment. */
import { AIR, USE } from './air-and-use-readings.ts';
import type { PlaceKind, Quantity } from './quantity.ts';
import { fromMemory, measured, ofKind, published, text, usual } from './vocabulary-row.ts';

const EACH_CYLINDER: readonly PlaceKind[] = ['cylinder', 'bank', 'side'];
const LIMIT_TIMING =
  'TM 10-3930-623-12 par. 4-21: some engines use as much as 42 degrees at high speed; the low end is common practice';
const OD1001 = 'OD1001 lesson 3: wide open falls to about 2, snapping shut rises to about 25 inHg';

const TIMING = [
  measured('timing', 'deg', 'Spark timing shown by the timing light, at the speed given.', {
    also: 'ignition timing, spark timing, timing reading, spark advance, strobe, strobe timing, timing light, lamp timing',
    bare: true,
    band: usual(-10, 60, 'from a retarded idle to a light-load cruise'),
    traits: { sparkTiming: true, totals: ['total', 'timing at idle'], adjustedBy: 'initial' },
  }),
  measured('total', 'deg', 'Timing at speed with the vacuum disconnected: initial plus mechanical.', {
    also: 'total timing, total advance, wide open total, full advance',
    bare: true,
    band: published(15, 42, LIMIT_TIMING),
    traits: { sparkTiming: true, totals: ['total'], adjustedBy: 'initial' },
  }),
  measured('cruise total', 'deg', 'Timing at steady light load: initial plus mechanical plus vacuum.', {
    also: 'cruise timing, cruise advance, cruise total timing',
    bare: true,
    band: usual(20, 52, 'cruise total is rarely over 52 deg'),
    traits: { sparkTiming: true, totals: ['cruise total'] },
  }),
  measured('all in', 'rpm', 'Lowest speed at which the mechanical advance is all in.', {
    also: 'all in speed, all in by, full advance speed, mechanical all in, centrifugal all in, mechanical all in by, centrifugal all in by',
    bare: true,
    band: usual(1500, 5500, 'street engines about 2800 rpm, factory curves up to 4600'),
    traits: { runningSpeed: true, totals: ['all in'], adjustedBy: 'advance springs' },
  }),
];

const SPEEDS = [
  measured('idle', 'rpm', 'Engine speed with the throttle closed.', {
    also: 'idle speed, curb idle, kerb idle, tickover, slow running, idles, idling, tick over',
    bare: true,
    band: usual(400, 1800, 'big slow engines 450 to long-overlap camshafts 1200 rpm and more'),
    traits: {
      runningSpeed: true,
      outlastsSession: true,
      totals: ['timing at idle'],
      adjustedBy: 'idle screw',
    },
  }),
  measured('fast idle', 'rpm', 'Engine speed on the fast-idle cam.', {
    also: 'fast idle speed, cold idle',
    bare: true,
    band: usual(800, 3000, 'most makers give 1200 to 2200 rpm'),
    traits: { runningSpeed: true },
  }),
  measured('engine speed', 'rpm', 'Engine speed at that moment.', {
    also: 'tachometer, tach, revs, rpm, engine rpm',
    bare: true,
    band: usual(100, 12000, 'from cranking to small racing engines'),
    traits: { runningSpeed: true },
  }),
  measured(
    'wide open speed',
    'rpm',
    'Engine speed at wide-open throttle under load: what the propeller lets it reach.',
    {
      also: 'wot, wot rpm, wot revs, wot speed, full throttle, full throttle rpm, wide open, wide open rpm, flat out, top revs',
      bare: true,
      band: usual(800, 10000, 'governed engines 1000 to 2500, boats 3500 to 6000 rpm'),
      traits: { runningSpeed: true },
    },
  ),
  measured('cranking speed', 'rpm', 'Engine speed on the starter.', {
    also: 'cranking rpm',
    bare: true,
    band: usual(50, 500, 'a healthy starter turns the engine at 150 to 300 rpm'),
  }),
  measured('speed', 'mph', 'Road or water speed.', {
    also: 'road speed, top speed, boat speed, mph, knots, gps speed',
    band: usual(1, 250, 'road and water'),
    traits: { underWay: true },
  }),
  measured('run time', 's', 'Time of a measured run.', {
    also: 'elapsed time, pull time, run, timed run',
    band: usual(1, 600, 'timed pulls and measured miles'),
    traits: { unitsLeftOut: ['s'], underWay: true },
  }),
];

const PRESSURES = [
  measured('depression', 'inHg', 'Manifold vacuum: how far the intake manifold is below the air outside.', {
    also: 'vacuum, manifold vacuum, manifold depression, idle vacuum, vacuum gauge, vac, vac gauge, manifold vac, gauge vacuum, idle vac, vacuum reading',
    places: ['side', 'bank', 'carburettor'],
    band: published(0, 25, OD1001),
    traits: { list: true, outlastsSession: true, totals: ['timing at idle'] },
  }),
  measured('boost', 'psi', 'Pressure in the intake manifold above the air outside.', {
    also: 'boost pressure, manifold pressure',
    band: usual(
      -15,
      40,
      'street engines 4 to 15 psi; below zero the manifold is under vacuum, never past a full vacuum',
    ),
    traits: { adjustedBy: 'blower ratio' },
  }),
  measured('fuel pressure', 'psi', 'Fuel pressure at the carburettor.', {
    also: 'pump pressure, fuel press',
    band: usual(1, 8, 'needle-and-seat carburettors 4 to 7, side-draughts 1.5 to 4 psi; over 8 floods'),
    traits: { adjustedBy: 'fuel regulator', movedBy: ['fuel system', 'carburettor', 'blower'] },
  }),
  measured('oil pressure', 'psi', 'Oil pressure at the gauge.', {
    also: 'oil press, oil gauge',
    band: usual(4, 100, 'hot idle 10 and up, cold 60 to 80 psi'),
    traits: { movedBy: ['engine', 'valve gear'] },
  }),
  measured('compression', 'psi', 'Cylinder pressure reached on the starter with the throttle open.', {
    also: 'compression test, cranking compression, compression pressure, comp, comps, comp test, compressions, cranking pressure',
    places: EACH_CYLINDER,
    band: usual(60, 300, 'sound petrol engines 110 to 220 psi'),
    traits: { movedBy: ['engine', 'valve gear', 'blower'] },
  }),
  measured('leak down', '%', 'Share of the test air a cylinder loses at top dead centre.', {
    also: 'leakdown, leak down test, leakdown test, cylinder leakage, leakage, leakage test',
    bare: true,
    places: EACH_CYLINDER,
    band: usual(0, 40, 'sound engines under 10, worn engines over 20 per cent'),
    traits: { movedBy: ['engine', 'valve gear'] },
  }),
  measured('crankcase pressure', 'inH2O', 'Crankcase pressure from gas blowing past the rings.', {
    also: 'blow by',
    band: fromMemory(-10, 20, 'workshop habit: within a few inches of water of zero'),
  }),
  measured('back pressure', 'psi', 'Exhaust pressure ahead of the muffler (silencer).', {
    also: 'exhaust back pressure',
    places: ['side', 'bank'],
    band: usual(0, 15, 'under 3 psi on a free exhaust'),
  }),
];

const TEMPERATURES = [
  measured('tube', 'F', 'Surface temperature of an exhaust tube.', {
    also: 'tubes, tube temperature, header tube, header temperature, exhaust tube, exhaust tubes',
    places: EACH_CYLINDER,
    band: usual(100, 1300, 'published at idle: 300 to 530 F; hundreds below the gas inside'),
    traits: { exhaust: true },
  }),
  measured('egt', 'F', 'Exhaust gas temperature, taken with a probe in the gas.', {
    also: 'exhaust gas temperature, exhaust temperature, exhaust gas, gas temperature, egts, exhaust temp, exhaust gas temp, pyrometer',
    places: EACH_CYLINDER,
    band: usual(300, 1600, 'over about 1600 F under load is dangerous on petrol'),
    traits: { exhaust: true },
  }),
  measured('water', 'F', 'Temperature of the cooling water.', {
    also: 'water temperature, water temp, coolant temperature, coolant temp, temp gauge',
    band: usual(100, 240, 'boats on raw water 140, road cars 160 to 220 F'),
    traits: { warmthOf: 'water' },
  }),
  measured('oil temperature', 'F', 'Temperature of the oil in the sump.', {
    also: 'oil temp',
    band: usual(100, 300, 'road engines 180 to 260 F'),
    traits: { warmthOf: 'oil' },
  }),
  measured('head temperature', 'F', 'Temperature of the cylinder head (air-cooled engines).', {
    also: 'cylinder head temperature, head temp, cht',
    places: EACH_CYLINDER,
    band: usual(100, 500, 'air-cooled engines 250 to 420 F'),
    traits: { warmthOf: 'head' },
  }),
  measured('gearbox temperature', 'F', 'Temperature of the oil in the gearbox.', {
    also: 'transmission temperature, gearbox temp, transmission temp, trans temp',
    band: usual(80, 300, 'automatics 160 to 220 F'),
    traits: { warmthOf: 'gearbox' },
  }),
  measured('intake temperature', 'F', 'Temperature of the air going into the engine.', {
    also: 'intake air temperature, charge temperature, inlet temperature, intake temp, charge temp, inlet temp',
    band: usual(-40, 350, 'from winter air to a blower without a cooler'),
  }),
];

const MIXTURE = [
  measured('air fuel ratio', 'ratio', 'Mass of air per mass of fuel.', {
    also: 'afr, mixture ratio, air fuel, air fuel mixture',
    bare: true,
    places: EACH_CYLINDER,
    band: usual(4, 20, 'rich on methanol about 4.5, lean cruise on gasoline about 16'),
  }),
  measured('lambda', 'number', 'Air-fuel ratio divided by the stoichiometric ratio: under 1 is rich.', {
    bare: true,
    places: EACH_CYLINDER,
    band: usual(0.6, 1.5, 'about 0.85 at full load to 1.1 at cruise'),
  }),
  measured('carbon monoxide', '%', 'Carbon monoxide in the exhaust, by volume: more is richer.', {
    also: 'co',
    bare: true,
    places: EACH_CYLINDER,
    band: usual(0, 12, 'idle on carburettors 1 to 4 per cent'),
    traits: { adjustedBy: 'mixture' },
  }),
  measured('hydrocarbons', 'ppm', 'Unburnt fuel in the exhaust.', {
    also: 'hc',
    places: EACH_CYLINDER,
    band: usual(0, 5000, 'a sound idle 100 to 400 ppm, a misfire thousands'),
    traits: { unitsLeftOut: ['ppm'] },
  }),
  measured('oxygen', '%', 'Oxygen in the exhaust, by volume.', {
    also: 'o2',
    bare: true,
    places: EACH_CYLINDER,
    band: usual(0, 21, 'no more than in air'),
  }),
  measured('carburettor balance', 'number', 'Flow meter reading at a carburettor, on its own scale.', {
    also: 'carb balance, balance, synchroniser, synchro, airflow, air flow, flow meter',
    bare: true,
    places: ['carburettor', 'side', 'barrel'],
  }),
  text(
    'lift pin',
    'What the engine does as the piston of a carburettor is lifted a little: rises is rich, falls is lean.',
    {
      also: 'piston lift, lifting pin',
      words: 'rises, falls, stalls, steady',
      places: ['carburettor', 'side'],
      traits: { inOwnWords: true },
    },
  ),
  text('plug', 'How a spark plug looks.', {
    also: 'plug reading, plug colour, plug color, plug look, plug looks, plug colours, plug colors, plug readings, plug check',
    places: EACH_CYLINDER,
  }),
  text('knock', 'Knock heard under load. Stop, retard the timing, and find the cause before going on.', {
    also: 'pinging, pinking, ping, detonation, spark knock, knocks, knocked, knocking, pinged, pinks, pinked, pings',
    words: 'none, trace, slight, light, heavy',
    places: EACH_CYLINDER,
    traits: { symptom: true },
  }),
  text('smoke', 'Colour of the smoke from the exhaust.', {
    also: 'exhaust smoke, smokes',
    words: 'none, blue, black, white, grey',
    places: ['side', 'bank'],
    traits: { symptom: true },
  }),
  text('spark', 'How the spark looks.', {
    also: 'spark colour',
    places: EACH_CYLINDER,
    traits: { inOwnWords: true },
  }),
  text('starting', 'How the engine starts.', {
    also: 'cold start, hot start, starts',
    words: 'easy, hard, none',
    traits: { inOwnWords: true },
  }),
  text('hesitation', 'How the engine responds to the throttle.', {
    also: 'throttle response, pick up, stumble, flat spot, hesitates, bog, bogs, stumbles',
    words: 'none, slight, bad',
    traits: { inOwnWords: true, symptom: true },
  }),
];

const ELECTRICAL = [
  measured('volts', 'V', 'Voltage at the battery.', {
    also: 'voltage, battery, battery voltage, charging voltage',
    bare: true,
    band: usual(5, 32, '6, 12 and 24 volt systems'),
    traits: { unitsLeftOut: ['V'] },
  }),
  measured('coil resistance', 'ohm', "Resistance of the coil's primary.", {
    also: 'primary resistance',
    band: fromMemory(0.2, 6, 'workshop habit: 0.5 to 4 ohm'),
  }),
  measured('lead resistance', 'kohm', 'Resistance of a plug lead.', {
    also: 'plug lead resistance, plug wire resistance',
    places: EACH_CYLINDER,
    band: fromMemory(0, 50, 'workshop habit: under 12 kohm a foot'),
    traits: { movedBy: ['plugs', 'distributor'] },
  }),
];

export const READINGS: readonly Quantity[] = ofKind('reading', [
  ...TIMING,
  ...SPEEDS,
  ...PRESSURES,
  ...TEMPERATURES,
  ...MIXTURE,
  ...ELECTRICAL,
  ...AIR,
  ...USE,
]);
