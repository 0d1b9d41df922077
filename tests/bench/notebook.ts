/** An invented notebook of any length for the benchmark: the same for the same length, no two sessions alike. */

const HEAD = [
  'notebook  Bench engine',
  'engine',
  '  cylinders      4',
  '  firing order   1-3-4-2',
  '  fuel           gasoline',
  'limits',
  '  total          <= 40 deg',
];

export function notebookOf(lines: number): string {
  const random = randomFrom(lines);
  const out = [...HEAD];
  for (let day = 0; out.length < lines; day++) out.push(...session(day, random));
  return `${out.slice(0, lines).join('\n')}\n`;
}

type Random = (below: number) => number;

/** Numbers that repeat for the same seed: Park and Miller's minimal standard generator. */
function randomFrom(seed: number): Random {
  let state = (seed % 2147483646) + 1;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

function session(day: number, random: Random): string[] {
  const date = new Date(Date.UTC(1950, 0, 1 + day)).toISOString().slice(0, 10);
  return ['', `session ${date} 09:30  Run ${day}`, ...settings(random), ...readings(day, random)];
}

function settings(random: Random): string[] {
  const all = [
    `  initial          ${6 + random(8)} deg`,
    `  mechanical       0 deg @ ${800 + random(200)} rpm, ${6 + random(6)} deg @ 1500 rpm, ${18 + random(6)} deg @ 3000 rpm`,
    `  vacuum advance   0 deg @ 4 inHg, ${8 + random(6)} deg @ 12 inHg, manifold`,
    `  mixture          1 ${1 + random(3)}/4 turns`,
    `  main jet         ${110 + random(40)}`,
    `  plug gap         0.0${28 + random(9)} in`,
    `  fuel regulator   ${4 + random(2)}.${random(10)} psi`,
  ];
  return all.filter(() => random(4) === 0);
}

function readings(day: number, random: Random): string[] {
  const tubes = Array.from({ length: 4 }, () => 380 + random(60)).join(' ');
  return [
    `  weather          ${8 + random(20)} C, ${990 + random(30)} hPa, ${30 + random(60)} %RH`,
    `  idle             ${760 + random(90)} rpm in neutral`,
    `  depression       ${15 + random(5)} inHg at idle`,
    `  +${10 + random(20)} min  tube    ${tubes} F probe at idle`,
    `  plug #${1 + random(4)}          "tan, day ${day}"`,
    `  note run ${day}, ${random(1000)} on the sheet`,
    '  keep',
  ];
}
