// The kernel's door for a browser: four functions of plain numbers and addresses.
#include <emscripten/emscripten.h>

#include <cstddef>
#include <cstring>
#include <exception>
#include <memory>
#include <span>

#include "geometry/base/error.h"
#include "viewer/page/kernel/message_json.h"
#include "viewer/page/kernel/page_kernel.h"
#include "viewer/page/kernel/skin_bytes.h"

namespace {

using scalpmark::viewer::PageKernel;

std::unique_ptr<PageKernel> kernel;
std::string last_answer;

}  // namespace

extern "C" {

/// Room for so many bytes, which the caller fills and gives back with give_back.
EMSCRIPTEN_KEEPALIVE void* take_room(std::size_t bytes) {
  return ::operator new(bytes);
}
EMSCRIPTEN_KEEPALIVE void give_back(void* room) {
  ::operator delete(room);
}

/// Begins with a case (zero-terminated UTF-8) and the skin's bytes, none for the generic head. "{}", or what
/// was refused.
EMSCRIPTEN_KEEPALIVE const char* open_case(const char* case_json, const std::byte* skin,
                                           std::size_t skin_bytes) {
  try {
    kernel.reset();
    std::optional<scalpmark::geometry::Surface> surface;
    if (skin_bytes > 0) surface = scalpmark::viewer::surface_from({skin, skin_bytes});
    kernel = std::make_unique<PageKernel>(case_json, std::move(surface));
    last_answer = "{}";
  } catch (const scalpmark::geometry::Refusal& refusal) {
    last_answer =
        nlohmann::ordered_json{{"refused", scalpmark::viewer::message_json(refusal.message())}}.dump();
  }
  return last_answer.c_str();
}

/// PageKernel::answer, once a case is open; good until the next call.
EMSCRIPTEN_KEEPALIVE const char* answer(const char* question) {
  last_answer = kernel ? kernel->answer(question) : "{}";
  return last_answer.c_str();
}

}  // extern "C"
