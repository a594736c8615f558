// The picture: head, brain and coil by three.js, marks and lines as ink over them, names on a canvas of their own.
import {
  BufferAttribute, BufferGeometry, ColorManagement, DoubleSide, FrontSide, Group, LinearSRGBColorSpace, Matrix4, Mesh,
  OrthographicCamera, Scene, ShaderMaterial, Vector3, WebGLRenderer,
} from 'three';
import { casing, corners, windings } from './coil_body.mjs';
import { Ink, rgb } from './ink.mjs';
import { Names } from './names.mjs';
import { Sight } from './sight.mjs';
import { dot, places, plus } from './vectors.mjs';

ColorManagement.enabled = false;
const BACKGROUND = 0xfafaf8, CASING_OPACITY = 0.22, WINDINGS_OPACITY = 0.4, FAR_MM = 1000;
const PAST_HORIZON = 0.05;

/// Matte: so much light from everywhere, so much from the eye; lit where `light` says.
function matte({ colour, ambient, diffuse, opacity = 1, light = '' }, more = {}) {
  return new ShaderMaterial({
    uniforms: {
      colour: { value: new Vector3(...rgb(colour)) },
      lightColour: { value: new Vector3(...rgb(light || colour)) },
      look: { value: new Vector3(ambient, diffuse, opacity) },
    },
    vertexShader: `attribute float light; varying vec3 facing; varying float lit;
      void main() {
        facing = normalMatrix * normal; lit = light;
        gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
      }`,
    fragmentShader: `uniform vec3 colour, lightColour, look; varying vec3 facing; varying float lit;
      void main() {
        vec3 body = mix(colour, lightColour, lit);
        gl_FragColor = vec4(body * (look.x + look.y * abs(normalize(facing).z)), look.z);
      }`,
    transparent: opacity < 1,
    ...more,
  });
}

function body({ places, corners }, light = null) {
  const made = new BufferGeometry();
  made.setAttribute('position', new BufferAttribute(places, 3));
  made.setIndex(new BufferAttribute(corners, 1));
  made.computeVertexNormals();
  const shares = new Float32Array(places.length / 3);
  if (light) for (let i = 0; i < shares.length; ++i) shares[i] = light[i] / 255;
  made.setAttribute('light', new BufferAttribute(shares, 1));
  return made;
}

/// Whether the processor draws, for want of a graphics card: then smooth edges and fine pixels cost too much.
function drawsInSoftware() {
  const probe = document.createElement('canvas').getContext('webgl2');
  if (!probe) throw new Error('no WebGL 2');
  const named = probe.getExtension('WEBGL_debug_renderer_info');
  const renderer = String(named ? probe.getParameter(named.UNMASKED_RENDERER_WEBGL) : '');
  probe.getExtension('WEBGL_lose_context')?.loseContext();
  return /swiftshader|llvmpipe|softpipe|software|basic render/i.test(renderer);
}

export class Stage {
  constructor(data, canvas, namesCanvas) {
    this.data = data;
    this.canvas = canvas;
    this.sight = new Sight(data.head);
    this.names = new Names(namesCanvas);
    this.ink = new Ink(data.shapes, data.halo);
    this.hidden = null; // asks the kernel, once it is there, what the head hides
    this.inHand = null; // the part of a coil tried by hand, in place of the plan's
    this.notes = []; // of today's marks
    this.software = drawsInSoftware();
    this.renderer = new WebGLRenderer({ canvas, antialias: !this.software, powerPreference: 'high-performance' });
    this.renderer.outputColorSpace = LinearSRGBColorSpace;
    this.renderer.setClearColor(BACKGROUND);
    this.camera = new OrthographicCamera();
    this.scene = new Scene();
    this.wanted = false;
    this.addCoil();
    const ink = new ShaderMaterial({
      vertexShader: `attribute vec3 colour; varying vec3 shade;
        void main() { shade = colour; gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0); }`,
      fragmentShader: 'varying vec3 shade; void main() { gl_FragColor = vec4(shade, 1.0); }',
      transparent: true,
      side: DoubleSide,
    });
    this.inkMesh = new Mesh(new BufferGeometry(), ink);
    this.inkMesh.frustumCulled = false;
    this.inkMesh.renderOrder = 5;
    this.scene.add(this.inkMesh);
  }

