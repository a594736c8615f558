#include "geometry/hands/strips.h"

#include <QImage>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <string>

#include "geometry/plan/solve.h"
#include "models/cases/case_file.h"
#include "models/cases/case_head.h"
#include "tests/support/own_folder.h"
#include "viewer/sheet/strip_pieces.h"
#include "viewer/sheet/strips_pdf.h"

using namespace scalpmark;
using tests::slurp;
using viewer::Paper;
using viewer::StripPiece;
using Folder = tests::OwnFolder;

namespace {

constexpr double px_per_mm = 300 / 25.4;

struct Printed {
  geometry::Plan plan;
  std::vector<geometry::Strip> strips;
  std::string pdf;
};

Printed printed(geometry::Side side, Paper paper, const std::string& label = "Bench head") {
  models::CaseFile file = models::default_case();
  file.the_case.side = side;
  file.the_case.label = label;
  const auto head = models::load_head(file).head;
  Printed made;
  made.plan = geometry::solve(head, file.the_case, geometry::TapeDistances::left_out);
  made.strips = geometry::strips(head, file.the_case, made.plan);
  auto content = viewer::strips_content(file.the_case, made.plan);
  content.date = "2026-11-27";
  made.pdf = viewer::strips_pdf(made.strips, content, paper);
  return made;
}

/// The pages as poppler's pdftoppm draws them at 300 dots an inch, grey.
std::vector<QImage> pages_of(const Folder& folder, const std::string& pdf) {
  std::ofstream(folder.file("strips.pdf"), std::ios::binary) << pdf;
  REQUIRE(
      std::system(("pdftoppm -r 300 -gray '" + folder.file("strips.pdf") + "' '" + folder.file("page") + "'")
                      .c_str()) == 0);
  std::vector<QImage> pages;
  for (int i = 1; i < 20; ++i)
    for (const char* digits : {"%d", "%02d"}) {
      char number[8];
      std::snprintf(number, sizeof number, digits, i);
      const QImage page(QString::fromStdString(folder.file(std::string("page-") + number + ".pgm")));
      if (!page.isNull() && static_cast<int>(pages.size()) < i)
        pages.push_back(page.convertToFormat(QImage::Format_Grayscale8));
    }
  REQUIRE(!pages.empty());
  return pages;
}

bool dark(const QImage& page, int x, int y) {
  return page.valid(x, y) && qGray(page.pixel(x, y)) < 140;
}

struct Run {
  int from = 0, to = 0, at = 0;
  [[nodiscard]] double mm() const { return (to - from + 1) / px_per_mm; }
};

/// Straight runs of ink of at least that length, along rows or along columns, each line's once.
std::vector<Run> lines_in(const QImage& page, bool along_rows, double least_mm) {
  const int across = along_rows ? page.height() : page.width(),
            along = along_rows ? page.width() : page.height();
  std::vector<Run> runs;
  for (int i = 0; i < across; ++i)
    for (int k = 0; k < along; ++k) {
      int end = k;
      while (end < along && (along_rows ? dark(page, end, i) : dark(page, i, end))) ++end;
      if (end - k >= least_mm * px_per_mm) {
        const bool again = std::any_of(runs.begin(), runs.end(), [&](const Run& run) {
          return i - run.at < 6 && std::abs(run.from - k) < 20 && std::abs(run.to - end + 1) < 20;
        });
        if (!again) runs.push_back({k, end - 1, i});
      }
      k = std::max(k, end);
    }
  return runs;
}

bool has_length(const std::vector<Run>& runs, double mm) {
  return std::any_of(runs.begin(), runs.end(), [&](const Run& run) { return std::abs(run.mm() - mm) < 0.3; });
}

}  // namespace

TEST_CASE("a strip is cut into as few pieces as fit, and its seams are numbered on") {
  CHECK(viewer::strip_pieces(200, 253, 1) == std::vector<StripPiece>{{0, 200, 0, 0}});
  CHECK(viewer::strip_pieces(360, 240, 4) == std::vector<StripPiece>{{0, 180, 0, 4}, {180, 360, 4, 0}});
  const auto three = viewer::strip_pieces(565, 253, 2);
  REQUIRE(three.size() == 3);
  CHECK(three[1].glued_before == three[0].glued_behind);
  CHECK(three[2].glued_before == 3);
  CHECK(three[2].to_mm == Approx(565));
}

