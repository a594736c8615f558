// What each shape on the head means.
import { element } from './say.mjs';

const SVG = 'http://www.w3.org/2000/svg';

function sample(row, shapes) {
  const picture = document.createElementNS(SVG, 'svg');
  picture.setAttribute('viewBox', '-15 -15 30 30');
  picture.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS(SVG, 'path');
  if (row.sample === 'shape') {
    const flat = shapes[row.shape].triangles, pieces = [];
    for (let i = 0; i + 5 < flat.length; i += 6)
      pieces.push(`M${flat[i]} ${-flat[i + 1]}L${flat[i + 2]} ${-flat[i + 3]}L${flat[i + 4]} ${-flat[i + 5]}Z`);
    path.setAttribute('d', pieces.join(''));
  } else if (row.sample === 'line') {
    path.setAttribute('d', 'M-13 -1H13V1H-13Z');
  } else {
    path.setAttribute('d', 'M-13 -8H13V8H-13Z');
    path.setAttribute('fill-opacity', '0.5');
  }
  path.setAttribute('fill', row.colour);
  picture.append(path);
  return picture;
}

export function showLegend(list, rows, shapes) {
  if (!list) return;
  list.replaceChildren(...rows.map((row) => {
    const line = element('li');
    line.append(sample(row, shapes), element('span', row.text));
    return line;
  }));
  for (const heading of document.querySelectorAll('.of-legend')) heading.hidden = rows.length === 0;
}
