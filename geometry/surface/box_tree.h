#pragma once

#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <memory>
#include <mutex>
#include <vector>

namespace scalpmark::geometry {

/// A tree of boxes over triangles, for Eigen's BVIntersect and our own searches: the tree of Eigen's KdBVH,
/// node for node and number for number, made piecemeal. Most questions about a skin are about one side of a
/// head, and most of a tree's cost is in its lower levels: those of a stretch of skin are made on the first
/// look into it. Thread-safe. Internal to surface.cpp.
class BoxTree {
public:
  using Scalar = double;
  using Volume = Eigen::AlignedBox3d;
  using Object = int;  ///< a triangle's number
  using Index = int;
  using VolumeIterator = const int*;
  using ObjectIterator = const int*;

  /// Both are to outlive it.
  BoxTree(const std::vector<Eigen::Vector3d>& vertices, const std::vector<std::array<int, 3>>& triangles);

  // Named as Eigen asks for them.
  [[nodiscard]] Index getRootIndex() const { return node_count_ - 1; }
  [[nodiscard]] const Volume& getVolume(Index node) const { return boxes_[static_cast<size_t>(node)]; }
  void getChildren(Index node, VolumeIterator& volumes, VolumeIterator& volumes_end, ObjectIterator& objects,
                   ObjectIterator& objects_end) const;

  /// Makes all that is left, on all cores.
  void complete() const;

private:
  struct Centre {
    Eigen::Vector3d at;
    int face;
  };
  /// Triangles `from` to `to` (not included) in the tree's order, split along axis `dim`; their nodes stand
  /// one after another from `base` on, the root last.
  struct Part {
    int from, to, base, dim;
    [[nodiscard]] int size() const { return to - from; }
    [[nodiscard]] int root() const { return base + size() - 2; }
  };
  /// A part whose root has its box, and below it nothing yet.
  struct Block {
    explicit Block(const Part& p) : part(p) {}
    Part part;
    std::once_flag once;
  };
  struct Halves {
    Part left, right;
  };
  /// Memory that is first touched where it is written.
  template <class T>
  class Untouched {
  public:
    explicit Untouched(size_t count) : count_(count), items_(std::allocator<T>().allocate(count)) {}
    ~Untouched() { std::allocator<T>().deallocate(items_, count_); }
    Untouched(const Untouched&) = delete;
    Untouched& operator=(const Untouched&) = delete;
    T& operator[](size_t i) const { return items_[i]; }

  private:
    size_t count_;
    T* items_;
  };

  [[nodiscard]] Volume box_of(int face) const;
  [[nodiscard]] Halves split(const Part& part) const;
  void set_children(int node, const Halves& halves) const;
  void join(int node, const Halves& halves) const;
  [[nodiscard]] std::vector<Part> make_top(const Part& part, int depth) const;
  void make(const Part& part) const;
  void make_block(Block& block) const;
  [[nodiscard]] bool is_block(int node) const;

  const std::vector<Eigen::Vector3d>& vertices_;
  const std::vector<std::array<int, 3>>& triangles_;
  int node_count_;
  mutable std::vector<Centre> centres_;
  Untouched<Volume> boxes_;
  Untouched<int> children_;  // two a node; from node_count_ on they are places in faces_
  Untouched<int> faces_;
  std::vector<std::unique_ptr<Block>> blocks_;  // by their roots
  std::vector<std::uint64_t> block_roots_;      // a bit a node
};

}  // namespace scalpmark::geometry
