// A page: what it carries is unpacked, drawn, and brought to life as far as its face goes.
import { data, has, surface, unpacked } from './bytes.mjs';
import { Check } from './check.mjs';
import { Coil } from './coil.mjs';
import { Hand } from './hand.mjs';
import { Helper } from './helper.mjs';
import { openKernel } from './kernel.mjs';
import { NextMark } from './next_mark.mjs';
import { showRules } from './rules.mjs';
import { element, filled, message, word } from './say.mjs';
import { Stage } from './stage.mjs';
import { Steps } from './steps.mjs';
import { dot, times } from './vectors.mjs';

const byId = (id) => document.getElementById(id);
const live = data.face !== 'patient' && has('kernel');

/// "from the front and the patient's left" (stage/scene/camera).
function wayOfLooking(towardEye) {
  const { right, front, up } = data.head, names = [];
  const add = (way, positive, negative) => {
    const share = dot(towardEye, way);
    if (Math.abs(share) >= 0.35) names.push(share > 0 ? positive : negative);
  };
  add(up, word.above, word.below);
  add(front, word.the_front, word.the_back);
  add(right, word.the_right, word.the_left);
  return filled([word.from, word.from_two, word.from_three][names.length - 1] ?? '', ...names);
}

function lookFrom(stage, name) {
  const { right, front, up } = data.head;
  const views = { left: [times(right, -1), up], right: [right, up], front: [front, up], back: [times(front, -1), up],
    above: [up, front] };
  const [toward_eye, upright] = views[name];
  stage.look({ toward_eye, up: upright, frame: stage.frame });
  stage.redraw();
}

function bindButtons(parts) {
  const { stage, steps, coil, check, next } = parts;
  const does = {
    'nearer': () => stage.sight.nearer(1.2), 'further': () => stage.sight.nearer(1 / 1.2),
    'as-first': () => stage.look(stage.shown),
    'step-back': () => steps.go(steps.at - 1), 'step-on': () => steps.go(steps.at + 1),
    'coil-forward': () => coil.nudge(1, 0), 'coil-backward': () => coil.nudge(-1, 0),
    'coil-outward': () => coil.nudge(0, 1), 'coil-inward': () => coil.nudge(0, -1), 'put-back': () => coil.putBack(),
    'numbers': () => next.open(), 'next-on': () => next.go(next.at + 1), 'next-back': () => next.go(next.at - 1),
    'next-done': () => next.close(), 'check': () => check.begin(),
  };
  for (const name of ['left', 'right', 'front', 'back', 'above']) does[name] = () => lookFrom(stage, name);
  document.addEventListener('click', (event) => {
    const button = event.target.closest?.('[data-do]');
    if (!button) return;
    does[button.dataset.do]?.();
    stage.redraw();
  });
}

/// What WebGL drew is gone on paper: a copy goes there.
function bindPrint(stage) {
  addEventListener('beforeprint', () => stage.copyOnto(byId('printed')));
}

async function bringToLife({ stage, coil, check }, skin) {
  const module = await WebAssembly.compile(await unpacked('kernel'));
  const given = data.generic ? null : skin;
  const kernel = await openKernel(module, data.case, given);
  stage.hidden = (things, towardEye) =>
    kernel.ask({ ask: 'in_sight', toward_eye: towardEye, points: things.flatMap(({ at, normal }) => [...at, ...normal]) }).in_sight;
  const helper = new Helper(module, data.case, given);
  coil.start(kernel, helper);
  check?.start(helper);
  stage.redraw();
  // Worked out while nobody waits for them.
  helper.fields().catch(() => {});
}

async function begin() {
  const box = byId('stage');
  const bodies = Promise.all(['skin', 'brain', 'light'].map((id) => (has(id) ? unpacked(id) : null)));
  let stage;
  try {
    stage = new Stage(data, byId('picture'), byId('names'));
  } catch {
    byId('too-old').textContent = word.no_drawing;
    return;
  }
  const steps = new Steps(stage), next = new NextMark();
  const coil = live ? new Coil(stage) : null, check = data.face === 'technician' && live ? new Check(stage) : null;
  new Hand(stage, box, coil);
  bindButtons({ stage, steps, coil, check, next });
  bindPrint(stage);
  stage.afterDraw = () => {
    const asides = stage.asides.length ? ` (${stage.asides.join('; ')})` : '';
    byId('way').textContent = wayOfLooking(stage.sight.towardEye) + asides;
  };
  const rules = byId('rules');
  showRules(rules, data.side);
  if (coil) coil.onPlaced = (placed) => showRules(rules, placed ? placed.side : data.side);
  if (coil)
    steps.onGo = () => {
      coil.putBack();
      // Where no coil lies, there is none to move.
      byId('move-coil').hidden = !stage.shown.frame;
    };
  const [skin, brain, light] = await bodies;
  stage.setBodies(surface(skin), brain && surface(brain), light);
  byId('too-old').remove();
  new ResizeObserver(() => stage.resize()).observe(box);
  stage.resize();
  steps.go(0);
  requestAnimationFrame(() => document.body.setAttribute('data-drawn', ''));
  if (!live) return;
  try {
    await bringToLife({ stage, coil, check }, skin);
    document.body.setAttribute('data-live', '');
  } catch (error) {
    const said = filled(word.no_kernel, error.said ? message(error.said) : error.message);
    byId('move-coil')?.replaceChildren(element('p', said));
    byId('check')?.remove();
  }
}

begin();
