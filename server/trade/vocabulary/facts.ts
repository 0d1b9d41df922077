/** Facts of the engine and the vehicle, written once in their sections. */
import type { Quantity } from './quantity.ts';
import { air, fromMemory, measured, ofKind, order, type Row, text, usual } from './vocabulary-row.ts';

const ENGINE = inSection('engine', [
  measured('cylinders', 'number', 'Number of cylinders.', {
    also: 'cylinder count, number of cylinders',
    bare: true,
    band: usual(1, 16, 'one to sixteen'),
  }),
  order('firing order', 'Order in which the cylinders fire, starting from number one.', { also: 'order' }),
  order('bank', 'The cylinders of one bank, front to rear.', { also: 'banks', places: ['side', 'bank'] }),
  text('layout', 'How the cylinders are arranged.', { words: 'inline, vee, flat', also: 'cylinder layout' }),
  measured('bore', 'mm', 'Diameter of the cylinders.', {
    band: usual(25, 250, "from model-sized to ship's boats"),
  }),
  measured('stroke', 'mm', 'Travel of the piston from bottom to top.', {
    band: usual(20, 300, "from model-sized to ship's boats"),
  }),
  measured('rod length', 'mm', 'Centre-to-centre length of the connecting rods.', {
    also: 'rods, con rod, connecting rod',
    band: usual(50, 500, 'about 1.5 to 2.2 times the stroke'),
  }),
  measured('displacement', 'cc', 'Swept volume of all cylinders.', {
    also: 'capacity, engine size, swept volume',
    band: usual(20, 30_000, "from model-sized to ship's boats"),
  }),
  measured('compression', 'ratio', 'Static compression ratio.', {
    also: 'compression ratio, static compression, static ratio, cr, comp, comp ratio',
    bare: true,
    band: usual(4, 17, 'side-valve engines 5, racing engines on methanol 15'),
  }),
  measured('chamber volume', 'cc', 'Volume of the combustion chamber in the head.', {
    also: 'chamber, chambers, combustion chamber, head volume',
    places: ['cylinder'],
    band: fromMemory(3, 400, 'workshop habit: 30 to 120 cc'),
  }),
  measured('piston volume', 'cc', 'Volume of the piston crown: plus for a dish, minus for a dome.', {
    also: 'piston dish, dish volume, dish',
    band: fromMemory(-80, 120, 'workshop habit'),
  }),
  measured(
    'deck clearance',
    'mm',
    'How far the piston stops below the deck at top dead centre; minus if above it.',
    {
      also: 'deck height, deck',
      band: fromMemory(-3, 6, 'workshop habit: 0 to 2 mm'),
    },
  ),
  measured('gasket bore', 'mm', 'Bore of the head gasket.', {
    also: 'head gasket bore',
    band: usual(25, 260, "a little over the cylinder's bore"),
  }),
  measured('gasket thickness', 'mm', 'Compressed thickness of the head gasket.', {
    also: 'head gasket thickness, head gasket, gasket',
    band: fromMemory(0.1, 4, 'workshop habit: 0.4 to 1.6 mm'),
  }),
  text('fuel', 'Fuel the engine runs on.', {
    words: 'gasoline, petrol, e10, e85, ethanol, methanol, nitromethane, propane, natural gas',
  }),
  text('aspiration', 'Whether the engine breathes naturally or is boosted.', {
    also: 'induction',
    words: 'natural, supercharged, turbocharged',
  }),
  measured(
    'damper',
    'mm',
    'Diameter the timing marks are on; with it, degrees can be marked off with a tape.',
    {
      also: 'damper diameter, balancer, harmonic balancer, crank pulley, pulley diameter',
      band: usual(50, 600, 'dampers 150 to 210 mm, flywheels more'),
    },
  ),
  measured('stop radius', 'mm', "Radius of the distributor's advance stop pin from the shaft.", {
    also: 'stop pin radius, pin radius',
    band: usual(3, 60, 'the size of a distributor plate'),
  }),
  text('distributor rotation', 'Which way the rotor turns, seen from above.', {
    also: 'rotor rotation',
    words: 'clockwise, counterclockwise, anticlockwise',
  }),
  text('camshaft', 'The camshaft fitted.', { also: 'cam, camshaft grind' }),
  measured('valves', 'number', 'Valves per cylinder.', {
    also: 'valves per cylinder',
    bare: true,
    band: usual(2, 5, 'two to five'),
  }),
  measured('red line', 'rpm', 'Highest engine speed the maker allows.', {
    also: 'redline, maximum speed, max rpm, max revs, maximum rpm, maximum revs',
    bare: true,
    band: usual(1000, 15_000, 'from slow boat engines to racing engines'),
  }),
  measured('oil capacity', 'qt', 'Oil capacity of the sump.'),
  air(
    'reference weather',
    'Air that other days are compared with; if not written, the first weather in the notebook.',
    'reference air, reference day, reference',
  ),
  measured('jet sizes', 'number', 'Jets at hand; a worked-out size also names the nearest of them.', {
    also: 'jets at hand, jet box',
    bare: true,
    orIn: ['length', 'fuel flow'],
    traits: { list: true },
  }),
  text('block', 'The cylinder block.', { also: 'casting' }),
  text('head', 'The cylinder head.', { also: 'heads, cylinder head, cylinder heads' }),
  text('intake manifold', 'The intake manifold.', { also: 'inlet manifold, manifold' }),
  text('exhaust manifold', 'The exhaust manifold.', { also: 'exhaust manifolds' }),
  text('electrical system', 'Voltage of the electrical system and its earth.', { also: 'electrics, earth' }),
]);

