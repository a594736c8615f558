#include "geometry/field/sphere_field.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "geometry/base/angles.h"
#include "geometry/base/error.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// mu0 / 4 pi times 1 A/us: 1e-7 * 1e6, V/m.
constexpr double per_amp_us = 0.1;
/// The trapezoid rule's error: exp(-this), 1e-9.
constexpr double digits = 20.7;
/// Nodes come in fours, for the sake of processors that work on several numbers at once.
constexpr int lanes = 4;
using Lanes = Eigen::Array<double, lanes, 1>;
/// No point is asked for so near a wire that it takes more.
constexpr int most_nodes = 100000;

/// Two rows of nodes, each its coarsest first, then what lies between, and so on: the first 16, 32, 64
/// ... of a row are evenly spaced. Counts in between the powers of two save a sixth of the work.
struct NodeRow {
  int coarsest, finest;
};
constexpr std::array node_rows{NodeRow{16, 128}, NodeRow{24, 192}};
/// How many nodes of which row; by row and count, the fewest first.
struct Choice {
  std::size_t row;
  int nodes;
  double enough_from;  ///< cosh(eta)
};

const std::vector<Choice>& choices() {
  static const std::vector<Choice> all = [] {
    std::vector<Choice> made;
    for (std::size_t row = 0; row < node_rows.size(); ++row)
      for (int n = node_rows[row].coarsest; n <= node_rows[row].finest; n *= 2)
        made.push_back({row, n, std::cosh(digits / n)});
    std::sort(made.begin(), made.end(), [](const auto& a, const auto& b) { return a.nodes < b.nodes; });
    return made;
  }();
  return all;
}

/// A node's place around its turn.
struct Around {
  double cosine, sine;
};

Around at_share(double share_of_turn) {
  return {std::cos(2 * pi * share_of_turn), std::sin(2 * pi * share_of_turn)};
}

/// The nodes of a row, in their order.
std::vector<Around> nodes_in(const NodeRow& row) {
  std::vector<Around> nodes;
  for (int i = 0; i < row.coarsest; ++i) nodes.push_back(at_share(static_cast<double>(i) / row.coarsest));
  for (int n = row.coarsest; n < row.finest; n *= 2)
    for (int i = 0; i < n; ++i) nodes.push_back(at_share((i + 0.5) / n));
  return nodes;
}

const std::vector<Around>& nodes_of_row(std::size_t row) {
  static const std::array all{nodes_in(node_rows[0]), nodes_in(node_rows[1])};
  return all[row];
}

/// What of each node of a turn does not depend on the point, one row of numbers after the other.
struct Nodes {
  enum Number { x, y, z, dx, dy, dz, far, radial, numbers };
  std::size_t count = 0;
  std::vector<double> values;

  Nodes() = default;
  /// About `centre`; dl without its share of the turn's angle.
  Nodes(const Turn& turn, const Vector3d& centre, const Around* around, std::size_t how_many)
      : count(how_many), values(numbers * how_many) {
    for (std::size_t i = 0; i < count; ++i) {
      const double c = around[i].cosine, s = around[i].sine;
      const Vector3d at = turn.centre - centre + turn.radius_mm * (c * turn.along + s * turn.across);
      const Vector3d dl = turn.radius_mm * (c * turn.across - s * turn.along);
      for (int k = 0; k < 3; ++k) {
        put(static_cast<std::size_t>(x + k), i) = at[k];
        put(static_cast<std::size_t>(dx + k), i) = dl[k];
      }
      put(far, i) = at.norm();
      put(radial, i) = at.dot(dl) / at.norm();
    }
  }
  double& put(std::size_t number, std::size_t i) { return values[number * count + i]; }
  [[nodiscard]] Lanes get(Number number, int i) const {
    return Eigen::Map<const Lanes>(values.data() + static_cast<std::size_t>(number) * count +
                                   static_cast<std::size_t>(i));
  }
};

/// The integral over the first `nodes` of them, its part along r left in.
Vector3d integral_over(const Nodes& nodes, int count, const Vector3d& r) {
  const double r2 = r.squaredNorm();
  Lanes sx = Lanes::Zero(), sy = sx, sz = sx;
  for (int i = 0; i < count; i += lanes) {
    const Lanes x = nodes.get(Nodes::x, i), y = nodes.get(Nodes::y, i), z = nodes.get(Nodes::z, i);
    const Lanes far = nodes.get(Nodes::far, i);
    const Lanes along = x * r.x() + y * r.y() + z * r.z();
    const Lanes far2 = far * far;
    const Lanes a = (far2 - 2 * along + r2).sqrt();
    const Lanes p = far * a + far2 - along;
    const Lanes per_ap = (a * p).inverse();
    const Lanes of_dl = p * per_ap;
    const Lanes of_far = nodes.get(Nodes::radial, i) * (a + far) * per_ap;
    sx += of_far * x - of_dl * nodes.get(Nodes::dx, i);
    sy += of_far * y - of_dl * nodes.get(Nodes::dy, i);
    sz += of_far * z - of_dl * nodes.get(Nodes::dz, i);
  }
  return 2 * pi / count * Vector3d(sx.sum(), sy.sum(), sz.sum());
}

