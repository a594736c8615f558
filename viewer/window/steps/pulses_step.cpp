#include "viewer/window/steps/pulses_step.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <cmath>

#include "viewer/words/answer_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using geometry::GridPosition;
using viewer::Thing;

namespace {

constexpr int longest_initials = 20;

QLabel* make_sentence() {
  auto* label = new QLabel;
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

/// The centre of the answers to a tenth of a millimetre, as a hotspot between spots.
std::optional<geometry::HotspotOffGrid> centre_off_grid(PulseLog& log) {
  const auto& answers = log.answers();
  if (!answers || !answers->map || !answers->map->centre) return {};
  const auto tenths = [](double mm) { return std::round(10 * mm) / 10 + 0.0; };
  const Eigen::Vector2d& at = answers->map->centre->at_mm;
  return geometry::HotspotOffGrid{tenths(at.x()), tenths(at.y())};
}

}  // namespace

PulsesStep::PulsesStep(Session& session, PulseLog& log, QWidget* parent)
    : Step(4, tr("Pulses"), parent), session_(session), log_(log) {
  set_hint(tr("Lay the coil on the spot, give one pulse, watch the relaxed hand, and note what you saw."));
  add_visit_row();
  panel_ = new PulsePanel(session, log);
  fields()->addWidget(panel_);
  add_place();
  threshold_ = new ThresholdPanel(session, log);
  fields()->addWidget(threshold_);
  fields()->addWidget(new QLabel(tr("Pulses of this visit, the last on top")));
  list_ = new PulseList(log);
  fields()->addWidget(list_);
  settings_ = new AnswerSettingsFields(session);
  fields()->addWidget(settings_);
  connect(panel_, &PulsePanel::refused, this, &Step::set_problem);
  connect(list_, &PulseList::refused, this, &Step::set_problem);
  connect(settings_, &AnswerSettingsFields::refused, this, &Step::set_problem);
  connect(&log, &PulseLog::changed, this, &PulsesStep::show_case);
}

void PulsesStep::add_visit_row() {
  auto* row = new QHBoxLayout;
  visits_ = new QComboBox;
  visits_->setAccessibleName(tr("Visit"));
  visits_->setFocusPolicy(Qt::StrongFocus);
  visits_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  visits_->setMinimumContentsLength(12);
  by_ = new QLineEdit;
  by_->setMaxLength(longest_initials);
  by_->setFixedWidth(92);
  by_->setPlaceholderText(tr("initials"));
  by_->setAccessibleName(tr("Initials of who gives the pulses; may stay empty"));
  by_->setToolTip(tr("Who gives the pulses; may stay empty"));
  row->addWidget(visits_, 1);
  row->addWidget(by_);
  fields()->addLayout(row);
  connect(visits_, qOverload<int>(&QComboBox::activated), this, [this](int index) {
    const int visit = visits_->itemData(index).toInt();
    log_.show_visit(visit < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(visit)));
  });
  connect(by_, &QLineEdit::editingFinished, this, [this] {
    const geometry::Visit* visit = log_.visit();
    const std::string typed = by_->text().trimmed().toStdString();
    if (typed == (visit ? visit->by : std::string())) return;
    set_problem(log_.edit_visit(tr("Initials"), [&](geometry::Visit& edited) { edited.by = typed; }));
  });
}

void PulsesStep::add_place() {
  best_ = make_sentence();
  take_best_ = new QPushButton(tr("Take the best spot as hotspot"));
  to_telling_ = new QPushButton(tr("Go to the most telling spot"));
  centre_ = make_sentence();
  take_centre_ = new QPushButton(tr("Take the centre as hotspot"));
  fields()->addWidget(best_);
  fields()->addWidget(take_best_, 0, Qt::AlignLeft);
  fields()->addWidget(to_telling_, 0, Qt::AlignLeft);
  fields()->addWidget(centre_);
  fields()->addWidget(take_centre_, 0, Qt::AlignLeft);
  connect(take_best_, &QPushButton::clicked, this, [this] { take_hotspot(offered(take_best_), {}); });
  connect(take_centre_, &QPushButton::clicked, this, [this] {
    if (const auto centre = centre_off_grid(log_))
      take_hotspot(*geometry::spot_nearest_centre(*log_.answers()), *centre);
  });
  connect(to_telling_, &QPushButton::clicked, this, [this] {
    log_.set_spot(offered(to_telling_));
    take_keys();
  });
}