  addCoil() {
    const { coil } = this.data;
    this.coil = new Group();
    this.coil.matrixAutoUpdate = false;
    const inside = matte({ colour: coil.windings_colour, ambient: 1, diffuse: 0, opacity: WINDINGS_OPACITY },
      { side: DoubleSide, depthWrite: false });
    const outside = matte({ colour: coil.casing_colour, ambient: 0.5, diffuse: 0.5, opacity: CASING_OPACITY },
      { depthWrite: false });
    for (const [shape, look, order] of [[windings(coil), inside, 3], [casing(coil), outside, 4]]) {
      const mesh = new Mesh(shape, look);
      mesh.renderOrder = order;
      this.coil.add(mesh);
    }
    this.scene.add(this.coil);
  }

  /// The surfaces, once they are unpacked.
  setBodies(skin, brain, light) {
    const first = this.data.scenes.find((scene) => scene.skin);
    const side = this.data.head.open ? DoubleSide : FrontSide;
    this.skin = new Mesh(body(skin), matte(first.skin, { side }));
    this.skin.renderOrder = 2;
    if (first.skin.opacity < 1) {
      // What is looked through is one layer: its depth first, then its colour.
      const depth = new Mesh(this.skin.geometry, matte({ ...first.skin, opacity: 1 }, { colorWrite: false, side }));
      depth.renderOrder = 1;
      this.skin.material.depthFunc = 3; // less or equal
      this.scene.add(depth);
    }
    this.scene.add(this.skin);
    if (brain) {
      this.brain = new Mesh(body(brain, light), matte(this.data.scenes.find((scene) => scene.brain).brain));
      this.brain.renderOrder = 0;
      this.scene.add(this.brain);
    }
  }

  /// The way a scene wants to be seen, with the coil whole where one lies.
  look(scene) {
    this.sight.look(scene, scene.frame ? corners(this.data.coil, scene.frame) : []);
  }

  show(scene) {
    this.shown = scene;
    this.setFrame(scene.frame ?? null);
    this.inHand = null;
    this.redraw();
  }

  /// Where the coil lies, null without one.
  setFrame(frame) {
    this.frame = frame;
    this.coil.visible = frame !== null;
    if (!frame) return;
    const { right: x, front: y, normal: z, origin: o } = frame;
    this.coil.matrix = new Matrix4(x[0], y[0], z[0], o[0], x[1], y[1], z[1], o[1], x[2], y[2], z[2], o[2], 0, 0, 0, 1);
    this.coil.matrixWorldNeedsUpdate = true;
  }

  redraw() {
    if (this.wanted) return;
    this.wanted = true;
    requestAnimationFrame(() => {
      this.wanted = false;
      this.draw();
    });
  }

  resize() {
    const { clientWidth: width, clientHeight: height } = this.canvas.parentElement;
    if (width === 0 || height === 0) return;
    const dense = this.software ? 1 : Math.min(2, window.devicePixelRatio || 1);
    this.renderer.setPixelRatio(dense);
    this.renderer.setSize(width, height, false);
    this.names.resize(width, height, dense);
    [this.sight.width, this.sight.height] = [width, height];
    this.redraw();
  }

  aim() {
    const { sight, camera } = this, half = (sight.mmPerPx * sight.width) / 2, high = (sight.mmPerPx * sight.height) / 2;
    Object.assign(camera, { left: -half, right: half, top: high, bottom: -high, near: 1, far: 2 * FAR_MM });
    camera.position.set(...plus(sight.focus, sight.towardEye, FAR_MM));
    camera.up.set(...sight.up);
    camera.lookAt(new Vector3(...sight.focus));
    camera.updateProjectionMatrix();
  }

