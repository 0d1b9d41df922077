/** The publications and reference packages the trade's figures are held to. */

/** A published source or a reference package. */
export interface Source {
  readonly id: string;
  readonly title: string;
  /** What is taken from it, or checked against it. */
  readonly purpose: string;
}

/** Every source an outside check may name, by id. */
export const SOURCES: readonly Source[] = [
  { id: 'nist-sp-811', title: 'NIST Special Publication 811, appendix B', purpose: 'conversion factors' },
  {
    id: 'icao-7488',
    title: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere',
    purpose: 'the standard atmosphere',
  },
  {
    id: 'us-std-1976',
    title: 'U.S. Standard Atmosphere, 1976',
    purpose: 'pressure and density ratios by altitude',
  },
  { id: 'smithsonian', title: 'Smithsonian Meteorological Tables', purpose: 'saturation vapour pressure' },
  {
    id: 'faa-phak',
    title: "FAA, Pilot's Handbook of Aeronautical Knowledge",
    purpose: 'density altitude sample problem',
  },
  { id: 'sae-j1349', title: 'SAE J1349 JUN90, power test code', purpose: 'power correction' },
  {
    id: 'sae-j607',
    title: 'SAE J607, as relayed in a public article on corrected power',
    purpose: 'older power correction',
  },
  {
    id: 'army-tm-9-8000',
    title: 'US Army TM 9-8000, Principles of Automotive Vehicles',
    purpose: 'volumetric efficiency',
  },
  {
    id: 'navedtra-14264',
    title: 'US Navy NAVEDTRA 14264, Construction Mechanic Basic',
    purpose: 'displacement example',
  },
  {
    id: 'doe-afdc',
    title: 'US Department of Energy, Alternative Fuels Data Center, properties of fuels',
    purpose: 'stoichiometric ratios',
  },
  {
    id: 'iupac-weights',
    title: 'IUPAC standard atomic weights, air 23.2 per cent oxygen by mass',
    purpose: 'stoichiometric ratios from composition',
  },
  {
    id: 'blower-charts',
    title: 'Public blower charts of effective compression ratio',
    purpose: 'ratio under boost',
  },
  {
    id: 'service-manuals',
    title: 'Factory service manuals of several makers',
    purpose: 'compression test rules',
  },
  { id: 'asme-b94-11m', title: 'ASME B94.11M, Twist Drills', purpose: 'drill sizes' },
  { id: 'asme-b1-1', title: 'ASME B1.1, Unified Inch Screw Threads', purpose: 'tensile stress areas' },
  {
    id: 'sae-j429',
    title: 'SAE J429, and torque-tension tables published from it',
    purpose: 'proof strength, clamp load, torque',
  },
  {
    id: 'iso-898-1',
    title: 'ISO 898-1, mechanical properties of fasteners',
    purpose: 'metric stress areas and proof loads',
  },
  {
    id: 'ece-r30',
    title: 'UN ECE Regulation 30 tyre size designation, as worked in public guides',
    purpose: 'tyre diameter',
  },
  {
    id: 'handbooks',
    title: 'Public engine and gearing handbooks, worked examples',
    purpose: 'airflow, piston speed, road speed',
  },
  {
    id: 'propeller-slip',
    title: "Public worked answer of a ship engineers' examination question",
    purpose: 'slip of a propeller',
  },
  {
    id: 'propeller-chart',
    title: 'Public chart of boat speed by propeller pitch and reduction, with its example',
    purpose: 'speed by pitch through a reduction gear',
  },
  { id: 'nist-strd', title: 'NIST Statistical Reference Datasets', purpose: 'certified straight-line fit' },
  {
    id: 'nist-ehandbook',
    title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
    purpose: "Student's t, outlier rule",
  },
  {
    id: 'order-inference',
    title: 'Order Restricted Statistical Inference (Wiley, 1988), example of page 10',
    purpose: 'monotone regression',
  },
  {
    id: 'scipy-pchip',
    title: 'SciPy PchipInterpolator, values published in a public test',
    purpose: 'monotone cubic curve',
  },
  { id: 'mathjs', title: 'mathjs, npm package', purpose: 'unit arithmetic, statistics' },
  { id: 'ucum-lhc', title: '@lhncbc/ucum-lhc, npm package', purpose: 'unit conversion' },
  { id: 'psychrolib', title: 'psychrolib, npm package (ASHRAE Handbook Fundamentals)', purpose: 'moist air' },
  {
    id: 'magazine-idle',
    title: 'Magazine reply on exhaust tube temperatures at idle, relayed in public',
    purpose: 'tubes that are uneven and nothing to worry about',
  },
];
