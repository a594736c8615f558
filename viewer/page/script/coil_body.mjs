// The coil's casing and windings in its own frame, as the stage draws them (drawing/coil_drawing).
import { BufferAttribute, BufferGeometry, ShapeUtils, Vector2 } from 'three';
import { plus } from './vectors.mjs';

/// A place of a bent part, given as drawn flat (geometry/coil/coil.h).
function bent(x, y, z, bendDeg) {
  const a = (bendDeg * Math.PI) / 180, c = Math.cos(a), s = Math.sin(a);
  return [c * x + s * z, y, c * z - s * x];
}

/// The casing's corners where the coil lies.
export function corners(coil, { right, front, normal, origin }) {
  return coil.parts.flatMap((part) =>
    [part.bottom, part.top].flatMap((z) =>
      part.outline.map(([x, y]) => {
        const [a, b, c] = bent(x, y, z, part.bend);
        return plus(plus(plus(origin, right, a), front, b), normal, c);
      })));
}

function geometry(triangles) {
  const made = new BufferGeometry();
  made.setAttribute('position', new BufferAttribute(new Float32Array(triangles.flat(2)), 3));
  made.computeVertexNormals(); // corners are not shared: flat faces
  return made;
}

export function casing(coil) {
  const triangles = [];
  for (const part of coil.parts) {
    const rim = (z) => part.outline.map(([x, y]) => bent(x, y, z, part.bend));
    const low = rim(part.bottom), high = rim(part.top), n = low.length;
    const flat = part.outline.map(([x, y]) => new Vector2(x, y));
    for (const [a, b, c] of ShapeUtils.triangulateShape(flat, []))
      triangles.push([high[a], high[b], high[c]], [low[a], low[c], low[b]]);
    for (let i = 0; i < n; ++i) {
      const j = (i + 1) % n;
      triangles.push([low[i], low[j], high[j]], [low[i], high[j], high[i]]);
    }
  }
  return geometry(triangles);
}

export function windings(coil) {
  const CORNERS = 72, triangles = [];
  for (const winding of coil.windings) {
    const turns = Math.max(1, winding.turns), pitch = (winding.outer - winding.inner) / 2 / turns;
    for (let turn = 0; turn < turns; ++turn) {
      const inner = winding.inner / 2 + (turn + 0.15) * pitch, outer = inner + 0.7 * pitch;
      const at = (i, radius) => {
        const a = (2 * Math.PI * i) / CORNERS;
        return bent(winding.centre[0] + radius * Math.cos(a), winding.centre[1] + radius * Math.sin(a),
          winding.height, winding.bend);
      };
      for (let i = 0; i < CORNERS; ++i)
        triangles.push([at(i, inner), at(i, outer), at(i + 1, outer)], [at(i, inner), at(i + 1, outer), at(i + 1, inner)]);
    }
  }
  return geometry(triangles);
}

/// Whether a place in the coil's frame, looked at from above, lies on a part of the casing.
export function onCasing(coil, x, y) {
  return coil.parts.some(({ outline }) => {
    let inside = false;
    for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
      const [ax, ay] = outline[i], [bx, by] = outline[j];
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    }
    return inside;
  });
}
