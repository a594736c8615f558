#include "geometry/surface/box_tree.h"

#include <algorithm>
#include <array>
#include <memory>

#include "geometry/base/all_cores.h"
#include "geometry/base/index.h"

namespace scalpmark::geometry {

namespace {

constexpr int block_size = 512;         // triangles; about a hundred times as many make a head
constexpr int worth_sharing = 1 << 15;  // triangles, from which on another thread pays
constexpr int deepest_shared = 3;       // levels: eight threads at most

}  // namespace

BoxTree::BoxTree(const std::vector<Eigen::Vector3d>& vertices,
                 const std::vector<std::array<int, 3>>& triangles)
    : vertices_(vertices),
      triangles_(triangles),
      node_count_(static_cast<int>(triangles.size()) - 1),
      boxes_(triangles.size()),
      children_(2 * triangles.size()),
      faces_(triangles.size()),
      block_roots_(triangles.size() / 64 + 1, 0) {
  const int count = static_cast<int>(triangles.size());
  if (count < 2) {  // a tree of one triangle has no node
    faces_[0] = 0;
    return;
  }
  centres_.reserve(triangles.size());
  for (int f = 0; f < count; ++f) centres_.push_back({box_of(f).center(), f});
  for (const Part& part : make_top({0, count, 0, 0}, 0)) {
    blocks_.push_back(std::make_unique<Block>(part));
    block_roots_[at(part.root()) / 64] |= std::uint64_t{1} << (at(part.root()) % 64);
  }
}

BoxTree::Volume BoxTree::box_of(int face) const {
  Volume box;
  for (const int corner : triangles_[at(face)]) box.extend(vertices_[at(corner)]);
  return box;
}

// Two go as they are; of three the last two are parted, so that a single one always comes last.
BoxTree::Halves BoxTree::split(const Part& part) const {
  const int middle = part.size() == 3 ? part.from + 2 : part.from + part.size() / 2;
  const int dim = part.dim, next = (dim + 1) % 3;
  if (part.size() > 2)
    std::nth_element(centres_.begin() + part.from, centres_.begin() + middle, centres_.begin() + part.to,
                     [dim](const Centre& a, const Centre& b) { return a.at[dim] < b.at[dim]; });
  const Part left{part.from, middle, part.base, next};
  return {left, {middle, part.to, part.base + left.size() - 1, next}};
}

void BoxTree::set_children(int node, const Halves& halves) const {
  const auto child = [&](const Part& half) {
    return half.size() == 1 ? node_count_ + half.from : half.root();
  };
  children_[2 * at(node)] = child(halves.left);
  children_[2 * at(node) + 1] = child(halves.right);
}

/// Both halves are there already.
void BoxTree::join(int node, const Halves& halves) const {
  const auto box = [&](const Part& half) {
    return half.size() == 1 ? box_of(centres_[at(half.from)].face) : boxes_[at(half.root())];
  };
  std::construct_at(&boxes_[at(node)], box(halves.left).merged(box(halves.right)));
  set_children(node, halves);
}

std::vector<BoxTree::Part> BoxTree::make_top(const Part& part, int depth) const {
  if (part.size() <= block_size) {
    Volume box;
    for (int i = part.from; i < part.to; ++i) box.extend(box_of(centres_[at(i)].face));
    std::construct_at(&boxes_[at(part.root())], box);
    return {part};
  }
  const Halves halves = split(part);
  std::array<std::vector<Part>, 2> blocks;
  const bool shared = part.size() >= worth_sharing && depth < deepest_shared;
  on_all_cores(
      2, [&](size_t half) { blocks[half] = make_top(half == 0 ? halves.left : halves.right, depth + 1); },
      shared ? 0 : 1);
  join(part.root(), halves);
  blocks[0].insert(blocks[0].end(), blocks[1].begin(), blocks[1].end());
  return std::move(blocks[0]);
}

void BoxTree::make(const Part& part) const {
  if (part.size() == 1) {
    faces_[at(part.from)] = centres_[at(part.from)].face;
    return;
  }
  const Halves halves = split(part);
  make(halves.left);
  make(halves.right);
  join(part.root(), halves);
}

// The root has its box, which others may be looking at; all else of the block is seen by nobody yet.
void BoxTree::make_block(Block& block) const {
  std::call_once(block.once, [&] {
    const Halves halves = split(block.part);
    make(halves.left);
    make(halves.right);
    set_children(block.part.root(), halves);
  });
}

bool BoxTree::is_block(int node) const {
  return (block_roots_[at(node) / 64] >> (at(node) % 64) & 1U) != 0;
}

void BoxTree::getChildren(Index node, VolumeIterator& volumes, VolumeIterator& volumes_end,
                          ObjectIterator& objects, ObjectIterator& objects_end) const {
  volumes = volumes_end = nullptr;
  objects = objects_end = nullptr;
  if (node < 0) {
    objects = &faces_[0];
    objects_end = objects + triangles_.size();
    return;
  }
  if (is_block(node))
    make_block(**std::lower_bound(blocks_.begin(), blocks_.end(), node,
                                  [](const auto& block, int root) { return block->part.root() < root; }));
  const int* pair = &children_[2 * at(node)];
  const int boxes = pair[1] < node_count_ ? 2 : pair[0] < node_count_ ? 1 : 0;
  if (boxes > 0) {
    volumes = pair;
    volumes_end = pair + boxes;
  }
  if (boxes < 2) {
    objects = &faces_[at(pair[boxes] - node_count_)];
    objects_end = objects + (2 - boxes);
  }
}

void BoxTree::complete() const {
  on_all_cores(blocks_.size(), [&](size_t i) { make_block(*blocks_[i]); });
}

}  // namespace scalpmark::geometry
