/** Words that nobody knows beside a number: they are a remark on it, unless they may change what it means. */
import type { Piece } from './classify.ts';
import { EXPOSED } from './lexicon.ts';

const set = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));

/** Said of another day, another engine, a wish or a guess; a number beside them may hold for nothing here. */
const TURNING = set(`
  told tells asked asks ago aim aimed aiming target goal guess guessing guessed think thinks thought hope hoping hopes ought his her hers neighbour neighbours neighbor neighbors
  neighbour's neighbor's borrowed spare another's brother's dad's his' theirs their your yours mate's next tomorrow monday tuesday wednesday thursday friday saturday sunday
  unless until till except instead rather either neither nor whether when where which what why how who whose per about-turn minus plus times difference between
  advertised rated rating nominal ideal ideally recommended recommend recommends typical typically proper correct wrong wrongly expected expecting supposedly apparently
  claims claimed according says-so reckoned theirs similar compared versus vs against beat record best-ever ever once forgot forgotten lost unknown unsure dunno
  ordered order ordering price cost costs paid pounds dollars quid euro bucks each-way page chapter para table number part size no. size: sized
  yesterday earlier later formerly previous previously prior past future day days week weeks month months year years season summer winter spring autumn
  january february march april june july august september october november december
  first second third fourth then afterwards broke broken fault faulty bad suspect suspicious stop stopped warning warned alarm
  fully-closed reverse wrong-way opposite half double twice triple halved doubled without
`);

/** Parts that are none of the vocabulary: a number beside them is theirs. */
const PARTS = set(`
  cooler intercooler diff differential axle axles bearing bearings bush bushes clutch brake brakes wiper wipers trailer hub hubs steering rack sump-guard winch mower pto hitch plough plow baler
  hydraulic hydraulics hyd servo compressor heater cabin cab dash rim rims ring rings piston pistons conrod rod rods crankshaft mains-bearing journal camshaft cam lobe guide guides seal seals
  keel hull bilge rudder stern shaft sprocket chain belt belts pulley fork forks shock shocks spring springs damper swingarm wheel wheels nut nuts bolt bolts stud studs screw screws gasket
  tank tanks hose hoses pipe pipes washer washers spacer shim shims bracket manifold flange head-bolt flywheel ram cylinder-head gearbox box transfer
  caravan car van lorry bus bike scooter pump compressor freezer fridge oven kettle house shop kitchen room garage store phone tv radio
`);

/** Behind a number these make it one of something else. */
const TURNING_AFTER = set(`
  ago yr yrs year years month months week weeks bucks dollars quid euro euros pounds cost costs price target aim aimed goal ideal ideally recommended
  wrong rated rating advertised allowed maximum minimum told asked his hers theirs neighbour's neighbor's tomorrow next guess guessed thought thinks hope hoping
  needed ordered borrowed spare another other's instead rather either whether unless
`);

/** `12 bucks`, `900 on the other engine`. */
export const turnsBehind = (pieces: readonly Piece[]): boolean =>
  pieces.some(({ kind, text }) => kind === 'x' && TURNING_AFTER.has(text)) ||
  pieces.some(
    ({ text }, i) =>
      text === 'other' &&
      /^(?:engine|motor|car|truck|boat|bike|tractor|one|carb)$/.test(pieces[i + 1]?.text ?? ''),
  );

/** A word of its own meaning that stands among strangers. */
const isTurning = ({ kind, text }: Piece): boolean => kind !== 'x' || TURNING.has(text) || /\d/.test(text);

/** True where a piece before a number may be left as a remark on it. */
export const isStranger = (piece: Piece): boolean =>
  piece.kind === 'x' &&
  !isTurning(piece) &&
  !PARTS.has(piece.text) &&
  !EXPOSED.has(piece.text) &&
  /^\p{L}[\p{L}'’.-]+$/u.test(piece.text);
