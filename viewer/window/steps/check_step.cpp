#include "viewer/window/steps/check_step.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QStyle>
#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/base/error.h"
#include "geometry/hands/careful_limits.h"
#include "viewer/window/steps/verdict.h"
#include "viewer/words/found_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using viewer::Thing;

namespace {

constexpr geometry::Range pulse_limit_mm{1, 50}, angle_limit_deg{1, 90};

using Reading = std::optional<double> geometry::TapeReadings::*;
constexpr std::array<Reading, 4> readings{
    &geometry::TapeReadings::vertex_mm, &geometry::TapeReadings::nasion_mm,
    &geometry::TapeReadings::left_tragus_mm, &geometry::TapeReadings::right_tragus_mm};

/// What the limits of careful hands depend on.
geometry::Case without_visits(geometry::Case the_case) {
  the_case.answers = {};
  the_case.visits.clear();
  return the_case;
}

}  // namespace

CheckStep::CheckStep(Session& session, Visit& visit, PulseLog& log, QWidget* parent)
    : Step(6, tr("Check"), parent), session_(session), visit_(visit), log_(log) {
  set_hint(tr(
      "Find today's two marks on the cap or the skin. Click each on the head here, or type two or more tape "
      "distances to it."));
  // First, so that it is in sight whatever was entered under it.
  verdict_ = new QLabel;
  verdict_->setObjectName("verdict");
  verdict_->setWordWrap(true);
  fields()->addWidget(verdict_);
  add_entry(TodaysMark::site, tr("Site mark"));
  add_entry(TodaysMark::edge, tr("Edge mark"));
  cap_ = new CapFields(visit);
  fields()->addWidget(cap_);
  add_keeping();
  pulse_limit_ = new LengthField(tr("Allowed distance from the site"), pulse_limit_mm);
  pulse_limit_->on_commit([this](std::optional<double> mm) {
    geometry::CheckLimits limits = visit_.limits();
    limits.pulse_mm = *mm;
    visit_.set_limits(limits);
    return QString();
  });
  angle_limit_ = new AngleField(tr("Allowed angle error"), angle_limit_deg);
  angle_limit_->on_commit([this](std::optional<double> degrees) {
    geometry::CheckLimits limits = visit_.limits();
    limits.angle_deg = *degrees;
    visit_.set_limits(limits);
    return QString();
  });
  fields()->addWidget(pulse_limit_);
  fields()->addWidget(angle_limit_);
  limits_from_ = new QLabel;
  limits_from_->setObjectName("quiet");
  limits_from_->setWordWrap(true);
  fields()->addWidget(limits_from_);
  careful_ = new QPushButton(tr("What tape and pencil can do"));
  fields()->addWidget(careful_, 0, Qt::AlignLeft);
  connect(careful_, &QPushButton::clicked, this, &CheckStep::switch_limits);
  forget_ = new QPushButton(tr("Start the check over"));
  fields()->addWidget(forget_, 0, Qt::AlignLeft);
  gaps_ = new GapPanel;
  fields()->addWidget(gaps_);
  tolerance_ = new TolerancePanel(session);
  fields()->addWidget(tolerance_);
  connect(forget_, &QPushButton::clicked, this, [this] {
    want({});
    visit_.start_over();
  });
  connect(&visit, &Visit::changed, this, &CheckStep::show_case);
  add_keys();
}

void CheckStep::add_keys() {
  // As many letters as there are ever places to choose from. One key for both marks: only one is asked about.
  constexpr std::size_t most_keys = 6;
  for (std::size_t i = 0; i < most_keys; ++i) {
    auto* key = new QShortcut(
        QKeySequence(QStringLiteral("Ctrl+Alt+%1").arg(QString::fromStdString(viewer::place_tag(i)))), this);
    connect(key, &QShortcut::activated, this, [this, i] {
      if (const auto asked = visit_.asked()) visit_.choose(*asked, i);
    });
  }
}