/// cosh(eta) of a turn as seen from a point; both from one place.
double width_seen_from(const Turn& turn, const Vector3d& point) {
  const Vector3d q = point - turn.centre;
  const double along = q.dot(turn.along.cross(turn.across));
  const double across = std::sqrt(std::max(0.0, q.squaredNorm() - along * along));
  const double twice = 2 * turn.radius_mm * across;
  return twice > 0 ? (q.squaredNorm() + turn.radius_mm * turn.radius_mm) / twice
                   : std::numeric_limits<double>::infinity();
}

/// From a place to the turn's nearest point.
double nearest_mm(const Turn& turn, const Vector3d& place) {
  const Vector3d q = turn.centre - place;
  const double along = q.dot(turn.along.cross(turn.across));
  const double across = std::sqrt(std::max(0.0, q.squaredNorm() - along * along));
  return std::hypot(along, across - turn.radius_mm);
}

/// Where a point is so near that no row has nodes enough.
Vector3d integral_close_by(const Turn& turn, const Vector3d& centre, const Vector3d& r, double width) {
  const double wanted = digits / std::acosh(std::max(width, 1 + 1e-9));
  const int count = lanes * static_cast<int>(std::ceil(std::min<double>(most_nodes, wanted) / lanes));
  std::vector<Around> around(static_cast<std::size_t>(count));
  for (std::size_t i = 0; i < around.size(); ++i) around[i] = at_share(static_cast<double>(i) / count);
  return integral_over(Nodes(turn, centre, around.data(), around.size()), count, r);
}

const Choice* row_for(double width) {
  for (const Choice& c : choices())
    if (width >= c.enough_from) return &c;
  return nullptr;
}

void refuse_beyond(const Vector3d& r, double reach_mm) {
  if (!(r.squaredNorm() < reach_mm * reach_mm))
    throw GeometryError(Message::of(
        "This point lies further from the middle of the round model head than the coil's wires do; give one inside the head."));
}

/// Its part square to r.
Vector3d square_to(const Vector3d& r, const Vector3d& v) {
  const double r2 = r.squaredNorm();
  return r2 > 0 ? Vector3d(v - v.dot(r) / r2 * r) : Vector3d(Vector3d::Zero());
}

}  // namespace

struct SphereField::Wire {
  Turn turn;
  std::array<Nodes, node_rows.size()> nodes;

  Wire(const Turn& t, const Vector3d& centre) : turn(t) {
    for (std::size_t row = 0; row < node_rows.size(); ++row)
      nodes[row] = {turn, centre, nodes_of_row(row).data(), nodes_of_row(row).size()};
  }
};

SphereField::SphereField(const Vector3d& centre, const std::vector<Turn>& turns) : centre_(centre) {
  if (turns.empty())
    throw GeometryError(Message::of(
        "This coil's file tells of no windings, so nothing is known of its field; choose another."));
  auto wires = std::make_shared<std::vector<Wire>>();
  wires->reserve(turns.size());
  reach_mm_ = std::numeric_limits<double>::infinity();
  for (const Turn& turn : turns) {
    wires->emplace_back(turn, centre);
    reach_mm_ = std::min(reach_mm_, nearest_mm(turn, centre));
  }
  if (!(reach_mm_ > 0))
    throw GeometryError(Message::of("A wire of the coil runs through the middle of the round model head."));
  wires_ = std::move(wires);
}

Vector3d SphereField::at(const Vector3d& point) const {
  const Vector3d r = point - centre_;
  refuse_beyond(r, reach_mm_);
  Vector3d sum = Vector3d::Zero();
  for (const Wire& wire : *wires_) {
    const double width = width_seen_from(wire.turn, point);
    const Choice* choice = row_for(width);
    sum += choice != nullptr ? integral_over(wire.nodes[choice->row], choice->nodes, r)
                             : integral_close_by(wire.turn, centre_, r, width);
  }
  return per_amp_us * square_to(r, sum);
}

Vector3d field_at(const Vector3d& centre, const std::vector<Turn>& turns, const Vector3d& point) {
  const Vector3d r = point - centre;
  Vector3d sum = Vector3d::Zero();
  for (const Turn& turn : turns) {
    refuse_beyond(r, nearest_mm(turn, centre));
    const double width = width_seen_from(turn, point);
    const Choice* choice = row_for(width);
    sum += choice != nullptr ? integral_over(Nodes(turn, centre, nodes_of_row(choice->row).data(),
                                                   static_cast<std::size_t>(choice->nodes)),
                                             choice->nodes, r)
                             : integral_close_by(turn, centre, r, width);
  }
  return per_amp_us * square_to(r, sum);
}

}  // namespace scalpmark::geometry
