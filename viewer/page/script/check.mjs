// Today's marks by their tapes: where they are, where the coil laid over them has its pulse, and what to do.
import { data } from './bytes.mjs';
import { element, filled, message, tapeLength, word } from './say.mjs';

const SITE_PRIORITY = 110, VAGUE_MM = 15, TODAYS = '#000000', CROSS = 12, DISC = 1, TAG = 10;

export class Check {
  constructor(stage) {
    this.stage = stage;
    this.form = document.getElementById('tapes');
    this.verdict = document.getElementById('verdict');
    this.chosen = {};
    this.form?.addEventListener('submit', (event) => {
      event.preventDefault();
      this.begin();
    });
    this.form?.addEventListener('input', () => (this.chosen = {}));
    // Enter in a field, which a browser leaves alone in a form of several fields.
    this.form?.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' || event.target.tagName !== 'INPUT') return;
      event.preventDefault();
      this.begin();
    });
  }

  start(helper) {
    this.helper = helper;
  }

  say(...children) {
    this.verdict.replaceChildren(...children);
  }

  /// What was typed for a mark, in mm; throws a sentence.
  typed(mark) {
    const readings = {};
    for (const input of this.form.querySelectorAll(`[data-mark="${mark}"]`)) {
      const text = input.value.trim();
      const value = Number(text.replace(',', '.'));
      const wrong = text !== '' && !(value > 0 && Number.isFinite(value));
      input.setAttribute('aria-invalid', String(wrong));
      if (wrong) throw new Error(filled(word.not_a_length, text, tapeLength(123)));
      if (text !== '') readings[input.dataset.tape] = value * data.lengths.tape.mm;
    }
    if (Object.keys(readings).length < 2) throw new Error(word.two_tapes);
    return readings;
  }

  async begin() {
    try {
      const question = { ask: 'check', site: this.typed('site'), edge: this.typed('edge'), lengths: data.lengths.tape };
      if (!this.helper) throw new Error(word.getting_ready);
      this.say(element('p', word.checking, 'quiet'));
      if (this.chosen.site !== undefined) question.site_place = this.chosen.site;
      if (this.chosen.edge !== undefined) question.edge_place = this.chosen.edge;
      const answer = await this.helper.ask(question);
      this.show(JSON.parse(answer.check), answer.sentence);
    } catch (error) {
      this.stage.notes = [];
      this.say(element('p', error.said ? message(error.said) : error.message, 'problem'));
    }
    this.stage.redraw();
  }

  /// One of several places that fit a mark's tapes is for the user to choose.
  choices(mark, places, wanted) {
    const box = element('div', '', 'choices');
    box.append(element('p', mark === 'site' ? word.several_site : word.several_edge));
    places.forEach(({ at }, i) => {
      const far = tapeLength(Math.hypot(...at.map((v, k) => v - wanted[k])));
      const button = element('button', filled(word.place, 'ABCDEFGH'[i] ?? i + 1, far));
      button.type = 'button';
      button.addEventListener('click', () => {
        this.chosen[mark] = i;
        this.begin();
      });
      box.append(button);
    });
    return box;
  }

  note(name, shape, at, colour, text) {
    const { middle } = data.head, out = at.map((v, i) => v - middle[i]), far = Math.hypot(...out) || 1;
    return {
      name, shape, at, colour, layer: 19, normal: out.map((v) => v / far), along: data.head.front,
      label: { text, clear: 14, priority: SITE_PRIORITY, far: true, colour: '#18181c', bold: true, size: 15 },
    };
  }

  show(check, sentence) {
    const said = [], marks = [];
    const names = { agrees: word.agrees, move: word.move, unsure: word.unsure };
    said.push(element('p', names[check.verdict], `verdict ${check.verdict}`));
    if (sentence) said.push(element('p', message(sentence)));
    const wanted = { site: data.site.wanted, edge: data.site.edge ?? data.site.wanted };
    for (const mark of ['site', 'edge']) {
      const { places, taken } = check[mark];
      if (taken === null) {
        said.push(this.choices(mark, places, wanted[mark]));
        places.forEach(({ at }, i) => marks.push(this.note(mark, TAG, at, TODAYS, 'ABCDEFGH'[i] ?? String(i + 1))));
        continue;
      }
      if (places[taken].spread_mm > VAGUE_MM) said.push(element('p', filled(word.vague, tapeLength(places[taken].spread_mm))));
      marks.push(this.note(mark, CROSS, places[taken].at, TODAYS, mark === 'site' ? word.todays_site : word.todays_edge));
    }
    if (check.pulse) marks.push(this.note('pulse', DISC, check.pulse, '#0072b2', word.todays_pulse));
    this.stage.notes = [{ marks }];
    this.say(...said);
  }
}
