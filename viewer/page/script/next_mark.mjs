// The lengths that find the marks again, one at a time in figures that are read from across the room.
import { data } from './bytes.mjs';
import { filled, tapeLength, word } from './say.mjs';

export class NextMark {
  constructor() {
    this.box = document.getElementById('next-mark');
    this.box?.addEventListener('keydown', (event) => this.key(event));
  }

  open() {
    this.before = document.activeElement;
    this.box.hidden = false;
    this.go(0);
    this.box.querySelector('[data-do="next-on"]').focus();
  }
  close() {
    this.box.hidden = true;
    this.before?.focus();
  }
  go(index) {
    const tapes = data.find_again;
    if (index < 0 || index >= tapes.length) return;
    this.at = index;
    const { mark, from, mm } = tapes[index];
    document.getElementById('next-what').textContent = filled(word.next_of, mark, from);
    document.getElementById('next-number').textContent = tapeLength(mm);
    document.getElementById('next-progress').textContent = filled(word.page_of, index + 1, tapes.length);
    this.box.querySelector('[data-do="next-back"]').disabled = index === 0;
    const on = this.box.querySelector('[data-do="next-on"]'), done = this.box.querySelector('[data-do="next-done"]');
    if (index + 1 === tapes.length && document.activeElement === on) done.focus();
    on.disabled = index + 1 === tapes.length;
  }
  key(event) {
    if (event.key === 'Escape') this.close();
    else if (['PageDown', 'ArrowRight'].includes(event.key)) this.go(this.at + 1);
    else if (['PageUp', 'ArrowLeft'].includes(event.key)) this.go(this.at - 1);
    else if (event.key === 'Tab') this.keepFocus(event);
    else return;
    event.preventDefault();
  }
  /// Focus stays in the box while it is open.
  keepFocus(event) {
    const buttons = [...this.box.querySelectorAll('button:not(:disabled)')];
    const next = buttons.indexOf(document.activeElement) + (event.shiftKey ? -1 : 1);
    buttons[(next + buttons.length) % buttons.length].focus();
  }
}
