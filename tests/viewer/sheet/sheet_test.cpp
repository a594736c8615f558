#include "viewer/sheet/sheet.h"

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>

#include "geometry/hands/cap.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "models/brain/add_cortex.h"
#include "models/cases/case_file.h"
#include "models/cases/case_head.h"
#include "models/files/made_by.h"
#include "models/heads/load_head.h"
#include "tests/support/own_folder.h"
#include "viewer/picture/display.h"
#include "viewer/sheet/content.h"
#include "viewer/sheet/views.h"
#include "viewer/words/numbers.h"

namespace fs = std::filesystem;
using namespace scalpmark;
using tests::slurp;
using viewer::Paper;
using Folder = tests::OwnFolder;

namespace {

void spill(const fs::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary) << bytes;
}

int shell(const std::string& command) {
  const int status = std::system(command.c_str());
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

/// What a program of Debian's poppler-utils says of a PDF: nothing of ours reads it back.
std::string poppler(const Folder& folder, const std::string& program, const fs::path& pdf) {
  const std::string out = folder.file("poppler");
  INFO(program << ": part of the Debian package poppler-utils");
  REQUIRE(shell(program + " '" + pdf.string() + "' " + (program.rfind("pdfinfo", 0) == 0 ? ">" : "") + "'" +
                out + "' 2>/dev/null") == 0);
  return slurp(out);
}

int pages_of(const std::string& pdfinfo) {
  std::smatch m;
  REQUIRE(std::regex_search(pdfinfo, m, std::regex("Pages: +(\\d+)")));
  return std::stoi(m[1]);
}

struct Word {
  double left, top, right, bottom;
  std::string text;
};

/// The words of each page with their boxes, points.
std::vector<std::vector<Word>> words_of(const Folder& folder, const fs::path& pdf) {
  const std::string text = poppler(folder, "pdftotext -bbox", pdf);
  std::vector<std::vector<Word>> pages;
  std::istringstream lines(text);
  const std::regex word(
      "<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">(.*)</word>");
  for (std::string line; std::getline(lines, line);) {
    std::smatch m;
    if (line.find("<page ") != std::string::npos) pages.emplace_back();
    if (std::regex_search(line, m, word))
      pages.back().push_back({std::stod(m[1]), std::stod(m[2]), std::stod(m[3]), std::stod(m[4]), m[5]});
  }
  return pages;
}

/// No word on another, none outside the margins of 15 mm.
void check_layout(const std::vector<std::vector<Word>>& pages, double width_pt, double height_pt) {
  const double margin = 15 / 25.4 * 72 - 1;
  for (const auto& words : pages) {
    CHECK_FALSE(words.empty());
    for (size_t i = 0; i < words.size(); ++i) {
      const Word& a = words[i];
      INFO("word " << a.text << " at " << a.left << ", " << a.top);
      CHECK(a.left > margin);
      CHECK(a.right < width_pt - margin);
      CHECK(a.top > margin);
      CHECK(a.bottom < height_pt - margin);
      for (size_t j = i + 1; j < words.size(); ++j) {
        const Word& b = words[j];
        // Boxes of neighbouring lines touch; what is drawn in them fills the middle two thirds.
        const double high = std::min(a.bottom, b.bottom) - std::max(a.top, b.top);
        const double wide = std::min(a.right, b.right) - std::max(a.left, b.left);
        if (wide > 0.5 && high > 0.3 * std::min(a.bottom - a.top, b.bottom - b.top))
          FAIL_CHECK("it lies on the word " << b.text << " at " << b.left << ", " << b.top);
      }
    }
  }
}

/// The numbers in the line that starts with these words.
std::vector<std::string> numbers_after(const std::string& text, const std::string& start) {
  const auto at = text.find(start);
  INFO("looking for " << start);
  REQUIRE(at != std::string::npos);
  const std::string line = text.substr(at + start.size(), text.find('\n', at) - at - start.size());
  std::istringstream in(line);
  std::vector<std::string> numbers;
  for (std::string word; in >> word;) numbers.push_back(word);
  return numbers;
}

std::string cm(double mm) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", mm / 10);
  return text;
}

const std::string bench = SCALPMARK_SOURCE_DIR "/models/demo/bench-head.json";

struct Solved {
  models::CaseFile case_file;
  models::LoadedHead loaded;
  geometry::Plan plan;
};

Solved solved(const std::string& json) {
  auto case_file = models::parse_case(json, fs::path(), "test case");
  auto loaded = models::load_head(case_file);
  auto plan = geometry::solve(loaded.head, case_file.the_case);
  return {std::move(case_file), std::move(loaded), std::move(plan)};
}

viewer::SheetContent content_of(const Solved& s, const std::string& date = "3 May 2026") {
  return viewer::sheet_content(s.case_file, s.loaded, s.plan, date,
                               viewer::off_by_hand(s.loaded.head, s.case_file.the_case, s.plan));
}

const Solved& bench_solved() {
  static const Solved s = solved(slurp(bench));
  return s;
}

}  // namespace

