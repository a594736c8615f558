// What the tests of the page share: cases, pages written by the program, and what is packed in them.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';

export const [source, built] = process.argv.slice(2);
export const program = join(built, 'scalpmark');
export const folder = mkdtempSync(join(tmpdir(), 'scalpmark-page-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

export const installed = createRequire(join(built, 'page-npm', 'package.json'));

export function run(words, more = {}) {
  const ran = spawnSync(words[0], words.slice(1), { encoding: 'utf8', maxBuffer: 1 << 28, ...more });
  if (ran.status !== 0) throw new Error(`${words.join(' ')}: exit ${ran.status}\n${ran.stderr}`);
  return ran.stdout;
}

const demo = (name) => JSON.parse(readFileSync(join(source, 'models/demo', name), 'utf8'));
export const bench = () => demo('bench-head.json');
/// The MRI that reference-data fetched, which need not be installed.
export function template() {
  const read = demo('template-mri.json');
  read.head.file = join(source, 'build/reference/ch2.nii.gz');
  return read;
}

/// Writes a case; returns its file.
export function caseFile(name, contents) {
  const file = join(folder, `${name}.json`);
  writeFileSync(file, JSON.stringify(contents));
  return file;
}

/// Has the program write a page of it; returns its file.
export function page(name, contents, ...options) {
  const file = join(folder, `${name}.html`);
  run([program, 'page', caseFile(name, contents), '--out', file, '--force', ...options]);
  return file;
}

/// What stands in a page's script elements.
export function inside(file) {
  const html = readFileSync(file, 'utf8');
  const block = (id) => html.match(new RegExp(`<script type="[a-z/]+" id="${id}">([^<]*)</script>`))?.[1];
  const bytes = (id) => inflateSync(Buffer.from(block(id), 'base64'));
  return { html, block, bytes, data: JSON.parse(block('data')) };
}

let failures = 0;
export function expect(holds, what, detail = '') {
  if (holds) return console.log(`  holds: ${what}`);
  ++failures;
  console.log(`FAILED: ${what}${detail ? `\n        ${detail}` : ''}`);
}
export function end() {
  if (failures > 0) console.log(`${failures} failed`);
  process.exitCode = failures > 0 ? 1 : 0;
}
