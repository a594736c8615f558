#pragma once

#include <filesystem>
#include <string_view>

namespace scalpmark::models {

/// A file on its way to the disk, in the folder it will lie in. It has no name until it is whole, where the
/// file system can do that, so that nothing is left whatever ends the run; elsewhere it is called
/// `.scalpmark-*.part` and goes away with its writer, unless that is killed. Its writer holds a lock on it,
/// by which clear_left_over_parts() tells it from one whose writer is gone.
class PartFile {
public:
  /// Made with `mode`, or errno() says why not.
  PartFile(const std::filesystem::path& folder, unsigned mode);
  ~PartFile();
  PartFile(const PartFile&) = delete;
  PartFile& operator=(const PartFile&) = delete;

  [[nodiscard]] int descriptor() const { return descriptor_; }  ///< -1 if it could not be made
  [[nodiscard]] int error() const { return error_; }            ///< errno of what went wrong last
  /// Those of the file it is to replace, where there is one. False if it could not.
  [[nodiscard]] bool take_permissions_of(const std::filesystem::path& target);
  /// Adds these bytes, and has them on the disk. False if it could not.
  [[nodiscard]] bool write(std::string_view bytes);
  /// Takes the place of `target`, which is in the same folder. False if it could not.
  [[nodiscard]] bool rename_to(const std::filesystem::path& target);

private:
  void open_without_name(unsigned mode);
  void open_with_name(unsigned mode);
  [[nodiscard]] bool lock() const;
  void sync_folder() const;

  std::filesystem::path folder_, name_;  ///< `name_` is empty while it has none
  int descriptor_ = -1;
  int error_ = 0;
};

/// Removes the parts that runs which are no more have left in a folder: ours, plain files of this user, and
/// locked by nobody.
void clear_left_over_parts(const std::filesystem::path& folder) noexcept;

}  // namespace scalpmark::models
