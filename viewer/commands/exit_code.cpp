#include "viewer/commands/exit_code.h"

#include <exception>
#include <iostream>

#include "geometry/base/message.h"
#include "viewer/commands/options.h"
#include "viewer/words/trouble_words.h"

namespace scalpmark::viewer {

namespace {

int report(const char* sentence, int code) {
  std::cerr << "scalpmark: " << geometry::on_one_line(sentence) << std::endl;
  return code;
}

}  // namespace

int exit_code(const std::function<int()>& run) noexcept {
  try {
    return run();
  } catch (const UsageError& e) {
    return report(e.what(), misunderstood);
  } catch (const std::exception& e) {
    return report(geometry::english(message_of(e)).c_str(), failed);
  } catch (...) {
    return report("Something went wrong that the program has no words for; try again.", failed);
  }
}

}  // namespace scalpmark::viewer
