/** Notebooks of one sort of line each, as long as one likes: what grows over linear anywhere shows in one of them. */

interface Shape {
  readonly name: string;
  /** What stands above the lines. */
  readonly head?: string;
  readonly line: (i: number) => string;
}

const SESSION = 'session 2026-01-01';
const CARBURETTOR = 'parts\n  A  carburettor\n  B  carburettor\n  C  carburettor\n';
/** Another word for every number: `xbc`. */
const word = (i: number): string =>
  `x${String(i).replace(/\d/g, (digit) => 'bcdfghjklm'[Number(digit)] as string)}`;
const date = (i: number): string => new Date(Date.UTC(2000, 0, 1 + i)).toISOString().slice(0, 10);

export const SHAPES: readonly Shape[] = [
  { name: 'a word nobody knows', head: SESSION, line: (i) => `  ${word(i)} ${i}` },
  { name: 'a misspelt word', head: SESSION, line: (i) => `  inital ${i % 40} deg` },
  { name: 'notes', head: SESSION, line: (i) => `  note ${word(i)}` },
  { name: 'comments', head: SESSION, line: (i) => `  ; ${word(i)}` },
  { name: 'comments that silence', head: SESSION, line: (i) => `  initial ${i} deg ; meant: ${word(i)}` },
  { name: 'settings', head: SESSION, line: (i) => `  initial ${i % 40} deg` },
  { name: 'settings in places', head: SESSION, line: (i) => `  main jet #${i} ${i % 90}` },
  { name: 'changes', head: SESSION, line: () => '  mixture in 1/4 turn' },
  { name: 'changes in places', head: SESSION, line: (i) => `  mixture #${i} in 1/4 turn` },
  { name: 'readings', head: SESSION, line: (i) => `  idle ${i} rpm` },
  { name: 'readings under conditions', head: SESSION, line: (i) => `  depression 17 inHg @ ${i} rpm` },
  {
    name: 'readings by cylinder',
    head: SESSION,
    line: (i) => `  egt #1 ${600 + (i % 200)} C, #2 640 C @ ${i} rpm`,
  },
  { name: 'cylinders', head: SESSION, line: (i) => `  egt #${i} ${600 + (i % 200)} C` },
  { name: 'compressions', head: SESSION, line: (i) => `  compression #${i} ${100 + (i % 70)} psi` },
  { name: 'sessions', line: (i) => `session ${date(i)}\n  idle ${700 + (i % 90)} rpm` },
  {
    name: 'sessions with work',
    line: (i) => `session ${date(i)}\n  initial ${i % 40} deg\n  idle ${700 + (i % 90)} rpm`,
  },
  { name: 'sessions of one day', line: (i) => `${SESSION}\n  idle ${700 + (i % 90)} rpm` },
  { name: 'sessions that are kept', line: (i) => `session ${date(i)}\n  initial ${i % 40} deg\n  keep` },
  { name: 'revert to a day nobody knows', line: (i) => `session ${date(i)}\n  revert to 1999-01-01` },
  {
    name: 'revert to a day',
    line: (i) => `session ${date(i)}\n  initial ${i % 40} deg\n  revert to ${date(0)}`,
  },
  {
    name: 'revert to days',
    line: (i) => `session ${date(i)}\n  initial ${i % 40} deg\n  revert to ${date(i >> 1)}`,
  },
  {
    name: 'revert in one session',
    head: `${SESSION}\n  initial 9 deg\nsession 2026-01-02`,
    line: () => '  revert to 2026-01-01',
  },
  { name: 'open items', head: SESSION, line: (i) => `  todo ${word(i)}: something` },
  { name: 'faults', head: SESSION, line: (i) => `  fault ${word(i)}: something [safety]` },
  {
    name: 'items that are done',
    head: SESSION,
    line: (i) => `  todo ${word(i)}: something\n  done ${word(i)}`,
  },
  {
    name: 'items and a misspelt done',
    head: SESSION,
    line: (i) => `  todo ${word(i)}: something\n  done ${word(i)}q`,
  },
  {
    name: 'road runs with faults',
    head: SESSION,
    line: (i) => `  fault ${word(i)}: x [safety]\n  road ${i} km/h`,
  },
  {
    name: 'runs with faults',
    line: (i) => `session ${date(i)}\n  fault ${word(i)}: x [safety]\n  speed ${i % 90} km/h`,
  },
  { name: 'sessions with open items', line: (i) => `session ${date(i)}\n  todo ${word(i)}: x` },
  { name: 'own words', head: 'words', line: (i) => `  ${word(i)} setting in deg` },
  {
    name: 'own words in use',
    line: (i) => `words\n  ${word(i)} setting in deg\nsession ${date(i)}\n  ${word(i)} 9 deg`,
  },
  {
    name: 'own words read',
    line: (i) => `words\n  ${word(i)} reading in deg\nsession ${date(i)}\n  ${word(i)} 9 deg`,
  },
  { name: 'parts', head: 'parts', line: (i) => `  ${word(i)}  carburettor` },
  {
    name: 'parts of many kinds',
    head: 'parts',
    line: (i) => `  ${word(i)}  ${['carburettor', 'distributor', 'coil', 'plugs'][i % 4]}`,
  },
  {
    name: 'parts fitted',
    head: 'parts',
    line: (i) => `  ${word(i)}  carburettor\nsession ${date(i)}\n  fit ${word(i)}\n  main jet ${i}\nparts`,
  },
  { name: 'fit of names nobody knows', head: SESSION, line: (i) => `  fit ${word(i)} carburettor` },
  {
    name: 'fit of names and jets',
    head: SESSION,
    line: (i) => `  fit ${word(i)} carburettor\n  main jet ${i}`,
  },
  {
    name: 'parts by turns',
    head: CARBURETTOR + SESSION,
    line: (i) => `  fit ${'ABC'[i % 3]}\n  main jet ${i}`,
  },
  { name: 'specs', head: 'specs', line: (i) => `  ${word(i)} bolts ${20 + (i % 60)} lb-ft` },
  {
    name: 'specs in use',
    line: (i) =>
      `specs\n  ${word(i)} bolts ${20 + (i % 60)} lb-ft\nsession ${date(i)}\n  ${word(i)} bolts 30 lb-ft`,
  },
  {
    name: 'specs in use, two of each',
    line: (i) =>
      `specs\n  ${word(i >> 1)} bolts ${i % 2 ? 'torque 30 lb-ft' : '12 mm'}\nsession ${date(i)}\n  ${word(i)} bolts 30 lb-ft`,
  },
  { name: 'limits', head: 'limits', line: (i) => `  total <= ${30 + (i % 9)} deg` },
  { name: 'limits in places', head: 'limits', line: (i) => `  egt #${i} <= 700 C` },
  { name: 'targets', head: 'targets', line: (i) => `  idle ${700 + (i % 90)} rpm` },
  { name: 'facts', head: 'engine', line: (i) => `  cylinders ${i % 12}` },
  { name: 'facts nobody knows', head: 'engine', line: (i) => `  ${word(i)} ${i}` },
  { name: 'ports', head: 'ports', line: (i) => `  ${word(i)}  capped` },
  { name: 'ports with hoses', head: 'ports', line: (i) => `  ${word(i)}  hose ${word(i + 7)}` },
  { name: 'ports by section', line: (i) => `ports\n  ${word(i)}  hose ${word(i >> 1)}` },
  { name: 'hoses that move', line: (i) => `ports\n  ${word(i)}  modulator` },
  { name: 'paths', head: 'ports', line: (i) => `  path ${word(i)} -> ${word(i + 1)}` },
  {
    name: 'checks',
    head: SESSION,
    line: (i) => `  check ${['brakes', 'throttle return', 'fuel leaks'][i % 3]} ok`,
  },
  { name: 'checks nobody knows', head: SESSION, line: (i) => `  check ${word(i)} ok` },
  { name: 'rechecks', head: SESSION, line: (i) => `  recheck ${word(i)} after 200 mi` },
  {
    name: 'rechecks done',
    head: SESSION,
    line: (i) => `  recheck ${word(i)} after 1 heat cycle\n  check ${word(i)} ok`,
  },
  {
    name: 'rechecks by days',
    line: (i) => `session ${date(i)}\n  recheck ${word(i)} after 9000 days`,
  },
  {
    name: 'rechecks by days that are due',
    line: (i) => `session ${date(i)}\n  recheck ${word(i)} after ${1 + (i % 40)} days`,
  },
  {
    name: 'rechecks every so many days',
    line: (i) => `session ${date(i)}\n  recheck ${word(i)} every 3 days\n  check ${word(i - 4)} ok`,
  },
  {
    name: 'rechecks by the odometer',
    line: (i) => `session ${date(i)}\n  odometer ${i} km\n  recheck ${word(i)} after ${1 + 2 * i} km`,
  },
  {
    name: 'rechecks by hours, not started',
    head: SESSION,
    line: (i) => `  recheck ${word(i)} after 10 h\n  water ${i % 90} C`,
  },
  {
    name: 'rechecks by heat cycles',
    line: (i) => `session ${date(i)}\n  recheck ${word(i)} after ${1 + (i % 90)} heat cycles\n  water 80 C`,
  },
  {
    name: 'rows of a trial',
    head: `${SESSION}\n  trial initial -> idle`,
    line: (i) => `    ${i % 40} deg  ${700 + (i % 90)} rpm`,
  },
  {
    name: 'rows of a trial, all at one place',
    head: `${SESSION}\n  trial initial -> idle`,
    line: (i) => `    9 deg  ${700 + (i % 90)} rpm`,
  },
  {
    name: 'rows of a trial and wants',
    head: `${SESSION}\n  trial initial -> idle`,
    line: (i) => `    ${i % 40} deg  ${700 + (i % 90)} rpm\n  want idle 750 rpm`,
  },
  {
    name: 'wants',
    head: `${SESSION}\n  trial initial -> idle\n    4 deg 700 rpm\n    8 deg 750 rpm\n    12 deg 800 rpm`,
    line: (i) => `  want idle ${700 + (i % 90)} rpm`,
  },
  {
    name: 'trials',
    head: SESSION,
    line: (i) => `  trial initial -> idle\n    4 deg ${700 + (i % 90)} rpm\n    8 deg 800 rpm`,
  },
  { name: 'photos', head: SESSION, line: (i) => `  photo ${word(i)}.jpg` },
  { name: 'notebooks in use', line: (i) => `use ${word(i)}.tappet` },
  { name: 'odometers', line: (i) => `session ${date(i)}\n  odometer ${i} km` },
  {
    name: 'weather',
    line: (i) => `session ${date(i)}\n  weather ${i % 40} C, 1000 hPa\n  main jet ${i % 90}`,
  },
  { name: 'runs', line: (i) => `session ${date(i)}\n  run time ${10 + (i % 9)} s` },
  { name: 'times', head: SESSION, line: (i) => `  +${i} min  tube 402 398 F` },
  {
    name: 'points and timing',
    head: SESSION,
    line: (i) => `  dwell ${28 + (i % 4)} deg\n  timing ${i % 40} deg`,
  },
  { name: 'plugs', head: SESSION, line: (i) => `  plug #${i} "sooty, wet"` },
];

/** Lines of a short notebook, and how many times as many a long one has. */
export const SHORT = 250;
export const TIMES = 4;
/** Lines of one that is asked first: what is worked out once and for all is of no length. */
export const WARM = 20;
/** Steps grow with this power of the length at most: 1 is linear. */
export const MOST = 1.3;

/** The power of the length that steps grow with. */
export const growth = (short = 0, long = 0): number => Math.log((long + 1) / (short + 1)) / Math.log(TIMES);

/** A notebook with so many of a shape's lines. */
export const notebookOf = ({ head, line }: Shape, n: number): string =>
  `${head === undefined ? '' : `${head}\n`}${Array.from({ length: n }, (_, i) => `${line(i)}\n`).join('')}`;
