// How the head is seen: parallel projection (stage/scene/sight.h), turned, brought nearer and shifted.
import { cross, dot, minus, plus, turned, unit } from './vectors.mjs';

/// Of a picture 800 high: sizes of marks and letters are given in its pixels.
const PICTURE_PX = 800, LEAST_SCALE = 0.75, MOST_SCALE = 1.3;
const OVER_MM = 25, RIM_MM = 8, LEAST_ACROSS_MM = 40, MOST_ACROSS_MM = 700;

export class Sight {
  constructor(head) {
    this.head = head;
    this.width = this.height = 1;
    this.towardEye = head.front;
    this.up = head.up;
    this.focus = head.middle;
    this.acrossMm = head.reach;
  }

  /// The way a scene wants to be seen; where it does not say how near, the whole head and all of `places` (the coil).
  look(scene, places = []) {
    this.towardEye = unit(scene.toward_eye);
    this.up = unit(minus(scene.up, plus([0, 0, 0], this.towardEye, dot(scene.up, this.towardEye))));
    // The coil stands over the head, so more room is left above it than below.
    this.focus = scene.focus ?? plus(this.head.middle, this.head.up, OVER_MM);
    this.acrossMm = scene.across ?? this.head.reach * 0.9;
    if (scene.across === undefined && places.length > 0) this.makeRoom(places);
  }

  /// Further off and to the side as far as it takes until all of these are seen.
  makeRoom(places) {
    const half = [(this.width * this.mmPerPx) / 2, (this.height * this.mmPerPx) / 2], axes = [this.right, this.up];
    let wider = 1;
    const aside = axes.map((axis, i) => {
      const at = places.map((place) => dot(minus(place, this.focus), axis));
      const low = Math.min(-half[i], Math.min(...at) - RIM_MM), high = Math.max(half[i], Math.max(...at) + RIM_MM);
      wider = Math.max(wider, (high - low) / (2 * half[i]));
      return (low + high) / 2;
    });
    axes.forEach((axis, i) => (this.focus = plus(this.focus, axis, aside[i])));
    this.acrossMm *= wider;
  }

  get right() {
    return cross(this.up, this.towardEye);
  }
  /// So much of the shorter side of the picture is across.
  get mmPerPx() {
    return this.acrossMm / Math.min(this.width, this.height);
  }
  get scale() {
    return Math.min(MOST_SCALE, Math.max(LEAST_SCALE, Math.min(this.width, this.height) / PICTURE_PX));
  }
  /// Millimetres of so many pixels of a picture 800 high.
  mm(px) {
    return px * this.scale * this.mmPerPx;
  }
  project(p) {
    const from = minus(p, this.focus);
    return [this.width / 2 + dot(from, this.right) / this.mmPerPx, this.height / 2 - dot(from, this.up) / this.mmPerPx];
  }
  /// A place far toward the eye over a pixel, whose ray goes back along towardEye.
  above(x, y) {
    const aside = plus(this.focus, this.right, (x - this.width / 2) * this.mmPerPx);
    return plus(plus(aside, this.up, (this.height / 2 - y) * this.mmPerPx), this.towardEye, 1000);
  }

  /// Turns the head under the eye: about its own upright axis, and about the picture's.
  turn(dx, dy, degreesPerPx = 0.4) {
    const radians = (degreesPerPx * Math.PI) / 180;
    const upright = dot(this.up, this.head.up) < -0.05 ? -1 : 1;
    this.rotate(this.head.up, -dx * radians * upright);
    this.rotate(this.right, -dy * radians);
  }
  rotate(axis, radians) {
    this.towardEye = unit(turned(this.towardEye, axis, radians));
    this.up = turned(this.up, axis, radians);
    this.up = unit(minus(this.up, plus([0, 0, 0], this.towardEye, dot(this.up, this.towardEye))));
    // The head turns about its own middle, wherever one looks.
    const from = minus(this.focus, this.head.middle);
    this.focus = plus(this.head.middle, turned(from, axis, radians));
  }
  nearer(by) {
    this.acrossMm = Math.min(MOST_ACROSS_MM, Math.max(LEAST_ACROSS_MM, this.acrossMm / by));
  }
  shift(dx, dy) {
    this.focus = plus(plus(this.focus, this.right, -dx * this.mmPerPx), this.up, dy * this.mmPerPx);
  }
}
