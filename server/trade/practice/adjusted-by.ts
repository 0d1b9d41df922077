/** Setting adjusted to move a reading (common practice, no source). */

const BEHIND: ReadonlyMap<string, string> = new Map(
  Object.entries({
    timing: 'initial',
    total: 'initial',
    idle: 'idle screw',
    'all in': 'advance springs',
    'carbon monoxide': 'mixture',
    'fuel pressure': 'fuel regulator',
    boost: 'blower ratio',
  }),
);

export const settingBehind = (reading: string): string | undefined => BEHIND.get(reading);
