#include "viewer/window/teach/what_if_controls.h"

#include <QVBoxLayout>

namespace scalpmark::window {

using geometry::MarkRule;
using geometry::Misread;

namespace {

constexpr geometry::Range vertex_off_mm{1, 50}, tape_off_mm{1, 30}, turned_by_deg{1, 90}, cap_slid_mm{1, 50},
    cap_turned_deg{1, 30}, aside_by_deg{1, 45}, off_gap_mm{1, 30}, off_by_deg{1, 30};
// What is usually done wrong: a thumb's breadth, half a centimetre of tape, ten degrees; a cap by half a
// thumb's breadth or by what its arrow hardly shows.
constexpr double usual_vertex_mm = 10, usual_tape_mm = 5, usual_turn_deg = 10, usual_slide_mm = 5,
                 usual_cap_turn_deg = 5, usual_aside_deg = 10, usual_gap_mm = 5, usual_lift_deg = 10;

enum Way { forward, back, to_left, to_right };
/// The first ways of a cap are those of a vertex, the others turn it.
enum CapTurn { turned_left = to_right + 1, turned_right };
enum AsideWay { from_front, from_handle, from_left, from_right };
enum OffHow { more_gap, left_lifted, right_lifted };
enum About { about_edge, about_centre };
constexpr std::array<Misread, 4> tapes{Misread::lateral, Misread::anterior, Misread::treatment,
                                       Misread::centre_to_edge};
constexpr int treatment_tape = 2, edge_tape = 3;
constexpr std::array<MarkRule, 3> rules{MarkRule::tape, MarkRule::drop, MarkRule::nearest};

int index_of(MarkRule rule) {
  return static_cast<int>(std::find(rules.begin(), rules.end(), rule) - rules.begin());
}

}  // namespace

WhatIfControls::WhatIfControls(QWidget* parent) : QWidget(parent), kinds_(new QButtonGroup(this)) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(4);
  make_fields();
  add_kind(nothing, tr("Nothing wrong"), tr("Back to the lesson"), {});
  add_kind(vertex, tr("The vertex is off"), tr("The vertex is marked in the wrong place"),
           {vertex_way_, vertex_off_});
  add_kind(tape, tr("A tape is misread"), tr("One length is read too long or too short"),
           {which_tape_, tape_way_, tape_off_});
  add_kind(turned, tr("The coil is turned"), tr("The angle is wrong"),
           {turned_about_, turned_way_, turned_by_});
  add_kind(rule, tr("Another marking rule"), tr("Marked by one rule, laid by another"), {laid_by_});
  add_kind(cap, tr("The cap has slipped"), tr("The marks are on the cap, and it sits in another place"),
           {cap_way_, cap_slid_, cap_turned_});
  add_kind(aside, tr("A look from aside"), tr("The eye looks past the coil's edge at the mark, off the axis"),
           {aside_way_, aside_by_});
  add_kind(off, tr("The coil is not on the skin"), tr("Hair lies under it, or a wing is lifted"),
           {off_how_, off_gap_, off_by_});
  keep_ = new QCheckBox(tr("Keep it, and choose a second"));
  keep_->setToolTip(tr("Two things go wrong at once: the next one you choose comes on top of this one"));
  keep_->setAccessibleDescription(keep_->toolTip());
  all->addWidget(keep_);
  kept_label_ = new QLabel;
  kept_label_->setObjectName("kept");
  kept_label_->setWordWrap(true);
  kept_label_->hide();
  all->addWidget(kept_label_);
  problem_ = new QLabel;
  problem_->setObjectName("problem");
  problem_->setWordWrap(true);
  problem_->hide();
  all->addWidget(problem_);
  choose_usual();
  connect_fields();
}

