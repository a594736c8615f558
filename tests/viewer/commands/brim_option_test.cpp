#include "viewer/commands/brim_option.h"

#include <catch2/catch.hpp>

#include "viewer/commands/options.h"

using namespace scalpmark::viewer;

TEST_CASE("brim heights are read off the command line by the names of their points") {
  const auto brim = brim_from("--brim", "inion=12.5,nasion=25,right_tragus=0,arrow=-6");
  CHECK(brim.heights.nasion_mm == 25.0);
  CHECK(brim.heights.inion_mm == 12.5);
  CHECK(brim.heights.right_tragus_mm == 0.0);
  CHECK_FALSE(brim.heights.left_tragus_mm);
  CHECK(brim.arrow_mm == -6.0);
}

TEST_CASE("brim heights that cannot be meant are refused with what to write") {
  for (const char* bad : {"", "nasion=25", "nasion=25,arrow=3", "nasion=25,nasion=26", "vertex=3,nasion=25",
                          "nasion=x,inion=3", "nasion=nan,inion=3", "nasion,inion=3", "nasion=25;inion=3"}) {
    INFO(bad);
    CHECK_THROWS_AS(brim_from("--brim", bad), UsageError);
    CHECK_THROWS_WITH(brim_from("--brim", bad), Catch::Contains("--brim") && Catch::EndsWith("."));
  }
}
