#include "viewer/window/session/head_cache.h"

#include <catch2/catch.hpp>

#include "models/cases/case_head.h"
#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

/// The demo case on a generic head of another circumference, which is another head.
models::CaseFile case_of(int head) {
  models::CaseFile case_file = demo_case();
  case_file.the_case.tape_mm.circumference_mm = 550 + head;
  return case_file;
}

PreparedHead some_head() {
  static const models::LoadedHead loaded = models::load_head(demo_case());
  return {std::make_shared<const models::LoadedHead>(loaded), {}, {}};
}

}  // namespace

TEST_CASE("the last four heads are remembered, and one that is used again stays") {
  HeadCache cache;
  for (int i = 0; i < 4; ++i) cache.remember(case_of(i), some_head());
  for (int i = 0; i < 4; ++i) CHECK(cache.find(case_of(i)));
  cache.remember(case_of(0), *cache.find(case_of(0)));
  cache.remember(case_of(4), some_head());
  CHECK_FALSE(cache.find(case_of(1)));  // the one that was not used for longest
  for (const int i : {0, 2, 3, 4}) CHECK(cache.find(case_of(i)));
  cache.clear();
  CHECK_FALSE(cache.find(case_of(4)));
}

TEST_CASE("what is not about the head finds the same head, and another folder another scan") {
  HeadCache cache;
  cache.remember(case_of(0), some_head());
  models::CaseFile edited = case_of(0);
  edited.the_case.coil.angle_deg += 10;
  edited.the_case.label = "another name";
  CHECK(cache.find(edited));

  models::CaseFile scan = demo_case();
  scan.head.kind = models::HeadKind::mesh;
  scan.head.file = "scan.ply";
  scan.folder = "/a";
  cache.remember(scan, some_head());
  CHECK(cache.find(scan));
  scan.folder = "/b";
  CHECK_FALSE(cache.find(scan));
}

TEST_CASE("what is made of a head later goes to that head alone") {
  HeadCache cache;
  const PreparedHead one = some_head(), other = some_head();
  cache.remember(case_of(0), one);
  cache.remember(case_of(1), other);
  cache.set_thin(one.head, one.head->head.skin());
  CHECK(cache.find(case_of(0))->thin.has_value());
  CHECK_FALSE(cache.find(case_of(1))->thin.has_value());

  cache.set_cortex(other.head, nullptr, {"not installed"});
  CHECK(cache.find(case_of(1))->head == other.head);
  CHECK(cache.find(case_of(1))->cortex_notes == QStringList{"not installed"});
  CHECK(cache.find(case_of(0))->cortex_notes.isEmpty());
  const PreparedHead with = some_head();
  cache.set_cortex(other.head, with.head, {});
  CHECK(cache.find(case_of(1))->head == with.head);
  CHECK(cache.find(case_of(0))->head == one.head);
}
