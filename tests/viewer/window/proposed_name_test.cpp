#include "viewer/window/frame/proposed_name.h"

#include <catch2/catch.hpp>

using scalpmark::window::proposed_name;

TEST_CASE(
    "a save dialog proposes label and date, beside the case's file, and nothing that cannot be a name") {
  const QDate day(2026, 11, 27);
  CHECK(proposed_name("Bench head, morning class", {}, day, ".pdf") ==
        "Bench head morning class 2026-11-27.pdf");
  CHECK(proposed_name("B12", "/cases/b12.json", day, ".png") == "/cases/B12 2026-11-27.png");
  CHECK(proposed_name("../../etc/passwd", {}, day, ".json") == "etc passwd 2026-11-27.json");
  CHECK(proposed_name("a/b\n\"c\"<d>", {}, day, ".pdf") == "a b c d 2026-11-27.pdf");
  CHECK(proposed_name("M\xc3\xbcller 2", {}, day, ".pdf") ==
        QString::fromUtf8("M\xc3\xbcller 2 2026-11-27.pdf"));
  CHECK(proposed_name(" / ", {}, day, ".pdf") == "Unnamed case 2026-11-27.pdf");
  CHECK(proposed_name(std::string(300, 'x'), {}, day, ".pdf").size() < 110);
}
