/** Names of the weekdays, in full and shortened: English, German, Dutch, French, Italian, Swedish, Danish. */

const WEEKDAYS = [
  'mon monday mo montag ma maandag lun lundi måndag mandag lunedì',
  'tue tues tuesday di dienstag dinsdag mardi tis tisdag tirsdag martedì',
  'wed weds wednesday mi mittwoch wo woensdag mer mercredi ons onsdag mercoledì',
  'thu thur thurs thursday do donnerstag donderdag jeu jeudi tors torsdag giovedì',
  'fri friday fr freitag vr vrij vrijdag ven vendredi fre fredag venerdì',
  'sat saturday sa samstag za zat zaterdag sam samedi lör lördag lø lør lørdag sabato',
  'sun sunday so sonntag zo zon zondag dim dimanche sön söndag sø søn søndag domenica',
].map((names) => new Set(names.split(' ')));

/** Days after Monday; undefined for any other word. */
export function weekdayIndex(word: string | undefined): number | undefined {
  const index = WEEKDAYS.findIndex((names) => names.has((word ?? '').toLowerCase()));
  return index < 0 ? undefined : index;
}