void CheckStep::add_entry(TodaysMark which, const QString& name) {
  Entry& entry = entries_[static_cast<std::size_t>(which)];
  auto* row = new QHBoxLayout;
  auto* label = new QLabel(name);
  label->setObjectName("strong");
  entry.click = new QPushButton(tr("Click it"));
  entry.click->setCheckable(true);
  entry.click->setToolTip(tr("Then click the mark on the head"));
  entry.click->setAccessibleName(tr("%1: click it on the head").arg(name));
  entry.by_tape = new QPushButton(tr("By tape"));
  entry.by_tape->setCheckable(true);
  entry.by_tape->setAccessibleName(tr("%1: enter tape distances").arg(name));
  row->addWidget(label, 1);
  row->addWidget(entry.click);
  row->addWidget(entry.by_tape);
  fields()->addLayout(row);

  entry.tape_rows = new QWidget;
  auto* tapes = new QVBoxLayout(entry.tape_rows);
  tapes->setContentsMargins(10, 0, 0, 0);
  tapes->setSpacing(4);
  const std::array<QString, 4> names{tr("from the vertex"), tr("from the nasion"), tr("from the left tragus"),
                                     tr("from the right tragus")};
  for (std::size_t i = 0; i < names.size(); ++i) {
    auto* field = new LengthField(names[i], geometry::ranges::tape_reading_mm);
    field->set_optional(tr("none"));
    field->on_commit([this, which, i](std::optional<double> mm) {
      geometry::TapeReadings now = visit_.readings(which);
      now.*readings[i] = mm;
      return visit_.set(which, now);
    });
    entry.tapes[i] = field;
    tapes->addWidget(field);
  }
  entry.tape_rows->hide();
  fields()->addWidget(entry.tape_rows);
  entry.places = new PlaceChoice(name);
  fields()->addWidget(entry.places);
  connect(entry.places, &PlaceChoice::picked, this,
          [this, which](std::size_t place) { visit_.choose(which, place); });
  connect(entry.places, &PlaceChoice::nearest_picked, this,
          [this, which] { visit_.choose_nearest_to_plan(which); });

  connect(entry.click, &QPushButton::clicked, this,
          [this, which](bool on) { want(on ? std::optional(which) : std::nullopt); });
  connect(entry.by_tape, &QPushButton::clicked, this, [this, which](bool on) {
    entries_[static_cast<std::size_t>(which)].tape_rows->setVisible(on);
    if (on) session_.want_fields();  // ready by the time the first tape is read
    want({});
  });
}

void CheckStep::want(std::optional<TodaysMark> which) {
  wanted_ = which;
  show_case();
  emit point_wanted();
}

void CheckStep::set_unit(LengthUnit unit) {
  for (const Entry& entry : entries_)
    for (LengthField* field : entry.tapes) field->set_unit(unit);
  unit_ = unit;
  cap_->set_unit(unit);
  pulse_limit_->set_unit(unit);
  tolerance_->set_unit(unit);
  show_case();
}

void CheckStep::show_case() {
  for (const TodaysMark which : {TodaysMark::site, TodaysMark::edge}) {
    const Entry& entry = this->entry(which);
    entry.click->setChecked(wanted_ == which);
    entry.click->setText(visit_.mark(which) ? tr("Click anew") : tr("Click it"));
    for (std::size_t i = 0; i < readings.size(); ++i)
      entry.tapes[i]->set_value(visit_.readings(which).*readings[i]);
    entry.places->show_found(visit_.found(which), visit_.about(which));
  }
  cap_->show_case();
  show_keeping();
  tolerance_->show_case();
  pulse_limit_->set_value(visit_.limits().pulse_mm);
  angle_limit_->set_value(visit_.limits().angle_deg);
  show_limits();
  forget_->setEnabled(visit_.mark(TodaysMark::site) || visit_.mark(TodaysMark::edge) || visit_.asked() ||
                      !(visit_.brim() == geometry::BrimReadings{}));
  set_problem(visit_.problem());
  show_verdict();
  if (wanted_)
    set_note(*wanted_ == TodaysMark::site ? tr("Now click today's site mark on the head.")
                                          : tr("Now click today's edge mark on the head."));
  else
    set_note({});
}

void CheckStep::add_keeping() {
  anew_ = new QCheckBox(tr("The marks were drawn anew today"));
  anew_->setToolTip(tr("From this visit on they are the reference"));
  anew_->setAccessibleDescription(anew_->toolTip());
  fields()->addWidget(anew_);
  keep_ = new QPushButton(tr("Enter as today's visit"));
  keep_->setToolTip(tr("Adds the tapes to both marks, and the brim's heights, to today's visit of the case"));
  keep_->setAccessibleDescription(keep_->toolTip());
  fields()->addWidget(keep_, 0, Qt::AlignLeft);
  connect(keep_, &QPushButton::clicked, this, &CheckStep::keep);
}

