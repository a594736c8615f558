#include "models/brain/add_cortex.h"

#include <catch2/catch.hpp>

#include "geometry/base/message.h"
#include "models/files/error.h"
#include "models/generic/generic_head.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using tests::TemporaryFolder;

TEST_CASE("without the package the head stays as it is, and a note says what to install") {
  const TemporaryFolder folder;
  models::LoadedHead loaded{models::generic_head(), geometry::Message::of("generic head, as built in"), {}};
  models::add_cortex(loaded, {folder.path(), folder / "cache"});
  CHECK(!loaded.cortex);
  REQUIRE(loaded.notes.size() == 1);
  CHECK(tests::is_sentence(english(loaded.notes.front())));
  CHECK(english(loaded.notes.front()).find("install the Debian package mricron-data") != std::string::npos);
  CHECK(folder.count() == 0);
}

TEST_CASE("template files that are damaged are refused with a sentence, and nothing is kept") {
  const TemporaryFolder folder;
  for (const char* name : {"ch2.nii.gz", "ch2bet.nii.gz", "brodmann.nii.gz", "aal.nii.gz", "aal.nii.txt"})
    tests::write_bytes(folder / name, "not a volume");
  models::LoadedHead loaded{models::generic_head(), geometry::Message::of("generic head, as built in"), {}};
  models::add_cortex(loaded, {folder.path(), folder / "cache"});
  CHECK(!loaded.cortex);
  REQUIRE(loaded.notes.size() == 1);
  CHECK(tests::is_sentence(english(loaded.notes.front())));
  CHECK(folder.count() == 5);
}
