#include "geometry/hands/fitting_skin.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

#include "geometry/head/face_region.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// Of two normal errors together, 95 of 100 have squares below this (chi squared, two degrees of freedom:
/// -2 ln 0.05).
constexpr double usual_squares = 5.991;
constexpr double nowhere = std::numeric_limits<double>::infinity();
/// In place of infinity, on a separate piece of skin, so that a tape that was not laid can count as nothing.
constexpr double longer_than_any_mm = 1e6;
/// Triangles that follow each other lie near each other in most files: looked through or passed over
/// together.
constexpr size_t block_size = 64;

/// What the tapes miss a place by, in standard deviations of a reading; zero for tapes that were not read.
using Misses = Eigen::Vector4d;
using Corners = std::array<Misses, 3>;

/// A triangle that fits in part, and where in it the squares are least.
struct Fit {
  SurfacePoint best;
  double squares = 0;
  int patch = -1;
};

/// Nowhere among places whose misses lie between these are the squares less: a tape whose circle does not
/// cross them misses by the nearest.
double at_least(const Misses& low, const Misses& high) {
  return low.cwiseMax(-high).cwiseMax(0.0).squaredNorm();
}

/// Where along the way from `a` to `b` (0 to 1) the squares are least.
double least_between(const Misses& a, const Misses& b) {
  const Misses way = b - a;
  const double length = way.squaredNorm();
  return length > 0 ? std::clamp(-a.dot(way) / length, 0.0, 1.0) : 0.0;
}

/// The squares are a convex function of the place in the triangle.
Fit least_in(const Corners& m, int face) {
  Fit best{{face, Vector3d::Unit(0)}, m[0].squaredNorm()};
  const auto offer = [&](const Vector3d& weights) {
    const double squares = (weights[0] * m[0] + weights[1] * m[1] + weights[2] * m[2]).squaredNorm();
    if (squares < best.squares) best = {{face, weights}, squares};
  };
  const Misses u = m[1] - m[0], v = m[2] - m[0];
  const double uu = u.squaredNorm(), uv = u.dot(v), vv = v.squaredNorm(), det = uu * vv - uv * uv;
  if (det > 1e-12 * uu * vv) {
    const double mu = -u.dot(m[0]), mv = -v.dot(m[0]);
    const double s = (mu * vv - mv * uv) / det, t = (mv * uu - mu * uv) / det;
    if (s >= 0 && t >= 0 && s + t <= 1) {
      offer({1 - s - t, s, t});
      return best;
    }
  }
  for (int k = 0; k < 3; ++k) {
    const int to = (k + 1) % 3;
    const double share = least_between(m[static_cast<size_t>(k)], m[static_cast<size_t>(to)]);
    Vector3d weights = Vector3d::Zero();
    weights[k] = 1 - share;
    weights[to] = share;
    offer(weights);
  }
  return best;
}

/// The farthest from `at` of what fits in a triangle: corners that do, and where its edges leave what fits
/// (the squares along an edge are a parabola).
double reach_in(const Surface& skin, const Corners& m, int face, const Vector3d& at, double squares) {
  double reach = 0;
  for (int k = 0; k < 3; ++k) {
    const int to = (k + 1) % 3;
    const Vector3d &start = skin.corner(face, k), &end = skin.corner(face, to);
    const Misses &a = m[static_cast<size_t>(k)], way = m[static_cast<size_t>(to)] - a;
    if (a.squaredNorm() <= squares) reach = std::max(reach, (start - at).norm());
    const double aa = way.squaredNorm(), ab = a.dot(way), root = ab * ab - aa * (a.squaredNorm() - squares);
    if (!(aa > 0) || !(root >= 0)) continue;
    for (const double sign : {-1.0, 1.0}) {
      const double share = (-ab + sign * std::sqrt(root)) / aa;
      if (share > 0 && share < 1) reach = std::max(reach, (start + share * (end - start) - at).norm());
    }
  }
  return reach;
}

}  // namespace

/// The search for what fits one set of tapes.
class FittingSkin::Search {
public:
  Search(const FittingSkin& map, const FourTapes& tapes, double reading_mm)
      : map_(map), head_(map.head_), skin_(map.head_.skin()) {
    for (size_t i = 0; i < tapes.size(); ++i)
      if (tapes[i]) {
        tapes_mm_[static_cast<Eigen::Index>(i)] = *tapes[i];
        per_mm_[static_cast<Eigen::Index>(i)] = 1 / reading_mm;
      }
  }

  std::vector<FittingPatch> patches() {
    gather();
    std::vector<std::vector<size_t>> patches;
    for (size_t first = 0; first < fits_.size(); ++first)
      if (fits_[first].patch < 0 && fits_[first].squares <= least_ + most_squares)
        patches.push_back(flooded({first}, static_cast<int>(patches.size()), least_ + most_squares));
    std::vector<FittingPatch> found;
    for (const std::vector<size_t>& patch : patches) found.push_back(measured(patch));
    std::sort(found.begin(), found.end(),
              [](const FittingPatch& a, const FittingPatch& b) { return a.squares < b.squares; });
    return found;
  }

private:
  [[nodiscard]] Misses missed(const Eigen::Vector4d& from_mm) const {
    return (from_mm - tapes_mm_).cwiseProduct(per_mm_);
  }
  [[nodiscard]] Misses at(int vertex) const { return missed(map_.from_mm_[static_cast<size_t>(vertex)]); }
  [[nodiscard]] Corners corners(int face) const {
    const Triangle& t = skin_.triangle(face);
    return {at(t[0]), at(t[1]), at(t[2])};
  }

