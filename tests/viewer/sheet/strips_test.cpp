#include "geometry/hands/strips.h"

#include <QImage>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <optional>
#include <string>
#include <tuple>

#include "geometry/hands/strip_pieces.h"
#include "geometry/plan/solve.h"
#include "models/cases/case_file.h"
#include "models/cases/case_head.h"
#include "models/files/made_by.h"
#include "tests/support/own_folder.h"
#include "viewer/sheet/strips_pdf.h"
#include "viewer/words/numbers.h"

using namespace scalpmark;
using geometry::StripPiece;
using tests::slurp;
using viewer::Paper;
using Folder = tests::OwnFolder;

namespace {

constexpr double px_per_mm = 300 / 25.4;

struct Printed {
  geometry::Plan plan;
  std::vector<geometry::Strip> strips;
  viewer::StripsContent content;
  std::string pdf;
};

Printed printed(geometry::Side side, Paper paper, const std::string& label = "Bench head",
                double angle_deg = 45) {
  models::CaseFile file = models::default_case();
  file.the_case.side = side;
  file.the_case.label = label;
  file.the_case.coil.angle_deg = angle_deg;
  const auto head = models::load_head(file).head;
  Printed made;
  made.plan = geometry::solve(head, file.the_case, geometry::TapeDistances::left_out);
  made.strips = geometry::strips(head, file.the_case, made.plan);
  made.content = viewer::strips_content(file.the_case, made.plan);
  made.content.date = "2026-11-27";
  made.pdf = viewer::strips_pdf(made.strips, made.content, paper);
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
  CHECK(geometry::strip_pieces(200, 253, 1) == std::vector<StripPiece>{{0, 200, 0, 0}});
  CHECK(geometry::strip_pieces(360, 240, 4) == std::vector<StripPiece>{{0, 180, 0, 4}, {180, 360, 4, 0}});
  const auto three = geometry::strip_pieces(565, 253, 2);
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
        const auto pieces = geometry::strip_pieces(strip.length_mm, wide, 1);
        INFO(strip.length_mm << " in " << pieces.size());
        CHECK(has_length(rows, pieces[0].to_mm - pieces[0].from_mm));
      }
    }
}

namespace {

/// A piece of a strip as it lies on a page: its two long edges, 14 mm apart, in pixels.
struct PieceSeen {
  Run top;
  double mm = 0;
};

/// The pieces on a page from its top down. The lines that prove the print's size and the card's frame have no
/// second line at a strip's height below them.
std::vector<PieceSeen> pieces_on(const QImage& page) {
  std::vector<PieceSeen> pieces;
  const auto edges = lines_in(page, true, 8);
  for (const Run& top : edges)
    for (const Run& bottom : edges)
      if (std::abs((bottom.at - top.at) / px_per_mm - 14) < 0.3 && std::abs(bottom.from - top.from) < 4 &&
          std::abs(bottom.to - top.to) < 4)
        pieces.push_back({top, top.mm()});
  std::sort(pieces.begin(), pieces.end(), [](const auto& a, const auto& b) { return a.top.at < b.top.at; });
  return pieces;
}

/// How far from there, in mm, the nearest line through a strip's whole height is.
double nearest_mark(const QImage& page, const PieceSeen& piece, double at_mm) {
  const double wanted = piece.top.from + at_mm * px_per_mm;
  double nearest = 1e9;
  for (int x = static_cast<int>(wanted) - 12; x <= static_cast<int>(wanted) + 12; ++x) {
    int ink = 0;
    for (int y = piece.top.at; y < piece.top.at + 13.5 * px_per_mm; ++y) ink += dark(page, x, y);
    if (ink > 13 * px_per_mm) nearest = std::min(nearest, std::abs(x - wanted) / px_per_mm);
  }
  return nearest;
}

}  // namespace

