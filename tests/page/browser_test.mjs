// The page in Debian's Chromium, from disk and offline, with real mouse, fingers and keys, by Playwright.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bench, built, caseFile, end, expect, folder, inside, installed, page, program, run, template } from './support.mjs';

const { chromium } = installed('playwright-core');
const pictures = join(built, 'page-pictures');
mkdirSync(pictures, { recursive: true });
const browser = await chromium.launch({
  executablePath: process.env.SCALPMARK_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});

const sizes = { phone: [390, 844], tablet: [820, 1180], desk: [1280, 800] };

/// Opens a page and waits until it is drawn (and, where it has a kernel, alive); what it asked of the network and what
/// went wrong is kept.
async function open(file, { size = 'desk', live = true, ...more } = {}) {
  const [width, height] = sizes[size];
  const context = await browser.newContext({ viewport: { width, height }, offline: true, ...more });
  const tab = await context.newPage();
  const asked = [], wrong = [];
  tab.on('request', (request) => asked.push(request.url()));
  tab.on('pageerror', (error) => wrong.push(error.message));
  tab.on('console', (said) => said.type() === 'error' && wrong.push(said.text()));
  tab.on('dialog', (dialog) => (wrong.push(`dialog ${dialog.message()}`), dialog.dismiss()));
  const since = Date.now();
  await tab.goto(pathToFileURL(file).href);
  if (more.javaScriptEnabled !== false) {
    await tab.waitForSelector('body[data-drawn]', { timeout: 60000 });
    tab.drawnAfter = Date.now() - since;
    if (live) await tab.waitForSelector('body[data-live]', { timeout: 60000 });
  }
  return { tab, context, asked, wrong };
}

/// Where a place of the head is in the picture, from what the page says of its first scene.
async function pixelOf(tab, data, at) {
  const box = await tab.locator('#stage').boundingBox();
  const scene = data.scenes[0], eye = scene.toward_eye, up = scene.up;
  const right = [up[1] * eye[2] - up[2] * eye[1], up[2] * eye[0] - up[0] * eye[2], up[0] * eye[1] - up[1] * eye[0]];
  const across = scene.across ?? data.head.reach * 0.9;
  const focus = scene.focus ?? data.head.middle.map((v, i) => v + 25 * data.head.up[i]);
  const mmPerPx = across / Math.min(box.width, box.height);
  const from = at.map((v, i) => v - focus[i]), along = (way) => from.reduce((sum, v, i) => sum + v * way[i], 0);
  return [box.x + box.width / 2 + along(right) / mmPerPx, box.y + box.height / 2 - along(up) / mmPerPx];
}

const text = (tab, where) => tab.locator(where).innerText();
/// Whether a text becomes another within a while.
const changes = (tab, where, before) =>
  tab.waitForFunction(([place, was]) => document.querySelector(place).innerText !== was, [where, before], { timeout: 20000 })
    .then(() => true, () => false);
const numbersIn = (said) => said.match(/-?\d+(\.\d+)?/g).map(Number);

function solve(contents) {
  const out = join(folder, 'solved.json');
  run([program, 'solve', caseFile('solved-case', contents), '--no-brain', '--out', out, '--force']);
  return JSON.parse(readFileSync(out, 'utf8'));
}

const technician = page('technician', bench());
const { data } = inside(technician);

