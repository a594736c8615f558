#include "models/files/plain_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>

namespace scalpmark::models {

PlainFile::PlainFile(const std::filesystem::path& file) {
  // Without O_NONBLOCK, opening a pipe would wait for a writer for ever.
  descriptor_ = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  struct stat status {};
  if (descriptor_ < 0) {
    error_ = errno;
  } else if (::fstat(descriptor_, &status) != 0) {
    error_ = errno;
    kind_ = Kind::unknown;
  } else {
    kind_ = S_ISDIR(status.st_mode) ? Kind::folder : S_ISREG(status.st_mode) ? Kind::plain : Kind::other;
    if (kind_ == Kind::plain) size_ = static_cast<std::uintmax_t>(status.st_size);
  }
}

PlainFile::~PlainFile() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

std::optional<std::size_t> PlainFile::read(char* into, std::size_t most) {
  for (;;) {
    const ssize_t count = ::read(descriptor_, into, most);
    if (count >= 0) return static_cast<std::size_t>(count);
    error_ = errno;
    if (error_ != EINTR) return {};
  }
}

std::optional<bool> is_this_users(const std::filesystem::path& file) {
  struct stat status {};
  if (::stat(file.c_str(), &status) != 0) return {};
  return status.st_uid == ::geteuid();
}

bool may_be_written(const std::filesystem::path& file) {
  return ::access(file.c_str(), W_OK) == 0;
}

}  // namespace scalpmark::models
