#include "models/files/safe_file.h"

#include <cerrno>
#include <system_error>

#include "models/files/error.h"
#include "models/files/part_file.h"
#include "models/files/plain_file.h"
#include "models/files/plain_reading.h"

namespace scalpmark::models {

namespace fs = std::filesystem;

namespace {

[[noreturn]] void cannot_write(const fs::path& file, int error) {
  throw ModelError(Message::of("%1 cannot be written: %2", file.string(), why(error)));
}

/// A link is followed to where it leads, which it goes on doing; but only to a file that is this user's, so
/// that no link laid by somebody else, in a folder where all may write, makes this user write where that one
/// could not.
void check_link(const fs::path& link, const fs::path& target) {
  const auto own = is_this_users(target);
  if (!own) cannot_write(link, errno);
  if (!*own)
    throw ModelError(Message::of(
        "%1 is a link to a file of another user, %2; write to that file by its own name, or choose another.",
        link.string(), target.string()));
}

/// Where the bytes go: through links, so that a link stays a link. Refuses what is not a plain file.
fs::path target_of(const fs::path& file) {
  if (file.empty() || !file.has_filename())
    throw ModelError(Message::of("\"%1\" is not the name of a file; choose a name.", file.string()));
  std::error_code error, no_link;
  const fs::file_status status = fs::status(file, error);
  const bool is_link = fs::is_symlink(fs::symlink_status(file, no_link));
  if (status.type() == fs::file_type::not_found) {
    if (is_link)
      throw ModelError(Message::of("%1 is a link that leads to no file; remove it, or choose another name.",
                                   file.string()));
    return file;
  }
  if (status.type() == fs::file_type::none) cannot_write(file, error.value());
  if (fs::is_directory(status))
    throw ModelError(Message::of("%1 is a folder; choose the name of a file in it.", file.string()));
  if (!fs::is_regular_file(status))
    throw ModelError(Message::of("%1 is not a plain file; choose another name.", file.string()));
  if (!may_be_written(file)) cannot_write(file, errno);
  fs::path target = fs::canonical(file, error);
  if (error) cannot_write(file, error.value());
  if (is_link) check_link(file, target);
  return target;
}

}  // namespace

void write_whole(const fs::path& file, std::string_view bytes) {
  const fs::path target = target_of(file);
  const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
  clear_left_over_parts(folder);

  // What is written is a patient's or shows a patient's head, so nobody else reads it unless that was allowed
  // before.
  constexpr unsigned own_alone = 0600;
  PartFile part(folder, own_alone);
  if (part.descriptor() < 0 || !part.take_permissions_of(target) || !part.write(bytes) ||
      !part.rename_to(target))
    cannot_write(file, part.error());
}

std::string read_whole(const fs::path& file, std::size_t limit) {
  PlainFile opened(file);
  check_readable(opened, file, limit);
  // The size is only a promise: another program may be writing.
  std::string bytes(static_cast<std::size_t>(opened.size()) + 1, '\0');
  std::size_t got = 0;
  for (;;) {
    if (got == bytes.size()) bytes.resize(2 * bytes.size());
    const std::size_t count = read_some(opened, file, bytes.data() + got, bytes.size() - got);
    if (count == 0) break;
    got += count;
    if (got > limit) throw too_long(file, limit);
  }
  bytes.resize(got);
  return bytes;
}

}  // namespace scalpmark::models
