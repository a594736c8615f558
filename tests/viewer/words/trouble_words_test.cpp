#include "viewer/words/trouble_words.h"

#include <catch2/catch.hpp>
#include <cerrno>
#include <cstring>
#include <new>
#include <stdexcept>
#include <system_error>

#include "geometry/base/error.h"

using namespace scalpmark;
using viewer::message_of;

TEST_CASE("what the system or a library gives out is one sentence with what to do") {
  const auto english = [](const std::exception& error) { return geometry::english(message_of(error)); };
  CHECK(english(geometry::GeometryError(geometry::Message::of("The %1 is missing.", std::string("inion")))) ==
        "The inion is missing.");
  CHECK(english(std::bad_alloc()) ==
        "There is not enough memory for this; close other programs or use a smaller file.");
  const std::string threads =
      "This user may start no more programs or threads on this computer; close other programs, or allow more "
      "(ulimit -u).";
  CHECK(english(std::system_error(std::make_error_code(std::errc::resource_unavailable_try_again))) ==
        threads);
  // As TBB says it (its handle_perror puts the system's words behind the name of the call).
  CHECK(english(std::runtime_error(std::string("pthread_create has failed: ") + std::strerror(EAGAIN))) ==
        threads);
  CHECK(english(std::runtime_error("vector::_M_range_check")) ==
        "A part of the system failed (vector::_M_range_check); try again.");
}