void WhatIfControls::make_fields() {
  vertex_off_ = new LengthField(tr("Off by"), vertex_off_mm);
  vertex_way_ =
      new Choice(tr("The vertex is marked too far"), {{tr("forward"), tr("Toward the nose")},
                                                      {tr("back"), tr("Toward the back of the head")},
                                                      {tr("left"), tr("Toward the patient's left ear")},
                                                      {tr("right"), tr("Toward the patient's right ear")}});
  which_tape_ =
      new Choice(tr("The tape"),
                 {{tr("from the vertex toward the ear"), tr("The first length to the search start")},
                  {tr("then forward to the start"), tr("The second length to the search start")},
                  {tr("forward from the hotspot"), tr("The length to the treatment site")},
                  {tr("from the site to the edge mark"), tr("The length along the coil's front")}},
                 nullptr, Qt::Vertical);
  tape_off_ = new LengthField(tr("Misread by"), tape_off_mm);
  tape_way_ = new Choice(tr("It is read"), {{tr("too long"), tr("The mark comes too far out")},
                                            {tr("too short"), tr("The mark comes too near")}});
  turned_by_ = new AngleField(tr("Turned by"), turned_by_deg);
  turned_about_ = new Choice(tr("The coil is turned about"),
                             {{tr("its edge mark"), tr("The edge stays on its mark, the centre moves")},
                              {tr("its centre"), tr("The centre stays on the site")}});
  turned_way_ = new Choice(
      tr("The coil's front is turned"),
      {{tr("toward the midline"), tr("To a larger angle")}, {tr("away from it"), tr("To a smaller angle")}});
  off_how_ = new Choice(tr("What keeps it off"),
                        {{tr("hair or air under it"), tr("All of the coil lies further off")},
                         {tr("its left wing is lifted"), tr("Left as seen from its handle")},
                         {tr("its right wing is lifted"), tr("Right as seen from its handle")}},
                        nullptr, Qt::Vertical);
  off_gap_ = new LengthField(tr("More gap"), off_gap_mm);
  off_by_ = new AngleField(tr("Lifted by"), off_by_deg);
  cap_slid_ = new LengthField(tr("Slid by"), cap_slid_mm);
  cap_turned_ = new AngleField(tr("Turned by"), cap_turned_deg);
  cap_way_ = new Choice(tr("The cap is"),
                        {{tr("slid forward"), tr("Its brim comes down over the forehead")},
                         {tr("slid back"), tr("Its brim goes up the forehead")},
                         {tr("slid to the patient's left"), tr("Its brim comes down over the left ear")},
                         {tr("slid to the patient's right"), tr("Its brim comes down over the right ear")},
                         {tr("turned to the patient's left"), tr("Its arrow passes left of the nose")},
                         {tr("turned to the patient's right"), tr("Its arrow passes right of the nose")}},
                        nullptr, Qt::Vertical);
  aside_by_ = new AngleField(tr("Off the coil's axis by"), aside_by_deg);
  aside_way_ = new Choice(tr("The eye looks"),
                          {{tr("from the front"), tr("It stands before the coil's front")},
                           {tr("from the handle"), tr("It stands on the handle's side")},
                           {tr("from the left"), tr("Of the coil, seen from its handle")},
                           {tr("from the right"), tr("Of the coil, seen from its handle")}},
                          nullptr, Qt::Vertical);
  laid_by_ =
      new Choice(tr("The coil is laid on the mark by the rule"),
                 {{tr("tape"), tr("The mark lies the centre-to-edge length away, by tape along the skin")},
                  {tr("drop"), tr("The mark lies where one sees it looking straight down past the edge")},
                  {tr("nearest"), tr("The mark lies on the skin nearest to the edge")}});
}

void WhatIfControls::add_kind(Kind kind, const QString& text, const QString& tooltip,
                              const std::vector<QWidget*>& fields) {
  auto* button = new QRadioButton(text);
  button->setObjectName("whatIf");
  button->setToolTip(tooltip);
  button->setAccessibleName(tr("What if: %1").arg(text));
  button->setAccessibleDescription(tooltip);
  kinds_->addButton(button, kind);
  layout()->addWidget(button);
  if (fields.empty()) return;
  auto* detail = new QWidget;
  auto* column = new QVBoxLayout(detail);
  column->setContentsMargins(16, 2, 0, 6);
  column->setSpacing(4);
  for (QWidget* field : fields) column->addWidget(field);
  details_[kind] = detail;
  layout()->addWidget(detail);
}