TEST_CASE("on every printed piece of every strip the marks stand where the plan has them") {
  for (const auto& [side, paper, wide_mm] :
       {std::tuple(geometry::Side::left, Paper::a4, geometry::a4_piece_mm),
        std::tuple(geometry::Side::right, Paper::letter, geometry::letter_piece_mm)}) {
    const Folder folder;
    const Printed made = printed(side, paper);
    std::vector<std::pair<QImage, PieceSeen>> seen;
    for (const QImage& page : pages_of(folder, made.pdf))
      for (const PieceSeen& piece : pieces_on(page)) seen.emplace_back(page, piece);
    std::size_t next = 0;
    for (const geometry::Strip& strip : made.strips)
      for (const StripPiece& piece : geometry::strip_pieces(strip.length_mm, wide_mm, 1)) {
        REQUIRE(next < seen.size());
        const auto& [page, there] = seen[next++];
        INFO("strip " << static_cast<int>(strip.kind) << " from " << piece.from_mm << " to " << piece.to_mm);
        CHECK(std::abs(there.mm - (piece.to_mm - piece.from_mm)) < 0.2);
        for (const geometry::StripMark& mark : strip.marks) {
          if (mark.at_mm < piece.from_mm || mark.at_mm > piece.to_mm) continue;
          INFO(mark.label << " at " << mark.at_mm);
          CHECK(nearest_mark(page, there, mark.at_mm - piece.from_mm) < 0.2);
        }
      }
    CHECK(next == seen.size());
  }
}

TEST_CASE("in inches a strip's scale is one of inches, and the lines that prove its size are still 10.0 cm") {
  const Folder folder;
  viewer::set_length_unit(viewer::LengthUnit::inch);
  const Printed made = printed(geometry::Side::left, Paper::letter);
  viewer::set_length_unit(viewer::LengthUnit::centimetre);
  std::ofstream(folder.file("strips.pdf"), std::ios::binary) << made.pdf;
  REQUIRE(std::system(("pdftotext -layout '" + folder.file("strips.pdf") + "' '" + folder.file("text") + "'")
                          .c_str()) == 0);
  CHECK(slurp(folder.file("text")).find("10.0 cm (3.94 in)") != std::string::npos);
  const QImage page = pages_of(folder, made.pdf)[0];
  const PieceSeen piece = pieces_on(page).at(0);
  // Long ticks, 3 mm over the lower edge, at whole inches (25.4 mm exactly, ISO 31); none half way between.
  const auto ticks = [&](double mm) {
    const int x0 = static_cast<int>(std::lround(piece.top.from + mm * px_per_mm)),
              y = piece.top.at + static_cast<int>(std::lround((14 - 2.5) * px_per_mm));
    for (int x = x0 - 2; x <= x0 + 2; ++x)
      if (dark(page, x, y)) return true;
    return false;
  };
  for (const int inches : {1, 2, 3}) {
    CHECK(ticks(25.4 * inches));
    CHECK_FALSE(ticks(25.4 * (inches + 0.5)));
  }
}

