// Names beside what they name, where there is room, in the order of their priority: close by first, further off with a
// line to it where a name may go far. What finds none is said beside the picture.

const FONT = 'system-ui, sans-serif', HALO = '#ffffff', GAP = 3;
const WAYS = [[1, 0], [0.8, -0.7], [0.8, 0.7], [-1, 0], [-0.8, -0.7], [-0.8, 0.7], [0, -1], [0, 1]];
const FAR_PX = [26, 48, 74, 104];

const overlap = (a, b) => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];

export class Names {
  constructor(canvas) {
    this.canvas = canvas;
    this.pen = canvas.getContext('2d');
  }

  resize(width, height, dense) {
    [this.width, this.height] = [width, height];
    [this.canvas.width, this.canvas.height] = [Math.round(width * dense), Math.round(height * dense)];
    this.pen.setTransform(dense, 0, 0, dense, 0, 0);
  }

  /// A box for a name of that size, its near side `px` away from `at` along `way`.
  box(at, [x, y], px, width, height) {
    const middle = [at[0] + x * px + Math.sign(x) * (Math.abs(x) > 0.1 ? width / 2 : 0),
      at[1] + y * px + Math.sign(y) * (height / 2) * (Math.abs(x) > 0.1 ? 0.6 : 1)];
    return [middle[0] - width / 2, middle[1] - height / 2, middle[0] + width / 2, middle[1] + height / 2];
  }

  free(box, taken) {
    return box[0] > GAP && box[1] > GAP && box[2] < this.width - GAP && box[3] < this.height - GAP &&
      !taken.some((other) => overlap(box, other));
  }

  /// Returns what was said nowhere, of what ought to be said.
  draw(wishes, symbols, scale, asides) {
    const { pen } = this;
    pen.clearRect(0, 0, this.width, this.height);
    pen.textBaseline = 'middle';
    pen.textAlign = 'left';
    pen.lineJoin = 'round';
    const taken = symbols.map(({ at: [x, y], reach: r }) => [x - r, y - r, x + r, y + r]);
    const unsaid = [...asides];
    for (const { label, at, along } of [...wishes].sort((a, b) => b.label.priority - a.label.priority)) {
      const size = Math.max(11, label.size * scale);
      pen.font = `${label.bold ? '600 ' : ''}${size}px ${FONT}`;
      const width = pen.measureText(label.text).width + 4, height = size * 1.25;
      const ways = along ? [along, [-along[0], -along[1]]] : WAYS;
      const reaches = [label.clear * scale + 2, ...(label.far ? FAR_PX.map((px) => px * scale) : [])];
      let found = null;
      for (const px of reaches) {
        for (const way of ways) {
          const box = this.box(at, way, px, width, height);
          // Its own symbol lies within its clearance.
          if (this.free(box, taken)) found = { box, far: px !== reaches[0] };
          if (found) break;
        }
        if (found) break;
      }
      if (found) {
        taken.push(found.box);
        this.write(label, at, found, size);
      } else if (label.aside) {
        unsaid.push(label.aside);
      }
    }
    return unsaid;
  }

  write(label, at, { box, far }, size) {
    const { pen } = this, y = (box[1] + box[3]) / 2;
    if (far) {
      const end = [Math.min(box[2], Math.max(box[0], at[0])), Math.min(box[3], Math.max(box[1], at[1]))];
      for (const [colour, px] of [[HALO, 3], [label.colour, 1]]) {
        pen.strokeStyle = colour;
        pen.lineWidth = px;
        pen.beginPath();
        pen.moveTo(...at);
        pen.lineTo(...end);
        pen.stroke();
      }
    }
    pen.font = `${label.bold ? '600 ' : ''}${size}px ${FONT}`;
    pen.lineWidth = 3.5;
    pen.strokeStyle = HALO;
    pen.strokeText(label.text, box[0] + 2, y);
    pen.fillStyle = label.colour;
    pen.fillText(label.text, box[0] + 2, y);
  }
}
