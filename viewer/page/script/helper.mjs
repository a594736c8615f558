// The page's end of its worker: questions with promises of answers.

export class Helper {
  constructor(module, caseText, skin) {
    const script = new Blob([document.getElementById('worker').textContent], { type: 'text/javascript' });
    this.worker = new Worker(URL.createObjectURL(script));
    this.waiting = new Map();
    this.next = 0;
    this.worker.onmessage = ({ data: { id, answer, failed, said } }) => {
      const { resolve, reject } = this.waiting.get(id);
      this.waiting.delete(id);
      if (failed) reject(Object.assign(new Error(failed), { said }));
      else resolve(answer);
    };
    this.worker.onerror = (event) => {
      for (const { reject } of this.waiting.values()) reject(new Error(event.message));
      this.waiting.clear();
    };
    this.ready = this.send({ open: { module, caseText, skin } });
  }

  send(what) {
    const id = this.next++;
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve, reject });
      this.worker.postMessage({ id, ...what });
    });
  }

  /// The fields first: every answer after has its tape distances.
  fields() {
    this.fieldsThere ??= this.ready.then(() => this.send({ ask: { ask: 'fields' } }));
    return this.fieldsThere;
  }

  async ask(question) {
    await this.fields();
    return this.send({ ask: question });
  }
}
