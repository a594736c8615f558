// How large pages are, how soon their first picture is there and how quickly they are redrawn, in Debian's Chromium with
// software OpenGL and nothing of a graphics card; prints a table. No test: scripts/bench runs it.
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { bench, built, folder, installed, page, program, run, template } from './support.mjs';

const { chromium } = installed('playwright-core');
const ROUNDS = 5, FRAMES = 60;
const middle = (all) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)];

/// The template's skin as a scan, with all its triangles.
function scan() {
  const ply = join(folder, 'scan.ply');
  run([program, 'head', template().head.file, '--out', ply, '--force']);
  const read = template();
  read.head = { ...read.head, kind: 'mesh', file: ply, unit: 'mm' };
  return read;
}

const browser = await chromium.launch({
  executablePath: process.env.SCALPMARK_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--disable-gpu-vsync', '--disable-frame-rate-limit'],
});

/// From opening the file to the first picture of the head, ms; a page of its own each time.
async function firstPicture(file, viewport) {
  const context = await browser.newContext({ viewport, offline: true });
  const tab = await context.newPage();
  await tab.goto(pathToFileURL(file).href, { waitUntil: 'commit' });
  await tab.waitForSelector('body[data-drawn]', { timeout: 60000 });
  const ms = await tab.evaluate(() => performance.now());
  await context.close();
  return ms;
}

/// Pictures a second while a key turns the head: each is drawn whole before the next key is looked at.
async function pictures(file, viewport, live) {
  const context = await browser.newContext({ viewport, offline: true });
  const tab = await context.newPage();
  await tab.goto(pathToFileURL(file).href);
  await tab.waitForSelector(live ? 'body[data-live]' : 'body[data-drawn]', { timeout: 60000 });
  await tab.waitForTimeout(6000); // until the worker has its distance fields
  const perSecond = await tab.evaluate(async (frames) => {
    const box = document.getElementById('stage'), canvas = document.getElementById('picture');
    const pixel = new Uint8Array(4), gl = canvas.getContext('webgl2');
    const turned = () => new Promise((resolve) => {
      box.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight' }));
      // Reading a pixel waits until the picture is drawn.
      requestAnimationFrame(() => resolve(gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel)));
    });
    for (let i = 0; i < 5; ++i) await turned();
    const since = performance.now();
    for (let i = 0; i < frames; ++i) await turned();
    return (1000 * frames) / (performance.now() - since);
  }, FRAMES);
  await context.close();
  return perSecond;
}

const desk = { width: 1280, height: 800 };
const pages = [
  ['generic head, technician', page('technician', bench()), true],
  ['generic head, class', page('class', bench(), '--for', 'class'), true],
  ['generic head, patient', page('patient', bench(), '--for', 'patient'), false],
  ['scan, technician', page('scan', scan(), '--head', 'own'), true],
];
console.log('page, bytes, packed by gzip, first picture ms, pictures a second at 1280x800');
for (const [name, file, live] of pages) {
  const times = [];
  for (let i = 0; i < ROUNDS; ++i) times.push(await firstPicture(file, desk));
  const packed = gzipSync(readFileSync(file)).length;
  console.log([name, statSync(file).size, packed, Math.round(middle(times)), (await pictures(file, desk, live)).toFixed(1)].join(', '));
}
console.log(`built in ${built}; medians of ${ROUNDS} openings, ${FRAMES} pictures`);
await browser.close();