void WhatIfControls::choose_usual() {
  vertex_off_->set_value(usual_vertex_mm);
  tape_off_->set_value(usual_tape_mm);
  turned_by_->set_value(usual_turn_deg);
  vertex_way_->choose(forward);
  which_tape_->choose(treatment_tape);
  tape_way_->choose(0);
  turned_way_->choose(0);
  cap_slid_->set_value(usual_slide_mm);
  cap_turned_->set_value(usual_cap_turn_deg);
  cap_way_->choose(forward);
  laid_by_->choose(index_of(MarkRule::drop));
  aside_by_->set_value(usual_aside_deg);
  aside_way_->choose(from_front);
  turned_about_->choose(about_edge);
  off_how_->choose(more_gap);
  off_gap_->set_value(usual_gap_mm);
  off_by_->set_value(usual_lift_deg);
  kinds_->button(nothing)->setChecked(true);
  show_kind();
}

void WhatIfControls::connect_fields() {
  const auto say = [this] { emit changed(); };
  connect(kinds_, &QButtonGroup::idClicked, this, [this](int kind) {
    if (kind == nothing) drop_kept();
    show_kind();
    emit changed();
  });
  connect(keep_, &QCheckBox::clicked, this, &WhatIfControls::keep_or_drop);
  for (Choice* choice : {vertex_way_, which_tape_, tape_way_, turned_way_, laid_by_, cap_way_, aside_way_,
                         turned_about_, off_how_})
    connect(choice, &Choice::picked, this, say);
  for (Choice* choice : {cap_way_, off_how_})
    connect(choice, &Choice::picked, this, &WhatIfControls::show_kind);
  for (NumberField* field : {static_cast<NumberField*>(vertex_off_), static_cast<NumberField*>(tape_off_),
                             static_cast<NumberField*>(turned_by_), static_cast<NumberField*>(cap_slid_),
                             static_cast<NumberField*>(cap_turned_), static_cast<NumberField*>(aside_by_),
                             static_cast<NumberField*>(off_gap_), static_cast<NumberField*>(off_by_)})
    field->on_commit([this, field](std::optional<double> value) {
      field->set_value(value);
      emit changed();
      return QString();
    });
}

QRadioButton* WhatIfControls::button(Kind kind) const {
  return qobject_cast<QRadioButton*>(kinds_->button(kind));
}

void WhatIfControls::show_kind() {
  for (std::size_t i = 0; i < details_.size(); ++i)
    if (details_[i]) details_[i]->setVisible(static_cast<int>(i) == kind());
  cap_slid_->setVisible(cap_way_->chosen() < turned_left);
  cap_turned_->setVisible(cap_way_->chosen() >= turned_left);
  off_gap_->setVisible(off_how_->chosen() == more_gap);
  off_by_->setVisible(off_how_->chosen() != more_gap);
  keep_->setVisible(kept_ || kind() != nothing);
}

void WhatIfControls::keep_or_drop(bool keep) {
  if (keep) {
    kept_ = mistake();
    // None is chosen until the second is.
    kinds_->setExclusive(false);
    if (QAbstractButton* chosen = kinds_->checkedButton()) chosen->setChecked(false);
    kinds_->setExclusive(true);
  } else {
    drop_kept();
    if (kinds_->checkedId() < 0) kinds_->button(nothing)->setChecked(true);
  }
  enable_kinds();
  show_kind();
  emit changed();
}

void WhatIfControls::drop_kept() {
  kept_.reset();
  keep_->setChecked(false);
  show_kept({});
  enable_kinds();
}

void WhatIfControls::show_kept(const QString& in_words) {
  kept_label_->setText(in_words);
  kept_label_->setVisible(!in_words.isEmpty());
}

void WhatIfControls::enable_kinds() {
  const auto* other = kept_ ? std::get_if<viewer::OtherRule>(&*kept_) : nullptr;
  button(rule)->setEnabled(other == nullptr);
  button(aside)->setEnabled((other != nullptr ? other->laid_by : case_rule_) == MarkRule::drop);
}

void WhatIfControls::set_unit(LengthUnit unit) {
  for (LengthField* field : {vertex_off_, tape_off_, cap_slid_, off_gap_}) field->set_unit(unit);
}

