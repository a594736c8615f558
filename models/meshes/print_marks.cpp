#include "models/meshes/print_marks.h"

#include <Eigen/Core>
#include <bit>
#include <cstring>
#include <map>
#include <unordered_map>

namespace scalpmark::models {

namespace {

static_assert(std::endian::native == std::endian::little, "STL is little-endian, and read as it stands");

/// A corner's twelve bytes: equal places have equal ones, and that is all that is asked of them here.
using CornerBytes = std::string;

template <class Number>
Number number_at(const std::string& bytes, std::size_t at) {
  Number n{};
  std::memcpy(&n, bytes.data() + at, sizeof n);
  return n;
}

Eigen::Vector3f corner_at(const std::string& bytes, std::size_t at) {
  return {number_at<float>(bytes, at), number_at<float>(bytes, at + 4), number_at<float>(bytes, at + 8)};
}

/// What the walls tell: of each corner of a top's rim where it stands on the skin, and of each mark which way
/// it was lifted.
struct Lifted {
  std::unordered_map<CornerBytes, CornerBytes> down;
  std::map<std::uint16_t, Eigen::Vector3f> by_mark;
};

Lifted read_walls(const std::string& bytes, std::size_t count) {
  Lifted lifted;
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t at = stl::before_triangles + i * stl::triangle;
    const auto says = number_at<std::uint16_t>(bytes, at + stl::bytes_at);
    if ((says & print_mark::wall) == 0 || (says & print_mark::first_wall) == 0) continue;
    const std::size_t foot = at + stl::corners_at, top = foot + stl::corner;
    lifted.down[bytes.substr(top, stl::corner)] = bytes.substr(foot, stl::corner);
    lifted.by_mark.try_emplace(says & print_mark::most, corner_at(bytes, top) - corner_at(bytes, foot));
  }
  return lifted;
}

/// A top's corners, back on the skin.
void lower(std::string& triangle, const Lifted& lifted, const Eigen::Vector3f& by) {
  for (std::size_t k = 0; k < 3; ++k) {
    const std::size_t at = stl::corners_at + k * stl::corner;
    const CornerBytes corner = triangle.substr(at, stl::corner);
    if (const auto known = lifted.down.find(corner); known != lifted.down.end()) {
      triangle.replace(at, stl::corner, known->second);
    } else {
      const Eigen::Vector3f low = corner_at(corner, 0) - by;
      std::memcpy(triangle.data() + at, low.data(), stl::corner);
    }
  }
}

}  // namespace

std::string without_print_marks(std::string bytes) {
  if (!bytes.starts_with(print_heading) || bytes.size() < stl::before_triangles) return bytes;
  const std::size_t count = number_at<std::uint32_t>(bytes, stl::heading);
  if (bytes.size() != stl::before_triangles + count * stl::triangle) return bytes;
  const Lifted lifted = read_walls(bytes, count);
  std::string out = bytes.substr(0, stl::before_triangles);
  out.reserve(bytes.size());
  std::uint32_t kept = 0;
  for (std::size_t i = 0; i < count; ++i) {
    std::string triangle = bytes.substr(stl::before_triangles + i * stl::triangle, stl::triangle);
    const auto says = number_at<std::uint16_t>(triangle, stl::bytes_at);
    if ((says & print_mark::wall) != 0) continue;
    if (const auto mark = lifted.by_mark.find(says); mark != lifted.by_mark.end())
      lower(triangle, lifted, mark->second);
    out += triangle;
    ++kept;
  }
  std::memcpy(out.data() + stl::heading, &kept, sizeof kept);
  return out;
}

}  // namespace scalpmark::models
