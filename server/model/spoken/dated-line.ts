/** Whether a line may be the head of a day, by its text alone: pages begin there, so that a day is whole pages. */

import { dateFirst } from './date-first.ts';
import { isDayName } from './forms/feasts.ts';

const WEEKDAY =
  'mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so|sø|sö|lör|lør|zat|zon|lun|mar|mer|jeu|ven|sam|dim'; /* as they begin, in six languages */
const MONTH =
  'jan|jän|feb|fev|fév|mar|maa|mär|mrz|mrt|apr|avr|may|mai|maj|mei|jun|juin|jul|juil|aug|août|aout|sep|oct|okt|nov|dec|déc|dez';
const NUMBERED = String.raw`\d{4}[-.]\d\d[-.]\d\d(?!\d)|\d{1,2}(?:\/\d{1,2}(?!\d)(?!\s+(?:turns?|in|inch)\b)|\.\d{1,2}\.|-\d{1,2}-\d{2})`;
const ANY_NUMBERED = String.raw`\d{1,2}[./-]\d{1,2}`;
const MONTHED = String.raw`\d{1,2}(?:st|nd|rd|th|\.)? +(?:of +)?(?:${MONTH})|(?:${MONTH})\p{L}{0,7}\.? +\d{1,2}`;
const DATED = new RegExp(
  String.raw`^\s*(?:(?:date|session|on)\b:? *)?(?:${NUMBERED}|${MONTHED}|(?:[\p{L} ]{3,20},? *)?(?:${WEEKDAY})\p{L}{0,7}\.?,? +(?:the +)?(?:${ANY_NUMBERED}|${MONTHED}|\d{1,2}(?:st|nd|rd|th)))`,
  'iu',
);

/** True for every head that plain speech knows, and for a few lines more. */
export const mayBeDated = (text: string): boolean =>
  (HINT.test(text) && DATED.test(dateFirst(text))) || isNamed(text);

/** `Easter Monday`, `Boat 4/11`: short lines that end in a date or are the name of a day. */
const isNamed = (text: string): boolean =>
  text.length <= SHORT &&
  ((ENDS_DATED.test(text) && DATED.test(dateFirst(text))) || (DAY_NAMED.test(text) && isDayName(text)));
/** Begins like the name of a day. */
const DAY_NAMED =
  /^(?:mon|tue|wed|thu|fri|sat|sun|di|mi|do|lun|mar|mer|jeu|ven|sam|dim|tis|ons|tors|lör|sön|måndag|ma|vr|woe|za|zo|easter|good|kar|oster|whit|pfing|christ|xmas|boxing|new|may|asc|himm)/i;
const SHORT = 40;
const ENDS_DATED = /\d{1,4}\)?\.?\s*$|\d{1,2}\S{0,2} \p{L}+\)?\.?\s*$/u;

/** Rules most lines out at a small part of the pattern's cost: none begins with a number, or names a day or a month early. */
const HINT = new RegExp(
  String.raw`^\s*(?:\d|(?:date|session|on)\b|(?:\S+\s+){0,3}(?:${WEEKDAY}|${MONTH}))`,
  'i',
);
