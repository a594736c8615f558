#include "models/heads/skin_reading.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <limits>
#include <new>
#include <optional>
#include <string>
#include <vector>

#include "geometry/base/error.h"
#include "models/files/error.h"
#include "models/heads/message_bytes.h"
#include "models/heads/reading_process.h"

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

bool say(int out, Said what, const void* bytes, std::size_t count) {
  const auto length = static_cast<std::uint64_t>(count);
  return answer_bytes(out, &what, 1) && answer_bytes(out, &length, sizeof length) &&
         answer_bytes(out, bytes, count);
}

bool say(int out, Said what, const std::string& text) {
  return say(out, what, text.data(), text.size());
}

/// The MB of memory that this run and what it starts may take, if somebody bounded it closer than reading a
/// head is.
std::optional<std::uint64_t> bounded_mb(const ReadingLimits& limits) {
  const auto mb = memory_bound_mb();
  return mb && *mb < limits.memory_mb ? mb : std::nullopt;
}

Message too_little_memory(const std::string& name, std::uint64_t mb, const ReadingLimits& limits) {
  return Message::of(
      "%1 could not be read: this run may take %2 MB of memory, and reading a head up to %3 MB; give it more, or save the head thinner in the program that made it.",
      name, mb, limits.memory_mb);
}

/// What the process that reads is called with; answer_reading() understands it.
std::vector<std::string> words_for(const fs::path& program, const SkinRequest& request,
                                   const ReadingLimits& limits) {
  return {program.string(),
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
}

[[noreturn]] void refuse_broken(ReadingProcess& reader, const SkinRequest& request,
                                const ReadingLimits& limits) {
  const std::string name = request.file.string();
  if (reader.stuck())
    throw ModelError(Message::of(
        "%1 could not be read: there was no progress for %2 seconds; save it again, or with fewer triangles, in the program that made it.",
        name, limits.silent_seconds));
  if (reader.went_over_limits())
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

bool answer_skin_request(const SkinRequest& request, const ReadingLimits& limits, int out,
                         const SkinReading& read_here) {
  const auto outside_mb = bounded_mb(limits);
  keep_process_to(limits.memory_mb, limits.cpu_seconds);
  try {
    const SkinImport read = read_here(request, [&](const Message& what, double fraction) {
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
    ReadingProcess reader(program, words_for(program, request, limits));
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
