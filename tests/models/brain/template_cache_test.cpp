#include "models/brain/template_cache.h"

#include <catch2/catch.hpp>

#include "tests/support/brains.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::read_template_cache;
using models::write_template_cache;
using tests::TemporaryFolder;

namespace {

constexpr std::uint64_t key = 0x0123456789abcdefULL;

/// With atlases small enough to be written many times.
geometry::TemplateBrain small_brain() {
  geometry::TemplateBrain brain = *tests::round_brain(75, 2);
  brain.areas = tests::halves("area left", "area right", 8);
  brain.gyri = tests::halves("left gyrus", "right gyrus", 9);
  return brain;
}

std::filesystem::path only_file(const TemporaryFolder& folder) {
  return std::filesystem::directory_iterator(folder.path())->path();
}

}  // namespace

TEST_CASE("a template brain comes out of the cache as it went in") {
  const TemporaryFolder folder;
  const auto brain = small_brain();
  CHECK_FALSE(read_template_cache(folder.path(), key));
  CHECK(write_template_cache(folder / "new folder", key, brain));
  const auto kept = read_template_cache(folder / "new folder", key);
  REQUIRE(kept);
  CHECK(kept->surface.vertices() == brain.surface.vertices());
  CHECK(kept->surface.triangles() == brain.surface.triangles());
  REQUIRE(kept->landmarks.size() == brain.landmarks.size());
  CHECK(kept->landmarks.back().name == brain.landmarks.back().name);
  CHECK(kept->landmarks.back().at == brain.landmarks.back().at);
  CHECK(kept->areas.label == brain.areas.label);
  CHECK(kept->gyri.names == brain.gyri.names);
  CHECK(kept->gyri.to_voxel.matrix() == brain.gyri.to_voxel.matrix());
  CHECK_FALSE(read_template_cache(folder / "new folder", key + 1));
}

TEST_CASE("a cache that is cut short, changed anywhere or another's is as if there were none") {
  const TemporaryFolder folder;
  write_template_cache(folder.path(), key, small_brain());
  const auto file = only_file(folder);
  const std::string bytes = tests::read_bytes(file);
  for (const std::size_t kept :
       {std::size_t{0}, std::size_t{7}, std::size_t{40}, bytes.size() / 2, bytes.size() - 1}) {
    tests::write_bytes(file, bytes.substr(0, kept));
    CHECK_FALSE(read_template_cache(folder.path(), key));
  }
  for (std::size_t at = 0; at < bytes.size(); at += bytes.size() / 50) {
    std::string changed = bytes;
    changed[at] = static_cast<char>(changed[at] ^ 0x10);
    tests::write_bytes(file, changed);
    CHECK_FALSE(read_template_cache(folder.path(), key));
  }
  tests::write_bytes(file, bytes);
  CHECK(read_template_cache(folder.path(), key));
}

TEST_CASE("a cache keeps one brain, and one that cannot be kept does no harm") {
  const TemporaryFolder folder;
  const auto brain = small_brain();
  tests::write_bytes(folder / "another program's", "mine");
  write_template_cache(folder.path(), key, brain);
  write_template_cache(folder.path(), key + 1, brain);
  CHECK(folder.count() == 2);
  CHECK(read_template_cache(folder.path(), key + 1));
  CHECK(tests::read_bytes(folder / "another program's") == "mine");

  CHECK_FALSE(
      write_template_cache(folder / "another program's", key, brain));  // a file where the folder should be
  CHECK_FALSE(read_template_cache(folder / "another program's", key));
  CHECK_FALSE(write_template_cache({}, key, brain));
  CHECK_FALSE(read_template_cache({}, key));
}
