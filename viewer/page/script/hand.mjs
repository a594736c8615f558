// Mouse, touch and keys on the picture: one finger turns the head, or moves the coil where it begins on it; two fingers
// bring it nearer, shift it, and turn the coil where both begin on it; the wheel brings it nearer, with Shift it turns the coil.
import { onCasing } from './coil_body.mjs';
import { dot, minus } from './vectors.mjs';

const KEY_DEG = 5, WHEEL_NEARER = 1.0015, COIL_WHEEL_DEG = 0.05;

export class Hand {
  /// `coil`: what moves it, or null.
  constructor(stage, box, coil) {
    Object.assign(this, { stage, box, coil, fingers: new Map(), holdsCoil: false });
    box.addEventListener('pointerdown', (event) => this.down(event));
    box.addEventListener('pointermove', (event) => this.move(event));
    for (const end of ['pointerup', 'pointercancel']) box.addEventListener(end, (event) => this.up(event));
    box.addEventListener('wheel', (event) => this.wheel(event), { passive: false });
    box.addEventListener('keydown', (event) => this.key(event));
    box.addEventListener('contextmenu', (event) => event.preventDefault());
  }

  at(event) {
    const { left, top } = this.box.getBoundingClientRect();
    return [event.clientX - left, event.clientY - top];
  }

  /// Whether the coil's casing is what is seen there.
  onCoil([x, y]) {
    const { frame, sight, data } = this.stage;
    if (!this.coil?.ready || !frame || dot(frame.normal, sight.towardEye) < 0.15) return false;
    // Where the ray from the eye meets the coil's face.
    const from = sight.above(x, y), way = sight.towardEye;
    const t = dot(minus(from, frame.origin), frame.normal) / dot(way, frame.normal);
    const on = minus(minus(from, frame.origin), way.map((v) => v * t));
    return onCasing(data.coil, dot(on, frame.right), dot(on, frame.front));
  }

  down(event) {
    if (event.button > 0 && event.pointerType === 'mouse') return;
    this.box.setPointerCapture(event.pointerId);
    const at = this.at(event);
    this.fingers.set(event.pointerId, at);
    if (this.fingers.size === 1) {
      this.holdsCoil = this.onCoil(at);
      if (this.holdsCoil) {
        // The coil does not jump under the finger that takes it.
        const centre = this.stage.sight.project(this.coil.pulse());
        this.grip = [at[0] - centre[0], at[1] - centre[1]];
      }
    }
  }

  move(event) {
    const before = this.fingers.get(event.pointerId);
    const at = this.at(event);
    if (!before) {
      this.box.style.cursor = this.onCoil(at) ? 'move' : 'grab';
      return;
    }
    const { sight } = this.stage;
    if (this.fingers.size === 2) {
      const other = [...this.fingers].find(([id]) => id !== event.pointerId)[1];
      const way = (p) => [p[0] - other[0], p[1] - other[1]];
      const [a, b] = [way(before), way(at)];
      const turn = Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]);
      if (this.holdsCoil) {
        const seenFromAbove = dot(this.stage.frame.normal, sight.towardEye) > 0 ? 1 : -1;
        this.coil.turnOnScreen((turn * 180) / Math.PI * seenFromAbove);
      } else {
        sight.nearer(Math.hypot(...b) / Math.max(1, Math.hypot(...a)));
        sight.shift((at[0] - before[0]) / 2, (at[1] - before[1]) / 2);
      }
    } else if (this.holdsCoil) {
      this.coil.moveTo(sight.above(at[0] - this.grip[0], at[1] - this.grip[1]), sight.towardEye);
    } else if (event.shiftKey) {
      sight.shift(at[0] - before[0], at[1] - before[1]);
    } else {
      sight.turn(at[0] - before[0], at[1] - before[1]);
    }
    this.fingers.set(event.pointerId, at);
    this.stage.redraw();
  }

  up(event) {
    if (!this.fingers.delete(event.pointerId)) return;
    if (this.fingers.size > 0) return;
    if (this.holdsCoil) this.coil.rest();
    this.holdsCoil = false;
  }

  wheel(event) {
    event.preventDefault();
    const turns = event.shiftKey ? event.deltaY || event.deltaX : 0;
    if (turns && this.coil?.ready) this.coil.turn(turns * COIL_WHEEL_DEG);
    else this.stage.sight.nearer(WHEEL_NEARER ** -event.deltaY);
    this.stage.redraw();
  }

  key(event) {
    const { sight } = this.stage, { coil } = this;
    const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
    const arrow = arrows[event.key];
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (arrow && event.shiftKey) coil?.nudgeOnScreen(arrow[0], -arrow[1]);
    else if (arrow) sight.turn(-arrow[0] * KEY_DEG, -arrow[1] * KEY_DEG, 1);
    else if (event.key === '+' || event.key === '=') sight.nearer(1.1);
    else if (event.key === '-') sight.nearer(1 / 1.1);
    else if (event.key === 'PageUp') coil?.turn(1);
    else if (event.key === 'PageDown') coil?.turn(-1);
    else if (event.key === 'Escape') coil?.putBack();
    else return;
    event.preventDefault();
    this.stage.redraw();
  }
}