void CheckStep::show_keeping() {
  const bool any =
      visit_.mark(TodaysMark::site) || visit_.mark(TodaysMark::edge) || count_of(visit_.brim().heights) > 0;
  keep_->setEnabled(any);
  anew_->setEnabled(any);
  if (keeps_when_measured_ && session_.has_fields()) keep();
}

void CheckStep::keep() {
  const auto marks = {TodaysMark::site, TodaysMark::edge};
  const bool waits = std::any_of(marks.begin(), marks.end(), [&](TodaysMark which) {
    return visit_.mark(which) && count_of(visit_.tapes_to_keep(which)) < 2;
  });
  keeps_when_measured_ = waits;
  if (waits) {
    session_.want_fields();
    set_note(tr("The visit is kept once the tapes to the marks are worked out."));
    return;
  }
  set_problem(log_.edit_today(tr("Visit"), [&](geometry::Visit& kept) {
    kept.site_tape = visit_.tapes_to_keep(TodaysMark::site);
    kept.edge_tape = visit_.tapes_to_keep(TodaysMark::edge);
    kept.brim = visit_.brim().heights;
    kept.marked_anew = anew_->isChecked();
  }));
  if (const auto shown = log_.shown()) set_note(tr("Entered as visit %1; see Course.").arg(*shown + 1));
}

VerdictText CheckStep::verdict() const {
  return verdict_text(visit_.check(), visit_.problem(), visit_.doubt(), by_hand_.get(), unit_);
}

void CheckStep::show_verdict() {
  const VerdictText text = verdict();
  QString said = QStringLiteral("<b>%1</b><br>%2").arg(text.headline, text.reason.toHtmlEscaped());
  if (!text.by_hand.isEmpty()) said += QStringLiteral("<br>") + text.by_hand.toHtmlEscaped();
  verdict_->setText(visit_.check() ? said : QString());
  verdict_->setVisible(visit_.check().has_value());
  verdict_->setProperty("verdict", text.kind == VerdictText::Kind::agrees ? "agrees"
                                   : text.kind == VerdictText::Kind::move ? "move"
                                                                          : "unsure");
  verdict_->style()->unpolish(verdict_);
  verdict_->style()->polish(verdict_);
  set_summary(visit_.check() ? text.headline : QString());
}

void CheckStep::show_by_hand(std::shared_ptr<const geometry::Tolerance> by_hand) {
  by_hand_ = std::move(by_hand);
  show_verdict();
}

void CheckStep::show_limits() {
  const geometry::CheckLimits now = visit_.limits();
  const auto same = [&](const geometry::CheckLimits& other) {
    return now.pulse_mm == other.pulse_mm && now.angle_deg == other.angle_deg;
  };
  const bool strict = same({}), careful = careful_limits_ &&
                                          careful_for_ == without_visits(session_.case_file().the_case) &&
                                          same(*careful_limits_);
  limits_from_->setText(
      careful
          ? tr("As good as tape and pencil get on this head: 95 of 100 pairs of marks made by careful hands "
               "lie within.")
      : strict ? tr("These two are common practice; they have no source.")
               : tr("Your own limits."));
  careful_->setText(careful ? tr("The strict limits") : tr("What tape and pencil can do"));
  careful_->setToolTip(careful ? tr("Back to those of common practice")
                               : tr("Sets the limits that careful hands meet on this head"));
  careful_->setAccessibleDescription(careful_->toolTip());
}

void CheckStep::switch_limits() {
  const geometry::CheckLimits now = visit_.limits();
  if (careful_limits_ && careful_for_ == without_visits(session_.case_file().the_case) &&
      now.pulse_mm == careful_limits_->pulse_mm && now.angle_deg == careful_limits_->angle_deg) {
    visit_.set_limits({});
    return;
  }
  try {
    geometry::CheckLimits limits =
        geometry::careful_limits(session_.head().head, session_.case_file().the_case, session_.plan());
    // As a tape and a whole degree tell it.
    limits.pulse_mm = std::max(1.0, std::ceil(limits.pulse_mm));
    limits.angle_deg = std::max(1.0, std::ceil(limits.angle_deg));
    careful_limits_ = limits;
    careful_for_ = without_visits(session_.case_file().the_case);
    visit_.set_limits(limits);
  } catch (const geometry::GeometryError& error) {
    set_problem(viewer::translated(error));
  }
}

