// The coil in the hand: moved, turned, put back, with numbers from the kernel at every step and tape distances from the
// worker once it rests.
import { data } from './bytes.mjs';
import { coilAngle, element, filled, smallLength, tapeLength, tapeNumber, word } from './say.mjs';
import { cross, dot, times } from './vectors.mjs';

const REST_MS = 250, POINTS = ['vertex', 'nasion', 'left_tragus', 'right_tragus'];

export class Coil {
  constructor(stage) {
    this.stage = stage;
    this.ready = false;
    this.inHand = null; // where it lies: the kernel's answer
    this.live = document.getElementById('live');
    this.angleInput = document.getElementById('angle');
    this.angleSaid = document.getElementById('angle-said');
    this.angleDeg = data.site.angle;
    this.angleInput?.addEventListener('input', () => this.turnTo(Number(this.angleInput.value)));
    this.showAngle();
  }

  /// `kernel` answers at once, `helper` with tape distances when it can.
  start(kernel, helper) {
    [this.kernel, this.helper, this.ready] = [kernel, helper, true];
    this.say();
  }

  pulse() {
    return this.inHand ? this.inHand.placement.pulse : this.startingPlace();
  }
  /// Where the coil of the scene lies, on the skin or a lift over it.
  startingPlace() {
    return this.stage.frame ? this.stage.frame.origin : data.site.wanted;
  }

  place(where) {
    if (!this.ready || !this.stage.shown?.frame) return;
    let answer;
    try {
      answer = this.kernel.ask({ ask: 'place', angle_deg: this.angleDeg, ...where }).place;
    } catch {
      this.say(word.off_the_head);
      return;
    }
    if (!answer) return;
    this.inHand = answer;
    this.tapes = null;
    this.stage.setFrame(answer.frame);
    this.stage.inHand = this.named(answer);
    this.stage.redraw();
    this.say();
    this.showAngle();
    this.onPlaced?.(answer);
    clearTimeout(this.resting);
    this.resting = setTimeout(() => this.rest(), REST_MS);
  }

  moveTo(from, towardEye) {
    this.place({ from, way: times(towardEye, -1) });
  }
  nudge(forward, outward) {
    this.place({ at: this.pulse(), nudge: [forward, outward] });
  }
  /// By a millimetre to where the arrow points on the screen.
  nudgeOnScreen(x, y) {
    const { frame, sight } = this.stage;
    if (!frame || !this.ready) return;
    const { forward, outward } = this.directions();
    const way = sight.right.map((r, i) => x * r + y * sight.up[i]);
    const [f, o] = [dot(way, forward), dot(way, outward)], all = Math.hypot(f, o) || 1;
    this.nudge(f / all, o / all);
  }
  /// Forward and away from the midline in the coil's face, from its front axis and angle.
  directions() {
    const { front, normal } = this.stage.frame, { right: headRight, middle } = data.head;
    const a = (this.angleDeg * Math.PI) / 180, side = cross(normal, front);
    const onRight = dot(this.pulse().map((v, i) => v - middle[i]), headRight) > 0;
    // The front axis is turned toward the midline: back by the angle is forward.
    const to = onRight ? -1 : 1;
    const forward = front.map((f, i) => Math.cos(a) * f + to * Math.sin(a) * side[i]);
    return { forward, outward: times(cross(normal, forward), to) };
  }
  turn(byDeg) {
    this.turnTo(this.angleDeg + byDeg);
  }
  turnTo(deg) {
    this.angleDeg = ((((deg + 180) % 360) + 360) % 360) - 180;
    this.place({ at: this.pulse() });
  }
  /// Turned by a twist of two fingers, counted as the screen's angles are.
  turnOnScreen(deg) {
    const onRight = dot(this.pulse().map((v, i) => v - data.head.middle[i]), data.head.right) > 0;
    this.turn(onRight ? -deg : deg);
  }

  putBack() {
    if (!this.inHand) return;
    clearTimeout(this.resting);
    this.inHand = null;
    this.angleDeg = data.site.angle;
    this.stage.show(this.stage.shown);
    this.showAngle();
    this.say(word.put_back);
    this.onPlaced?.(null);
  }

  /// The hand holds still: tape distances are asked for.
  async rest() {
    clearTimeout(this.resting);
    const asked = this.inHand;
    if (!asked || this.tapes || !this.helper) return;
    try {
      const { place } = await this.helper.ask({ ask: 'place', at: asked.placement.pulse, angle_deg: this.angleDeg });
      if (this.inHand !== asked) return;
      this.tapes = place.placement.tape_from_mm;
      this.say();
    } catch {
      // The numbers that need no tape stand there all the same.
    }
  }

  /// The part in the hand with its names, as things/edge_marks has them.
  named(answer) {
    const part = answer.part;
    for (const mark of part.marks) {
      if (mark.name !== data.laid_by) continue;
      const gap = filled(word.edge_mark, this.gap(answer, mark.name));
      mark.label = { text: gap, clear: 7, priority: 109, far: true, colour: '#18181c', bold: true, size: 14 };
    }
    return part;
  }
  gap({ placement }, rule) {
    const at = placement.edge_mark[rule];
    return at ? smallLength(Math.hypot(...at.map((v, i) => v - placement.edge[i]))) : word.none;
  }

  showAngle() {
    if (!this.angleInput) return;
    this.angleInput.value = String(Math.round(this.angleDeg));
    this.angleSaid.textContent = coilAngle(this.angleDeg);
    this.angleInput.setAttribute('aria-valuetext', coilAngle(this.angleDeg));
  }

  where({ from_site: { tape_mm: far, forward_mm: forward, inward_mm: inward } }) {
    const said = [filled(word.from_the_site, tapeLength(far))];
    if (Math.abs(forward) >= 0.5) said.push(filled(forward > 0 ? word.forward : word.backward, tapeLength(Math.abs(forward))));
    if (Math.abs(inward) >= 0.5) said.push(filled(inward > 0 ? word.inward : word.outward, tapeLength(Math.abs(inward))));
    return said.join(', ');
  }

  say(sentence = '') {
    const headline = document.getElementById('headline');
    headline.hidden = !this.inHand;
    headline.textContent = this.inHand ? word.in_hand : '';
    if (!this.live) return;
    this.live.replaceChildren();
    const row = (name, value) => {
      const pair = element('div');
      pair.append(element('dt', name), element('dd', value));
      this.live.append(pair);
    };
    if (!this.inHand) {
      if (sentence || !this.ready) this.live.append(element('dd', sentence || word.getting_ready));
      return;
    }
    this.live.append(element('dd', sentence || this.where(this.inHand)));
    for (const rule of ['tape', 'drop', 'nearest'])
      row(word[rule], filled(word.gap, this.gap(this.inHand, rule)));
    this.sayTapes();
  }

  sayTapes() {
    if (!this.tapes) {
      this.live.append(element('dd', word.tapes_coming, 'quiet'));
      return;
    }
    const table = element('table', '', 'tapes'), heading = element('tr');
    heading.append(element('th', word.tape_from), element('td', word.pulse), element('td', word.edge_mark_in_short));
    table.append(heading);
    for (const point of POINTS) {
      const line = element('tr');
      line.append(element('th', word[point]));
      for (const mark of ['pulse', 'edge_mark'])
        line.append(element('td', this.tapes[mark] ? tapeNumber(this.tapes[mark][point]) : word.none));
      table.append(line);
    }
    const place = element('dd');
    place.append(table);
    this.live.append(place);
  }
}