  /// Lists all triangles that fit a place of the head, in their order: as good as the best by what may still
  /// fit and, for the spread of the worst of these, by what is usual. Blocks that may have the best come
  /// first.
  void gather() {
    constexpr double more = most_squares + usual_squares;
    std::vector<std::pair<double, size_t>> blocks;
    for (size_t i = 0; i < map_.blocks_.size(); ++i)
      blocks.emplace_back(at_least(missed(map_.blocks_[i].low), missed(map_.blocks_[i].high)), i);
    std::sort(blocks.begin(), blocks.end());
    for (const auto& [squares, block] : blocks) {
      if (!(squares <= least_ + more)) break;
      const size_t end = std::min((block + 1) * block_size, skin_.triangles().size());
      for (size_t f = block * block_size; f < end; ++f) offer(static_cast<int>(f), more);
    }
    std::erase_if(fits_, [&](const Fit& f) { return f.squares > least_ + more; });
    std::sort(fits_.begin(), fits_.end(),
              [](const Fit& a, const Fit& b) { return a.best.face < b.best.face; });
  }

  void offer(int face, double more) {
    const Corners m = corners(face);
    if (!(at_least(m[0].cwiseMin(m[1]).cwiseMin(m[2]), m[0].cwiseMax(m[1]).cwiseMax(m[2])) <= least_ + more))
      return;
    const Fit fit = least_in(m, face);
    if (!(fit.squares <= least_ + more) || on_face(head_, skin_.position(fit.best))) return;
    least_ = std::min(least_, fit.squares);
    fits_.push_back(fit);
  }

  /// Index into the list; its size for a triangle that is not in it.
  [[nodiscard]] size_t index_of(int face) const {
    const auto found = std::lower_bound(fits_.begin(), fits_.end(), face,
                                        [](const Fit& f, int wanted) { return f.best.face < wanted; });
    return found != fits_.end() && found->best.face == face ? static_cast<size_t>(found - fits_.begin())
                                                            : fits_.size();
  }

  /// The patch grown over edges to all triangles with at most these squares that belong to no other.
  std::vector<size_t> flooded(std::vector<size_t> patch, int id, double squares) {
    for (const size_t own : patch) fits_[own].patch = id;
    for (size_t next = 0; next < patch.size(); ++next)
      for (int edge = 0; edge < 3; ++edge) {
        const size_t other = index_of(skin_.neighbour(fits_[patch[next]].best.face, edge).face);
        if (other == fits_.size() || fits_[other].patch >= 0 || fits_[other].squares > squares) continue;
        fits_[other].patch = id;
        patch.push_back(other);
      }
    return patch;
  }

  FittingPatch measured(std::vector<size_t> patch) {
    const Fit best = fits_[*std::min_element(
        patch.begin(), patch.end(), [&](size_t a, size_t b) { return fits_[a].squares < fits_[b].squares; })];
    const Vector3d centre = skin_.position(best.best);
    const auto reach_mm = [&](double squares) {
      double reach = 0;
      for (const size_t i : patch)
        if (fits_[i].squares <= squares)
          reach = std::max(reach,
                           reach_in(skin_, corners(fits_[i].best.face), fits_[i].best.face, centre, squares));
      return reach;
    };
    // Where tapes cross well, what fits is an ellipse, and all of it reaches farther than what is usual by
    // the root of the two levels (2.04). Where they touch it is long, with two middles perhaps: then no part
    // of it may be far beyond the spread.
    constexpr double farthest_of_spread = 2.5;
    const double usual = best.squares + usual_squares, fits = least_ + most_squares;
    double spread_mm = 0;
    if (usual < fits)
      spread_mm = reach_mm(fits) / farthest_of_spread;
    else  // the last of it may fit worse than the worst that counts as a place
      patch = flooded(patch, fits_[patch.front()].patch, usual);
    return {best.best, best.squares, std::max(spread_mm, reach_mm(usual))};
  }

  const FittingSkin& map_;
  const Head& head_;
  const Surface& skin_;
  Eigen::Vector4d tapes_mm_ = Eigen::Vector4d::Zero(), per_mm_ = Eigen::Vector4d::Zero();
  std::vector<Fit> fits_;
  double least_ = nowhere;
};

FittingSkin::FittingSkin(const Head& head, const std::array<const std::vector<double>*, 4>& from_mm)
    : head_(head) {
  const Surface& skin = head_.skin();
  from_mm_.resize(skin.vertices().size());
  for (size_t v = 0; v < from_mm_.size(); ++v)
    for (size_t i = 0; i < from_mm.size(); ++i)
      from_mm_[v][static_cast<Eigen::Index>(i)] = std::min((*from_mm[i])[v], longer_than_any_mm);
  const std::vector<Triangle>& faces = skin.triangles();
  for (size_t first = 0; first < faces.size(); first += block_size) {
    Block block{Eigen::Vector4d::Constant(nowhere), Eigen::Vector4d::Constant(-nowhere)};
    for (size_t f = first; f < std::min(first + block_size, faces.size()); ++f)
      for (const int corner : faces[f]) {
        const Eigen::Vector4d& here = from_mm_[static_cast<size_t>(corner)];
        block.low = block.low.cwiseMin(here);
        block.high = block.high.cwiseMax(here);
      }
    blocks_.push_back(block);
  }
}

std::array<double, 4> FittingSkin::tapes_to(const SurfacePoint& p) const {
  const Triangle& t = head_.skin().triangle(p.face);
  Eigen::Vector4d mm = Eigen::Vector4d::Zero();
  for (int k = 0; k < 3; ++k) mm += p.weights[k] * from_mm_[static_cast<size_t>(t[static_cast<size_t>(k)])];
  return {mm[0], mm[1], mm[2], mm[3]};
}

std::vector<FittingPatch> FittingSkin::patches(const FourTapes& tapes, double reading_mm) const {
  return Search(*this, tapes, reading_mm).patches();
}

}  // namespace scalpmark::geometry
