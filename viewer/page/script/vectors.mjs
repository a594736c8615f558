// Places and directions: three numbers each, mm.

export const plus = (a, b, by = 1) => [a[0] + by * b[0], a[1] + by * b[1], a[2] + by * b[2]];
export const minus = (a, b) => plus(a, b, -1);
export const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const times = (a, by) => [by * a[0], by * a[1], by * a[2]];
export const cross = (a, b) => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a) => Math.sqrt(dot(a, a));
export const unit = (a) => times(a, 1 / (length(a) || 1));

/// `a` turned about the unit vector `axis` (Rodrigues).
export function turned(a, axis, radians) {
  const c = Math.cos(radians), s = Math.sin(radians);
  return plus(plus(times(a, c), cross(axis, a), s), axis, dot(axis, a) * (1 - c));
}

/// A number of places, written one after the other.
export function places(flat) {
  const all = [];
  for (let i = 0; i + 2 < flat.length; i += 3) all.push([flat[i], flat[i + 1], flat[i + 2]]);
  return all;
}