  /// What of the scene is ink now: its parts, without those a coil in the hand replaces.
  parts() {
    if (!this.shown) return [];
    const replaced = new Set(['edge-marks', 'wanted', 'angle']);
    const parts = this.shown.parts.filter((part) => !(this.inHand && replaced.has(part.thing)));
    if (this.inHand) parts.push(this.inHand);
    return [...parts, ...this.notes];
  }

  /// The coil's rims and marks where it lies now.
  coilPart() {
    if (!this.shown?.coil || !this.frame) return null;
    const { right, front, normal, origin } = this.frame;
    const placed = (p) => plus(plus(plus(origin, right, p[0]), front, p[1]), normal, p[2]);
    const { lines = [], spots = [] } = this.shown.coil;
    return {
      lines: lines.map((line) => ({ ...line, places: places(line.points).map(placed) })),
      spots: spots.map((spot) => ({ ...spot, at: placed(spot.at) })),
    };
  }

  /// Which of these (each with `at` and `normal`) the eye sees.
  seen(things) {
    const facing = things.map(({ normal }) => dot(normal, this.sight.towardEye) > -PAST_HORIZON);
    if (!this.hidden) return facing;
    const asked = things.filter((_, i) => facing[i]);
    const answers = this.hidden(asked, this.sight.towardEye);
    let next = 0;
    return facing.map((faces) => faces && answers[next++]);
  }

  draw() {
    if (!this.skin) return;
    const { sight, ink } = this;
    this.aim();
    ink.clear();
    const wishes = [], withNormals = [];
    const parts = [...this.parts(), this.coilPart()].filter(Boolean);
    for (const part of parts) {
      for (const line of part.lines ?? []) for (const tick of line.ticks ?? []) withNormals.push(tick);
      for (const one of [...(part.marks ?? []), ...(part.words ?? [])]) withNormals.push(one);
      for (const spot of part.spots ?? []) if (spot.normal) withNormals.push(spot);
    }
    const answers = this.seen(withNormals);
    const isSeen = new Map(withNormals.map((one, i) => [one, answers[i]]));
    const wish = (one, more = {}) => {
      if (one.label) wishes.push({ label: one.label, at: sight.project(one.at), ...more });
    };
    const asides = [], taken = [];
    for (const part of parts) {
      for (const spot of part.spots ?? []) {
        if (isSeen.get(spot) === false) continue;
        ink.spot(spot, sight);
        wish(spot);
      }
      for (const line of part.lines ?? []) {
        ink.line(line, sight);
        for (const tick of line.ticks ?? []) {
          if (!isSeen.get(tick)) continue;
          ink.tick(tick, line, sight);
          wish(tick, { along: [dot(tick.across, sight.right), -dot(tick.across, sight.up)] });
        }
      }
      for (const mark of part.marks ?? []) {
        if (!isSeen.get(mark)) {
          if (mark.label?.aside) asides.push(mark.label.aside);
          continue;
        }
        ink.mark(mark, sight);
        taken.push({ at: sight.project(mark.at), reach: this.data.shapes[mark.shape].reach * sight.scale });
        wish(mark);
      }
      for (const words of part.words ?? []) if (isSeen.get(words)) wish(words);
    }
    this.drawInk();
    this.renderer.render(this.scene, this.camera);
    this.asides = this.names.draw(wishes, taken, sight.scale, asides);
    this.afterDraw?.();
  }

  drawInk() {
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(new Float32Array(this.ink.at), 3));
    made.setAttribute('colour', new BufferAttribute(new Float32Array(this.ink.colours), 3));
    this.inkMesh.geometry.dispose();
    this.inkMesh.geometry = made;
  }

  /// The picture as it is now, names and all.
  copyOnto(whole) {
    this.draw();
    [whole.width, whole.height] = [this.canvas.width, this.canvas.height];
    const onto = whole.getContext('2d');
    onto.drawImage(this.canvas, 0, 0);
    onto.drawImage(this.names.canvas, 0, 0);
  }
}

