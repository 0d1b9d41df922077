/** A word one letter off from one word of the trade and of no other: what the pencil meant. */
import { editDistance } from '../../trade/text/spelling-distance.ts';

/** Shorter words are one letter off from too many others. */
const SHORTEST = 5;
/** Of words this long another letter still leaves the same word. */
const LONG = 6;

/** Plain English that lies one letter off from a word of the trade. */
const ENGLISH = new Set(
  `pints paints prints points' tired tries level lever levers clocks spares spear spare spend speeds starter houses house horse change charged charger
   breathe brother leather weather feather waters later hater meters metre metres paces traces pump's plums flugs stages stage gauges cause choked chokers chock shock
   needless needed noodles screwed screams floats' floated floating floating' boosts boasted starting staring stating stator starlit rating ratings running ruining fitting
   putting tipping dripping timings mining tuning turning burning sitting hitting setting settings letting gapping tapping tapped topped stopped mapped
   powered tower lower flower shower bower volumes lashed splash flash clash crash plated plates places placed pleased packet jacket racket ticket pocket rocket
   tanked thanks banked main's mainly mains' ideal idles ideally idled total's totally totals static's strobes mixed mixer mixes fixture
   breaks brakes braked shots shorts shirts trips strips stripe primes primer filled filler fills fuller fooled bottle bottom nozzle's puzzle governed governess
   bleeds blended bleeding pitched ditched patched pulled pulley pressed presses pleasure pressured measured measure
   spacer spaced space spades sparked sparse points hours house-keeping heads headed header header's shades shaded closed closet clones chosen
   counter country coiled coils boils spoils toils lights slight sights nights tights fights compressor compressed balanced balances dances injected rejected infection`.split(
    /\s+/,
  ),
);

/** The words of names by their first letter and length. */
export function nearWords(names: Iterable<string>): (word: string) => string | undefined {
  const known = new Set<string>();
  for (const name of names)
    for (const word of name.split(' ')) if (word.length >= SHORTEST && /^[a-z]+$/.test(word)) known.add(word);
  const shelves = new Map<string, string[]>();
  for (const word of known) {
    const key = `${word.charAt(0)}${word.length}`;
    shelves.set(key, [...(shelves.get(key) ?? []), word]);
  }
  return (word) => {
    // Verbs are many, and none of them is a name.
    if (
      word.length < SHORTEST ||
      !/^[a-z]+$/.test(word) ||
      /(?:ed|ing)$/.test(word) ||
      known.has(word) ||
      ENGLISH.has(word)
    )
      return undefined;
    const near = [-1, 0, 1].flatMap((more) =>
      (shelves.get(`${word.charAt(0)}${word.length + more}`) ?? []).filter((each) => isNear(word, each)),
    );
    // `compresion` is near `compression` and nothing else; a plural is the same word.
    const stems = new Set(near.map((each) => each.replace(/s$/, '')));
    return stems.size === 1 ? near[0] : undefined;
  };
}

/** A letter left out, put in or turned round with its neighbour; another letter only in a long word. */
function isNear(word: string, known: string): boolean {
  if (editDistance(word, known, 1) > 1) return false;
  const isOther =
    word.length === known.length && [...word].toSorted().join('') !== [...known].toSorted().join('');
  return !isOther || word.length >= LONG;
}
