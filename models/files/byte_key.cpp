#include "models/files/byte_key.h"

#include <cstring>

namespace scalpmark::models {

std::uint64_t byte_key(std::string_view bytes, std::uint64_t before) {
  std::uint64_t sum = before;
  const auto take = [&](std::uint64_t part) {
    sum ^= part;
    sum *= 0x100000001b3ULL;
    sum ^= sum >> 29U;
  };
  while (bytes.size() >= 8) {
    std::uint64_t part = 0;
    std::memcpy(&part, bytes.data(), 8);
    take(part);
    bytes.remove_prefix(8);
  }
  for (const char c : bytes) take(static_cast<unsigned char>(c));
  return sum;
}

}  // namespace scalpmark::models
