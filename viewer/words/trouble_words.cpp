#include "viewer/words/trouble_words.h"

#include <cerrno>
#include <cstring>
#include <new>
#include <string>
#include <system_error>

#include "geometry/base/error.h"

namespace scalpmark::viewer {

using geometry::Message;

namespace {

/// Libraries that start threads of their own (TBB, under VTK) say what the system said, as text.
bool no_more_threads(const std::exception& error) {
  const auto* system = dynamic_cast<const std::system_error*>(&error);
  if (system != nullptr && system->code() == std::errc::resource_unavailable_try_again) return true;
  return std::string(error.what()).find(std::strerror(EAGAIN)) != std::string::npos;
}

}  // namespace

Message message_of(const std::exception& error) {
  if (const auto* refusal = dynamic_cast<const geometry::Refusal*>(&error)) return refusal->message();
  if (dynamic_cast<const std::bad_alloc*>(&error) != nullptr)
    return Message::of("There is not enough memory for this; close other programs or use a smaller file.");
  if (no_more_threads(error))
    return Message::of(
        "This user may start no more programs or threads on this computer; close other programs, or allow more "
        "(ulimit -u).");
  return Message::of("A part of the system failed (%1); try again.", std::string(error.what()));
}

}  // namespace scalpmark::viewer
