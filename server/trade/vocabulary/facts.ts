/** Facts of the engine and the vehicle, written once in their sections. */
import type { Quantity } from './quantity.ts';
import { air, fromMemory, measured, ofKind, order, type Row, text, usual } from './vocabulary-row.ts';

const ENGINE = inSection('engine', [
  measured('cylinders', 'number', 'How many cylinders the engine has.', {
    also: 'cylinder count, number of cylinders',
    bare: true,
    band: usual(1, 16, 'from single to sixteen'),
  }),
  order('firing order', 'The order in which the cylinders fire, from number one.', { also: 'order' }),
  order('bank', 'The cylinders of one bank, front to rear.', { also: 'banks', places: ['side', 'bank'] }),
  text('layout', 'How the cylinders stand.', { words: 'inline, vee, flat', also: 'cylinder layout' }),
  measured('bore', 'mm', 'Diameter of the cylinders.', {
    band: usual(25, 250, "from model-sized to ship's boats"),
  }),
  measured('stroke', 'mm', 'Travel of the pistons.', {
    band: usual(20, 300, "from model-sized to ship's boats"),
  }),
  measured('rod length', 'mm', 'Length of the connecting rods between centres.', {
    also: 'rods, con rod, connecting rod',
    band: usual(50, 500, 'about 1.5 to 2.2 times the stroke'),
  }),
  measured('displacement', 'cc', 'Volume all pistons sweep.', {
    also: 'capacity, engine size, swept volume',
    band: usual(20, 30_000, "from model-sized to ship's boats"),
  }),
  measured('compression', 'ratio', 'Static compression ratio.', {
    also: 'compression ratio, static compression, static ratio, cr, comp, comp ratio',
    bare: true,
    band: usual(4, 17, 'side-valve engines 5, racing ones on methanol 15'),
  }),
  measured('chamber volume', 'cc', 'Volume of the combustion chamber in the head.', {
    also: 'chamber, chambers, combustion chamber, head volume',
    places: ['cylinder'],
    band: fromMemory(3, 400, 'workshop habit: 30 to 120 cc'),
  }),
  measured('piston volume', 'cc', 'Volume of the piston crown: a dish counts up, a dome down.', {
    also: 'piston dish, dish volume, dish',
    band: fromMemory(-80, 120, 'workshop habit'),
  }),
  measured(
    'deck clearance',
    'mm',
    'How far the piston stays below the block at the top; above it is minus.',
    {
      also: 'deck height, deck',
      band: fromMemory(-3, 6, 'workshop habit: 0 to 2 mm'),
    },
  ),
  measured('gasket bore', 'mm', 'Bore of the head gasket.', {
    also: 'head gasket bore',
    band: usual(25, 260, "a little over the cylinder's bore"),
  }),
  measured('gasket thickness', 'mm', 'Thickness of the head gasket as clamped.', {
    also: 'head gasket thickness, head gasket, gasket',
    band: fromMemory(0.1, 4, 'workshop habit: 0.4 to 1.6 mm'),
  }),
  text('fuel', 'What it burns.', {
    words: 'gasoline, petrol, e10, e85, ethanol, methanol, nitromethane, propane, natural gas',
  }),
  text('aspiration', 'How it breathes.', {
    also: 'induction',
    words: 'natural, supercharged, turbocharged',
  }),
  measured(
    'damper',
    'mm',
    'Diameter over which the timing marks run: lets degrees be laid off with a tape.',
    {
      also: 'damper diameter, balancer, harmonic balancer, crank pulley, pulley diameter',
      band: usual(50, 600, 'dampers 150 to 210 mm, flywheels more'),
    },
  ),
  measured('stop radius', 'mm', "How far from the shaft the distributor's stop pin runs.", {
    also: 'stop pin radius, pin radius',
    band: usual(3, 60, 'the size of a distributor plate'),
  }),
  text('distributor rotation', 'Which way the rotor turns, seen from above.', {
    also: 'rotor rotation',
    words: 'clockwise, counterclockwise, anticlockwise',
  }),
  text('camshaft', 'The camshaft fitted.', { also: 'cam, camshaft grind' }),
  measured('valves', 'number', 'Valves a cylinder.', {
    also: 'valves per cylinder',
    bare: true,
    band: usual(2, 5, 'two to five'),
  }),
  measured('red line', 'rpm', 'Speed the maker allows at most.', {
    also: 'redline, maximum speed, max rpm, max revs, maximum rpm, maximum revs',
    bare: true,
    band: usual(1000, 15_000, 'from slow boat engines to racing ones'),
  }),
  measured('oil capacity', 'qt', 'Oil the sump takes.'),
  air(
    'reference weather',
    'The air that other days are told against; the first weather of the notebook where it is not written.',
    'reference air, reference day, reference',
  ),
  measured('jet sizes', 'number', 'The jets at hand: what is worked out is told by the nearest of them.', {
    also: 'jets at hand, jet box',
    bare: true,
    orIn: ['length', 'fuel flow'],
  }),
  text('block', 'The cylinder block.', { also: 'casting' }),
  text('head', 'The cylinder head.', { also: 'heads, cylinder head, cylinder heads' }),
  text('intake manifold', 'The intake manifold.', { also: 'inlet manifold, manifold' }),
  text('exhaust manifold', 'The exhaust manifold.', { also: 'exhaust manifolds' }),
  text('electrical system', 'Voltage of the electrical system and its earth.', { also: 'electrics, earth' }),
]);

const VEHICLE = inSection('vehicle', [
  measured('weight', 'kg', 'Weight as run, with the driver.', {
    also: 'mass, running weight',
    band: usual(30, 60_000, 'from karts to heavy trucks'),
  }),
  text('tyre', 'Size of the driven tyres, as moulded on the side.', {
    also: 'tyres, tire, tires, tyre size, tire size',
    places: ['side'],
  }),
  measured('tyre diameter', 'in', 'Rolling diameter of the driven tyres.', {
    also: 'tire diameter, rolling diameter',
    band: usual(8, 60, 'from karts to heavy trucks'),
  }),
  measured('final drive', 'ratio', 'Turns of the propeller shaft for one of the wheels.', {
    also: 'final drive ratio, axle ratio, rear axle, axle, rear end',
    bare: true,
    band: usual(1, 12, 'road cars 2.5 to 5'),
  }),
  measured('gear ratios', 'ratio', 'Ratios of the gears, first to top.', {
    also: 'gears, gearbox ratios, transmission ratios',
    bare: true,
    band: usual(0.4, 16, 'road cars 4 down to 0.6'),
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
  measured('stall speed', 'rpm', 'Engine speed at which the torque converter holds the engine.', {
    also: 'converter stall, stall, converter',
    bare: true,
    band: usual(1000, 6000, 'road converters 1500 to 2500 rpm'),
  }),
  measured('tank', 'gal', 'What the fuel tank holds.', { also: 'fuel tank, tank capacity' }),
  measured('speedometer error', '%', 'How much the speedometer reads over.', {
    also: 'speedo error',
    band: usual(-20, 20, 'instruments read up to 10 per cent over'),
  }),
  text('body', 'What kind of vehicle or boat it is.', { also: 'hull' }),
]);

export const FACTS: readonly Quantity[] = ofKind('fact', [...ENGINE, ...VEHICLE]);

function inSection(section: 'engine' | 'vehicle', rows: readonly Row[]): readonly Row[] {
  return rows.map((row) => ({ ...row, section }));
}
