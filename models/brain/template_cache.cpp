#include "models/brain/template_cache.h"

#include <array>
#include <bit>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <string>
#include <string_view>
#include <system_error>

#include "geometry/base/error.h"
#include "models/files/byte_key.h"
#include "models/files/keyed_file.h"
#include "models/files/safe_file.h"

namespace scalpmark::models {

namespace fs = std::filesystem;
using Eigen::Vector3d;
using geometry::Atlas;
using geometry::TemplateBrain;
using geometry::Triangle;

namespace {

// Counts up when what is kept changes, or how it is made.
constexpr std::string_view magic = "scalpmark-template-brain 1\n";
constexpr std::string_view prefix = "template-brain-";
constexpr std::size_t largest_cache = std::size_t{128} << 20U;  // bytes; about 10 MB are usual
constexpr std::size_t most_items = 10'000'000;

std::string file_name(std::uint64_t key) {
  std::array<char, 17> text{};
  std::snprintf(text.data(), text.size(), "%016llx", static_cast<unsigned long long>(key));
  return std::string(prefix) + text.data() + ".bin";
}

// Numbers are kept as this machine has them: a cache does not travel.

class Writer {
public:
  template <class Number>
  void number(Number value) {
    std::array<char, sizeof(Number)> raw{};
    std::memcpy(raw.data(), &value, sizeof(Number));
    bytes.append(raw.data(), raw.size());
  }
  void count(std::size_t n) { number(static_cast<std::uint64_t>(n)); }
  void text(const std::string& words) {
    count(words.size());
    bytes += words;
  }
  void point(const Vector3d& p) {
    for (int k = 0; k < 3; ++k) number(p[k]);
  }
  void atlas(const Atlas& a) {
    for (const int n : a.size) number(static_cast<std::int32_t>(n));
    for (int r = 0; r < 3; ++r)
      for (int c = 0; c < 4; ++c) number(a.to_voxel(r, c));
    count(a.names.size());
    for (const auto& name : a.names) text(name);
    count(a.label.size());
    bytes.append(reinterpret_cast<const char*>(a.label.data()), a.label.size());
  }
  std::string bytes;
};

/// Reads what Writer wrote; anything else ends in a Damaged.
struct Damaged {};

class Reader {
public:
  explicit Reader(const fs::path& file) : file_(file, largest_cache) {}
  void bytes(void* into, std::size_t count) {
    if (!file_.take(into, count)) throw Damaged{};
  }
  template <class Number>
  Number number() {
    Number value{};
    bytes(&value, sizeof value);
    return value;
  }
  std::size_t count(std::size_t bytes_each, std::size_t most = most_items) {
    std::size_t n = 0;
    if (!file_.take_count(n, bytes_each) || n > most) throw Damaged{};
    return n;
  }
  std::string text() {
    std::string words(count(1, 1000), '\0');
    bytes(words.data(), words.size());
    return words;
  }
  Vector3d point() {
    Vector3d p;
    bytes(p.data(), 3 * sizeof(double));
    return p;
  }
  Atlas atlas() {
    Atlas a;
    std::size_t voxels = 1;
    for (int& n : a.size) {
      n = number<std::int32_t>();
      if (n < 1 || n > 1024) throw Damaged{};
      voxels *= static_cast<std::size_t>(n);
    }
    for (int r = 0; r < 3; ++r)
      for (int c = 0; c < 4; ++c) a.to_voxel(r, c) = number<double>();
    a.names.resize(count(1, 256));
    for (auto& name : a.names) name = text();
    if (count(1, largest_cache) != voxels) throw Damaged{};
    if (!file_.append(a.label, voxels)) throw Damaged{};
    return a;
  }
  [[nodiscard]] bool ends_well() { return file_.ends_well(); }

private:
  KeyedFile file_;
};

TemplateBrain parsed(const fs::path& file, std::uint64_t key) {
  static_assert(sizeof(Vector3d) == 3 * sizeof(double) && sizeof(Triangle) == 3 * sizeof(std::int32_t));
  Reader in(file);
  std::string begins(magic.size(), '\0');
  in.bytes(begins.data(), begins.size());
  if (begins != magic || in.number<std::uint64_t>() != key) throw Damaged{};
  std::vector<Vector3d> vertices(in.count(sizeof(Vector3d)));
  in.bytes(vertices.data(), vertices.size() * sizeof(Vector3d));
  std::vector<Triangle> triangles(in.count(sizeof(Triangle)));
  in.bytes(triangles.data(), triangles.size() * sizeof(Triangle));
  std::vector<TemplateBrain::Position> landmarks(in.count(sizeof(Vector3d), 1000));
  for (auto& l : landmarks) {
    l.name = in.text();
    l.at = in.point();
  }
  Atlas areas = in.atlas(), gyri = in.atlas();
  if (!in.ends_well()) throw Damaged{};
  return {geometry::Surface(std::move(vertices), std::move(triangles)), std::move(landmarks),
          std::move(areas), std::move(gyri)};
}

}  // namespace

std::optional<TemplateBrain> read_template_cache(const fs::path& folder, std::uint64_t key) {
  if (folder.empty()) return {};
  try {
    return parsed(folder / file_name(key), key);
  } catch (const Damaged&) {
    return {};
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

bool write_template_cache(const fs::path& folder, std::uint64_t key, const TemplateBrain& brain) noexcept {
  if (folder.empty()) return false;
  try {
    Writer out;
    out.bytes = magic;
    out.number(key);
    out.count(brain.surface.vertices().size());
    for (const auto& v : brain.surface.vertices()) out.point(v);
    out.count(brain.surface.triangles().size());
    for (const auto& t : brain.surface.triangles())
      for (const int corner : t) out.number(static_cast<std::int32_t>(corner));
    out.count(brain.landmarks.size());
    for (const auto& l : brain.landmarks) {
      out.text(l.name);
      out.point(l.at);
    }
    out.atlas(brain.areas);
    out.atlas(brain.gyri);
    out.number(byte_key(out.bytes));

    fs::create_directories(folder);
    const std::string name = file_name(key);
    write_whole(folder / name, out.bytes);
    std::error_code ignored;  // an older one that stays takes room, no more
    for (const auto& entry : fs::directory_iterator(folder, ignored)) {
      const std::string other = entry.path().filename().string();
      if (other != name && other.starts_with(prefix) && other.ends_with(".bin"))
        fs::remove(entry.path(), ignored);
    }
    return true;
  } catch (...) {
    return false;  // a cache is a favour; the brain is made again next time
  }
}

}  // namespace scalpmark::models
