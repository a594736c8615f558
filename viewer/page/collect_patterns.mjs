// Collects the patterns of all messages that the kernel may say, one a line, for a page in another language.
// usage: node collect_patterns.mjs OUT SOURCES
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const [out, top] = process.argv.slice(2);
const message = /Message::of\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)/g;
const found = new Set();
const files = ['geometry', 'models'].flatMap((folder) =>
  readdirSync(join(top, folder), { recursive: true }).map((name) => join(top, folder, name)));
files.push(join(top, 'viewer/words/check_words.cpp'));
for (const file of files.filter((name) => /\.(cpp|h)$/.test(name)))
  for (const [, literals] of readFileSync(file, 'utf8').matchAll(message))
    found.add([...literals.matchAll(/"((?:[^"\\]|\\.)*)"/g)].map(([, piece]) => JSON.parse(`"${piece}"`)).join(''));
mkdirSync(dirname(out), { recursive: true });
writeFileSync(out, [...found].sort().map((text) => text.replaceAll('\\', '\\\\').replaceAll('\n', '\\n') + '\n').join(''));
