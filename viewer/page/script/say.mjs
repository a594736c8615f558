// Words and numbers as the program says them, in the page's language.
import { data } from './bytes.mjs';

export const word = data.words;

/// A pattern with its %1 to %9.
export function filled(pattern, ...parts) {
  return pattern.replace(/%([1-9])/g, (sign, n) => (n <= parts.length ? parts[n - 1] : sign));
}

function decimal(value, decimals, mark) {
  const nothing = 0.5 * 10 ** -decimals;
  return (Math.abs(value) < nothing ? 0 : value).toFixed(decimals).replace('.', mark);
}

const written = (mm, how) => filled(how.pattern, decimal(mm / how.mm, how.decimals, how.mark));

/// "5.0 cm", "14.7 mm"; and the first without its unit.
export const tapeLength = (mm) => written(mm, data.lengths.tape);
export const smallLength = (mm) => written(mm, data.lengths.small);
export const tapeNumber = (mm) => decimal(mm / data.lengths.tape.mm, data.lengths.tape.decimals, data.lengths.tape.mark);

/// "45°", and to which side.
export function coilAngle(deg) {
  const whole = Math.round(deg);
  return filled(whole < 0 ? word.away_from_midline : word.to_midline, `${Math.abs(whole)}°`);
}

/// A message of the kernel (geometry/base/message.h).
export function message(value) {
  if (typeof value === 'string') return value;
  if ('value' in value) {
    const text = decimal(value.value, value.decimals, data.lengths.tape.mark);
    return value.padded || !text.includes(data.lengths.tape.mark) ? text : text.replace(/0+$/, '').replace(/\D$/, '');
  }
  return filled(data.messages[value.pattern] ?? value.pattern, ...value.parts.map(message));
}

/// An element with text in it, which stays text.
export function element(tag, text = '', look = '') {
  const made = document.createElement(tag);
  if (text) made.textContent = text;
  if (look) made.className = look;
  return made;
}
