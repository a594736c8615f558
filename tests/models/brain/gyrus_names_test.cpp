#include "models/brain/gyrus_names.h"

#include <catch2/catch.hpp>

#include "models/files/error.h"

using scalpmark::models::gyrus_names;

TEST_CASE("short names of gyri are spelt out, with the side first") {
  const auto names =
      gyrus_names("1 Precentral_L 2001\n8 Frontal_Mid_R 2202\r\n116 Vermis_10 9170\n", "aal.nii.txt");
  CHECK(names[1] == "left precentral gyrus");
  CHECK(names[8] == "right middle frontal gyrus");
  CHECK(names[116] == "vermis of the cerebellum");
  CHECK(names[2].empty());
}

TEST_CASE("a region nobody has spelt out keeps its words, text without regions is refused") {
  CHECK(gyrus_names("3 Some_New_Part_L 1", "x")[3] == "left Some New Part");
  CHECK(gyrus_names("rubbish\n300 Too_Far 1\n-1 Neither 2\n5 Cuneus_R 1\n", "x")[5] == "right cuneus");
  CHECK_THROWS_AS(gyrus_names("", "x"), scalpmark::models::ModelError);
  CHECK_THROWS_AS(gyrus_names("no numbers here\n", "x"), scalpmark::models::ModelError);
}
