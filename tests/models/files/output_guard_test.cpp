#include "models/files/output_guard.h"

#include <catch2/catch.hpp>

#include "geometry/base/message.h"
#include "models/files/error.h"
#include "tests/support/own_folder.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::Input;
using tests::TemporaryFolder;
using tests::write_bytes;
namespace fs = std::filesystem;

namespace {

std::string refusal(const fs::path& out, const std::vector<Input>& inputs) {
  return tests::sentence_of<models::ModelError>([&] { models::refuse_input_as_output(out, inputs); });
}

}  // namespace

TEST_CASE("an output that is an input is refused, by name, other spelling, link and hard link") {
  const TemporaryFolder folder;
  fs::create_directory(folder / "sub");
  const fs::path case_file = write_bytes(folder / "case.json", "{}"),
                 scan = write_bytes(folder / "t1.nii", "x");
  fs::create_symlink("t1.nii", folder / "link");
  fs::create_symlink("link", folder / "link to link");
  fs::create_hard_link(scan, folder / "hard link");
  fs::create_directory_symlink(".", folder / "here");
  const std::vector<Input> inputs{{geometry::Message::of("the case"), case_file},
                                  {geometry::Message::of("the scan"), scan}};
  for (const fs::path& out :
       {scan, folder / "." / "t1.nii", folder / "sub" / ".." / "t1.nii", folder / "link",
        folder / "link to link", folder / "hard link", folder / "here" / "t1.nii", fs::relative(scan)}) {
    CAPTURE(out);
    const std::string said = refusal(out, inputs);
    CHECK(tests::is_sentence(said));
    CHECK(said.find("is the scan") != std::string::npos);
    CHECK(said.find(out.string()) != std::string::npos);
  }
  CHECK(refusal(case_file, inputs).find("is the case") != std::string::npos);
}

TEST_CASE("an output of its own is let through, also one beside an input that is missing") {
  const TemporaryFolder folder;
  const fs::path scan = write_bytes(folder / "t1.nii", "x");
  const std::vector<Input> inputs{{geometry::Message::of("the scan"), scan},
                                  {geometry::Message::of("the case"), folder / "missing.json"},
                                  {geometry::Message::verbatim("none"), ""}};
  write_bytes(folder / "copy.nii", "x");
  for (const fs::path& out : {folder / "new.ply", folder / "copy.nii", folder / "no folder" / "t1.nii"})
    CHECK(refusal(out, inputs) == "(accepted)");
  // Also a name that leads nowhere yet is the same file when it is the input's.
  CHECK(refusal(folder / "." / "missing.json", inputs) != "(accepted)");
}

TEST_CASE("only a file of the kind that is written, or an empty one, is replaced without asking") {
  const TemporaryFolder folder;
  const fs::path plan = write_bytes(folder / "plan.json", R"({ "format": "scalpmark-plan", "version": 1 })"),
                 scan = write_bytes(folder / "t1.nii.gz", "\x1f\x8b"),
                 empty = write_bytes(folder / "empty", "");
  CHECK_FALSE(models::replaces_another_kind(plan, "scalpmark-plan"));
  CHECK(models::replaces_another_kind(plan, "scalpmark-case"));
  CHECK(models::replaces_another_kind(scan, "scalpmark-plan"));
  CHECK_FALSE(models::replaces_another_kind(empty, "scalpmark-plan"));
  CHECK_FALSE(models::replaces_another_kind(folder / "missing", "scalpmark-plan"));
  CHECK_FALSE(models::replaces_another_kind(folder.path(), "scalpmark-plan"));
  fs::create_symlink("t1.nii.gz", folder / "link");
  CHECK(models::replaces_another_kind(folder / "link", "scalpmark-plan"));
}