const VEHICLE = inSection('vehicle', [
  measured('weight', 'kg', 'Weight as driven, with the driver.', {
    also: 'mass, running weight',
    band: usual(30, 60_000, 'from karts to heavy trucks'),
  }),
  text('tyre', 'Size of the driven tyres, as moulded on the sidewall.', {
    also: 'tyres, tire, tires, tyre size, tire size',
    places: ['side'],
  }),
  measured('tyre diameter', 'in', 'Rolling diameter of the driven tyres.', {
    also: 'tire diameter, rolling diameter',
    band: usual(8, 60, 'from karts to heavy trucks'),
  }),
  measured('final drive', 'ratio', 'Propeller shaft turns per wheel turn.', {
    also: 'final drive ratio, axle ratio, rear axle, axle, rear end',
    bare: true,
    band: usual(1, 12, 'road cars 2.5 to 5'),
  }),
  measured('gear ratios', 'ratio', 'Gearbox ratios, first to top.', {
    also: 'gears, gearbox ratios, transmission ratios',
    bare: true,
    band: usual(0.4, 16, 'road cars 4 down to 0.6'),
    traits: { list: true },
  }),
  measured('overdrive', 'ratio', 'Ratio of the overdrive.', {
    also: 'overdrive ratio',
    bare: true,
    band: usual(0.5, 1, 'about 0.7 to 0.8'),
  }),
  measured('drop gear', 'ratio', "Reduction of the boat's gear.", {
    also: 'reduction, reduction gear',
    bare: true,
    band: usual(0.5, 6, 'about 1 to 3'),
  }),
  text('transmission', 'The gearbox.', { also: 'gearbox', words: 'manual, automatic' }),
  measured('stall speed', 'rpm', 'Engine speed at which the torque converter stalls the engine.', {
    also: 'converter stall, stall, converter',
    bare: true,
    band: usual(1000, 6000, 'road converters 1500 to 2500 rpm'),
  }),
  measured('tank', 'gal', 'Capacity of the fuel tank.', { also: 'fuel tank, tank capacity' }),
  measured('speedometer error', '%', 'How much the speedometer over-reads.', {
    also: 'speedo error',
    band: usual(-20, 20, 'speedometers over-read by up to 10 per cent'),
  }),
  text('body', 'Kind of vehicle or boat.', { also: 'hull' }),
]);

export const FACTS: readonly Quantity[] = ofKind('fact', [...ENGINE, ...VEHICLE]);

function inSection(section: 'engine' | 'vehicle', rows: readonly Row[]): readonly Row[] {
  return rows.map((row) => ({ ...row, section }));
}