namespace {

/// Where the card stands on a page, and what of it was found there, in pixels.
struct CardSeen {
  Run midline, back_axis;    ///< of the front, of the back; both along columns
  int left = 0, middle = 0;  ///< the front's edge, and the fold
};

/// Its two halves are 120 mm wide and 85 high: the frame is a run of 240 mm, and the one page that has such.
std::optional<CardSeen> card_on(const QImage& page) {
  const auto rows = lines_in(page, true, 200), columns = lines_in(page, false, 55);
  const auto frame =
      std::find_if(rows.begin(), rows.end(), [](const Run& run) { return std::abs(run.mm() - 240) < 0.4; });
  if (frame == rows.end()) return {};
  CardSeen seen;
  seen.left = frame->from;
  seen.middle = (frame->from + frame->to) / 2;
  for (const Run& run : columns) {
    if (run.from <= frame->at + 6 || run.from > frame->at + 60 * px_per_mm || run.mm() > 84) continue;
    if (run.at > seen.left + 12 && run.at < seen.middle - 12) seen.midline = run;
    if (run.at > seen.middle + 12 && run.at < frame->to - 12) seen.back_axis = run;
  }
  return seen;
}

/// The middle of the ink met on the way from `from` to `to`, mm from the card's point, along a way that is
/// given in mm; nothing without ink.
std::optional<double> ink_along(const QImage& page, double x, double y, double way_x, double way_y,
                                double from, double to) {
  double first = -1, last = -1;
  for (double at = from; at <= to; at += 0.02)
    if (dark(page, static_cast<int>(std::lround(x + at * px_per_mm * way_x)),
             static_cast<int>(std::lround(y + at * px_per_mm * way_y)))) {
      if (first < 0) first = at;
      last = at;
    }
  if (first < 0) return {};
  return (first + last) / 2;
}

/// The outline's foremost place at so many mm beside the coil's axis.
double front_of(const std::vector<geometry::CoilPart>& parts, double x) {
  double front = -1e9;
  for (const auto& part : parts)
    for (size_t i = 0; i < part.outline.size(); ++i) {
      const auto &a = part.outline[i], &b = part.outline[(i + 1) % part.outline.size()];
      if ((a.x() - x) * (b.x() - x) > 0 || a.x() == b.x()) continue;
      front = std::max(front, a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
    }
  return front;
}

}  // namespace

TEST_CASE("the angle card's angle and lengths are those of the case on the printed page") {
  for (const auto side : {geometry::Side::left, geometry::Side::right})
    for (const double angle_deg : {45.0, 30.0, -30.0}) {
      const Folder folder;
      const Printed made =
          printed(side, side == geometry::Side::left ? Paper::a4 : Paper::letter, "", angle_deg);
      std::optional<CardSeen> card;
      QImage page;
      for (const QImage& each : pages_of(folder, made.pdf))
        if (const auto seen = card_on(each)) {
          card = seen;
          page = each;
        }
      REQUIRE(card.has_value());
      REQUIRE(card->midline.mm() > 60);
      // The point where both lines meet: the lower end of the midline.
      const double x = card->midline.at + 1, y = card->midline.to;
      const double length = made.content.tape_to_draw_mm.value_or(made.content.centre_to_edge_mm);
      // Toward the midline is to the right on the left side, the nose being up.
      const double inward = side == geometry::Side::left ? 1 : -1;
      const double a = angle_deg * std::acos(-1.0) / 180;
      const double way_x = inward * std::sin(a), way_y = -std::cos(a), across_x = -way_y, across_y = way_x;
      // How far the ink's middle is beside the axis from that point, as it is on the way to the end: the same
      // all along, so the angle to the midline is right.
      const auto beside = [&](double at) {
        return ink_along(page, x + at * px_per_mm * way_x, y + at * px_per_mm * way_y, across_x, across_y,
                         -1.5, 1.5);
      };
      INFO("side " << static_cast<int>(side) << ", " << angle_deg << " degrees");
      const auto first = beside(0.15 * length);
      REQUIRE(first.has_value());
      CHECK(std::abs(*first) < 0.5);  // the point itself lies under the bar across it
      for (const double share : {0.5, 0.9}) {
        const auto off = beside(share * length);
        REQUIRE(off.has_value());
        CHECK(std::abs(*off - *first) < 0.2);
      }
      // From the bar across its beginning to the one across its end, each met on either side of the axis.
      const auto bar = [&](double near, double aside) {
        return ink_along(page, x + aside * px_per_mm * across_x, y + aside * px_per_mm * across_y, way_x,
                         way_y, near - 1.2, near + 1.2);
      };
      for (const double toward : {-1.0, 1.0}) {
        const auto begins = bar(0, 2 * toward), ends = bar(length, 4 * toward);
        REQUIRE(begins.has_value());
        REQUIRE(ends.has_value());
        CHECK(std::abs(*ends - *begins - length) < 0.2);
      }
      // The back: from 3 mm behind the centre to the front edge, and the coil's outline beside it.
      CHECK(std::abs(card->back_axis.mm() - (made.content.centre_to_edge_mm + 3)) < 0.2);
      const double back_x = card->back_axis.at + 1, back_y = card->back_axis.to - 3 * px_per_mm;
      for (const double beside : {-20.0, 6.0, 25.0}) {
        const double front = front_of(made.content.coil, beside);
        const auto outline =
            ink_along(page, back_x + beside * px_per_mm, back_y, 0, -1, front - 0.8, front + 0.8);
        INFO("outline at " << beside);
        REQUIRE(outline.has_value());
        CHECK(std::abs(*outline - front) < 0.2);
      }
    }
}

TEST_CASE("hostile labels stay text on strips, and the words say whose they are") {
  const Folder folder;
  const Printed made = printed(geometry::Side::right, Paper::a4, std::string(150, 'W') + "\n\t<b>");
  std::ofstream(folder.file("strips.pdf"), std::ios::binary) << made.pdf;
  REQUIRE(std::system(("pdftotext -layout '" + folder.file("strips.pdf") + "' '" + folder.file("text") + "'")
                          .c_str()) == 0);
  const std::string text = slurp(folder.file("text"));
  for (const char* said : {"right side", "2026-11-27", "10.0 cm", "half: vertex", "hotspot", "front axis",
                           models::made_by().c_str()})
    CHECK(text.find(said) != std::string::npos);
}
