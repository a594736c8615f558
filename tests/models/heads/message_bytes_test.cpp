#include "models/heads/message_bytes.h"

#include <catch2/catch.hpp>
#include <cstdint>
#include <random>

using namespace scalpmark;
using geometry::Message;
using models::bytes_of;
using models::message_from;

namespace {

Message of_every_kind() {
  return Message::of("%1 has %2 of %3 (%4).", "head 100%1.ply", geometry::Number{2.5, 1, true}, 150000,
                     Message::of("the %1 tape", Message::of("nasion-inion")));
}

Message nested(int depth) {
  return depth == 0 ? Message::of("end") : Message::of("%1", nested(depth - 1));
}

}  // namespace

TEST_CASE("a message comes out of its bytes as it went in") {
  for (const Message& message : {of_every_kind(), Message(), Message::verbatim("\xff\x01"), nested(7)}) {
    const auto back = message_from(bytes_of(message));
    REQUIRE(back);
    CHECK(*back == message);
  }
}

TEST_CASE("bytes that are no message are none, wherever they are cut, lengthened or changed") {
  const std::string bytes = bytes_of(of_every_kind());
  for (std::size_t length = 0; length < bytes.size(); ++length)
    CHECK_FALSE(message_from(bytes.substr(0, length)));
  CHECK_FALSE(message_from(bytes + "x"));
  CHECK_FALSE(message_from(bytes_of(nested(8))));
  CHECK_FALSE(message_from(bytes_of(Message::verbatim(std::string(70'000, 'x')))));
  const std::vector<geometry::Argument> ten(10, geometry::Argument("x"));
  CHECK_FALSE(message_from(bytes_of(Message::made("%1", ten))));
  // Whatever one byte is changed into, it ends well: nothing, or a message that can be said.
  std::mt19937 random(1);
  for (std::size_t i = 0; i < bytes.size(); ++i)
    for (int times = 0; times < 8; ++times) {
      std::string changed = bytes;
      changed[i] = static_cast<char>(random());
      if (const auto message = message_from(changed)) CHECK(english(*message).size() < 1000);
    }
}

TEST_CASE("a length that runs past the bytes is no message") {
  std::string bytes = bytes_of(Message::of("x"));
  bytes[3] = '\x7f';
  CHECK_FALSE(message_from(bytes));
}
