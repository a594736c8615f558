// The kernel: a case is opened once, then it is asked (kernel/page_kernel.h). For the page and for its worker.
import glue from 'kernel-glue';

/// `module`: compiled WebAssembly; `skin`: bytes, none for the generic head. Throws an Error whose `message` of the
/// kernel stands in `said`.
export async function openKernel(module, caseText, skin) {
  const code = await glue({
    instantiateWasm(imports, ready) {
      WebAssembly.instantiate(module, imports).then((instance) => ready(instance, module));
      return {};
    },
  });
  const given = (text, use) => {
    const bytes = code.lengthBytesUTF8(text) + 1, room = code._take_room(bytes);
    code.stringToUTF8(text, room, bytes);
    const answer = JSON.parse(code.UTF8ToString(use(room)));
    code._give_back(room);
    if (answer.refused) throw Object.assign(new Error(answer.refused.pattern), { said: answer.refused });
    return answer;
  };
  given(caseText, (text) => {
    if (!skin) return code._open_case(text, 0, 0);
    const room = code._take_room(skin.length);
    code.HEAPU8.set(skin, room);
    const answer = code._open_case(text, room, skin.length);
    code._give_back(room);
    return answer;
  });
  return { ask: (question) => given(JSON.stringify(question), (text) => code._answer(text)) };
}
