#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>

namespace scalpmark::models {

/// A file opened to be read, the system's own way: a pipe is not waited for, and what is no plain file is
/// said to be none. This and part_file.h are all that files ask of the system beyond the standard library.
class PlainFile {
public:
  enum class Kind { not_opened, unknown, folder, other, plain };

  explicit PlainFile(const std::filesystem::path& file);
  ~PlainFile();
  PlainFile(const PlainFile&) = delete;
  PlainFile& operator=(const PlainFile&) = delete;

  [[nodiscard]] Kind kind() const { return kind_; }
  [[nodiscard]] int error() const { return error_; }  ///< errno of what went wrong last
  /// As it was when opened; another program may be writing.
  [[nodiscard]] std::uintmax_t size() const { return size_; }
  /// The next bytes, at most so many; 0 at its end, nothing where it cannot be read.
  [[nodiscard]] std::optional<std::size_t> read(char* into, std::size_t most);

private:
  int descriptor_ = -1;
  Kind kind_ = Kind::not_opened;
  int error_ = 0;
  std::uintmax_t size_ = 0;
};

/// Whether a file is this user's own. Nothing where that cannot be known; errno then says why.
[[nodiscard]] std::optional<bool> is_this_users(const std::filesystem::path& file);

/// Whether this user may write into a file that is there; errno says why not.
[[nodiscard]] bool may_be_written(const std::filesystem::path& file);

}  // namespace scalpmark::models
