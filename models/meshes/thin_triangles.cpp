#include "models/meshes/thin_triangles.h"

#include <Eigen/Cholesky>
#include <Eigen/Geometry>
#include <algorithm>
#include <cstdint>
#include <queue>

#include "geometry/base/index.h"

namespace scalpmark::models {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using geometry::Triangle;

using geometry::at;

namespace {

/// Sum of area-weighted squared distances from planes: x'Ax + 2b'x + c.
struct Quadric {
  Matrix3d A = Matrix3d::Zero();
  Vector3d b = Vector3d::Zero();
  double c = 0, area = 0;

  void operator+=(const Quadric& o) {
    A += o.A;
    b += o.b;
    c += o.c;
    area += o.area;
  }
  /// Mean squared distance, mm2.
  [[nodiscard]] double error(const Vector3d& x) const {
    return area > 0 ? std::max(0.0, (x.dot(A * x) + 2 * b.dot(x) + c) / area) : 0;
  }
};

struct Candidate {
  double cost;
  int a, b;
  std::uint32_t stamp;  // of a plus of b when it was made; older than theirs = stale
  bool operator<(const Candidate& o) const { return cost > o.cost; }
};

class Thinner {
public:
  explicit Thinner(Mesh mesh) : mesh_(std::move(mesh)) {
    const std::size_t count = mesh_.vertices.size();
    faces_.resize(count);
    quadrics_.resize(count);
    stamps_.assign(count, 0);
    marks_.assign(count, 0);
    for (std::size_t f = 0; f < mesh_.triangles.size(); ++f) {
      const auto& t = mesh_.triangles[f];
      const Vector3d& p = mesh_.vertices[at(t[0])];
      Vector3d n = (mesh_.vertices[at(t[1])] - p).cross(mesh_.vertices[at(t[2])] - p);
      const double area = n.norm() / 2;
      Quadric q;
      if (area > 0) {
        n.normalize();
        const double d = -n.dot(p);
        q.A = area * n * n.transpose();
        q.b = area * d * n;
        q.c = area * d * d;
        q.area = area;
      }
      for (const int v : t) {
        faces_[at(v)].push_back(static_cast<int>(f));
        quadrics_[at(v)] += q;
      }
    }
  }

  Mesh run(std::size_t most) {
    std::size_t left = mesh_.triangles.size();
    if (left <= most) return packed();
    std::vector<Candidate> all;
    all.reserve(mesh_.triangles.size() * 3 / 2);
    for (const auto& t : mesh_.triangles)
      for (std::size_t k = 0; k < 3; ++k)
        if (t[k] < t[(k + 1) % 3]) all.push_back(candidate(t[k], t[(k + 1) % 3]));
    std::priority_queue<Candidate> queue(std::less<Candidate>{}, std::move(all));
    while (left > most && !queue.empty()) {
      const Candidate c = queue.top();
      queue.pop();
      if (faces_[at(c.a)].empty() || faces_[at(c.b)].empty() ||
          c.stamp != stamps_[at(c.a)] + stamps_[at(c.b)])
        continue;
      if (!collapse(c.a, c.b)) continue;
      left -= 2;
      ++stamps_[at(c.a)];
      for (const int n : neighbours(c.a)) queue.push(candidate(c.a, n));
    }
    return packed();
  }

private:
  [[nodiscard]] Vector3d best_place(int a, int b) const {
    Quadric q = quadrics_[at(a)];
    q += quadrics_[at(b)];
    const Vector3d middle = (mesh_.vertices[at(a)] + mesh_.vertices[at(b)]) / 2;
    // Along directions that no plane holds, the middle of the edge decides.
    const double pull = 1e-2 * q.A.trace() + 1e-12;
    const Vector3d x = (q.A + pull * Matrix3d::Identity()).ldlt().solve(pull * middle - q.b);
    const double reach = (mesh_.vertices[at(a)] - mesh_.vertices[at(b)]).norm();
    return x.allFinite() && (x - middle).norm() <= reach ? x : middle;
  }

