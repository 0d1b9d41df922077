/** Lines that say a trouble is not there, or is over. */

const TROUBLE = String.raw`(?:\w*leak\w*|drip\w*|ping\w*|pink(?:s|ed|ing)|knock\w*|smok\w*|smell\w*|play|slack|weep\w*|crack\w*|stick\w*|fumes|trouble|wobbl\w*|shak\w*|shimmy|fad(?:e|es|ing)|damp\w*|sparks|sparking|burn\w*|pull\w*|rub\w*|hang\w*|bind\w*|kick\w*|back-?fir\w*|flat spots?|slop|rattl\w*|squeal\w*|vibrat\w*|overheat\w*|boil\w*|flood\w*|overflow\w*)`;

/** `no fuel leak`, `cured the drip`. */
const DENIED = new RegExp(
  String.raw`\b(?:no|not|without|never|nothing|zero|cured|stopped|quit|fixed|neither|nor|(?:do|does|did|is|are|was)n['’]?t|no more|no longer)\b(?: \w+)? ${TROUBLE}\b`,
  'i',
);
/** `the smell is gone`. */
const GONE = new RegExp(
  String.raw`\b${TROUBLE} (?:is |are |has |have |all |now |been )*(?:gone|cured|fixed|stopped|sorted|mended|away)\b`,
  'i',
);
const WELL =
  /\bsnaps? (?:shut|back|closed)\b|\b(?:bone dry|dry (?:now|everywhere|all round))\b|\btight now\b|\bpulls? (?:up )?(?:straight|even|true|square)\b|\b(?:works?|shuts?|closes?|returns?|holds?|grips?|bites?) (?:fine|well|good|now|again|clean|cleanly|freely|ok|properly)\b|\b(?:all|both) (?:good|dry|tight|ok|okay|fine)\b|\b(?:no need|like new)\b/i;
const MENDING =
  /^(?:(?:fixed|mended|cured|sorted|replaced|repaired|renewed|tightened|swapped|freed|greased|fitted|bled|soldered|sealed|patched|rerouted|re-?routed)\b|new (?:\w+ ){1,3}(?:fitted|on|in)\b)/i;
const STILL = /\b(?:still|but|yet|worse|again already|already|even so|anyway)\b/i;

/** True for a whole line, or a part of one between commas. */
export function isMended(text: string): boolean {
  if (DENIED.test(text)) return true;
  if (STILL.test(text)) return false;
  return GONE.test(text) || WELL.test(text) || MENDING.test(text.trim());
}