TEST_CASE("strips come out of a printer at true size, on A4 and on Letter, for either side") {
  for (const Paper paper : {Paper::a4, Paper::letter})
    for (const auto side : {geometry::Side::left, geometry::Side::right}) {
      const Folder folder;
      const Printed made = printed(side, paper);
      const auto pages = pages_of(folder, made.pdf);
      // ISO 216: 297 x 210 mm; ANSI/ASME Y14.1: 11 x 8.5 inches; laid crosswise.
      CHECK(pages[0].width() / px_per_mm == Approx(paper == Paper::a4 ? 297.0 : 279.4).margin(0.3));
      std::vector<Run> rows;
      for (const QImage& page : pages) {
        // The lines that prove the print's size, 10.0 cm each way, to a fifth of a millimetre.
        const auto across = lines_in(page, true, 60), down = lines_in(page, false, 60);
        rows.insert(rows.end(), across.begin(), across.end());
        const auto is_ten = [](const Run& run) { return std::abs(run.mm() - 100) < 0.25; };
        CHECK(std::any_of(across.begin(), across.end(), is_ten));
        CHECK(std::any_of(down.begin(), down.end(), is_ten));
      }
      // The edges of every piece are as long as its part of the strip.
      const double wide = (paper == Paper::a4 ? 297.0 : 279.4) - 20 - 10 - 12 - 2;
      for (const geometry::Strip& strip : made.strips) {
        if (strip.length_mm < 60) continue;
        const auto pieces = viewer::strip_pieces(strip.length_mm, wide, 1);
        INFO(strip.length_mm << " in " << pieces.size());
        CHECK(has_length(rows, pieces[0].to_mm - pieces[0].from_mm));
      }
    }
}

TEST_CASE("on a printed strip the marks stand where the plan has them") {
  const Folder folder;
  const Printed made = printed(geometry::Side::left, Paper::a4);
  const QImage page = pages_of(folder, made.pdf)[0];
  const geometry::Strip& strip = made.strips[0];
  const StripPiece piece = viewer::strip_pieces(strip.length_mm, 297.0 - 20 - 10 - 12 - 2, 1)[0];
  const double long_mm = piece.to_mm - piece.from_mm;
  const auto edges = lines_in(page, true, 60);
  const auto top = std::find_if(edges.begin(), edges.end(),
                                [&](const Run& run) { return std::abs(run.mm() - long_mm) < 0.3; });
  REQUIRE(top != edges.end());
  // Marks are the lines through the strip's whole height (14 mm); its own ends are two of them.
  for (const geometry::StripMark& mark : strip.marks) {
    if (mark.at_mm > piece.to_mm) continue;
    const double wanted = top->from + mark.at_mm * px_per_mm;
    double nearest = 1e9;
    for (int x = static_cast<int>(wanted) - 12; x <= static_cast<int>(wanted) + 12; ++x) {
      int ink = 0;
      for (int y = top->at; y < top->at + 13.5 * px_per_mm; ++y) ink += dark(page, x, y);
      if (ink > 13 * px_per_mm) nearest = std::min(nearest, std::abs(x - wanted));
    }
    INFO(mark.label << " at " << mark.at_mm);
    CHECK(nearest / px_per_mm < 0.2);
  }
}

TEST_CASE("hostile labels stay text on strips, and the words say whose they are") {
  const Folder folder;
  const Printed made = printed(geometry::Side::right, Paper::a4, std::string(150, 'W') + "\n\t<b>");
  std::ofstream(folder.file("strips.pdf"), std::ios::binary) << made.pdf;
  REQUIRE(std::system(("pdftotext -layout '" + folder.file("strips.pdf") + "' '" + folder.file("text") + "'")
                          .c_str()) == 0);
  const std::string text = slurp(folder.file("text"));
  for (const char* said : {"right side", "2026-11-27", "10.0 cm", "half: vertex", "hotspot", "front axis"})
    CHECK(text.find(said) != std::string::npos);
}