TEST_CASE("the sheet of the demo case: three A4 pages whose text holds the plan's numbers") {
  const Folder folder;
  const std::string pdf = folder.file("sheet.pdf");
  REQUIRE(shell("env -u DISPLAY '" SCALPMARK_PROGRAM "' sheet '" + bench + "' --out '" + pdf + "' 2>'" +
                folder.file("stderr") + "'") == 0);
  const std::string info = poppler(folder, "pdfinfo", pdf);
  CHECK(pages_of(info) == 3);
  CHECK(info.find("(A4)") != std::string::npos);
  const std::string text = poppler(folder, "pdftotext -layout", pdf);
  for (const char* said : {"Bench head, morning class",
                           "Set up by",
                           "drawing, not the patient",
                           "left tragus",
                           "5.0 cm forward of the hotspot",
                           "6.0 cm",
                           "seizure",
                           "Ear protection",
                           "not a navigation or treatment device",
                           "from skin to cortex",
                           "Brodmann",
                           "area 9, some 46",
                           "gyrus",
                           "All this on the template; a",
                           "in a round model head",
                           "no dose, no depth reached",
                           "A gap of 5 mm more",
                           "Page 1 of 3",
                           "Page 2 of 3",
                           models::made_by().c_str()})
    CHECK_THAT(text, Catch::Contains(said));
  // As entered in the case.
  CHECK(numbers_after(text, "Nasion to inion").front() == "36.2");
  CHECK(numbers_after(text, "Tragus to tragus").front() == "36.8");
  CHECK(numbers_after(text, "Around the head").front() == "56.5");
  const geometry::Plan& plan = bench_solved().plan;
  const auto same = [&](const std::string& name, const geometry::TapeFrom& t) {
    // And how closely the tapes in bold find it.
    auto found = numbers_after(text, name);
    REQUIRE(found.size() == 5);
    CHECK(std::stod(found.back()) > 0.2);
    found.pop_back();
    CHECK(found == std::vector<std::string>{cm(t.vertex_mm), cm(t.nasion_mm), cm(t.left_tragus_mm),
                                            cm(t.right_tragus_mm)});
  };
  same("Hotspot, pulse point", *plan.hotspot.pulse_tape);
  same("Hotspot, edge mark", *plan.hotspot.edge_mark_tape);
  same("Treatment site, pulse point", *plan.treatment.pulse_tape);
  same("Treatment site, edge mark", *plan.treatment.edge_mark_tape);
  const auto words = words_of(folder, pdf);
  check_layout(words, 595, 842);
  // Lines break between words: the footer's are all whole.
  for (const auto& page : words)
    for (const char* whole : {"instructions,", "local", "codes", "licensed", "clinician."})
      CHECK(std::any_of(page.begin(), page.end(), [&](const Word& w) { return w.text == whole; }));
  // Three head views, as pictures of at least 250 dots to the inch.
  const std::string out = folder.file("images");
  REQUIRE(shell("pdfimages -list '" + pdf + "' >'" + out + "'") == 0);
  const std::string images = slurp(out);
  CHECK(std::count(images.begin(), images.end(), '\n') == 2 + 3);
}

TEST_CASE("letter paper, the right side and a landmark: the sheet still fits") {
  const Folder folder;
  const std::string case_file = folder.file("case.json"), pdf = folder.file("sheet.pdf");
  spill(case_file, R"({"format":"scalpmark-case","version":1,"head":{"kind":"generic"},"side":"right",
    "tape_mm":{"nasion_inion":350},"coil":{"angle_deg":40,"mark_rule":"nearest","lift_mm":5},
    "hotspot":{"row":1,"column":-1},"treatment":{"rule":"landmark","label":"F4"}})");
  REQUIRE(shell("env -u DISPLAY '" SCALPMARK_PROGRAM "' sheet '" + case_file + "' --paper Letter --out '" +
                pdf + "' 2>'" + folder.file("stderr") + "'") == 0);
  const std::string info = poppler(folder, "pdfinfo", pdf);
  CHECK(pages_of(info) == 3);
  CHECK(info.find("612 x 792") != std::string::npos);
  const std::string text = poppler(folder, "pdftotext -layout", pdf);
  for (const char* said : {"Unnamed case", "right side", "at F4", "nearest: mark the skin", "not given",
                           "one step forward, one step"})
    CHECK_THAT(text, Catch::Contains(said));
  check_layout(words_of(folder, pdf), 612, 792);
}

