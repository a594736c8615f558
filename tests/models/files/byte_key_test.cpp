#include "models/files/byte_key.h"

#include <catch2/catch.hpp>
#include <string>

using scalpmark::models::byte_key;

TEST_CASE("the key of bytes is another where a byte, their number or what came before is") {
  const std::string bytes = "nineteen bytes here";
  const auto key = byte_key(bytes);
  CHECK(byte_key(bytes) == key);
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    std::string other = bytes;
    other[i] = static_cast<char>(other[i] ^ 1);
    CHECK(byte_key(other) != key);
  }
  CHECK(byte_key(bytes + '\0') != key);
  CHECK(byte_key(bytes, byte_key("before")) != key);
  CHECK(byte_key("") == scalpmark::models::no_bytes);
}
