#include "models/files/plain_reading.h"

#include <cerrno>
#include <system_error>

namespace scalpmark::models {

namespace fs = std::filesystem;

/// What went wrong, in words that say what to do.
Message why(int error) {
  switch (error) {
    case ENOENT:
      return Message::of("there is no such folder; check the name.");
    case ENOTDIR:
      return Message::of("a part of its path is not a folder; check the name.");
    case EACCES:
    case EPERM:
      return Message::of("that is not allowed; check who may read and write there.");
    case EROFS:
      return Message::of("the disk can only be read; choose another place.");
    case ENOSPC:
    case EDQUOT:
      return Message::of("the disk is full; make room and try again.");
    case EFBIG:
      return Message::of("the file would be larger than allowed; choose another place.");
    case ENAMETOOLONG:
      return Message::of("the name is too long; shorten it.");
    case ELOOP:
      return Message::of("its links lead in a circle; choose another place.");
    case EMFILE:
    case ENFILE:
      return Message::of("too many files are open; close some programs and try again.");
    default:
      return Message::of("%1; try another place.", std::system_category().message(error));
  }
}

ModelError too_long(const fs::path& file, std::size_t limit) {
  return ModelError(
      Message::of("%1 is larger than %2 bytes, which is the most that is read; choose another file.",
                  file.string(), limit));
}

void check_readable(const PlainFile& opened, const fs::path& file, std::size_t limit) {
  switch (opened.kind()) {
    case PlainFile::Kind::not_opened:
      if (opened.error() == ENOENT)
        throw ModelError(Message::of("%1 does not exist; check the name.", file.string()));
      throw ModelError(Message::of("%1 cannot be opened: %2", file.string(), why(opened.error())));
    case PlainFile::Kind::unknown:
      throw ModelError(Message::of("%1 cannot be read: %2", file.string(), why(opened.error())));
    case PlainFile::Kind::folder:
      throw ModelError(Message::of("%1 is a folder; choose a file in it.", file.string()));
    case PlainFile::Kind::other:
      throw ModelError(Message::of("%1 is not a plain file; choose another one.", file.string()));
    case PlainFile::Kind::plain:
      break;
  }
  if (opened.size() > limit) throw too_long(file, limit);
}

std::size_t read_some(PlainFile& opened, const fs::path& file, char* into, std::size_t most) {
  const auto count = opened.read(into, most);
  if (!count) throw ModelError(Message::of("%1 cannot be read: %2", file.string(), why(opened.error())));
  return *count;
}

}  // namespace scalpmark::models
