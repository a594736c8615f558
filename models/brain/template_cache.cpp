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
#include "models/files/error.h"
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
  explicit Reader(std::string_view bytes) : left_(bytes) {}
  std::string_view take(std::size_t count) {
    if (count > left_.size()) throw Damaged{};
    const std::string_view taken = left_.substr(0, count);
    left_.remove_prefix(count);
    return taken;
  }
  template <class Number>
  Number number() {
    Number value{};
    std::memcpy(&value, take(sizeof(Number)).data(), sizeof(Number));
    return value;
  }
  std::size_t count(std::size_t most = most_items) {
    const auto n = number<std::uint64_t>();
    if (n > most) throw Damaged{};
    return static_cast<std::size_t>(n);
  }
  std::string text() { return std::string(take(count(1000))); }
  Vector3d point() {
    Vector3d p;
    for (int k = 0; k < 3; ++k) p[k] = number<double>();
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
    a.names.resize(count(256));
    for (auto& name : a.names) name = text();
    if (count(largest_cache) != voxels) throw Damaged{};
    const std::string_view label = take(voxels);
    a.label.assign(label.begin(), label.end());
    return a;
  }
  [[nodiscard]] bool done() const { return left_.empty(); }

private:
  std::string_view left_;
};

TemplateBrain parsed(std::string_view bytes, std::uint64_t key) {
  if (bytes.size() < 8) throw Damaged{};
  std::uint64_t check = 0;
  std::memcpy(&check, bytes.data() + bytes.size() - 8, 8);
  bytes.remove_suffix(8);
  if (byte_key(bytes) != check) throw Damaged{};
  Reader in(bytes);
  if (in.take(magic.size()) != magic || in.number<std::uint64_t>() != key) throw Damaged{};
  std::vector<Vector3d> vertices(in.count());
  for (auto& v : vertices) v = in.point();
  std::vector<Triangle> triangles(in.count());
  for (auto& t : triangles)
    for (int& corner : t) corner = in.number<std::int32_t>();
  std::vector<TemplateBrain::Position> landmarks(in.count(1000));
  for (auto& l : landmarks) {
    l.name = in.text();
    l.at = in.point();
  }
  Atlas areas = in.atlas(), gyri = in.atlas();
  if (!in.done()) throw Damaged{};
  return {geometry::Surface(std::move(vertices), std::move(triangles)), std::move(landmarks),
          std::move(areas), std::move(gyri)};
}

}  // namespace

std::optional<TemplateBrain> read_template_cache(const fs::path& folder, std::uint64_t key) {
  if (folder.empty()) return {};
  try {
    return parsed(read_whole(folder / file_name(key), largest_cache), key);
  } catch (const Damaged&) {
    return {};
  } catch (const ModelError&) {
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