TEST_CASE("a sheet that cannot be made leaves the old file as it was, and says why in one sentence") {
  const Folder folder;
  const std::string pdf = folder.file("old.pdf"), broken = folder.file("broken.json");
  spill(pdf, "the old sheet");
  spill(broken, "{\"format\": \"scalpmark-case\"");
  fs::create_directories(folder.file("folder.pdf"));
  const auto run = [&](const std::string& arguments) {
    const int code = shell("env -u DISPLAY '" SCALPMARK_PROGRAM "' sheet " + arguments + " >'" +
                           folder.file("out") + "' 2>'" + folder.file("err") + "'");
    const std::string err = slurp(folder.file("err"));
    INFO(arguments << ": " << err);
    CHECK(slurp(folder.file("out")).empty());
    CHECK(err.find("scalpmark: ") != std::string::npos);
    CHECK(slurp(pdf) == "the old sheet");
    return code;
  };
  const std::string to_old = " --out '" + pdf + "'";
  CHECK(run("'" + broken + "'" + to_old) == 1);
  CHECK(run("'" + folder.file("missing.json") + "'" + to_old) == 1);
  CHECK(run("'" + bench + "'" + to_old + " --paper a3") == 2);
  CHECK(run("'" + bench + "'") == 2);
  CHECK(run("'" + bench + "' --out '" + folder.file("folder.pdf") + "'") == 1);
  CHECK(fs::is_directory(folder.file("folder.pdf")));
}

TEST_CASE("the rules' table shows the distance between marks that the plan has") {
  const Solved& s = bench_solved();
  const viewer::SheetContent c = content_of(s);
  REQUIRE(c.rules.rows.size() == 3);
  CHECK(c.rules.rows[1][2] == "chosen");
  // The way along the skin is a little longer than the straight one.
  const auto check = [&](size_t row, size_t column, const Eigen::Vector3d& a, const Eigen::Vector3d& b) {
    const double straight = (a - b).norm() / 10, along = std::stod(c.rules.rows[row][column]);
    CHECK(along > straight - 0.06);
    CHECK(along < 1.1 * straight + 0.06);
  };
  const auto& h = s.plan.hotspot.edge_mark;
  const auto& t = s.plan.treatment.edge_mark;
  check(0, 2, *h.drop, *h.tape);
  check(2, 2, *h.drop, *h.nearest);
  check(0, 4, *t.drop, *t.tape);
  check(2, 4, *t.drop, *t.nearest);
  CHECK(c.alternatives.rows.size() == s.plan.treatment_alternatives.size());
  CHECK(c.date == "3 May 2026");
}

TEST_CASE("hostile words stay within the margins and off each other, on as many pages as it takes") {
  const Folder folder;
  viewer::SheetContent c = content_of(bench_solved());
  c.label = std::string(400, 'W') + " \n\t\x01 <b>bold</b> \xc3\xa9\xe6\x97\xa5 " + std::string(300, 'x');
  c.head = "MRI " + std::string(150, 'n') + ".nii.gz.";
  for (int i = 0; i < 60; ++i)
    c.warnings.push_back(
        "The edge mark of the start by the tape rule falls off the head (over the face or past the "
        "skin's border), so it is left out, and this sentence goes on to fill two lines, number " +
        std::to_string(i) + ".");
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    const std::string pdf = folder.file("hostile.pdf");
    spill(pdf, viewer::sheet_pdf(c, {}, paper));
    const auto words = words_of(folder, pdf);
    CHECK(words.size() == static_cast<size_t>(pages_of(poppler(folder, "pdfinfo", pdf))));
    CHECK(words.size() >= 3);
    check_layout(words, paper == Paper::a4 ? 595 : 612, paper == Paper::a4 ? 842 : 792);
    const std::string text = poppler(folder, "pdftotext -layout", pdf);
    CHECK(text.find("number 0.") != std::string::npos);
    CHECK(text.find("number 59.") != std::string::npos);
  }
}

