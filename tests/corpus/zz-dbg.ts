import { classify } from '../../server/model/spoken/classify.ts';
import { clausesOf } from '../../server/model/spoken/clauses.ts';
import { settle } from '../../server/model/spoken/settle.ts';
import { readSpoken } from '../../server/model/spoken/read.ts';
const A = { section: 'session', words: new Map(), specs: new Map() } as any;
const h: any = { units: process.argv[2] ?? 'us', cylinders: Number(process.argv[3] ?? 4), dayOrder: process.argv[2]==='us'?'month first':'day first', ...(process.argv[4] ? {places: process.argv[4].split(',')} : {}) };
import { readFileSync } from 'node:fs';
for (const t of readFileSync(0,'utf8').split('\n').filter(Boolean)) {
  const s = settle(classify(t, A), h);
  console.log('##', t, s.time ?? '');
  for (const c of clausesOf(s.pieces)) console.log('   ', c.map(p => `${p.kind}:${p.kind==='v'?JSON.stringify(p.amount!.low)+(p.amount!.high??'')+(p.amount!.unit?.id??''):p.text}`).join('  '));
  const r = readSpoken(t, A, h); console.log('   =>', r.status, r.as.join(' | '), r.offers.map(o=>'\n      ? '+o).join(''));
}