  [[nodiscard]] Candidate candidate(int a, int b) const {
    Quadric q = quadrics_[at(a)];
    q += quadrics_[at(b)];
    const double length2 = (mesh_.vertices[at(a)] - mesh_.vertices[at(b)]).squaredNorm();
    // A collapse that leaves the surface by a tenth of a millimetre weighs as much as an edge of 1 mm.
    return {length2 + 100 * q.error((mesh_.vertices[at(a)] + mesh_.vertices[at(b)]) / 2), a, b,
            stamps_[at(a)] + stamps_[at(b)]};
  }

  [[nodiscard]] std::vector<int> neighbours(int v) const {
    std::vector<int> around;
    for (const int f : faces_[at(v)]) {
      const auto& t = mesh_.triangles[at(f)];
      const std::size_t k = t[0] == v ? 0 : t[1] == v ? 1 : 2;
      around.push_back(t[(k + 1) % 3]);  // closed: each neighbour follows v exactly once
    }
    return around;
  }

  bool keeps_manifold(int a, int b) {
    ++mark_;
    for (const int n : neighbours(a)) marks_[at(n)] = mark_;
    int common = 0;
    for (const int n : neighbours(b)) {
      if (marks_[at(n)] != mark_) continue;
      ++common;
      if (faces_[at(n)].size() <= 3) return false;
    }
    return common == 2;
  }

  [[nodiscard]] bool keeps_facing(int moving, int other, const Vector3d& to) const {
    for (const int f : faces_[at(moving)]) {
      const auto& t = mesh_.triangles[at(f)];
      if (t[0] == other || t[1] == other || t[2] == other) continue;
      const std::size_t k = t[0] == moving ? 0 : t[1] == moving ? 1 : 2;
      const Vector3d& from = mesh_.vertices[at(moving)];
      const Vector3d& p = mesh_.vertices[at(t[(k + 1) % 3])];
      const Vector3d& q = mesh_.vertices[at(t[(k + 2) % 3])];
      const Vector3d before = (p - from).cross(q - from), after = (p - to).cross(q - to);
      // Turned by more than about 50 degrees, or flattened: leave the edge.
      if (after.dot(before) < 0.65 * after.norm() * before.norm()) return false;
      const double longest2 =
          std::max({(p - to).squaredNorm(), (q - to).squaredNorm(), (p - q).squaredNorm()});
      if (after.norm() < 0.05 * longest2) return false;
    }
    return true;
  }

  bool collapse(int a, int b) {
    if (!keeps_manifold(a, b)) return false;
    const Vector3d to = best_place(a, b);
    if (!keeps_facing(a, b, to) || !keeps_facing(b, a, to)) return false;
    for (const int f : faces_[at(b)]) {
      auto& t = mesh_.triangles[at(f)];
      if (t[0] == a || t[1] == a || t[2] == a) {
        for (const int v : t)
          if (v != b) std::erase(faces_[at(v)], f);
        t = {-1, -1, -1};
        continue;
      }
      std::replace(t.begin(), t.end(), b, a);
      faces_[at(a)].push_back(f);
    }
    std::vector<int>().swap(faces_[at(b)]);
    mesh_.vertices[at(a)] = to;
    quadrics_[at(a)] += quadrics_[at(b)];
    return true;
  }

  Mesh packed() {
    Mesh out;
    std::vector<int> renamed(mesh_.vertices.size(), -1);
    for (Triangle t : mesh_.triangles) {
      if (t[0] < 0) continue;
      for (int& v : t) {
        int& name = renamed[at(v)];
        if (name < 0) {
          name = static_cast<int>(out.vertices.size());
          out.vertices.push_back(mesh_.vertices[at(v)]);
        }
        v = name;
      }
      out.triangles.push_back(t);
    }
    return out;
  }

  Mesh mesh_;
  std::vector<std::vector<int>> faces_;
  std::vector<Quadric> quadrics_;
  std::vector<std::uint32_t> stamps_, marks_;
  std::uint32_t mark_ = 0;
};

}  // namespace

Mesh thin_triangles(Mesh mesh, std::size_t most) {
  return Thinner(std::move(mesh)).run(most);
}

}  // namespace scalpmark::models
