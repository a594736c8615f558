#include "models/files/file_key.h"

#include <vector>

#include "models/files/byte_key.h"
#include "models/files/plain_reading.h"

namespace scalpmark::models {

std::uint64_t key_of_file(const std::filesystem::path& file, std::size_t limit, std::uint64_t before) {
  PlainFile opened(file);
  check_readable(opened, file, limit);
  std::vector<char> part(key_part_bytes);
  std::size_t filled = 0, got = 0;
  for (;;) {
    const std::size_t count = read_some(opened, file, part.data() + filled, part.size() - filled);
    filled += count;
    got += count;
    if (got > limit) throw too_long(file, limit);
    if (count > 0 && filled < part.size()) continue;
    before = byte_key({part.data(), filled}, before);
    filled = 0;
    if (count == 0) return before;
  }
}

}  // namespace scalpmark::models