bool CheckStep::shows_new_question() {
  const auto before = std::exchange(asked_, visit_.asked());
  return asked_ && asked_ != before;
}

void CheckStep::show_places(StageContent& content) const {
  const auto asked = visit_.asked();
  if (!asked) return;
  const geometry::Head& head = session_.head().head;
  const auto& places = visit_.found(*asked).places;
  content.shown.things.insert(Thing::places);
  Eigen::Vector3d middle = Eigen::Vector3d::Zero();
  for (std::size_t i = 0; i < places.size(); ++i) {
    const Eigen::Vector3d at = head.skin().position(places[i].point);
    content.shown.places.push_back({at, viewer::place_tag(i)});
    middle += at / static_cast<double>(places.size());
  }
  // From outside, over the middle of them all, so that as many as can be are in sight at once.
  constexpr double across_mm = 260, off_centre_mm = 20;
  const geometry::HeadAxes& axes = head.axes();
  const Eigen::Vector3d out = middle - axes.origin;
  viewer::Gaze gaze{axes.up, axes.front};
  if (out.norm() > off_centre_mm) {
    gaze.toward_eye = out.normalized();
    const Eigen::Vector3d& up = std::abs(gaze.toward_eye.dot(axes.up)) < 0.9 ? axes.up : axes.front;
    gaze.up = (up - up.dot(gaze.toward_eye) * gaze.toward_eye).normalized();
  }
  content.look.close_up = StageLook::CloseUp{gaze, middle, across_mm};
}

StageContent CheckStep::stage_content(const HeldCoil& coil) const {
  StageContent content =
      content_with({Thing::treatment, Thing::coil, Thing::angle, Thing::edge_marks, Thing::wanted}, coil);
  content.shown.names_all = false;
  const auto& check = visit_.check();
  if (check) {
    content.shown.coil_on = viewer::CoilOn::elsewhere;
    content.shown.placement = check->as_laid;
    content.coil_follows_hand = false;
  }
  if (const auto& cap = visit_.cap()) {
    content.shown.things.insert(Thing::cap);
    content.shown.cap = visit_.cap_veil();
    // Marks that were found today say more than the cap they are on.
    if (!check) {
      content.shown.coil_on = viewer::CoilOn::elsewhere;
      content.shown.placement = cap->check.as_laid;
      content.coil_follows_hand = false;
    }
  }
  content.off_by_hand = tolerance_->is_open() || check;
  if (tolerance_->on_head()) {
    content.shown.things.insert({Thing::tolerance, Thing::way_marks});
    content.shown.marking_way = tolerance_->way();
  }
  const auto note = [&](TodaysMark which, viewer::Shape shape, const QString& text, int priority) {
    const auto& mark = visit_.mark(which);
    if (!mark) return;
    viewer::Note made;
    made.shape = shape;
    made.role = viewer::Role::todays;
    made.at = session_.head().head.skin().position(*mark);
    if (check) made.along = check->as_laid.front.cross(check->as_laid.normal);
    made.text = text.toStdString();
    made.priority = priority;
    content.shown.notes.push_back(made);
  };
  if (check && check->verdict != geometry::Verdict::good) {
    const auto move = [&](const std::vector<Eigen::Vector3d>& line) {
      if (line.size() < 2) return;
      viewer::Note made;
      made.line = line;
      made.ticked = true;
      made.role = viewer::Role::construction;
      content.shown.notes.push_back(made);
    };
    move(visit_.moves().site);
    move(visit_.moves().edge);
  }
  note(TodaysMark::site, viewer::Shape::pencil_cross, tr("today's site mark"), viewer::label_priority::site);
  note(TodaysMark::edge, viewer::Shape::bar, tr("today's edge mark"), viewer::label_priority::edge_mark);
  show_places(content);
  return content;
}

}  // namespace scalpmark::window
