#include "viewer/words/data_words.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "models/brain/gyrus_names.h"
#include "models/coils/coil_library.h"

using namespace scalpmark;

namespace {

bool listed(const std::string& text) {
  const auto all = viewer::translatable_data();
  return std::find(all.begin(), all.end(), text) != all.end();
}

}  // namespace

TEST_CASE("what ships in data files is shown to translators") {
  for (const auto& coil : models::coils()) {
    CAPTURE(coil.model);
    CHECK(listed(coil.title));
    CHECK((coil.note.empty() || listed(coil.note)));
  }
  CHECK_FALSE(listed("Round coil, 90 mm"));
}

TEST_CASE("every region of the template's gyrus atlas is shown to translators") {
  const std::filesystem::path labels = "/usr/share/mricron/templates/aal.nii.txt";
  if (!std::filesystem::exists(labels)) {
    WARN("without the package mricron-data there is no atlas to look at");
    return;
  }
  std::ostringstream text;
  text << std::ifstream(labels).rdbuf();
  int named = 0;
  for (std::string name : models::gyrus_names(text.str(), "aal")) {
    if (name.empty()) continue;
    for (const std::string side : {"left ", "right "})
      if (name.starts_with(side)) name = name.substr(side.size());
    CAPTURE(name);
    CHECK(listed(name));
    ++named;
  }
  CHECK(named > 100);
}

TEST_CASE("in English what comes from data is said as it is written there") {
  CHECK(viewer::region_text("Brodmann area 46") == "Brodmann area 46");
  CHECK(viewer::region_text("left middle frontal gyrus") == "left middle frontal gyrus");
  CHECK(viewer::region_text("right cuneus") == "right cuneus");
  CHECK(viewer::region_text("vermis of the cerebellum") == "vermis of the cerebellum");
  CHECK(viewer::coil_text("Round coil, 100 mm") == "Round coil, 100 mm");
  CHECK(viewer::coil_text("").empty());
}
