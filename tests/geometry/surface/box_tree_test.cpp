#include "geometry/surface/box_tree.h"

#include <catch2/catch.hpp>
#include <random>
#include <thread>
#include <unsupported/Eigen/BVH>
#include <vector>

using namespace scalpmark;
using geometry::BoxTree;

namespace {

struct Soup {
  std::vector<Eigen::Vector3d> vertices;
  std::vector<std::array<int, 3>> triangles;
};

/// On whole numbers, so that many lie alike and a tree has to choose among them.
Soup soup_of(int count) {
  std::mt19937 random(7);
  std::uniform_int_distribution<int> place(-40, 40);
  Soup soup;
  for (int i = 0; i < 3 * count; ++i) soup.vertices.emplace_back(place(random), place(random), place(random));
  for (int i = 0; i < count; ++i) soup.triangles.push_back({3 * i, 3 * i + 1, 3 * i + 2});
  return soup;
}

using Eigens = Eigen::KdBVH<double, 3, int>;

Eigens eigens_tree(const Soup& soup) {
  std::vector<int> faces;
  std::vector<Eigen::AlignedBox3d> boxes;
  for (const auto& t : soup.triangles) {
    faces.push_back(static_cast<int>(faces.size()));
    boxes.emplace_back();
    for (const int corner : t) boxes.back().extend(soup.vertices[static_cast<size_t>(corner)]);
  }
  Eigens tree;
  tree.init(faces.begin(), faces.end(), boxes.begin(), boxes.end());
  return tree;
}

/// Nodes, boxes and triangles that are not in both trees alike.
int differences(const BoxTree& ours, const Eigens& theirs) {
  int count = ours.getRootIndex() == theirs.getRootIndex() ? 0 : 1;
  std::vector<int> waiting{theirs.getRootIndex()};
  while (!waiting.empty()) {
    const int node = waiting.back();
    waiting.pop_back();
    const int *v, *v_end, *o, *o_end, *own_v, *own_v_end, *own_o, *own_o_end;
    theirs.getChildren(node, v, v_end, o, o_end);
    ours.getChildren(node, own_v, own_v_end, own_o, own_o_end);
    if (std::vector<int>(v, v_end) != std::vector<int>(own_v, own_v_end) ||
        std::vector<int>(o, o_end) != std::vector<int>(own_o, own_o_end)) {
      ++count;
      continue;
    }
    for (; v != v_end; ++v) {
      if (!theirs.getVolume(*v).isApprox(ours.getVolume(*v), 0)) ++count;
      waiting.push_back(*v);
    }
  }
  return count;
}

}  // namespace

// Eigen's own tree (unsupported/Eigen/BVH).
TEST_CASE("the tree made piecemeal is Eigen's, node for node") {
  for (const int count : {1, 2, 3, 4, 5, 7, 100, 511, 512, 513, 1025, 3000, 40001}) {
    CAPTURE(count);
    const Soup soup = soup_of(count);
    const BoxTree tree(soup.vertices, soup.triangles);
    CHECK(differences(tree, eigens_tree(soup)) == 0);
  }
}

TEST_CASE("several threads that look into one tree at once find Eigen's") {
  const Soup soup = soup_of(20000);
  const Eigens theirs = eigens_tree(soup);
  const BoxTree tree(soup.vertices, soup.triangles);
  std::vector<int> wrong(4, -1);
  std::vector<std::thread> threads;
  for (int& count : wrong) threads.emplace_back([&] { count = differences(tree, theirs); });
  for (auto& thread : threads) thread.join();
  tree.complete();
  CHECK(wrong == std::vector<int>(4, 0));
  CHECK(differences(tree, theirs) == 0);
}
