// Marks, lines and spots as triangles, a new set for each picture, by the rules of the stage (drawing/ink): even width
// on screen, lifted toward the eye so that the skin does not swallow them, hidden where the head is before them.
import { cross, dot, length, minus, plus, places, times, unit } from './vectors.mjs';

const MARK_LIFT_MM = 3, LAYER_LIFT_MM = 0.6, HALO_BELOW_MM = 0.3;
const BAR = 5, FLATTEST = 0.5, TICK_PX = 1.3, DASH_PX = 5, SPOT_CORNERS = 20;

export function rgb(hex) {
  return [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16) / 255);
}

export class Ink {
  constructor(shapes, halo) {
    this.shapes = shapes;
    this.halo = rgb(halo);
    this.clear();
  }

  clear() {
    this.at = [];
    this.colours = [];
  }

  triangle(a, b, c, colour) {
    this.at.push(...a, ...b, ...c);
    this.colours.push(...colour, ...colour, ...colour);
  }

  mark(mark, sight) {
    const shape = this.shapes[mark.shape], eye = sight.towardEye, facing = dot(mark.normal, eye);
    let normal = mark.normal;
    if (shape.upright) {
      normal = eye;
    } else if (facing < FLATTEST) {
      // The shape's plane is tilted toward the eye where the skin is seen from the side.
      const aside = plus(normal, eye, -facing);
      normal = length(aside) > 1e-9
        ? plus(times(eye, FLATTEST), aside, Math.sqrt(1 - FLATTEST * FLATTEST) / length(aside))
        : eye;
    }
    let x = shape.upright ? sight.right : plus(mark.along, normal, -dot(mark.along, normal));
    if (length(x) < 1e-6) x = cross(normal, Math.abs(normal[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]);
    x = unit(x);
    const y = cross(normal, x);
    const tiltedUp = sight.mm(this.shapes[BAR].reach) * Math.min(1, Math.max(0, 1 - facing));
    const liftMm = MARK_LIFT_MM + LAYER_LIFT_MM * mark.layer + tiltedUp;
    const draw = (flat, colour, lift) => {
      const at = plus(mark.at, eye, lift);
      const corner = (i) => plus(plus(at, x, sight.mm(flat[i])), y, sight.mm(flat[i + 1]));
      for (let i = 0; i + 5 < flat.length; i += 6) this.triangle(corner(i), corner(i + 2), corner(i + 4), colour);
    };
    draw(shape.halo, this.halo, liftMm - HALO_BELOW_MM);
    draw(shape.triangles, rgb(mark.colour), liftMm);
  }

  strip(points, px, colour, liftMm, sight) {
    if (points.length < 2) return;
    const half = 0.5 * sight.mm(px), eye = sight.towardEye, lift = times(eye, liftMm);
    let last = sight.right;
    const across = points.map((p, i) => {
      const way = minus(points[Math.min(i + 1, points.length - 1)], points[Math.max(i - 1, 0)]);
      const flat = plus(way, eye, -dot(way, eye));
      if (length(flat) > 1e-9) last = unit(cross(eye, flat));
      return times(last, half);
    });
    for (let i = 1; i < points.length; ++i) {
      const a = plus(points[i - 1], lift), b = plus(points[i], lift);
      this.triangle(minus(a, across[i - 1]), minus(b, across[i]), plus(b, across[i]), colour);
      this.triangle(minus(a, across[i - 1]), plus(b, across[i]), plus(a, across[i - 1]), colour);
    }
  }

  line(line, sight) {
    line.places ??= places(line.points);
    const colour = rgb(line.colour);
    if (line.dashed) this.dashes(line.places, line.px, colour, line.lift, sight);
    else this.strip(line.places, line.px, colour, line.lift, sight);
  }

  dashes(points, px, colour, liftMm, sight) {
    const from = points[0], way = minus(points[points.length - 1], from);
    const seen = length(plus(way, sight.towardEye, -dot(way, sight.towardEye)));
    const pieces = Math.min(400, Math.max(1, Math.floor(seen / sight.mm(DASH_PX)))) | 1;
    for (let i = 0; i < pieces; i += 2)
      this.strip([plus(from, way, i / pieces), plus(from, way, (i + 1) / pieces)], px, colour, liftMm, sight);
  }

  tick(tick, line, sight) {
    const half = sight.mm(tick.half);
    this.strip([plus(tick.at, tick.across, -half), plus(tick.at, tick.across, half)], TICK_PX, rgb(line.colour),
      line.lift, sight);
  }

  spot(spot, sight) {
    const r = sight.mm(spot.px), centre = plus(spot.at, sight.towardEye, spot.lift), colour = rgb(spot.colour);
    const rim = (i) => {
      const a = (2 * Math.PI * i) / SPOT_CORNERS;
      return plus(plus(centre, sight.right, r * Math.cos(a)), sight.up, r * Math.sin(a));
    };
    for (let i = 0; i < SPOT_CORNERS; ++i) this.triangle(centre, rim(i), rim(i + 1), colour);
  }
}
