// The page's eye: the coil is seen whole from every side, in a window of any shape, and a near view stays near. The numbers
// are a round head's and a coil's laid out by hand; nothing of the program.
import { Sight } from '../../viewer/page/script/sight.mjs';
import { minus, plus } from '../../viewer/page/script/vectors.mjs';

const head = { middle: [0, 0, 0], reach: 320, right: [1, 0, 0], front: [0, 1, 0], up: [0, 0, 1] };
const ways = { left: [[-1, 0, 0], head.up], right: [[1, 0, 0], head.up], front: [[0, 1, 0], head.up],
  back: [[0, -1, 0], head.up], above: [[0, 0, 1], head.front], aslant: [[0.6, 0.5, 0.62], head.up] };
const windows = { desk: [880, 590], phone: [390, 240], tablet: [820, 600], tall: [300, 700] };

/// A plate 180 across with a handle of 200, flat on top of the head, forward, or at its side.
const plates = { top: [0, 0, 95], front: [0, 80, 60], side: [90, 0, 40] };
const corners = (at) => [[-90, 0, 0], [90, 0, 0], [0, 50, 0], [0, -250, 0], [0, -250, 20]].map((p) => plus(at, p));

let failed = 0;
const expect = (holds, what) => {
  if (!holds) console.error(`sight: ${what}`), failed++;
};
for (const [shape, [width, height]] of Object.entries(windows))
  for (const [way, [toward_eye, up]] of Object.entries(ways)) {
    const sight = new Sight(head);
    [sight.width, sight.height] = [width, height];
    sight.look({ toward_eye, up });
    const plain = sight.acrossMm;
    for (const [where, at] of Object.entries(plates)) {
      const seen = corners(at), name = `${shape}, from ${way}, coil at the ${where}`;
      sight.look({ toward_eye, up }, seen);
      for (const p of seen) {
        const [x, y] = sight.project(p);
        expect(x > 2 && x < width - 2 && y > 2 && y < height - 2, `${name}: a corner lies at ${x.toFixed(0)}, ${y.toFixed(0)}`);
      }
      expect(sight.acrossMm >= plain && sight.acrossMm < 2.2 * plain, `${name}: ${(sight.acrossMm / plain).toFixed(2)} times as far`);
      // The head is still whole where it was.
      for (const p of [[0, 0, -100], [0, 95, 0], [0, -95, 0], [75, 0, 0], [-75, 0, 0]]) {
        const [x, y] = sight.project(p);
        expect(x > 0 && x < width && y > 0 && y < height, `${name}: the head is cut at ${x.toFixed(0)}, ${y.toFixed(0)}`);
      }
    }
    sight.look({ toward_eye, up }, [minus(head.middle, [20, 0, 0])]);
    expect(sight.acrossMm === plain, `${shape}, from ${way}: what is seen anyway moves the eye`);
    sight.look({ toward_eye, up, focus: [0, 60, 60], across: 120 }, corners(plates.side));
    expect(sight.acrossMm === 120, `${shape}, from ${way}: a near view is left`);
  }
process.exit(failed ? 1 : 0);
