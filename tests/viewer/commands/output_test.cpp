// What a careless or hurried user does with --out.
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "models/files/own_files.h"
#include "models/generic/generic_head.h"
#include "models/meshes/mesh_file.h"
#include "tests/support/command_run.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using tests::Ran;
using tests::read_bytes;
using tests::TemporaryFolder;
using tests::write_bytes;
namespace fs = std::filesystem;

namespace {

std::size_t count_of(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
  return count;
}

/// A folder with a case on a scan of its own; commands run in it.
class Desk {
public:
  Desk() {
    fs::copy_file(SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json", folder_ / "case.json");
    models::write_ply(folder_ / "scan.ply", models::generic_head().skin());
    const auto& at = models::generic_head().fiducials().at;
    const auto list = [](const Eigen::Vector3d& p) {
      return "[" + std::to_string(p.x()) + ", " + std::to_string(p.y()) + ", " + std::to_string(p.z()) + "]";
    };
    write_bytes(
        folder_ / "scanned.json",
        R"({ "format": "scalpmark-case", "version": 1, "head": { "kind": "mesh", "file": "scan.ply", "nasion": )" +
            list(at.nasion) + ", \"inion\": " + list(at.inion) + ", \"left_tragus\": " +
            list(at.left_tragus) + ", \"right_tragus\": " + list(at.right_tragus) + " } }");
  }
  [[nodiscard]] fs::path operator/(const std::string& name) const { return folder_ / name; }
  [[nodiscard]] std::size_t count() const { return folder_.count(); }

  /// `before`: what the shell does first. `cache`: where the template's brain is kept.
  [[nodiscard]] Ran run(const std::string& arguments, const std::string& before = "",
                        const std::string& cache = SCALPMARK_BINARY_DIR "/test-cache") const {
    const std::string command = "cd '" + folder_.path().string() + "' && " + before +
                                " env -u DISPLAY XDG_CACHE_HOME='" + cache + "' '" SCALPMARK_PROGRAM "' " +
                                arguments + " >/dev/null 2>'" + (err_ / "stderr").string() + "'";
    const int status = std::system(command.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, "", read_bytes(err_ / "stderr")};
  }
  /// What it says when it ends with 1; empty when it does not, or says more or less than one sentence.
  [[nodiscard]] std::string refusal(const std::string& arguments, const std::string& before = "") const {
    const Ran r = run(arguments, before);
    CAPTURE(arguments, r.exit, r.err);
    CHECK(r.exit == 1);
    const bool one = count_of(r.err, "scalpmark: ") == 1 && count_of(r.err, "terminate") == 0;
    CHECK(one);
    return r.exit == 1 && one ? r.err : "";
  }

private:
  TemporaryFolder folder_, err_;
};

bool says(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

unsigned mode_of(const fs::path& file) {
  struct stat status {};
  REQUIRE(::stat(file.c_str(), &status) == 0);
  return status.st_mode & 07777U;
}

}  // namespace

TEST_CASE("no command writes over the case it reads, its head or a scan, with --force neither") {
  const Desk desk;
  const std::string scan = read_bytes(desk / "scan.ply"), scanned = read_bytes(desk / "scanned.json");
  fs::create_symlink("scan.ply", desk / "link.ply");
  fs::create_hard_link(desk / "scanned.json", desk / "other.json");
  for (const char* force : {"", " --force"}) {
    for (const char* command : {"solve", "picture", "sheet", "tolerance", "contact", "field"}) {
      const std::string start = std::string(command) + " scanned.json --out ";
      CHECK(says(desk.refusal(start + "scanned.json" + force), "is the case"));
      CHECK(says(desk.refusal(start + "./scan.ply" + force), "is the scan"));
      CHECK(says(desk.refusal(start + "link.ply" + force), "is the scan"));
      CHECK(says(desk.refusal(start + "other.json" + force), "is the case"));
    }
    CHECK(says(desk.refusal(std::string("head scan.ply --out link.ply") + force), "is the scan"));
  }
  CHECK(read_bytes(desk / "scan.ply") == scan);
  CHECK(read_bytes(desk / "scanned.json") == scanned);
  CHECK(desk.count() == 5);
}

TEST_CASE("a file of another kind is replaced with --force only, one of ours and its kind at once") {
  const Desk desk;
  write_bytes(desk / "t1.nii.gz", "somebody's scan");
  CHECK(says(desk.refusal("solve case.json --out t1.nii.gz"), "--force"));
  CHECK(says(desk.refusal("solve case.json --out scanned.json"), "--force"));  // another case
  CHECK(read_bytes(desk / "t1.nii.gz") == "somebody's scan");
  CHECK(desk.run("solve case.json --out t1.nii.gz --force").exit == 0);
  CHECK(models::own_format_of(desk / "t1.nii.gz") == "scalpmark-plan");
  for (int i = 0; i < 2; ++i) {
    CHECK(desk.run("solve case.json --out plan.json").exit == 0);
    CHECK(desk.run("picture case.json --out picture.png --size 640x480").exit == 0);
    CHECK(desk.run("sheet case.json --out sheet.pdf").exit == 0);
    CHECK(desk.run("tolerance case.json --trials 100 --out tolerance.json").exit == 0);
    CHECK(desk.run("contact case.json --out contact.json").exit == 0);
    CHECK(desk.run("field case.json --no-brain --out field.json").exit == 0);
    CHECK(desk.run("head scan.ply --out skin.ply").exit == 0);
  }
  CHECK(says(desk.refusal("sheet case.json --out picture.png"), "--force"));
  CHECK(says(desk.refusal("contact case.json --out tolerance.json"), "--force"));
  for (const char* name :
       {"plan.json", "picture.png", "sheet.pdf", "tolerance.json", "contact.json", "field.json", "skin.ply"})
    CHECK(mode_of(desk / name) == 0600);
}

TEST_CASE("what is written says which program made it, and nothing of the user or the computer") {
  const Desk desk;
  REQUIRE(desk.run("picture case.json --out picture.png --size 640x480").exit == 0);
  REQUIRE(desk.run("sheet case.json --out sheet.pdf").exit == 0);
  CHECK(models::own_format_of(desk / "picture.png") == "scalpmark-png");
  CHECK(models::own_format_of(desk / "sheet.pdf") == "scalpmark-pdf");
  char host[256] = "";
  REQUIRE(::gethostname(host, sizeof host - 1) == 0);
  for (const char* name : {"picture.png", "sheet.pdf"}) {
    const std::string bytes = read_bytes(desk / name);
    CHECK_FALSE(says(bytes, (desk / "").string()));
    if (std::string(host).size() > 3) CHECK_FALSE(says(bytes, host));
  }
}

TEST_CASE("a disk that takes no more, too few files and too little memory are each one sentence") {
  const Desk desk;
  const std::size_t before = desk.count();
  CHECK(says(desk.refusal("head scan.ply --out skin.ply", "ulimit -f 1;"), "larger than allowed"));
  // A picture takes between 550 and 600 MB of address space here.
  CHECK(says(desk.refusal("picture case.json --out picture.png", "ulimit -v 480000;"), "memory"));
  CHECK(desk.count() == before);
}

TEST_CASE("a brain that cannot be kept is said to be made anew, and can be left out") {
  if (!fs::exists("/usr/share/mricron/templates/ch2.nii.gz")) {
    WARN("without the package mricron-data there is no brain to make");
    return;
  }
  const Desk desk;
  const auto run = [&](const std::string& arguments) { return desk.run(arguments, "", "/dev/null"); };
  const Ran with = run("solve case.json --out plan.json");
  CHECK(with.exit == 0);
  CHECK(says(with.err, "made anew each time"));
  CHECK(says(read_bytes(desk / "plan.json"), "cortex"));
  const Ran without = run("solve case.json --no-brain --out bare.json");
  CHECK(without.exit == 0);
  CHECK_FALSE(says(without.err, "made anew"));
  CHECK_FALSE(says(read_bytes(desk / "bare.json"), "cortex"));
}

TEST_CASE("heads kept to open quickly are counted as they are forgotten, and nothing of them is left") {
  const Desk desk;
  const TemporaryFolder cache;
  const auto run = [&](const std::string& arguments) {
    return desk.run(arguments, "", cache.path().string());
  };
  CHECK(run("head scan.ply --out skin.ply").exit == 0);
  const fs::path heads = cache / "scalpmark/heads";
  REQUIRE(fs::exists(heads));
  CHECK(mode_of(heads) == 0700U);
  CHECK_FALSE(fs::is_empty(heads));
  const Ran first = run("head --forget");
  CHECK(first.exit == 0);
  CHECK(first.err == "1 head was kept and is forgotten.\n");
  CHECK(fs::is_empty(heads));
  CHECK(run("head --forget").err == "0 heads were kept and are forgotten.\n");
}