{
  const { tab, asked, wrong, context } = await open(technician);
  await tab.screenshot({ path: join(pictures, 'technician-desk.png') });
  // Dragged onto F3, the coil has there the numbers that "solve" has for a treatment at F3.
  const aim = bench();
  aim.treatment = { rule: 'landmark', label: 'F3', drawn_by: 'drop' };
  const there = solve(aim).treatment;
  const [fromX, fromY] = await pixelOf(tab, data, data.scenes[0].frame.origin), [toX, toY] = await pixelOf(tab, data, there.pulse);
  await tab.mouse.move(fromX, fromY);
  await tab.mouse.down();
  for (let i = 1; i <= 20; ++i) await tab.mouse.move(fromX + ((toX - fromX) * i) / 20, fromY + ((toY - fromY) * i) / 20);
  await tab.mouse.up();
  await tab.waitForSelector('#live table', { timeout: 120000 });
  const rows = (await tab.locator('#live table tr').allInnerTexts()).slice(1);
  const tapes = rows.map((row) => numbersIn(row));
  const names = ['vertex', 'nasion', 'left_tragus', 'right_tragus'];
  const most = Math.max(...names.flatMap((name, i) => [Math.abs(10 * tapes[i][0] - there.tape_from_mm.pulse[name]),
    Math.abs(10 * tapes[i][1] - there.tape_from_mm.edge_mark[name])]));
  expect(most < 1.5, 'dragged onto F3 the coil has the tapes of "solve" for F3, to a pixel and a rounding', `off by ${most} mm`);
  const gap = numbersIn(await tab.locator('#live dt:text-is("drop") + dd').innerText())[0];
  expect(Math.abs(gap - there.gap_mm.drop) < 0.6, 'and its gap', `${gap}, not ${there.gap_mm.drop}`);
  expect((await text(tab, '#headline')).startsWith('Held by hand'), 'it says that the coil is held by hand');
  await tab.screenshot({ path: join(pictures, 'technician-dragged.png') });

  // Keys.
  await tab.locator('#stage').focus();
  await tab.keyboard.press('Escape');
  expect(!(await tab.locator('#headline').isVisible()), 'Escape puts the coil back');
  await tab.keyboard.press('Shift+ArrowUp');
  expect((await text(tab, '#live')).includes('0.1 cm from the site'), 'Shift and an arrow move it by a millimetre', await text(tab, '#live'));
  for (let i = 0; i < 5; ++i) await tab.keyboard.press('PageUp');
  expect((await text(tab, '#angle-said')) === '50° to the midline', 'Page Up turns it by a degree', await text(tab, '#angle-said'));
  await tab.keyboard.press('Escape');
  const way = await text(tab, '#way');
  for (let i = 0; i < 12; ++i) await tab.keyboard.press('ArrowRight');
  expect(await changes(tab, '#way', way), 'arrow keys turn the head', way);

  // Check: the plan's own tapes agree; a centimetre off is to be moved.
  const { site, edge } = { site: data.find_again.slice(0, 4), edge: data.find_again.slice(4) };
  const type = async (mark, mms) => {
    const inputs = tab.locator(`[data-mark="${mark}"]`);
    for (let i = 0; i < 4; ++i) await inputs.nth(i).fill(mms[i] === undefined ? '' : (mms[i] / 10).toFixed(1));
  };
  const check = async () => {
    await tab.click('[data-do="check"]');
    await tab.waitForSelector('#verdict .verdict, #verdict .problem', { timeout: 120000 });
    return text(tab, '#verdict');
  };
  await type('site', site.map(({ mm }) => mm));
  await type('edge', edge.map(({ mm }) => mm));
  await tab.locator('[data-mark="edge"]').last().press('Enter');
  expect(await tab.waitForSelector('#verdict .verdict', { timeout: 120000 }).then(() => true, () => false), 'Enter in a field checks');
  expect((await check()).startsWith('Agrees'), "the plan's own tapes agree", await text(tab, '#verdict'));
  // Marks that were made for a site a centimetre further forward.
  const further = bench();
  further.treatment.distance_mm = 60;
  const { pulse, edge_mark } = solve(further).treatment.tape_from_mm;
  await type('site', names.map((name) => pulse[name]));
  await type('edge', names.map((name) => edge_mark[name]));
  const said = await check();
  expect(said.startsWith('Move') && said.includes('1.0 cm backward'), 'marks a centimetre further forward are to be moved back', said);
  await tab.locator('[data-mark="site"]').first().fill('eight');
  expect((await check()).includes('eight is no length'), 'what is no length is said', await text(tab, '#verdict'));

  // The numbers one at a time.
  await tab.click('[data-do="numbers"]');
  expect((await text(tab, '#next-number')) === `${(site[0].mm / 10).toFixed(1)} cm`, 'the numbers are shown large');
  await tab.keyboard.press('ArrowRight');
  expect((await text(tab, '#next-progress')) === '2 of 8', 'one after the other');
  await tab.screenshot({ path: join(pictures, 'technician-number.png') });
  await tab.keyboard.press('Escape');

  // The policy itself, since there is no network here to be reached anyway.
  const stopped = (act) =>
    tab.evaluate(
      (what) =>
        new Promise((resolve) => {
          addEventListener('securitypolicyviolation', (event) => resolve(event.effectiveDirective), { once: true });
          setTimeout(() => resolve('nothing'), 5000);
          if (what === 'connect') fetch('http://127.0.0.1:9/').catch(() => {});
          if (what === 'picture') new Image().src = 'http://127.0.0.1:9/a.png';
          if (what === 'script') document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.taken = 1' }));
        }),
      act,
    );
  const before = wrong.length;
  expect((await stopped('connect')) === 'connect-src', 'its policy lets no connection out');
  expect((await stopped('picture')) === 'img-src', 'nor a picture in');
  expect((await stopped('script')).startsWith('script-src'), 'nor a script that is not its own');
  wrong.splice(before); // what the browser says of these three
  asked.splice(asked.findIndex((url) => url.startsWith('http')) >>> 0);

  const pdf = join(folder, 'printed.pdf');
  await tab.pdf({ path: pdf, format: 'A4' });
  writeFileSync(join(pictures, 'technician-printed.pdf'), readFileSync(pdf));
  expect(/Pages:\s+1\n/.test(run(['pdfinfo', pdf])), 'it prints on one page', run(['pdfinfo', pdf]));
  expect(asked.every((url) => /^(file|blob|data):/.test(url)), 'no request leaves', asked.join(' '));
  expect(wrong.length === 0, 'nothing goes wrong in it', wrong.join('; '));
  await context.close();
}