void WhatIfControls::clear() {
  if (kind() == nothing && !kept_) return;
  drop_kept();
  kinds_->button(nothing)->setChecked(true);
  set_problem({});
  show_kind();
}

geometry::CapMove WhatIfControls::cap_move() const {
  const double mm = cap_slid_->value().value_or(usual_slide_mm);
  const double deg = cap_turned_->value().value_or(usual_cap_turn_deg);
  switch (cap_way_->chosen()) {
    case forward:
      return {mm, 0, 0};
    case back:
      return {-mm, 0, 0};
    case to_left:
      return {0, -mm, 0};
    case to_right:
      return {0, mm, 0};
    case turned_left:
      return {0, 0, -deg};
    default:
      return {0, 0, deg};
  }
}

std::vector<viewer::Mistake> WhatIfControls::mistakes() const {
  std::vector<viewer::Mistake> all;
  if (kept_) all.push_back(*kept_);
  if (const auto chosen = mistake()) all.push_back(*chosen);
  return all;
}

std::optional<viewer::Mistake> WhatIfControls::mistake() const {
  switch (kind()) {
    case nothing:
      break;
    case vertex: {
      const double mm = vertex_off_->value().value_or(usual_vertex_mm);
      switch (static_cast<Way>(vertex_way_->chosen())) {
        case forward:
          return viewer::VertexOff{mm, 0};
        case back:
          return viewer::VertexOff{-mm, 0};
        case to_left:
          return viewer::VertexOff{0, -mm};
        case to_right:
          return viewer::VertexOff{0, mm};
      }
      break;
    }
    case tape:
      return viewer::TapeMisread{
          tapes[static_cast<std::size_t>(which_tape_->chosen())],
          tape_off_->value().value_or(usual_tape_mm) * (tape_way_->chosen() == 0 ? 1 : -1)};
    case turned:
      return viewer::CoilTurned{
          turned_by_->value().value_or(usual_turn_deg) * (turned_way_->chosen() == 0 ? 1 : -1),
          turned_about_->chosen() == about_centre};
    case rule:
      return viewer::OtherRule{rules[static_cast<std::size_t>(laid_by_->chosen())]};
    case cap:
      return viewer::CapSlipped{cap_move()};
    case off: {
      if (off_how_->chosen() == more_gap)
        return viewer::StandsOff{off_gap_->value().value_or(usual_gap_mm), {}};
      const double lifted = off_by_->value().value_or(usual_lift_deg);
      // With its left wing up its right side is down.
      return viewer::StandsOff{0, {off_how_->chosen() == left_lifted ? lifted : -lifted, 0}};
    }
    case aside: {
      const double deg = aside_by_->value().value_or(usual_aside_deg);
      switch (static_cast<AsideWay>(aside_way_->chosen())) {
        case from_front:
          return viewer::LookedAside{deg, 0};
        case from_handle:
          return viewer::LookedAside{-deg, 0};
        case from_left:
          return viewer::LookedAside{0, -deg};
        case from_right:
          return viewer::LookedAside{0, deg};
      }
      break;
    }
  }
  return {};
}

void WhatIfControls::show_case(const geometry::Case& the_case) {
  const bool landmark = the_case.treatment.rule == geometry::TreatmentRule::landmark;
  which_tape_->button(treatment_tape)->setEnabled(!landmark);
  if (landmark && which_tape_->chosen() == treatment_tape) which_tape_->choose(edge_tape);
  case_rule_ = the_case.coil.laid_by;
  enable_kinds();
  if (!button(aside)->isEnabled() && kind() == aside) clear();
  const int own = index_of(the_case.coil.laid_by);
  for (int i = 0; i < static_cast<int>(rules.size()); ++i) laid_by_->button(i)->setEnabled(i != own);
  if (laid_by_->chosen() == own)
    laid_by_->choose(index_of(own == index_of(MarkRule::drop) ? MarkRule::tape : MarkRule::drop));
}

void WhatIfControls::set_problem(const QString& sentence) {
  problem_->setText(sentence);
  problem_->setVisible(!sentence.isEmpty());
}

}  // namespace scalpmark::window
