#include "models/heads/kept_skins.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <string>

#include "models/files/error.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::HeadKind;
using models::KeptSkins;
using models::SkinRequest;
namespace fs = std::filesystem;

namespace {

void write(const fs::path& file, const std::string& text) {
  std::ofstream(file, std::ios::binary) << text;
}

/// A reader that counts how often it is asked.
struct Counted {
  int times = 0;
  models::SkinReading reading() {
    return [this](const SkinRequest&, const models::Progress&) {
      ++times;
      return models::SkinImport{tests::sphere(80 + times, 2),
                                {geometry::Message::of("Closed %1 small holes, up to %2 mm around.", times,
                                                       geometry::number(12.25, 2))}};
    };
  }
};

std::vector<fs::path> files_in(const fs::path& folder) {
  std::vector<fs::path> all;
  for (const auto& entry : fs::directory_iterator(folder)) all.push_back(entry.path());
  return all;
}

}  // namespace

TEST_CASE("a scan read before is there again as it was, whatever its file is called now") {
  const tests::TemporaryFolder folder;
  Counted counted;
  const auto read = models::read_once(counted.reading(), KeptSkins(folder / "heads"));
  write(folder / "scan.ply", "the bytes of a scan");
  const auto first = read({HeadKind::mesh, folder / "scan.ply", {}}, {});
  fs::rename(folder / "scan.ply", folder / "other.ply");
  const auto again = read({HeadKind::mesh, folder / "other.ply", {}}, {});
  CHECK(counted.times == 1);
  CHECK(again.skin.vertices() == first.skin.vertices());
  CHECK(again.skin.triangles() == first.skin.triangles());
  CHECK(again.notes == first.notes);
}

TEST_CASE("the file itself stays the truth: other bytes, another unit or kind are read anew") {
  const tests::TemporaryFolder folder;
  Counted counted;
  const auto read = models::read_once(counted.reading(), KeptSkins(folder / "heads"));
  write(folder / "scan.ply", "the bytes of a scan");
  (void)read({HeadKind::mesh, folder / "scan.ply", {}}, {});
  write(folder / "scan.ply", "the bytes of a scam");
  (void)read({HeadKind::mesh, folder / "scan.ply", {}}, {});
  CHECK(counted.times == 2);
  (void)read({HeadKind::mesh, folder / "scan.ply", models::Unit::centimetre}, {});
  CHECK(counted.times == 3);
  (void)read({HeadKind::mri, folder / "scan.ply", {}}, {});
  CHECK(counted.times == 4);
}

TEST_CASE("what glTF points at may change unseen, so it is read each time") {
  const tests::TemporaryFolder folder;
  Counted counted;
  const auto read = models::read_once(counted.reading(), KeptSkins(folder / "heads"));
  for (const char* name : {"scan.gltf", "scan.glb"}) {
    write(folder / name, "the bytes of a scan");
    for (int i = 0; i < 2; ++i) (void)read({HeadKind::mesh, folder / name, {}}, {});
  }
  CHECK(counted.times == 4);
}

TEST_CASE("a skin is kept for its user alone, without a name, and a damaged one does no harm") {
  const tests::TemporaryFolder folder;
  Counted counted;
  const auto read = models::read_once(counted.reading(), KeptSkins(folder / "heads"));
  write(folder / "patient.ply", "the bytes of a scan");
  const SkinRequest request{HeadKind::mesh, folder / "patient.ply", {}};
  (void)read(request, {});
  const auto files = files_in(folder / "heads");
  REQUIRE(files.size() == 1);
  CHECK(files[0].filename().string().find("patient") == std::string::npos);
  const auto open_to = [](const fs::path& path) {
    struct stat status {};
    REQUIRE(::stat(path.c_str(), &status) == 0);
    return status.st_mode & 0777U;
  };
  CHECK(open_to(files[0]) == 0600U);
  CHECK(open_to(folder / "heads") == 0700U);
  // A byte in the middle of it.
  {
    std::fstream kept(files[0], std::ios::in | std::ios::out | std::ios::binary);
    kept.seekp(200);
    kept.put('x');
  }
  (void)read(request, {});
  CHECK(counted.times == 2);
  fs::resize_file(files_in(folder / "heads")[0], 100);
  (void)read(request, {});
  CHECK(counted.times == 3);
  (void)read(request, {});
  CHECK(counted.times == 3);
}

TEST_CASE("no more than so many skins are kept, the last used, and all can be forgotten") {
  const tests::TemporaryFolder folder;
  Counted counted;
  const KeptSkins kept(folder / "heads");
  const auto read = models::read_once(counted.reading(), kept);
  const auto request = [&](std::size_t i) {
    const fs::path file = folder / ("scan" + std::to_string(i) + ".stl");
    if (!fs::exists(file)) write(file, "scan " + std::to_string(i));
    return SkinRequest{HeadKind::mesh, file, {}};
  };
  const auto use = [&](std::size_t i) {
    (void)read(request(i), {});
    // Some file systems tell times no finer than that.
    for (const auto& file : files_in(folder / "heads"))
      fs::last_write_time(file, fs::last_write_time(file) - std::chrono::seconds(2));
  };
  for (std::size_t i = 0; i < KeptSkins::most; ++i) use(i);
  use(0);  // used again: 1 is now the oldest
  CHECK(counted.times == static_cast<int>(KeptSkins::most));
  use(KeptSkins::most);
  CHECK(files_in(folder / "heads").size() == KeptSkins::most);
  use(0);
  CHECK(counted.times == static_cast<int>(KeptSkins::most) + 1);
  use(1);
  CHECK(counted.times == static_cast<int>(KeptSkins::most) + 2);
  CHECK(kept.forget() == KeptSkins::most);
  CHECK(files_in(folder / "heads").empty());
  CHECK(kept.forget() == 0);
}

TEST_CASE("without a folder, or with one that cannot be made, scans are read as ever") {
  const tests::TemporaryFolder folder;
  Counted counted;
  write(folder / "scan.ply", "the bytes of a scan");
  write(folder / "in the way", "");
  for (const fs::path& where : {fs::path(), folder / "in the way" / "heads"}) {
    const auto read = models::read_once(counted.reading(), KeptSkins(where));
    (void)read({HeadKind::mesh, folder / "scan.ply", {}}, {});
  }
  CHECK(counted.times == 2);
}

TEST_CASE("a refusal is not kept") {
  const tests::TemporaryFolder folder;
  write(folder / "scan.ply", "no scan");
  int times = 0;
  const auto read = models::read_once(
      [&](const SkinRequest&, const models::Progress&) -> models::SkinImport {
        ++times;
        throw models::ModelError(geometry::Message::of("no"));
      },
      KeptSkins(folder / "heads"));
  for (int i = 0; i < 2; ++i)
    CHECK_THROWS_AS(read({HeadKind::mesh, folder / "scan.ply", {}}, {}), models::ModelError);
  CHECK(times == 2);
}
