import { expect, test } from 'vitest';
import { expectReferences, rolesAt } from '../harness/navigation.ts';

const at = (marked: string): string => marked.split(' | ').join('\n');

test.each([
  [
    'a setting through the sessions',
    'session 2026-05-02 | «mixture» 1 turn | session 2026-05-03 | «m‸ixture» in 1/4 turn | note mixture',
  ],
  [
    'a reading, its limit and its target',
    'limits | «water» <= 90 C | session 2026-05-02 | +5 min «‸water» 80 C',
  ],
  ['by its other names', 'session 2026-05-02 | «in‸itial» 9 deg | «static timing» 10 deg'],
  ['a part', 'parts | «carb twin» "two" | session 2026-05-02 | fit «carb-tw‸in» | remove «Carb Twin»'],
  [
    'an item',
    'session 2026-05-02 | todo «strainer»: x | recheck «strainer» after 1 heat cycle | done «‸strainer»: y | todo strainer cable: z',
  ],
  [
    'an own word',
    'words | «flap gap»: setting, 2..5 mm | session 2026-05-02 | «flap-gap‸» 3 mm | trial «flap gap» -> idle',
  ],
  [
    'a spec',
    'specs | «head bolts» torque 60 lb-ft | session 2026-05-02 | «head b‸olts» 61 lb-ft | «head bolts torque» 62 lb-ft',
  ],
  ['a session', 'session «2026-05-0‸2» | session 2026-05-03 | revert to «2026-05-02»'],
  ['a check', 'session 2026-05-02 | check «throttle ret‸urn» ok | check «throttle-return» bad'],
  ['a file', 'session 2026-05-02 | log «a.csv» | log "«a.c‸sv»"'],
  [
    'a word of the trade in plain speech, by whatever name',
    'session 2026-05-02 | 12 «initial», 34 all in | «ini‸tial» 13 deg | gave it 2 more «initial»',
  ],
  [
    'all that a line of plain speech means, on the whole of it',
    'session 2026-05-02 | «12 initial, 34 all‸ in» | «total» 34 deg',
  ],
  [
    'an own word on a line that does not count',
    'words | «cowl»: reading, 10..90 C | session 2026-05-02 | «cowl‸» 40 C | «cowl» 40 to 50 and falling',
  ],
  ['nothing', 'session 2026-05-02 | note init‸ial'],
])('%s', (_, marked) => expectReferences(at(marked)));

test('without what defines it', () =>
  expectReferences(at('session 2026-05-02 | todo strainer: x | done «stra‸iner»'), false));

test.each([
  ['words | flap gap‸: setting, 2..5 mm | session 2026-05-02 | flap gap 3 mm', 'defines writes'],
  ['limits | total <= 34 deg | session 2026-05-02 | tot‸al 31 deg', 'reads reads'],
])('roles: %s', (marked, roles) => expect(rolesAt(at(marked)).join(' ')).toBe(roles));
