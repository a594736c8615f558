#include "models/files/part_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace scalpmark::models {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view part_prefix = ".scalpmark-", part_suffix = ".part";
constexpr int most_names = 100;

/// Several threads and programs may write at once; each takes a name of its own.
std::string next_name() {
  static std::atomic<unsigned> counter{0};
  return std::string(part_prefix) + std::to_string(::getpid()) + "-" + std::to_string(counter++) +
         std::string(part_suffix);
}

}  // namespace

PartFile::PartFile(const fs::path& folder, unsigned mode) : folder_(folder) {
  open_without_name(mode);
  if (descriptor_ < 0) open_with_name(mode);
}

PartFile::~PartFile() {
  if (!name_.empty()) ::unlink(name_.c_str());
  if (descriptor_ >= 0) ::close(descriptor_);
}

void PartFile::open_without_name(unsigned mode) {
#ifdef O_TMPFILE
  // Without /proc it could not be given a name later.
  if (::access("/proc/self/fd", X_OK) != 0) return;
  descriptor_ = ::open(folder_.c_str(), O_WRONLY | O_TMPFILE | O_CLOEXEC, mode);
  if (descriptor_ >= 0) (void)lock();
#else
  (void)mode;
#endif
}

void PartFile::open_with_name(unsigned mode) {
  for (int attempt = 0; attempt < most_names; ++attempt) {
    const fs::path name = folder_ / next_name();
    descriptor_ = ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, mode);
    if (descriptor_ < 0) {
      error_ = errno;
      if (error_ != EEXIST) return;
      continue;
    }
    // Who clears up may have found it between its making and its lock, and have taken it for left over.
    struct stat status {};
    if (lock() && ::fstat(descriptor_, &status) == 0 && status.st_nlink > 0) {
      name_ = name;
      return;
    }
    ::close(descriptor_);
    descriptor_ = -1;
    error_ = EEXIST;
  }
}

// A file system without locks is as good: nobody can take one on a part there, so nobody clears it.
bool PartFile::lock() const {
  return ::flock(descriptor_, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK;
}

bool PartFile::take_permissions_of(const fs::path& target) {
  constexpr unsigned permissions = 0777;
  struct stat old {};
  if (::stat(target.c_str(), &old) != 0 || ::fchmod(descriptor_, old.st_mode & permissions) == 0) return true;
  error_ = errno;
  return false;
}

bool PartFile::write(std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor_, bytes.data(), bytes.size());
    if (written >= 0) {
      bytes.remove_prefix(static_cast<std::size_t>(written));
    } else if (errno != EINTR) {
      error_ = errno;
      return false;
    }
  }
  if (::fsync(descriptor_) == 0) return true;
  error_ = errno;
  return false;
}

// The new name itself reaches the disk with the folder; where a file system cannot do that, the file is whole
// all the same.
void PartFile::sync_folder() const {
  const int folder = ::open(folder_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder < 0) return;
  ::fsync(folder);
  ::close(folder);
}

bool PartFile::rename_to(const fs::path& target) {
  for (int attempt = 0; name_.empty(); ++attempt) {
    const fs::path name = folder_ / next_name();
    const std::string own = "/proc/self/fd/" + std::to_string(descriptor_);
    if (::linkat(AT_FDCWD, own.c_str(), AT_FDCWD, name.c_str(), AT_SYMLINK_FOLLOW) == 0)
      name_ = name;
    else if (errno != EEXIST || attempt == most_names) {
      error_ = errno;
      return false;
    }
  }
  if (::rename(name_.c_str(), target.c_str()) != 0) {
    error_ = errno;
    return false;
  }
  name_.clear();
  const int descriptor = descriptor_;
  descriptor_ = -1;
  ::close(descriptor);
  sync_folder();
  return true;
}

void clear_left_over_parts(const fs::path& folder) noexcept {
  try {
    std::vector<fs::path> parts;
    std::error_code error;
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
      const std::string name = at->path().filename().string();
      if (name.starts_with(part_prefix) && name.ends_with(part_suffix)) parts.push_back(at->path());
    }
    for (const fs::path& part : parts) {
      const int descriptor = ::open(part.c_str(), O_WRONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
      if (descriptor < 0) continue;
      struct stat status {};
      if (::fstat(descriptor, &status) == 0 && S_ISREG(status.st_mode) && status.st_uid == ::geteuid() &&
          ::flock(descriptor, LOCK_EX | LOCK_NB) == 0)
        ::unlink(part.c_str());
      ::close(descriptor);
    }
  } catch (const std::exception&) {
    // Clearing up is a favour; what is left is found by the next write.
  }
}

}  // namespace scalpmark::models
