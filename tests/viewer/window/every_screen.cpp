#include "tests/viewer/window/every_screen.h"

#include "tests/support/labels_told_apart.h"

namespace scalpmark::window {

namespace {

using Look = std::function<void(const std::string&)>;

void worksheet(OpenedWindow& opened, const Look& look) {
  MainWindow& w = opened.window;
  const std::pair<Worksheet::StepIndex, const char*> steps[]{
      {Worksheet::measure_index, "measure"}, {Worksheet::landmarks_index, "landmarks"},
      {Worksheet::search_index, "search"},   {Worksheet::pulses_index, "pulses"},
      {Worksheet::site_index, "site"},       {Worksheet::check_index, "check-empty"},
      {Worksheet::save_index, "save"}};
  for (const auto& [step, name] : steps) {
    w.worksheet().go_to(step);
    opened.settle();
    look(name);
  }
  w.worksheet().go_to(Worksheet::site_index);
  w.stage().setFocus();
  for (int i = 0; i < 3; ++i)
    QTest::keyClick(&w.stage(), Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
  look("in-the-hand");
  QTest::keyClick(&w.stage(), Qt::Key_Escape);
  mark_today(w, 12);
  w.worksheet().go_to(Worksheet::check_index);
  OpenedWindow::wait_until([&] { return !w.by_hand().is_working(); });
  look("check-move");
  w.set_mode(Mode::check);
  look("check-mode");
  w.set_mode(Mode::worksheet);
}

void field(OpenedWindow& opened, const Look& look) {
  MainWindow& w = opened.window;
  w.worksheet().go_to(Worksheet::site_index);
  w.set_field(true);
  look("field");
  w.set_skin_opacity(viewer::skin_over_cortex);
  opened.settle();
  look("field-brain");
  for (const auto& [view, name] : {std::pair(viewer::View::front_left, "field-brain-front-left"),
                                   {viewer::View::above, "field-brain-above"},
                                   {viewer::View::right, "field-brain-right"}}) {
    w.stage().look(view);
    look(name);
  }
  w.set_mode(Mode::check);
  look("field-brain-check");
  w.set_skin_opacity(1);
  look("field-check");
  w.set_mode(Mode::worksheet);
  w.set_field(false);
}

void what_ifs(OpenedWindow& opened, const Look& look) {
  WhatIfControls& controls = *opened.teach.panel().what_if();
  const std::pair<WhatIfControls::Kind, const char*> kinds[]{
      {WhatIfControls::vertex, "vertex"}, {WhatIfControls::tape, "tape"}, {WhatIfControls::turned, "turned"},
      {WhatIfControls::rule, "rule"},     {WhatIfControls::cap, "cap"},   {WhatIfControls::aside, "aside"},
      {WhatIfControls::off, "off"}};
  const auto pick = [&](WhatIfControls::Kind kind) {
    if (!controls.button(kind)->isEnabled()) return false;
    controls.button(kind)->click();
    return true;
  };
  for (const auto& [kind, name] : kinds)
    if (pick(kind)) look(std::string("what-if-") + name);
  const std::pair<WhatIfControls::Kind, WhatIfControls::Kind> both[]{
      {WhatIfControls::vertex, WhatIfControls::turned}, {WhatIfControls::tape, WhatIfControls::cap},
      {WhatIfControls::turned, WhatIfControls::off},    {WhatIfControls::aside, WhatIfControls::turned},
      {WhatIfControls::cap, WhatIfControls::rule},      {WhatIfControls::vertex, WhatIfControls::tape}};
  for (const auto& [first, second] : both) {
    controls.clear();
    if (!pick(first)) continue;
    controls.keep()->click();
    if (pick(second)) look("what-if-" + std::to_string(first) + "-and-" + std::to_string(second));
  }
  controls.clear();
}

void teach(OpenedWindow& opened, const Look& look) {
  MainWindow& w = opened.window;
  w.set_mode(Mode::teach);
  for (int i = 0; i < w.teach().player().count(); ++i) {
    w.teach().player().go_to(i);
    look("lesson-" + std::to_string(i + 1));
  }
  what_ifs(opened, look);
  w.set_mode(Mode::worksheet);
}

void others(OpenedWindow& opened, const Look& look) {
  MainWindow& w = opened.window;
  w.set_mode(Mode::explain);
  opened.settle();
  for (int page = 1; page <= 3; ++page) {
    look("explain-" + std::to_string(page));
    w.explain().next()->click();
  }
  w.set_mode(Mode::course);
  look("course");
  w.menus().show_projected(true);
  w.set_mode(Mode::check);
  look("projected-check");
  w.set_mode(Mode::teach);
  w.teach().player().go_to(4);
  look("projected-lesson");
  w.menus().show_projected(false);
  w.set_mode(Mode::worksheet);
}

}  // namespace

void every_screen(OpenedWindow& opened, const Look& look) {
  worksheet(opened, look);
  field(opened, look);
  teach(opened, look);
  others(opened, look);
}

std::string mistaken_texts(MainWindow& w) {
  if (!w.stage().isVisible()) return "";
  (void)w.stage().picture();
  const viewer::Stage& stage = w.stage().stage();
  std::string wrong = tests::mistaken_labels(stage);
  const auto& captions = stage.captions();
  for (std::size_t i = 0; i < captions.size(); ++i) {
    for (const viewer::PlacedLabel& label : stage.labels())
      if (label.box.overlaps(captions[i].box))
        wrong += "\"" + label.wish.text + "\" over \"" + captions[i].text + "\"\n";
    for (std::size_t j = 0; j < i; ++j)
      if (captions[i].box.overlaps(captions[j].box))
        wrong += "\"" + captions[i].text + "\" over \"" + captions[j].text + "\"\n";
  }
  return wrong;
}

}  // namespace scalpmark::window