{
  // One finger turns the head; two bring it nearer; one on the coil moves it.
  const { tab, wrong, context } = await open(technician, { size: 'phone', hasTouch: true, isMobile: true, deviceScaleFactor: 2 });
  await tab.screenshot({ path: join(pictures, 'technician-phone.png') });
  const device = await context.newCDPSession(tab);
  const touch = (type, points) => device.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
  const box = await tab.locator('#stage').boundingBox();
  const before = await text(tab, '#way');
  await touch('touchStart', [[box.x + 40, box.y + box.height - 30]]);
  for (let i = 1; i <= 15; ++i) await touch('touchMove', [[box.x + 40 + 14 * i, box.y + box.height - 30]]);
  await touch('touchEnd', []);
  expect(await changes(tab, '#way', before), 'a finger turns the head', before);
  await tab.click('[data-do="as-first"]');
  await tab.waitForTimeout(200);
  const small = await tab.locator('#stage').screenshot();
  const [x, y] = [box.x + box.width / 2, box.y + box.height - 60];
  await touch('touchStart', [[x - 20, y], [x + 20, y]]);
  for (let i = 1; i <= 10; ++i) await touch('touchMove', [[x - 20 - 8 * i, y], [x + 20 + 8 * i, y]]);
  await touch('touchEnd', []);
  await tab.waitForTimeout(200);
  expect(!small.equals(await tab.locator('#stage').screenshot()), 'two fingers bring it nearer');
  await tab.click('[data-do="as-first"]');
  const [coilX, coilY] = await pixelOf(tab, data, data.scenes[0].frame.origin);
  await touch('touchStart', [[coilX, coilY]]);
  for (let i = 1; i <= 10; ++i) await touch('touchMove', [[coilX + 3 * i, coilY + i]]);
  await touch('touchEnd', []);
  expect((await text(tab, '#headline')).startsWith('Held by hand'), 'a finger on the coil moves it');
  expect(wrong.length === 0, 'nothing goes wrong on a phone', wrong.join('; '));
  await context.close();
}

for (const [face, live] of [['patient', false], ['class', true], ['technician', true]]) {
  const file = page(face, bench(), '--for', face);
  for (const size of Object.keys(sizes)) {
    const { tab, context, asked, wrong } = await open(file, { size, live });
    if (face !== 'technician') {
      await tab.screenshot({ path: join(pictures, `${face}-${size}.png`) });
      await tab.click('[data-do="step-on"]');
    }
    await tab.waitForTimeout(300);
    await tab.screenshot({ path: join(pictures, `${face}-${size}-whole.png`), fullPage: true });
    const wide = await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide <= 0, `${face}, ${size}: nothing stands out at the side`, `${wide} px`);
    expect(asked.every((url) => /^(file|blob|data):/.test(url)) && wrong.length === 0, `${face}, ${size}: in peace`,
      [...asked, ...wrong].join(' '));
    await context.close();
  }
}

