/** What the first line of a notebook tells of engine and vehicle in one breath: `302 V8, auto, 3.42 rear`. */
import type { Habits } from '../habits.ts';

interface Told {
  readonly engine?: readonly string[];
  readonly vehicle?: readonly string[];
  readonly note?: string;
}

const COUNTS: ReadonlyMap<string, number> = new Map([
  ['twin', 2],
  ['three', 3],
  ['four', 4],
  ['six', 6],
  ['eight', 8],
  ['twelve', 12],
]);

const countOf = (text: string): number => COUNTS.get(text.toLowerCase()) ?? Number(text);

type Reader = (found: RegExpExecArray, habits: Habits) => Told;

/** How the pieces between commas are told. */
const PIECES: readonly (readonly [said: RegExp, means: Reader])[] = [
  [
    /^(?:(\d{2,4}) ?(cu ?in|cid|ci|cc)? )?(v|flat|straight|inline)[- ]?(\d{1,2}|twin|four|six|eight|twelve)$/i,
    engineOf,
  ],
  [/^(\d{1,2}) cyl(?:inders?|s)?$/i, ([, count]) => ({ engine: [`cylinders ${count}`] })],
  [
    /^(auto|automatic|manual)(?: (?:box|gearbox|trans|transmission))?$/i,
    ([, kind]) => ({ vehicle: [`transmission ${/^auto/i.test(kind ?? '') ? 'automatic' : 'manual'}`] }),
  ],
  [
    /^(\d\.\d{1,2})(?::1)? (?:rear|rear end|axle|final drive|diff|gears)$/i,
    ([, ratio]) => ({ vehicle: [`final drive ${ratio}:1`] }),
  ],
  [
    /^([3-6])[- ]?sp(?:ee)?d\b.*$/i,
    ([said]) => ({
      vehicle: [
        `transmission ${/\bauto/i.test(said) ? 'automatic' : 'manual'} "${said.replaceAll('"', '')}"`,
      ],
    }),
  ],
  [/^(\d{3}\/\d{2}-\d{2})s?$/i, ([, size]) => ({ vehicle: [`tyre "${size}"`] })],
  [
    /^(\d+ ?(?:bbl|barrel)|(?:one|two|twin|four|single)[- ](?:barrel|carbs?))$/i,
    ([said]) => ({ note: said }),
  ],
];

function engineOf([, size, unit, layout, count]: RegExpExecArray, { units }: Habits): Told {
  const symbol = unit
    ? /cc/i.test(unit)
      ? 'cc'
      : 'cu in'
    : sizeUnit(Number(size), countOf(count ?? ''), units);
  const shape = /^v$/i.test(layout ?? '') ? 'vee' : /^flat$/i.test(layout ?? '') ? 'flat' : 'inline';
  const displacement = size ? [`displacement ${size} ${symbol}`] : [];
  return { engine: [`cylinders ${countOf(count ?? '')}`, `layout ${shape}`, ...displacement] };
}

/** The least that a cylinder of a road engine displaces, cc. From memory. */
const LEAST_CC = 45;

/** A vee-eight of 336 has cubic inches in any notebook: of 42 cc a cylinder none is built. */
const sizeUnit = (size: number, cylinders: number | string, units: Habits['units']): string =>
  units === 'us' || size / Number(cylinders) < LEAST_CC ? 'cu in' : 'cc';

/** Lines in their sections; undefined where a piece is anything else, or where only one is told. */
export function engineIn(text: string, habits: Habits): readonly string[] | undefined {
  const told = text.split(',').map((piece) => toldIn(piece.trim(), habits));
  if (told.length < 2 || told.some((each) => each === undefined)) return banksIn(text, habits);
  const engine = told.flatMap((each) => each?.engine ?? []);
  const vehicle = told.flatMap((each) => each?.vehicle ?? []);
  if (engine.length + vehicle.length < 2) return undefined;
  const notes = told.flatMap((each) => (each?.note ? [`note ${each.note}`] : []));
  return [
    ...(engine.length > 0 ? ['engine', ...engine] : []),
    ...(vehicle.length > 0 ? ['vehicle', ...vehicle] : []),
    ...notes,
  ];
}

function toldIn(piece: string, habits: Habits): Told | undefined {
  for (const [said, means] of PIECES) {
    const found = said.exec(piece);
    if (found) return means(found, habits);
  }
  return undefined;
}

const SIDES =
  /^odds?(?: (?:cyls?|cylinders))? (?:on )?(?:the )?(left|right|driver'?s?|port|starboard)(?: side| bank)?,? (?:and )?evens?(?: (?:cyls?|cylinders))? (?:on )?(?:the )?(left|right|pass\w*|port|starboard)\.?(?: side| bank)?\.?$/i;

/** `odd cyls driver side, evens pass.`: the driver's side is the left one where people drive on the right. */
function banksIn(text: string, { cylinders, units }: Habits): readonly string[] | undefined {
  const [, odd = '', even = ''] = SIDES.exec(text.trim()) ?? [];
  if (!cylinders || cylinders % 2 > 0 || odd === '') return undefined;
  if (/^driver|^pass/i.test(`${odd} ${even}`) && units !== 'us') return undefined;
  const isLeft = /^(?:left|port|driver)/i.test(odd);
  if (isLeft === /^(?:left|port)/i.test(even)) return undefined;
  const every = (from: number) => Array.from({ length: cylinders / 2 }, (_, i) => from + 2 * i).join('-');
  const [left, right] = isLeft ? [every(1), every(2)] : [every(2), every(1)];
  return ['engine', `left bank ${left}`, `right bank ${right}`];
}
