// What the page carries in its script elements.

export const data = JSON.parse(document.getElementById('data').textContent);

export const has = (id) => document.getElementById(id) !== null;

/// The bytes of an element: base64 of what zlib packed.
export async function unpacked(id) {
  const text = atob(document.getElementById(id).textContent);
  const packed = new Uint8Array(text.length);
  for (let i = 0; i < text.length; ++i) packed[i] = text.charCodeAt(i);
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/// A surface's corners (mm) and triangles from its bytes (kernel/skin_bytes.h).
export function surface(bytes) {
  const whole = new Int32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength / 4);
  const [corners, triangles] = whole;
  const places = new Float32Array(3 * corners);
  for (let i = 0; i < places.length; ++i) places[i] = whole[2 + i] / 1000;
  return { places, corners: new Uint32Array(whole.slice(2 + 3 * corners, 2 + 3 * (corners + triangles))) };
}
