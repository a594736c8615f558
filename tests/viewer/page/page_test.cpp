// A page as text: what it holds, and what it must not.
#include "viewer/page/page.h"

#include <catch2/catch.hpp>
#include <regex>
#include <span>

#include "geometry/base/error.h"
#include "geometry/plan/solve.h"
#include "models/cases/case_head.h"
#include "models/cases/demo_case.h"
#include "models/files/made_by.h"
#include "models/files/own_files.h"
#include "models/generic/generic_head.h"
#include "tests/support/temporary_folder.h"
#include "viewer/page/kernel/skin_bytes.h"
#include "viewer/page/packed.h"
#include "viewer/page/page_head.h"
#include "viewer/sheet/date.h"
#include "viewer/words/error.h"
#include "viewer/words/find_again.h"
#include "viewer/words/numbers.h"

using namespace scalpmark;
using namespace scalpmark::viewer;

namespace {

struct PagedCase {
  models::CaseFile file;
  models::LoadedHead loaded;
  geometry::Plan plan;
};

PagedCase solved(models::CaseFile file) {
  auto loaded = models::load_head(file);
  auto plan = geometry::solve(loaded.head, file.the_case, geometry::TapeDistances::treatment_alone);
  return {std::move(file), std::move(loaded), std::move(plan)};
}

/// The generic head as somebody's scan.
PagedCase scanned() {
  models::CaseFile file = models::demo_case();
  file.the_case.label = "Code 12";
  file.head.kind = models::HeadKind::mesh;
  file.head.file = "/home/somebody/surname.ply";
  file.head.fiducials = models::generic_head().fiducials().at;
  models::LoadedHead loaded{models::generic_head(), geometry::Message::of("scan %1", "surname.ply"), {}};
  auto plan = geometry::solve(loaded.head, file.the_case, geometry::TapeDistances::treatment_alone);
  return {std::move(file), std::move(loaded), std::move(plan)};
}

const PageParts parts{"start();", "work();", "p{}", "kernel", "licence", {}};

std::string page_of(const PagedCase& s, Face face, PageHead head = PageHead::own) {
  return page_html(s.file, s.loaded, s.plan, face, head, parts);
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("a technician's page says the lengths that find the marks again, script or no script", "[page]") {
  const PagedCase s = solved(models::demo_case());
  const std::string page = page_of(s, Face::technician);
  for (const TapeToRead& tape : find_again(s.plan)) CHECK(has(page, "<td>" + tape_number(tape.mm) + "</td>"));
  CHECK(models::own_format(page) == "scalpmark-html");
}

TEST_CASE("every page says which version made it, and when", "[page]") {
  const PagedCase s = solved(models::demo_case());
  for (const Face face : all_faces) {
    const std::string page = page_of(s, face);
    CHECK(has(page, "content=\"" + models::made_by() + "\""));
    CHECK(has(page.substr(page.find("<footer>")), models::made_by() + ", " + date_today()));
    CHECK(models::own_format(page) == "scalpmark-html");
  }
}

TEST_CASE("a patient's page holds no case, no label, no kernel and no length", "[page]") {
  PagedCase s = scanned();
  const std::string page = page_of(s, Face::patient, PageHead::generic);
  for (const char* word : {"Code 12", "surname", "scalpmark-case", "id=\"kernel\"", "find-again", "tape_mm",
                           " cm<", "\"site\"", "\"side\"", "laid_by"}) {
    INFO(word);
    CHECK_FALSE(has(page, word));
  }
  const std::string read = page.substr(page.find("<body"), page.find("<script") - page.find("<body"));
  const std::string words =
      std::regex_replace(read.substr(0, read.find("<footer>")), std::regex("<[^>]*>"), " ");
  CHECK_FALSE(
      std::regex_search(std::regex_replace(words, std::regex("2023|&#39;|&#34;"), ""), std::regex("[0-9]")));
}

TEST_CASE("no visit, and no name of a scan's file, leaves with a page", "[page]") {
  PagedCase s = scanned();
  geometry::Visit visit;
  visit.by = "RL";
  visit.remarks = "slept badly";
  s.file.the_case.visits.push_back(visit);
  for (const Face face : all_faces) {
    const std::string page = page_of(s, face);
    CHECK_FALSE(has(page, "slept badly"));
    CHECK_FALSE(has(page, "surname"));
    CHECK_FALSE(has(page, "somebody"));
  }
}

TEST_CASE("a label that looks like HTML stays text", "[page]") {
  models::CaseFile file = models::demo_case();
  file.the_case.label = "</script><script>alert(1)</script><!-- \"'&";
  const std::string page = page_of(solved(std::move(file)), Face::technician);
  CHECK_FALSE(has(page, "<script>alert"));
  CHECK_FALSE(has(page, "<!-- "));
  CHECK(has(page, "&lt;/script&gt;&lt;script&gt;alert(1)&lt;/script&gt;&lt;!-- &quot;&#39;&amp;"));
}

TEST_CASE("a page lets in its own script and style alone, and no connection", "[page]") {
  const std::string page = page_of(solved(models::demo_case()), Face::class_room);
  // SHA-256 of "abc": FIPS 180-2, appendix B.1.
  CHECK(policy_source("abc") == "'sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0='");
  const std::string policy = page.substr(
      page.find("default-src"), page.find("\">", page.find("default-src")) - page.find("default-src"));
  CHECK(policy.starts_with("default-src &#39;none&#39;; script-src &#39;sha256-"));
  CHECK_FALSE(has(policy, "unsafe-inline"));
  CHECK_FALSE(has(policy, "&#39;unsafe-eval"));  // wasm-unsafe-eval is asked for
  CHECK_FALSE(has(policy, "http"));
  CHECK(page.find("Content-Security-Policy") < page.find("<script"));
}

TEST_CASE("which head a page shows is said in it, and a scalp has neither face nor ears", "[page]") {
  const PagedCase s = scanned();
  CHECK(has(page_of(s, Face::technician, PageHead::own), "shows that person&#39;s face"));
  CHECK(has(page_of(s, Face::technician, PageHead::generic), "it is not that person"));
  CHECK(has(page_of(s, Face::technician, PageHead::scalp), "the face and the ears are not in this page"));
  const geometry::Head& head = s.loaded.head;
  const geometry::Surface scalp = scalp_of(head);
  const auto& at = head.fiducials().at;
  const Eigen::Vector3d up = head.axes().up;
  double lowest_front = 1e9, lowest_side = 1e9;
  for (const auto& p : scalp.vertices()) {
    const double front = (p - at.nasion).dot(head.axes().front);
    if (front > -20) lowest_front = std::min(lowest_front, (p - at.nasion).dot(up));
    if (std::abs((p - at.left_tragus).dot(head.axes().front)) < 15)
      lowest_side = std::min(lowest_side, (p - at.left_tragus).dot(up));
  }
  CHECK(lowest_front > 15);  // over the brow
  CHECK(lowest_side > 35);   // over the ears
  CHECK(scalp.triangles().size() > 1000);
  for (const Face face : all_faces) {
    const HeadOfPage page = head_of_page(s.file, s.loaded, s.plan, PageHead::scalp, {});
    for (const auto& p : page.drawn.vertices())
      if ((p - at.nasion).dot(head.axes().front) > -20) CHECK((p - at.nasion).dot(up) > 15);
    CHECK_FALSE(has(page_of(s, face, PageHead::scalp), "id=\"kernel\""));
  }
}

TEST_CASE("a skin as a page keeps it comes back as it was", "[page]") {
  const geometry::Surface skin = on_whole_micrometres(models::generic_head().skin());
  const std::string bytes = bytes_of(skin);
  const geometry::Surface again = surface_from(std::as_bytes(std::span(bytes)));
  CHECK(again.vertices() == skin.vertices());
  CHECK(again.triangles() == skin.triangles());
  double most = 0;
  for (std::size_t i = 0; i < skin.vertices().size(); ++i)
    most = std::max(most, (skin.vertices()[i] - models::generic_head().skin().vertices()[i]).norm());
  CHECK(most < 1e-3);
  CHECK_THROWS_AS(surface_from(std::as_bytes(std::span(bytes).first(40))), geometry::GeometryError);
  CHECK_THROWS_AS(surface_from({}), geometry::GeometryError);
}

TEST_CASE("without its parts no page is made, and one sentence says what to run", "[page]") {
  const tests::TemporaryFolder empty;
  CHECK_THROWS_WITH(read_page_parts({empty.path()}), Catch::Contains("run scripts/build release page_parts"));
  const PagedCase s = solved(models::demo_case());
  const PageParts damaged{"a</script>", "", "", "", "", {}};
  CHECK_THROWS_AS(page_html(s.file, s.loaded, s.plan, Face::technician, PageHead::own, damaged), ViewerError);
}