void PulsesStep::offer(QPushButton* button, const std::optional<GridPosition>& spot, const QString& text) {
  button->setVisible(spot.has_value());
  if (!spot) return;
  button->setProperty("row", spot->row);
  button->setProperty("column", spot->column);
  button->setText(text.arg(geometry::place_in_spiral(*spot) + 1));
}

GridPosition PulsesStep::offered(const QPushButton* button) {
  return {button->property("row").toInt(), button->property("column").toInt()};
}

void PulsesStep::take_hotspot(const GridPosition& spot, const geometry::HotspotOffGrid& off_grid) {
  set_problem(session_.change(tr("Hotspot"), [&](models::CaseFile& case_file) {
    geometry::take_hotspot(case_file.the_case, spot);
    case_file.the_case.hotspot_off_grid = off_grid;
  }));
}

void PulsesStep::show_case() {
  show_visits();
  if (!is_open()) return;  // shown when it is opened: what answers say takes a while to draw
  panel_->show_log();
  list_->show_log();
  show_place();
  threshold_->show_log();
  settings_->show_case();
}

void PulsesStep::show_visits() {
  const geometry::Visits& visits = session_.case_file().the_case.visits;
  const auto shown = log_.shown();
  const QSignalBlocker quiet(visits_);
  visits_->clear();
  visits_->addItem(tr("New visit"), -1);
  for (std::size_t i = visits.size(); i > 0; --i)
    visits_->addItem(tr("Visit %1, %2").arg(i).arg(QString::fromStdString(iso(visits[i - 1]->date))),
                     static_cast<int>(i) - 1);
  visits_->setCurrentIndex(visits_->findData(shown ? static_cast<int>(*shown) : -1));
  const geometry::Visit* visit = log_.visit();
  if (!by_->hasFocus()) by_->setText(visit ? QString::fromStdString(visit->by) : QString());
  set_note(visit && !log_.is_open() ? tr("This visit is over: a pulse begins another.") : QString());
  if (!visit || visit->pulses.empty())
    set_summary({});
  else
    set_summary(visit->threshold_percent
                    ? tr("%1 pulses, threshold %2 %").arg(visit->pulses.size()).arg(*visit->threshold_percent)
                    : tr("%1 pulses").arg(visit->pulses.size()));
}

void PulsesStep::show_place() {
  const auto& answers = log_.answers();
  const bool any = answers && answers->map;
  best_->setVisible(any);
  best_->setText(any ? viewer::translated(viewer::best_sentence(*answers)) : QString());
  const auto best =
      any && answers->map->best ? std::optional(answers->spots[answers->map->best->spot]) : std::nullopt;
  offer(take_best_, best, tr("Take spot %1 as hotspot"));
  offer(to_telling_,
        any && answers->map->next ? std::optional(answers->spots[answers->map->next->spot]) : std::nullopt,
        tr("Try next: spot %1"));
  const bool has_centre = any && answers->map->centre;
  centre_->setVisible(has_centre);
  centre_->setText(has_centre ? viewer::translated(viewer::centre_sentence(*answers)) : QString());
  take_centre_->setVisible(has_centre);
  const geometry::Case& the_case = session_.case_file().the_case;
  take_best_->setEnabled(best && (!(*best == the_case.hotspot) || the_case.hotspot_awaited ||
                                  the_case.hotspot_off_grid.is_given()));
  const auto centre = centre_off_grid(log_);
  take_centre_->setEnabled(centre && !(*centre == the_case.hotspot_off_grid));
}

StageContent PulsesStep::stage_content(const HeldCoil& coil) const {
  StageContent content =
      content_with({Thing::grid, Thing::start, Thing::coil, Thing::angle, Thing::answers}, coil);
  content.shown.answers = log_.answers();
  // Straight at the grid, near enough to read its tallies.
  constexpr double across_mm = 200;
  const geometry::Placement& start = session_.plan().start;
  content.look.close_up = StageLook::CloseUp{{start.normal, start.forward}, start.pulse, across_mm};
  return content;
}

}  // namespace scalpmark::window
