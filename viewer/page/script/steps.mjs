// What is looked at: a technician's views, a lesson's steps, a patient's pages. One at a time.
import { data } from './bytes.mjs';
import { showLegend } from './legend.mjs';

export class Steps {
  constructor(stage) {
    this.stage = stage;
    this.at = 0;
    this.sections = [...document.querySelectorAll('.scene')];
    this.tabs = [...document.querySelectorAll('#tabs button')];
    for (const tab of this.tabs) tab.addEventListener('click', () => this.go(Number(tab.dataset.scene)));
  }

  go(index) {
    if (index < 0 || index >= data.scenes.length) return;
    const before = data.scenes[this.at], now = data.scenes[index], again = this.stage.shown !== undefined;
    this.at = index;
    this.sections.forEach((section, i) => (section.hidden = i !== index));
    for (const tab of this.tabs) tab.setAttribute('aria-pressed', String(Number(tab.dataset.scene) === index));
    const back = document.querySelector('[data-do="step-back"]'), on = document.querySelector('[data-do="step-on"]');
    if (back) back.disabled = index === 0;
    if (on) on.disabled = index + 1 === data.scenes.length;
    // A patient's pages have one picture, which stays as it was turned.
    const sameLook = again && JSON.stringify([before.toward_eye, before.up, before.focus]) === JSON.stringify([now.toward_eye, now.up, now.focus]);
    if (!sameLook) this.stage.look(now);
    this.stage.show(now);
    showLegend(document.getElementById('legend'), now.legend, data.shapes);
    this.onGo?.();
  }
}
