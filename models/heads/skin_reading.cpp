#include "models/heads/skin_reading.h"

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <limits>
#include <new>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/error.h"
#include "models/files/error.h"
#include "models/heads/message_bytes.h"
#include "models/mri/mri_file.h"

extern char** environ;  // NOLINT(readability-redundant-declaration): glibc declares it, POSIX leaves it to us

namespace scalpmark::models {

namespace {

namespace fs = std::filesystem;

// --- Messages: one letter, the length of what follows, what follows. Both ends are the same program on the
// same machine, so numbers travel as they are.

enum class Said : char {
  progress = 'p',
  note = 'n',
  refused = 'r',
  vertices = 'v',
  triangles = 't',
  done = 'd'
};

bool write_all(int out, const void* bytes, std::size_t count) {
  const char* at = static_cast<const char*>(bytes);
  while (count > 0) {
    const ssize_t n = ::write(out, at, count);
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) return false;
    at += n;
    count -= static_cast<std::size_t>(n);
  }
  return true;
}

bool say(int out, Said what, const void* bytes, std::size_t count) {
  const auto length = static_cast<std::uint64_t>(count);
  return write_all(out, &what, 1) && write_all(out, &length, sizeof length) && write_all(out, bytes, count);
}

bool say(int out, Said what, const std::string& text) {
  return say(out, what, text.data(), text.size());
}

// --- The process that reads

/// Bounds what this process may take, unless it was bounded closer from outside.
void limit(decltype(RLIMIT_AS) what, std::uint64_t most) {
  rlimit given{};
  if (::getrlimit(what, &given) != 0) return;
  const auto value = std::min(static_cast<rlim_t>(most), given.rlim_cur);
  const rlimit both{value, value};
  ::setrlimit(what, &both);
}

/// The MB of memory that this run and what it starts may take, if somebody bounded it closer than reading a
/// head is.
std::optional<std::uint64_t> bounded_mb(const ReadingLimits& limits) {
  rlimit given{};
  if (::getrlimit(RLIMIT_AS, &given) != 0 || given.rlim_cur == RLIM_INFINITY) return {};
  const auto mb = static_cast<std::uint64_t>(given.rlim_cur) >> 20U;
  return mb < limits.memory_mb ? std::optional(mb) : std::nullopt;
}

Message too_little_memory(const std::string& name, std::uint64_t mb, const ReadingLimits& limits) {
  return Message::of(
      "%1 could not be read: this run may take %2 MB of memory, and reading a head up to %3 MB; give it more, or save the head thinner in the program that made it.",
      name, mb, limits.memory_mb);
}

void keep_to(const ReadingLimits& limits) {
  ::prctl(PR_SET_PDEATHSIG, SIGKILL);
  limit(RLIMIT_CORE, 0);
  limit(RLIMIT_FSIZE, 0);  // it answers through a pipe and has no file to write
  limit(RLIMIT_CPU, limits.cpu_seconds);
  // Sanitizers map terabytes that they never touch.
#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
  limit(RLIMIT_AS, limits.memory_mb << 20U);
#endif
}

// --- The process that asks

class Reader {
public:
  Reader(const fs::path& program, const SkinRequest& request, const ReadingLimits& limits) {
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0)
      throw ModelError(
          Message::of("Too many files are open to read a file through; close other programs and try again."));
    from_ = ends[0];
    std::vector<std::string> words{program.string(),
                                   "read-skin",
                                   request.kind == HeadKind::mri ? "mri" : "mesh",
                                   !request.unit                       ? "any"
                                   : *request.unit == Unit::millimetre ? "mm"
                                   : *request.unit == Unit::centimetre ? "cm"
                                   : *request.unit == Unit::inch       ? "in"
                                                                       : "m",
                                   std::to_string(limits.memory_mb),
                                   std::to_string(limits.cpu_seconds),
                                   request.file.string()};
    std::vector<char*> command;
    command.reserve(words.size() + 1);
    for (std::string& word : words) command.push_back(word.data());
    command.push_back(nullptr);
    posix_spawn_file_actions_t files;
    ::posix_spawn_file_actions_init(&files);
    ::posix_spawn_file_actions_addopen(&files, 0, "/dev/null", O_RDONLY, 0);
    ::posix_spawn_file_actions_adddup2(&files, ends[1], 1);
    // What libraries print about a file they choke on is nothing a technician can use.
    ::posix_spawn_file_actions_addopen(&files, 2, "/dev/null", O_WRONLY, 0);
    const int wrong = ::posix_spawn(&child_, program.c_str(), &files, nullptr, command.data(), environ);
    ::posix_spawn_file_actions_destroy(&files);
    ::close(ends[1]);
    if (wrong != 0) {
      child_ = -1;
      ::close(from_);
      if (wrong == EAGAIN || wrong == ENOMEM)
        throw ModelError(Message::of(
            "The system lets this user start no more programs, and a head is read by one of its own; close some and try again."));
      throw ModelError(Message::of(
          "The part of the program that reads heads, %1, does not start (%2); build or install the program again.",
          program.string(), std::strerror(wrong)));
    }
  }
  Reader(const Reader&) = delete;
  Reader& operator=(const Reader&) = delete;
  ~Reader() {
    ::close(from_);
    if (child_ <= 0) return;
    ::kill(child_, SIGKILL);
    while (::waitpid(child_, nullptr, 0) < 0 && errno == EINTR) {
    }
  }

