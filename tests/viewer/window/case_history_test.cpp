#include "viewer/window/session/case_history.h"

#include <catch2/catch.hpp>

using namespace scalpmark;
using window::CaseHistory;

namespace {

models::CaseFile labelled(const std::string& label) {
  models::CaseFile case_file;
  case_file.the_case.label = label;
  return case_file;
}

}  // namespace

TEST_CASE("undo goes back case by case, redo forward, and a new edit forgets what was undone") {
  CaseHistory history(labelled("a"));
  history.add(labelled("b"), "Label");
  history.add(labelled("c"), "Label");
  history.undo();
  CHECK(history.now().the_case.label == "b");
  history.undo();
  CHECK(history.now().the_case.label == "a");
  CHECK_FALSE(history.can_undo());
  history.redo();
  CHECK(history.now().the_case.label == "b");
  history.add(labelled("d"), "Label");
  CHECK_FALSE(history.can_redo());
  history.undo();
  CHECK(history.now().the_case.label == "b");
}

TEST_CASE("edits of one burst are one step") {
  CaseHistory history(labelled("a"));
  history.add(labelled("b"), "Angle", "wheel");
  history.add(labelled("c"), "Angle", "wheel");
  history.end_burst();
  history.add(labelled("d"), "Angle", "wheel");
  history.undo();
  CHECK(history.now().the_case.label == "c");
  history.undo();
  CHECK(history.now().the_case.label == "a");
}

TEST_CASE("a case counts as saved exactly where it was saved") {
  CaseHistory history(labelled("a"));
  CHECK(history.is_saved());
  history.add(labelled("b"), "Label");
  CHECK_FALSE(history.is_saved());
  history.mark_saved();
  CHECK(history.is_saved());
  history.undo();
  CHECK_FALSE(history.is_saved());
  history.redo();
  CHECK(history.is_saved());
  history.undo();
  history.add(labelled("c"), "Label");  // the saved case is out of reach now
  history.undo();
  CHECK_FALSE(history.is_saved());
}

TEST_CASE("of very many steps the oldest are forgotten, the saved one among them") {
  CaseHistory history(labelled("first"));
  history.add(labelled("saved"), "Label");
  history.mark_saved();
  constexpr int more = 2500;
  for (int i = 0; i < more; ++i) history.add(labelled(std::to_string(i)), "Label");
  CHECK_FALSE(history.is_saved());
  std::size_t undone = 0;
  while (history.can_undo()) {
    history.undo();
    CHECK_FALSE(history.is_saved());
    ++undone;
  }
  CHECK(undone == CaseHistory::most_steps - 1);
  CHECK(history.now().the_case.label == std::to_string(more - static_cast<int>(CaseHistory::most_steps)));
  history.mark_saved();
  history.redo();
  history.undo();
  CHECK(history.is_saved());
}
