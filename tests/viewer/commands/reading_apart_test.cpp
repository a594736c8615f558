#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <chrono>

#include "models/files/error.h"
#include "models/heads/own_program.h"
#include "models/heads/skin_reading.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/sentence.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::HeadKind;
using models::ModelError;
using models::SkinRequest;
using tests::is_sentence;
using tests::sentence_of;
using tests::TemporaryFolder;

namespace {

/// A reader gone wrong: any program will do that answers as we say.
std::filesystem::path reader_that(const TemporaryFolder& folder, const std::string& does) {
  auto file = tests::write_bytes(folder / "reader", "#!/bin/sh\n" + does + "\n");
  REQUIRE(::chmod(file.c_str(), 0700) == 0);
  return file;
}

std::string refusal(const std::filesystem::path& program, const SkinRequest& request,
                    models::ReadingLimits limits = {}) {
  return sentence_of<ModelError>([&] { (void)models::read_apart(program, limits)(request, {}); });
}

}  // namespace

TEST_CASE("a mesh read apart is the mesh read here, notes and progress too") {
  const TemporaryFolder folder;
  const auto file =
      tests::write_bytes(folder / "head.ply", tests::ply_text(tests::RawMesh(tests::sphere(90, 4))));
  std::vector<std::string> told_here, told_apart;
  const SkinRequest request{HeadKind::mesh, file, {}};
  const auto here = models::read_skin(
      request, [&](const geometry::Message& what, double) { told_here.push_back(english(what)); });
  const auto apart = models::read_apart(models::own_program())(
      request, [&](const geometry::Message& what, double) { told_apart.push_back(english(what)); });
  CHECK(apart.skin.vertices() == here.skin.vertices());
  CHECK(apart.skin.triangles() == here.skin.triangles());
  CHECK(apart.notes == here.notes);
  CHECK_FALSE(told_here.empty());
  CHECK(told_apart == told_here);
}

TEST_CASE("what is refused here is refused apart in the same words") {
  const TemporaryFolder folder;
  const auto not_a_mesh = tests::write_bytes(folder / "head.obj", "v 1 2\nf 1 2 3\n");
  const auto not_a_volume = tests::write_bytes(folder / "head.nii", "no");
  for (const SkinRequest& request :
       {SkinRequest{HeadKind::mesh, not_a_mesh, {}}, SkinRequest{HeadKind::mri, not_a_volume, {}},
        SkinRequest{HeadKind::mesh, folder / "missing.ply", {}},
        SkinRequest{HeadKind::mesh, folder.path(), {}}}) {
    const std::string here = sentence_of<ModelError>([&] { (void)models::read_skin(request, {}); });
    CHECK(is_sentence(here));
    CHECK(refusal(models::own_program(), request) == here);
  }
}

TEST_CASE("a reader that crashes, falls silent, or talks nonsense is one sentence") {
  const TemporaryFolder folder;
  const SkinRequest request{HeadKind::mesh, "scan.obj", {}};
  for (const char* does :
       {"kill -SEGV $$", "kill -ABRT $$", "exit 0", "exit 3", "printf 'hello, hello, hello'",
        "head -c 100000 /dev/urandom", "printf 'p\\377\\377\\377\\377\\377\\377\\377\\377'",
        "printf 'v\\010\\000\\000\\000\\000\\000\\000\\000abcdefgh'",
        "printf 'd\\000\\000\\000\\000\\000\\000\\000\\000'",
        "printf 'n\\003\\000\\000\\000\\000\\000\\000\\000abc'",
        "printf 'r\\005\\000\\000\\000\\000\\000\\000\\000\\377\\377\\377\\377x'", "kill -KILL $$"}) {
    INFO(does);
    const std::string sentence = refusal(reader_that(folder, does), request);
    CHECK(is_sentence(sentence));
    CHECK(sentence.find("scan.obj") != std::string::npos);
  }
  models::ReadingLimits impatient;
  impatient.silent_seconds = 1;
  const auto start = std::chrono::steady_clock::now();
  CHECK(refusal(reader_that(folder, "exec sleep 600"), request, impatient).find("there was no progress") !=
        std::string::npos);
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(60));
  CHECK(is_sentence(refusal(folder / "no-such-program", request)));
}

#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
TEST_CASE("a file that takes too much memory is one sentence") {
  const TemporaryFolder folder;
  const auto file =
      tests::write_bytes(folder / "head.ply", tests::ply_text(tests::RawMesh(tests::sphere(90, 4))));
  models::ReadingLimits tight;
  tight.memory_mb = 1;  // not even what is loaded already; every further byte is refused
  const std::string sentence = refusal(models::own_program(), {HeadKind::mesh, file, {}}, tight);
  CHECK(is_sentence(sentence));
  CHECK(sentence.find("head.ply") != std::string::npos);
}
#endif

TEST_CASE("giving up while a file is read ends the reader at once") {
  const TemporaryFolder folder;
  struct GivenUp {};
  const auto talker =
      reader_that(folder,
                  "printf 'p\\016\\000\\000\\000\\000\\000\\000\\000\\000\\000\\000\\000\\000\\000\\000\\000"
                  "\\001\\000\\000\\000x\\000'; exec sleep 600");
  const auto start = std::chrono::steady_clock::now();
  CHECK_THROWS_AS(models::read_apart(talker)({HeadKind::mesh, "scan.obj", {}},
                                             [](const geometry::Message&, double) { throw GivenUp(); }),
                  GivenUp);
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(60));
}
