#include "viewer/page/kernel/skin_bytes.h"

#include <bit>
#include <cmath>
#include <cstddef>
#include <cstring>
#include <vector>

#include "geometry/base/error.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;

namespace {

static_assert(std::endian::native == std::endian::little);

std::int32_t whole_units(double mm) {
  return static_cast<std::int32_t>(std::lround(mm / skin_unit_mm));
}

double in_mm(std::int32_t units) {
  return units / 1000.0;
}

}  // namespace

geometry::Surface on_whole_micrometres(const geometry::Surface& skin) {
  std::vector<Vector3d> corners;
  corners.reserve(skin.vertices().size());
  for (const Vector3d& p : skin.vertices())
    corners.emplace_back(in_mm(whole_units(p.x())), in_mm(whole_units(p.y())), in_mm(whole_units(p.z())));
  return {std::move(corners), skin.triangles()};
}

std::string bytes_of(const geometry::Surface& skin) {
  std::vector<std::int32_t> all;
  all.reserve(2 + 3 * (skin.vertices().size() + skin.triangles().size()));
  all.push_back(static_cast<std::int32_t>(skin.vertices().size()));
  all.push_back(static_cast<std::int32_t>(skin.triangles().size()));
  for (const Vector3d& p : skin.vertices())
    for (const double v : p) all.push_back(whole_units(v));
  for (const geometry::Triangle& t : skin.triangles()) all.insert(all.end(), t.begin(), t.end());
  std::string bytes(all.size() * sizeof(std::int32_t), '\0');
  std::memcpy(bytes.data(), all.data(), bytes.size());
  return bytes;
}

geometry::Surface surface_from(std::span<const std::byte> bytes) {
  std::vector<std::int32_t> all(bytes.size() / sizeof(std::int32_t));
  std::memcpy(all.data(), bytes.data(), all.size() * sizeof(std::int32_t));
  const auto count = [&](std::size_t i) {
    return all.size() > i && all[i] > 0 ? static_cast<std::size_t>(all[i]) : 0;
  };
  const std::size_t corners = count(0), triangles = count(1);
  if (corners == 0 || triangles == 0 || all.size() != 2 + 3 * (corners + triangles))
    throw geometry::GeometryError(
        geometry::Message::of("The head in this page is damaged; have the page written again."));
  std::vector<Vector3d> places;
  places.reserve(corners);
  const std::int32_t* next = all.data() + 2;
  for (std::size_t i = 0; i < corners; ++i, next += 3)
    places.emplace_back(in_mm(next[0]), in_mm(next[1]), in_mm(next[2]));
  std::vector<geometry::Triangle> faces;
  faces.reserve(triangles);
  for (std::size_t i = 0; i < triangles; ++i, next += 3) faces.push_back({next[0], next[1], next[2]});
  return {std::move(places), std::move(faces)};
}

}  // namespace scalpmark::viewer