  /// Waits for the next bytes. False at the end of what it says, and when it is silent for too long.
  bool take(void* bytes, std::size_t count, int silent_seconds) {
    char* at = static_cast<char*>(bytes);
    while (count > 0) {
      pollfd ready{from_, POLLIN, 0};
      const int n = ::poll(&ready, 1, silent_seconds * 1000);
      if (n < 0 && errno == EINTR) continue;
      if (n == 0) stuck_ = true;
      if (n <= 0) return false;
      const ssize_t got = ::read(from_, at, count);
      if (got < 0 && errno == EINTR) continue;
      if (got <= 0) return false;
      at += got;
      count -= static_cast<std::size_t>(got);
    }
    return true;
  }

  [[nodiscard]] bool stuck() const { return stuck_; }

  /// How it ended, if it did: what it says has broken off, so it is ending or has gone wrong.
  std::optional<int> status() {
    constexpr int patience_ms = 1000;
    for (int waited_ms = 0; waited_ms < patience_ms; ++waited_ms) {
      int status = 0;
      if (::waitpid(child_, &status, WNOHANG) == child_) {
        child_ = -1;
        return status;
      }
      ::poll(nullptr, 0, 1);
    }
    return {};
  }

private:
  int from_ = -1;
  pid_t child_ = -1;
  bool stuck_ = false;
};

[[noreturn]] void refuse_broken(Reader& reader, const SkinRequest& request, const ReadingLimits& limits) {
  const std::string name = request.file.string();
  if (reader.stuck())
    throw ModelError(Message::of(
        "%1 could not be read: there was no progress for %2 seconds; save it again, or with fewer triangles, in the program that made it.",
        name, limits.silent_seconds));
  const std::optional<int> status = reader.status();
  if (status && WIFSIGNALED(*status) && (WTERMSIG(*status) == SIGXCPU || WTERMSIG(*status) == SIGKILL))
    throw ModelError(Message::of(
        "%1 could not be read: it takes more time or memory than a head does; save it anew, or thinner, in the program that made it.",
        name));
  if (const auto mb = bounded_mb(limits)) throw ModelError(too_little_memory(name, *mb, limits));
  throw ModelError(Message::of(
      "%1 could not be read: it is damaged in a way that stops the reader; save it anew in the program that made it.",
      name));
}

template <class T>
std::vector<T> unpacked(const std::string& bytes, const std::string& name) {
  if (bytes.size() % sizeof(T) != 0)
    throw ModelError(Message::of("%1 was read only in part; try again.", name));
  std::vector<T> items(bytes.size() / sizeof(T));
  if (!items.empty()) std::memcpy(items.data(), bytes.data(), bytes.size());
  return items;
}

}  // namespace

SkinImport read_skin(const SkinRequest& request, const Progress& progress) {
  return request.kind == HeadKind::mri ? read_mri(request.file, progress)
                                       : read_mesh(request.file, request.unit, progress);
}

