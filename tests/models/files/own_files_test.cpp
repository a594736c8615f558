#include "models/files/own_files.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>

#include "models/cases/case_file.h"
#include "models/generic/generic_head.h"
#include "models/meshes/mesh_file.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::own_format;
using tests::TemporaryFolder;
using tests::write_bytes;

TEST_CASE("files of ours are known by their content, whatever their name") {
  const TemporaryFolder folder;
  models::write_case(folder / "scan.nii.gz", models::default_case());
  CHECK(models::own_format_of(folder / "scan.nii.gz") == "scalpmark-case");
  models::write_ply(folder / "head.txt", models::generic_head().skin());
  CHECK(models::own_format_of(folder / "head.txt") == "scalpmark-ply");
  CHECK(own_format("  {\n \"version\": 1,\n \"format\" : \"scalpmark-plan\" }") == "scalpmark-plan");
  CHECK(own_format("visit,at,spot_row,spot_column,output_percent,answer\r\n") == "scalpmark-csv");
  CHECK(own_format("visit,name,date\r\n").empty());
}

TEST_CASE("other programs' files are not ours, nor what only looks like one") {
  for (const char* text :
       {"{\"format\": \"gltf\"}", "{\"format\": 7}", "{\"format\"", "{\"format\":", "{",
        "[\"format\", \"scalpmark-case\"]", "format: scalpmark-case", "ply\nformat ascii 1.0\n",
        "%PDF-1.4\n/Creator (Scalpmark)", "\x89PNG\r\n\x1a\n", "\x1f\x8b"}) {
    CAPTURE(text);
    CHECK(own_format(text).empty());
  }
  // Only the beginning is looked at: a key far down is somebody's data.
  CHECK(own_format("{" + std::string(5000, ' ') + "\"format\": \"scalpmark-case\"}").empty());
}

TEST_CASE("an empty file is nothing, and what cannot be read is nobody's") {
  const TemporaryFolder folder;
  CHECK(models::own_format_of(write_bytes(folder / "empty", "")) == "nothing");
  CHECK(models::own_format_of(folder / "missing").empty());
  CHECK(models::own_format_of(folder.path()).empty());
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  CHECK(models::own_format_of(folder / "pipe").empty());  // and does not wait for a writer
}
