// The kernel that a page carries, run by node, against the program's own: of 20 cases, scans among them, the plan byte for
// byte, and all that a page asks while a coil is moved and marks are checked.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bench, caseFile, end, expect, folder, inside, installed, page, program, run, source, template, built } from './support.mjs';

const glue = installed(join(built, 'page-kernel', 'kernel.js'));

async function openKernel(bytes, caseText, skin) {
  const module = await WebAssembly.compile(bytes);
  const code = await glue({
    instantiateWasm(imports, ready) {
      WebAssembly.instantiate(module, imports).then((instance) => ready(instance, module));
      return {};
    },
  });
  const room = (text) => {
    const size = code.lengthBytesUTF8(text) + 1, at = code._take_room(size);
    code.stringToUTF8(text, at, size);
    return at;
  };
  let at = 0;
  if (skin) {
    at = code._take_room(skin.length);
    code.HEAPU8.set(skin, at);
  }
  const opened = code.UTF8ToString(code._open_case(room(caseText), at, skin ? skin.length : 0));
  if (opened !== '{}') throw new Error(opened);
  return (question) => code.UTF8ToString(code._answer(room(question)));
}

const changed = (change, from = bench) => {
  const read = from();
  change(read);
  return read;
};
const coil = (more) => changed((c) => Object.assign(c.coil, more));

/// A scan as others store it: the template's skin, as a mesh in centimetres.
function scan(change = () => {}) {
  const ply = join(folder, 'scan.ply');
  run([program, 'head', template().head.file, '--out', ply, '--force']);
  return changed((c) => {
    c.head = { ...c.head, kind: 'mesh', file: ply, unit: 'mm' };
    change(c);
  }, template);
}

const cases = {
  'as it ships': bench(),
  'right side': changed((c) => (c.side = 'right')),
  'small head': changed((c) => (c.tape_mm = { nasion_inion: 330, tragus_tragus: 335, circumference: 530 })),
  'large head': changed((c) => (c.tape_mm = { nasion_inion: 390, tragus_tragus: 395, circumference: 610 })),
  'one tape': changed((c) => (c.tape_mm = { circumference: 580 })),
  'no tapes': changed((c) => delete c.tape_mm),
  'other coil': coil({ model: 'figure-8-90' }),
  'angled coil': coil({ model: 'angled-8-150' }),
  'round coil, held away': coil({ model: 'round-100', angle_deg: -30 }),
  'laid by tape': coil({ laid_by: 'tape' }),
  'laid by nearest, over hair': coil({ laid_by: 'nearest', lift_mm: 4 }),
  'drawn by tape': changed((c) => (c.treatment.drawn_by = 'tape')),
  'at F4': changed((c) => (c.treatment = { rule: 'landmark', label: 'F4' })),
  'grid of pulse points': changed((c) => (c.search.grid_on = 'pulse_points')),
  'another spot': changed((c) => (c.hotspot = { row: 1, column: -1 })),
  'no hotspot yet': changed((c) => delete c.hotspot),
  'MRI': template(),
  'MRI, right side, laid by tape': changed((c) => ((c.side = 'right'), (c.coil.laid_by = 'tape')), template),
  'scan': scan(),
  'scan, angled coil': scan((c) => (c.coil.model = 'angled-8-150')),
};

/// Distance fields take seconds a head, so not every case has them worked out.
const withFields = ['as it ships', 'laid by tape', 'MRI', 'scan, angled coil'];

function questions(site, edge, fields) {
  const at = (p, by) => p.map((v, i) => v + by[i]);
  const mark = (t) => ({ vertex: t.vertex, nasion: t.nasion, left_tragus: t.left_tragus });
  const lengths = { mm: 10, decimals: 1, mark: '.', pattern: '%1 cm' };
  const asked = [{ ask: 'plan' }, { ask: 'place', at: site.pulse }, { ask: 'place', at: site.pulse, angle_deg: -170 }];
  for (const by of [[12, 0, 0], [-7, 20, 3], [0, -60, 20]]) asked.push({ ask: 'place', at: at(site.pulse, by), nudge: [1, -0.5] });
  asked.push({ ask: 'place', from: at(site.pulse, site.normal.map((v) => 300 * v)), way: site.normal.map((v) => -v) });
  asked.push({ ask: 'place', from: [900, 900, 900], way: [0, 0, 1] });
  asked.push({ ask: 'in_sight', toward_eye: [0.6, 0.8, 0], points: [...site.pulse, ...site.normal, 0, -80, 0, 0, -1, 0] });
  if (fields) asked.push({ ask: 'fields' }, { ask: 'place', at: at(site.pulse, [5, 5, 0]) });
  if (fields && edge) {
    asked.push({ ask: 'check', lengths, site: mark(site.tape_from_mm.pulse), edge: mark(site.tape_from_mm.edge_mark) });
    const off = mark(site.tape_from_mm.pulse);
    asked.push({ ask: 'check', lengths, site: { ...off, vertex: off.vertex + 9 }, edge: mark(site.tape_from_mm.edge_mark) });
    asked.push({ ask: 'check', lengths, site: { vertex: off.vertex, left_tragus: off.left_tragus }, edge: { vertex: 90 } });
  }
  asked.push({ ask: 'nothing known' });
  return asked.map((one) => JSON.stringify(one));
}

for (const [name, contents] of Object.entries(cases)) {
  const generic = contents.head.kind === 'generic';
  const { data, bytes } = inside(page('one', contents, ...(generic ? [] : ['--head', 'own'])));
  const answer = await openKernel(bytes('kernel'), data.case, generic ? null : bytes('skin'));
  const { plan } = JSON.parse(answer('{"ask":"plan"}'));
  if (generic) {
    const solved = join(folder, 'plan.json');
    run([program, 'solve', caseFile('one', contents), '--no-brain', '--out', solved, '--force']);
    expect(readFileSync(solved, 'utf8') === plan, `${name}: the plan is that of "solve", byte for byte`);
  }
  const site = JSON.parse(plan).treatment, asked = questions(site, site.mark, withFields.includes(name));
  const caseThere = join(folder, 'case.txt'), skinThere = join(folder, 'skin.bin');
  writeFileSync(caseThere, data.case);
  writeFileSync(skinThere, bytes('skin'));
  const native = run([join(built, 'page_answers'), caseThere, generic ? 'generic' : skinThere], { input: asked.join('\n') + '\n' })
    .trimEnd().split('\n');
  const wrong = asked.filter((question, i) => answer(question) !== native[i]);
  expect(native.length === asked.length && wrong.length === 0, `${name}: ${asked.length} answers as the program's`, wrong[0]);
}
expect(Object.keys(cases).length === 20, 'they are 20 cases');
end();
