/** Whether a line may be the head of a day, by its text alone: pages begin there, so that a day is whole pages. */

const WEEKDAY =
  'mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so'; /* as they begin, in English and in German */
const MONTH =
  'jan|jän|feb|fev|fév|mar|mär|mrz|apr|avr|may|mai|jun|juin|jul|juil|aug|août|sep|oct|okt|nov|dec|dez';
const NUMBERED = String.raw`\d{1,2}(?:\/\d{1,2}(?!\d)(?!\s+(?:turns?|in|inch)\b)|\.\d{1,2}\.|-\d{1,2}-\d{2})`;
const ANY_NUMBERED = String.raw`\d{1,2}[./-]\d{1,2}`;
const MONTHED = String.raw`\d{1,2}(?:st|nd|rd|th|\.)? +(?:of +)?(?:${MONTH})|(?:${MONTH})\p{L}{0,7}\.? +\d{1,2}`;
const DATED = new RegExp(
  String.raw`^\s*(?:(?:date|session|on)\b:? *)?(?:${NUMBERED}|${MONTHED}|(?:[\p{L} ]{3,20},? *)?(?:${WEEKDAY})\p{L}{0,7}\.?,? +(?:the +)?(?:${ANY_NUMBERED}|${MONTHED}|\d{1,2}(?:st|nd|rd|th)))`,
  'iu',
);

/** True for every head that plain speech knows, and for a few lines more. */
export const mayBeDated = (text: string): boolean => HINT.test(text) && DATED.test(text);

/** Rules most lines out at a small part of the pattern's cost: none begins with a number, or names a day or a month early. */
const HINT = new RegExp(
  String.raw`^\s*(?:\d|(?:date|session|on)\b|(?:\S+\s+){0,3}(?:${WEEKDAY}|${MONTH}))`,
  'i',
);
