// Beside the page, so that it never waits: the same kernel, with the head's distance fields.
import { openKernel } from './kernel.mjs';

let kernel = null;

self.onmessage = async ({ data: { id, open, ask } }) => {
  try {
    if (open) kernel = await openKernel(open.module, open.caseText, open.skin);
    self.postMessage({ id, answer: ask ? kernel.ask(ask) : {} });
  } catch (error) {
    self.postMessage({ id, failed: String(error.message ?? error), said: error.said ?? null });
  }
};
