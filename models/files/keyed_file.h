#pragma once

#include <cstdint>
#include <filesystem>
#include <vector>

#include "models/files/byte_key.h"
#include "models/files/plain_file.h"

namespace scalpmark::models {

/// A file of our own whose last eight bytes are the byte_key of all before them, taken piece by piece: no
/// more of it is in memory than what has been made of it. Whatever is wrong with the file, takes come to
/// nothing.
class KeyedFile {
public:
  KeyedFile(const std::filesystem::path& file, std::uintmax_t most_bytes);

  /// The next bytes, if there are so many before the key.
  [[nodiscard]] bool take(void* into, std::uintmax_t count);
  /// The same at the end of a list, whose memory is written once.
  [[nodiscard]] bool append(std::vector<std::uint8_t>& to, std::uintmax_t count);
  template <class Number>
  [[nodiscard]] bool take_number(Number& value) {
    return take(&value, sizeof value);
  }
  /// A count, of things of so many bytes each; false where there are not so many bytes to come.
  [[nodiscard]] bool take_count(std::size_t& count, std::size_t bytes_each);

  /// Whether all has been taken and the key is that of what was taken.
  [[nodiscard]] bool ends_well();

private:
  bool refill();
  template <class Put>
  bool pass_on(std::uintmax_t count, const Put& put);

  PlainFile file_;
  std::vector<char> part_;
  std::size_t at_ = 0, filled_ = 0;
  std::uintmax_t left_ = 0;   // of what is before the key
  std::uintmax_t ahead_ = 0;  // of that, not read yet
  std::uint64_t key_ = no_bytes;
};

}  // namespace scalpmark::models
