// The three rules, seen from beside the coil (window/steps/rules_picture), as SVG.
import { data } from './bytes.mjs';
import { filled, smallLength, word } from './say.mjs';

const SVG = 'http://www.w3.org/2000/svg', FROM = -62, TO = 118, BELOW = 52, ABOVE = 26, COIL_MM = 9;
const INK = '#46464e', EDGE = '#d55e00', TEXT = '#18181c', SKIN = '#dbcfc4', PULSE = '#0072b2', CASING = '#607080';

function shape(tag, attributes, text = '') {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  if (text) made.textContent = text;
  return made;
}

const far = (a, b) => Math.hypot(a[0] - b[0], a[1] - b[1]);

function rule(picture, side, name, chosen) {
  const mark = side.marks[name];
  if (!mark) return;
  const colour = chosen ? EDGE : INK, width = chosen ? 1.2 : 0.7;
  if (name === 'tape') {
    const along = [];
    for (let i = 0; i + 1 < side.skin.length; i += 2)
      if (side.skin[i] >= 0 && side.skin[i] <= mark[0]) along.push(`${side.skin[i]},${1.2 - side.skin[i + 1]}`);
    if (along.length > 1) picture.append(shape('polyline', { points: along.map((p) => p).join(' '), fill: 'none', stroke: colour,
      'stroke-width': width, transform: 'translate(0,-2.4)' }));
  } else {
    picture.append(shape('line', { x1: side.edge[0], y1: -side.edge[1], x2: mark[0], y2: -mark[1], stroke: colour,
      'stroke-width': width, 'stroke-dasharray': name === 'drop' ? '3 2' : '0.8 1.6' }));
  }
  picture.append(shape('line', { x1: mark[0], y1: -mark[1] - 2.4, x2: mark[0], y2: -mark[1] + 2.4, stroke: colour,
    'stroke-width': chosen ? 2.2 : 1.4 }));
  const row = { nearest: 1, tape: 2.1, drop: 3.2 }[name], y = -mark[1] + row * 6.5 + 2;
  picture.append(shape('line', { x1: mark[0] - 6, y1: y - 1.8, x2: mark[0], y2: -mark[1] + 3, stroke: INK, 'stroke-width': 0.4 }));
  picture.append(shape('text', { x: mark[0] - 7, y, 'text-anchor': 'end', fill: TEXT, 'font-weight': chosen ? 700 : 400 }, word[name]));
}

export function showRules(figure, side) {
  if (!figure) return;
  figure.replaceChildren();
  if (!side) return;
  const picture = shape('svg', { viewBox: `${FROM} ${-ABOVE} ${TO - FROM} ${ABOVE + BELOW}`, role: 'img', 'font-size': 6.2 });
  const points = [];
  for (let i = 0; i + 1 < side.skin.length; i += 2) points.push(`${side.skin[i]},${-side.skin[i + 1]}`);
  const last = side.skin[side.skin.length - 2];
  picture.append(shape('polygon', { points: `${points.join(' ')} ${last},200 ${side.skin[0]},200`, fill: SKIN }));
  picture.append(shape('polyline', { points: points.join(' '), fill: 'none', stroke: INK, 'stroke-width': 0.8 }));
  picture.append(shape('rect', { x: side.back, y: -side.face - COIL_MM, width: side.edge[0] - side.back, height: COIL_MM,
    fill: CASING, 'fill-opacity': 0.35, stroke: CASING, 'stroke-width': 0.8 }));
  picture.append(shape('text', { x: (Math.max(FROM, side.back) + side.edge[0]) / 2, y: -side.face - 2.4, 'text-anchor': 'middle', fill: TEXT }, word.coil));
  picture.append(shape('circle', { cx: 0, cy: 0, r: 2, fill: PULSE }));
  picture.append(shape('text', { x: 0, y: 10, 'text-anchor': 'middle', fill: TEXT }, word.pulse));
  const order = ['tape', 'drop', 'nearest'].sort((a, b) => (a === data.laid_by) - (b === data.laid_by));
  for (const name of order) rule(picture, side, name, name === data.laid_by);
  const chosen = side.marks[data.laid_by];
  if (chosen)
    picture.append(shape('text', { x: (chosen[0] + side.edge[0]) / 2 + 4, y: -(chosen[1] + side.edge[1]) / 2, fill: TEXT },
      filled(word.gap, smallLength(far(chosen, side.edge)))));
  const said = order.filter((name) => side.marks[name])
    .map((name) => filled(word.rule_gap, word[name], smallLength(far(side.marks[name], side.edge)))).join('; ');
  picture.setAttribute('aria-label', said);
  figure.append(picture);
}