{
  // Off the defaults: the right side, another coil, inches, German; every face on one printed page, A4 and Letter.
  const right = bench();
  right.side = 'right';
  right.coil.model = 'figure-8-90';
  for (const [face, live] of [['patient', false], ['class', true], ['technician', true]])
    for (const [name, contents, ...options] of [
      ['right-inches', right, '--lengths', 'in'], ['right-german', right, '--language', 'de'], ['usual', bench()],
    ]) {
      const file = page(`${face}-${name}`, contents, '--for', face, ...options);
      const { tab, context, wrong } = await open(file, { size: 'phone', live });
      await tab.screenshot({ path: join(pictures, `${face}-${name}-phone.png`), fullPage: true });
      const wide = await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide <= 0 && wrong.length === 0, `${face}, ${name}: nothing stands out on a phone`, `${wide} px ${wrong.join(' ')}`);
      for (const format of ['A4', 'Letter']) {
        const pdf = join(pictures, `${face}-${name}-${format}.pdf`);
        await tab.pdf({ path: pdf, format });
        expect(/Pages:\s+1\n/.test(run(['pdfinfo', pdf])), `${face}, ${name}: prints on one page of ${format}`, run(['pdfinfo', pdf]));
      }
      await tab.setViewportSize({ width: 1280, height: 800 });
      await tab.waitForTimeout(300);
      await tab.screenshot({ path: join(pictures, `${face}-${name}-desk.png`) });
      if (name === 'right-german') {
        const said = await tab.evaluate(() => document.documentElement.lang + ' ' + document.body.innerText);
        expect(said.startsWith('de') && !/\b(the|coil|patient's)\b/i.test(said.replace(/Licen[cs]e[^]*$/i, '')), `${face}: German throughout`,
          said.match(/.{0,20}\b(the|coil|patient's)\b.{0,20}/i)?.[0]);
      }
      if (name === 'right-inches' && face !== 'patient') {
        // A coil's name has its size in it.
        const said = (await tab.evaluate(() => document.getElementById('panel').innerText)).replace(/coil, 90 mm/, 'coil');
        expect(/\bin\b/.test(said) && !/\d (cm|mm)\b/.test(said), `${face}: inches throughout`, said.match(/.{0,30}\d (cm|mm)\b.{0,20}/)?.[0]);
      }
      await context.close();
    }
}

{
  // A person's scan: its face is in the page only where that was asked for.
  for (const head of ['own', 'generic', 'scalp']) {
    const file = page(`scan-${head}`, template(), '--head', head);
    const { tab, context, wrong } = await open(file, { live: head !== 'scalp' });
    await tab.click('[data-do="front"]');
    await tab.waitForTimeout(300);
    await tab.screenshot({ path: join(pictures, `scan-${head}.png`) });
    expect(wrong.length === 0, `a scan, ${head}: nothing goes wrong`, wrong.join('; '));
    await context.close();
  }
}

{
  const label = `</script><script>document.title='taken'</script><b>Code & "7"</b>`;
  const { tab, context, wrong } = await open(page('hostile', { ...bench(), label }));
  expect((await tab.locator('h1').innerText()) === label, 'a label with HTML in it stays text');
  expect((await tab.title()) !== 'taken' && (await tab.locator('h1 b').count()) === 0 && wrong.length === 0, 'and does nothing', wrong.join());
  await context.close();
}

{
  const { tab, context } = await open(technician, { javaScriptEnabled: false, live: false });
  expect(await tab.locator('#too-old').isVisible(), 'where no script runs, it says so');
  expect((await text(tab, '#find-again')).includes((data.find_again[0].mm / 10).toFixed(1)), 'and the numbers stand there');
  await context.close();
}

await browser.close();
end();
