#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <cstdlib>
#include <functional>
#include <limits>
#include <memory>
#include <new>
#include <unordered_map>
#include <vector>

#include "geometry/paths/empty_ball.h"
#include "geometry/paths/nearest_first.h"
#include "geometry/surface/surface.h"

namespace scalpmark::geometry {

/// How the source is seen from a place on an edge by looking back out of a face: the source, or the last bend
/// on the way to it, lies unfolded at (x, y), y <= 0, with `before_mm` of path behind it. Floats: a millionth
/// of a head is enough.
struct EdgeView {
  float x = 0, y = 0;
  float before_mm = std::numeric_limits<float>::infinity();
  float best_mm = std::numeric_limits<float>::infinity();  ///< from the source to the place
};

/// Places on an edge (the middles of as many equal parts) for which the best view is kept.
inline constexpr size_t edge_view_places = 4;

/// Six hundred thousand of something of which a short path touches a few: memory that costs only where used,
/// and starts as zero.
template <class T>
class ZeroArray {
public:
  explicit ZeroArray(size_t count) : items_(static_cast<T*>(std::calloc(count, sizeof(T)))) {
    if (!items_) throw std::bad_alloc();
  }
  T& operator[](size_t i) { return items_.get()[i]; }
  const T& operator[](size_t i) const { return items_.get()[i]; }

private:
  struct Free {
    void operator()(T* items) const { std::free(items); }
  };
  std::unique_ptr<T, Free> items_;
};

/// Shortest paths from one skin point over the triangles, exact but for rounding: "windows" (stretches of an
/// edge that see the source along straight lines over the unfolded faces) spread from edge to edge, nearest
/// first but for a part of an edge: lengths do not depend on the order, only how much is looked at for
/// nothing. Chen and Han 1990 (one angle, one split), with the order and the filter of Xin and Wang 2009, ACM
/// Trans Graph 28:104; the filter is applied when a window comes, not once more when its turn does: on heads
/// and on rough balls that drops fewer than one window in a thousand and takes a tenth of the time. Paths
/// bend at saddle vertices (more than 360 degrees of skin around them) and at the border. Internal to
/// shortest_path.cpp and distance_field.cpp.
class WindowSpread {
public:
  enum class Keep { lengths, paths };

  WindowSpread(const Surface& skin, const SurfacePoint& source, Keep keep);

  /// Adds a skin point to be reached; call before run(). With the length of some path to it (a bound), what
  /// cannot lie on a path as short is left out, and the spread keeps to a narrow strip.
  void add_target(const SurfacePoint& target, double bound_mm = std::numeric_limits<double>::infinity());

  /// Keeps the best views of every edge (3 per face, in the order of faces and edges) while running.
  void keep_views(std::vector<std::array<EdgeView, edge_view_places>>& views) { views_ = &views; }

  /// Called every few thousand windows while running; what it throws ends the spread.
  void set_watch(const std::function<void()>& watch) { watch_ = watch; }

  /// Spreads until all targets are settled; without targets until all of this piece of skin is.
  void run();

  [[nodiscard]] double target_mm(size_t i) const { return targets_[i].best_mm; }
  [[nodiscard]] double vertex_mm(int v) const;
  /// Corner by corner from source to target (Keep::paths; the target must have been reached).
  [[nodiscard]] std::vector<Eigen::Vector3d> path_to(size_t i) const;
  [[nodiscard]] size_t windows_made() const { return made_; }

private:
  static constexpr std::uint32_t none = 0xffffffffU;

  /// A face, copied and laid flat over each edge on first touch.
  struct Face {
    std::array<double, 3> length, x, y;  // flaps, see unfold.h
    std::array<double, 3> angle_mm,
        angle_from;  // best way to the corner across each edge, and where it enters
    std::array<int, 3> corner;
    std::array<int, 3> across;  // 3 * face + edge on the other side, -1 at the border
    std::array<bool, 3> angle_taken;
  };
  enum class Way : std::uint8_t { unknown, source, along_edge, through_window };
  struct Vertex {
    double mm;
    double latest_mm;   // see latest_at(), once looked at
    double back_angle;  // of the way back: in `back_face`, counter-clockwise from its edge that starts here
    int back_face;
    std::uint32_t from;  // window or vertex, by `way`
    Way way;
    std::uint8_t bends;  // 0 not looked at yet, 1 paths never bend here, 2 they may
    bool latest_known;
  };
  enum class Came : std::uint8_t { from_root, past_start, past_end };
  struct Window {
    double x, y, before_mm;  // the unfolded root, y <= 0, and the path length up to it
    double begin, end;       // on the edge, mm from its start
    int edge;                // 3 * face + edge of the face it is about to cross
    int root;                // vertex where the path last bent; -1 for the source
    std::uint32_t parent;
    Came came;  // past which end of this edge the previous edge leads
  };
  struct Corner {
    int face;
    size_t k;
    double from, angle;  // where it starts in the turn round the vertex, and how wide it is; radians
  };
  struct Target {
    double bound_mm = std::numeric_limits<double>::infinity();  ///< of a known path
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
    EmptyBall ball;  ///< that paths to it have to go around
    SurfacePoint point;
    double best_mm = std::numeric_limits<double>::infinity();
    std::uint32_t from = none;
    double crossing = 0;  // for Way::through_window: where the path crosses the window's edge
    Way way = Way::unknown;
  };

  /// Laid flat on the first call.
  Face& face(int f);
  [[nodiscard]] const Face& known_face(int f) const;
  void fill(Face& into, int f) const;
  bool bends_at(int v);
  void reach_vertex(int v, double mm, Way way, std::uint32_t from, int back_face, double back_angle);
  void spread_from_vertex(int v);
  void add_window(const Window& w);
  [[nodiscard]] bool useless(const Window& w);
  void cross_face(const Window& w, std::uint32_t id);
  void try_targets(const Window& w, std::uint32_t id);
  void try_targets_at(int v);
  void try_views(const Window& w);
  std::uint32_t store(const Window& w);
  void find_worst_target();
  /// How long a path to the vertex may be at most if it is to reach a target as shortly as is known already.
  [[nodiscard]] double latest_at(int v);
  /// Whether no path of `mm` to the window reaches a target as shortly as is known already.
  [[nodiscard]] bool leads_nowhere(double mm, const Window& w);
  void trace(std::uint32_t window, Eigen::Vector2d towards, std::vector<Eigen::Vector3d>& line,
             int& bend) const;

  const Surface& skin_;
  SurfacePoint source_;
  int source_vertex_ = -1;
  Keep keep_;
  // In the order of first touch: a short path looks at some hundred faces, which lie all over the skin's 20
  // MB.
  static constexpr std::uint32_t faces_in_batch = 256;
  std::vector<std::unique_ptr<Face[]>> faces_;
  std::uint32_t face_count_ = 0;
  ZeroArray<std::uint32_t> face_place_;  // counted from 1; 0 for none
  ZeroArray<Vertex> vertices_;
  std::vector<Window> windows_;
  std::vector<std::uint32_t> spare_;
  NearestFirst<std::uint32_t> waiting_;  // windows, and vertices with the top bit set
  std::vector<Corner> ring_;             // round the vertex being spread from
  std::vector<Target> targets_;
  std::unordered_map<int, std::vector<size_t>> targets_in_face_, targets_at_vertex_;
  double worst_target_mm_ = std::numeric_limits<double>::infinity();
  std::vector<std::array<EdgeView, edge_view_places>>* views_ = nullptr;
  size_t made_ = 0;
  std::function<void()> watch_;
};

}  // namespace scalpmark::geometry
