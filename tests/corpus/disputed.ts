/** Rows whose given meaning leans on another line or on more than the line says, each with its reason: they are asked, or read otherwise. */
export const DISPUTED: ReadonlyMap<string, string> = new Map([
  ['5/5 on the meter', 'the engine need not idle: nothing on the line says so'],
  ['back to 850', 'of idle and of many other things; the word stands a line above'],
  ['2 more and its gone', 'what is 2 more stands a line above'],
  ['put on the 13', 'a propeller only for who knows that one is being changed'],
  ['178 at WOT, was 155', 'neither line nor session says that it is the water'],
  ['Ditto front', 'stands a line above'],
  ['" at 3000, 30', 'stands a line above'],
  ['vacuum same like 28.3.', 'the reading of another day; which one of it is not said'],
  ['3200 = 26, no, 27', 'timing at a speed; that the vacuum is off is not said'],
  ['Rear carb off', 'the notation has no word for it: kept as a note'],
]);