bool answer_skin_request(const SkinRequest& request, const ReadingLimits& limits, int out) {
  const auto outside_mb = bounded_mb(limits);
  keep_to(limits);
  try {
    const SkinImport read = read_skin(request, [&](const Message& what, double fraction) {
      std::string text(sizeof fraction, '\0');
      std::memcpy(text.data(), &fraction, sizeof fraction);
      (void)say(out, Said::progress, text + bytes_of(what));
    });
    bool written = true;
    for (const Message& note : read.notes) written = written && say(out, Said::note, bytes_of(note));
    std::vector<std::array<double, 3>> vertices;
    vertices.reserve(read.skin.vertices().size());
    for (const auto& v : read.skin.vertices()) vertices.push_back({v.x(), v.y(), v.z()});
    const auto& triangles = read.skin.triangles();
    return written && say(out, Said::vertices, vertices.data(), vertices.size() * sizeof(vertices[0])) &&
           say(out, Said::triangles, triangles.data(), triangles.size() * sizeof(triangles[0])) &&
           say(out, Said::done, "");
  } catch (const std::bad_alloc&) {
    if (outside_mb)
      return say(out, Said::refused, bytes_of(too_little_memory(request.file.string(), *outside_mb, limits)));
    return say(
        out, Said::refused,
        bytes_of(Message::of(
            "%1 could not be read: it needs more than the %2 MB of memory that a head may take; save it thinner in the program that made it.",
            request.file.string(), limits.memory_mb)));
  } catch (const geometry::Refusal& refusal) {
    return say(out, Said::refused, bytes_of(refusal.message()));
  } catch (const std::exception& error) {
    return say(out, Said::refused, bytes_of(Message::verbatim(error.what())));
  }
}

SkinReading read_apart(fs::path program, ReadingLimits limits) {
  return [program = std::move(program), limits](const SkinRequest& request, const Progress& progress) {
    const std::string name = request.file.string();
    Reader reader(program, request, limits);
    std::vector<Message> notes;
    std::vector<std::array<double, 3>> points;
    std::vector<geometry::Triangle> triangles;
    // A reader gone wrong may say anything.
    const auto message = [&](std::string_view bytes) {
      auto taken = message_from(bytes);
      if (!taken) refuse_broken(reader, request, limits);
      return *taken;
    };
    for (;;) {
      char what = 0;
      std::uint64_t length = 0;
      if (!reader.take(&what, 1, limits.silent_seconds) ||
          !reader.take(&length, sizeof length, limits.silent_seconds))
        refuse_broken(reader, request, limits);
      constexpr std::uint64_t longest = std::uint64_t{1} << 31U;
      if (length > longest) refuse_broken(reader, request, limits);
      std::string said(static_cast<std::size_t>(length), '\0');
      if (!reader.take(said.data(), said.size(), limits.silent_seconds))
        refuse_broken(reader, request, limits);
      switch (static_cast<Said>(what)) {
        case Said::progress: {
          double fraction = 0;
          if (said.size() < sizeof fraction) refuse_broken(reader, request, limits);
          std::memcpy(&fraction, said.data(), sizeof fraction);
          const Message doing = message(std::string_view(said).substr(sizeof fraction));
          if (progress) progress(doing, fraction);
          break;
        }
        case Said::note: {
          constexpr std::size_t most_notes = 1000;
          notes.push_back(message(said));
          if (notes.size() > most_notes) refuse_broken(reader, request, limits);
          break;
        }
        case Said::refused:
          throw ModelError(message(said));
        case Said::vertices:
          points = unpacked<std::array<double, 3>>(said, name);
          break;
        case Said::triangles:
          triangles = unpacked<geometry::Triangle>(said, name);
          break;
        case Said::done: {
          std::vector<Eigen::Vector3d> vertices;
          vertices.reserve(points.size());
          for (const auto& p : points) vertices.emplace_back(p[0], p[1], p[2]);
          try {
            return SkinImport{geometry::Surface(std::move(vertices), std::move(triangles)), std::move(notes)};
          } catch (const geometry::GeometryError&) {
            refuse_broken(reader, request, limits);
          }
        }
        default:
          refuse_broken(reader, request, limits);
      }
    }
  };
}

}  // namespace scalpmark::models