TEST_CASE("the sheet says how high the cap's brim is to be over the four points of this head") {
  Solved other = bench_solved();
  other.case_file.the_case.cap.brim_over_nasion_mm = 25;
  const auto heights = geometry::brim_heights(other.loaded.head, geometry::cap_on(other.loaded.head, 25));
  const std::string note = content_of(other).measures.note;
  CHECK_THAT(note,
             Catch::Contains("Brim 2.5 cm over the nasion") &&
                 Catch::Contains(viewer::tape_length(*heights.left_tragus_mm) + " over the left tragus") &&
                 Catch::Contains(viewer::tape_length(*heights.inion_mm) + " over the inion"));
}

TEST_CASE("the sheet says what lies under treatment site and hotspot, where the head has a cortex") {
  const Solved& without = bench_solved();
  CHECK(content_of(without).cortex.rows.empty());
  Solved with{without.case_file, without.loaded, {}};
  models::add_cortex(with.loaded);
  with.plan = geometry::with_cortex(
      geometry::solve(with.loaded.head, with.case_file.the_case, geometry::TapeDistances::left_out),
      with.loaded.cortex.get());
  const auto table = content_of(with).cortex;
  CHECK_THAT(table.note, Catch::Contains("on the template; a person's own brain differs"));
  REQUIRE(table.rows.size() == 2);
  const auto check = [&](const std::vector<std::string>& row, const std::string& name,
                         const geometry::Placement& p) {
    REQUIRE(p.cortex);
    CHECK(row[0] == name);
    // From skin to the nearest cortex, in whole millimetres; the largest regions by name.
    CHECK(std::stod(row[1]) == static_cast<double>(std::lround(p.cortex->nearest_mm)));
    CHECK(row[1].find('%') == std::string::npos);
    for (const auto& region : {p.cortex->areas.front(), p.cortex->gyri.front()})
      CHECK_THAT(row[1], Catch::Contains(region.name));
  };
  check(table.rows[0], "Treatment site", with.plan.treatment);
  check(table.rows[1], "Hotspot", with.plan.hotspot);
  with.plan.hotspot.cortex.reset();
  CHECK(content_of(with).cortex.rows[1][1] == "no cortex under the pulse point");
}

TEST_CASE("a mark off the head is said in words, not with a number") {
  Solved s = bench_solved();
  s.plan.treatment.edge_mark.drop.reset();
  s.plan.hotspot.edge_mark = {};
  s.plan.hotspot.edge_mark_tape.reset();
  const viewer::SheetContent c = content_of(s);
  CHECK(c.rules.rows[1][4] == "none");
  CHECK(c.rules.rows[0][2] == "none");
  CHECK(c.tapes.rows[1][1] == "off the head");
}

TEST_CASE("the sheet draws where hands would lay the coil, where the face is seen") {
  const Solved& s = bench_solved();
  const auto by_hand = viewer::off_by_hand(s.loaded.head, s.case_file.the_case, s.plan);
  REQUIRE(by_hand);
  const auto with = viewer::sheet_views(s.loaded.head, s.case_file.the_case, s.plan, by_hand);
  const auto without = viewer::sheet_views(s.loaded.head, s.case_file.the_case, s.plan, {});
  REQUIRE(with.size() == 3);
  CHECK(with[0].rgb == without[0].rgb);
  CHECK(with[1].rgb == without[1].rgb);
  const auto blue = [](const viewer::SheetView& view) {  // near the pulse point's colour
    std::size_t count = 0;
    for (std::size_t i = 0; i + 2 < view.rgb.size(); i += 3) {
      const auto part = [&](std::size_t k) { return static_cast<unsigned char>(view.rgb[i + k]); };
      if (part(2) > part(0) + 60) ++count;
    }
    return count;
  };
  CHECK(blue(with[2]) > blue(without[2]) + 500);
}

TEST_CASE("the sheet has the tapes in bold that find each mark best, and says so") {
  const auto content = content_of(bench_solved());
  const viewer::SheetTable& tapes = content.tapes;
  REQUIRE(tapes.rows.size() == 4);
  for (std::size_t row = 0; row < tapes.rows.size(); ++row) {
    std::size_t bold = 0;
    for (std::size_t column = 1; column <= 4; ++column) bold += tapes.bold.contains({row, column});
    CHECK((bold == 2 || bold == 3));
    CHECK_FALSE(tapes.bold.contains({row, 0}));
    // Half a centimetre to a centimetre: what two or three tapes that cross well come to.
    CHECK(std::stod(tapes.rows[row].back()) >= 0.4);
    CHECK(std::stod(tapes.rows[row].back()) <= 1.0);
  }
  CHECK(tapes.note.find("In bold: the two or three tapes") != std::string::npos);
  CHECK(tapes.note.find("2.5 mm") != std::string::npos);
  CHECK(tapes.note.find("a third proves it") == std::string::npos);
}
