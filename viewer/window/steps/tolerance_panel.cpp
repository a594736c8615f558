#include "viewer/window/steps/tolerance_panel.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <cmath>

#include "geometry/base/ranges.h"
#include "viewer/window/fields/small_length_field.h"
#include "viewer/words/strips_words.h"
#include "viewer/words/tolerance_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

namespace ranges = geometry::ranges;
using geometry::HandErrors;

constexpr std::array errors{
    &HandErrors::fiducial_mm, &HandErrors::tape_mm,      &HandErrors::mark_mm,
    &HandErrors::angle_deg,   &HandErrors::tilt_deg,     &HandErrors::cap_forward_mm,
    &HandErrors::cap_side_mm, &HandErrors::cap_turn_deg, &HandErrors::other_rule_percent,
    &HandErrors::sight_deg};

}  // namespace

TolerancePanel::TolerancePanel(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(6);
  fold_ = new QPushButton(tr("By hand, how far off?"));
  fold_->setCheckable(true);
  fold_->setToolTip(tr("How far off the pulse could be when this case is measured, marked and laid by hand"));
  fold_->setAccessibleDescription(fold_->toolTip());
  all->addWidget(fold_, 0, Qt::AlignLeft);

  body_ = new QWidget;
  auto* column = new QVBoxLayout(body_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  result_ = new QLabel;
  result_->setWordWrap(true);
  result_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);  // long, and never to be squeezed
  result_->setAccessibleName(tr("How far off by hand"));
  result_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  column->addWidget(result_);
  work_row_ = new QWidget;
  auto* row = new QHBoxLayout(work_row_);
  row->setContentsMargins(0, 0, 0, 0);
  progress_ = new QProgressBar;
  progress_->setRange(0, 100);
  progress_->setTextVisible(false);
  progress_->setAccessibleName(tr("Trials done, in percent"));
  stop_ = new QPushButton(tr("Cancel"));
  stop_->setAccessibleName(tr("Stop the trials"));
  row->addWidget(progress_, 1);
  row->addWidget(stop_);
  work_row_->hide();
  column->addWidget(work_row_);
  on_head_ = new QCheckBox(tr("Show where they land"));
  on_head_->setChecked(true);
  on_head_->setToolTip(tr("Draws around the treatment site where half, and 95 of 100, of the pulses land"));
  on_head_->setAccessibleDescription(on_head_->toolTip());
  column->addWidget(on_head_);

  add_ways(*column);
  add_errors(*column);
  body_->hide();
  all->addWidget(body_);

  connect(fold_, &QPushButton::toggled, this, [this](bool on) {
    body_->setVisible(on);
    emit wanted();
  });
  connect(on_head_, &QCheckBox::clicked, this, &TolerancePanel::wanted);
  connect(stop_, &QPushButton::clicked, this, [this] {
    if (shown_working_)
      emit stopped();
    else
      emit again();
  });
  connect(usual_, &QPushButton::clicked, this, [this] {
    (void)session_.change(tr("Typical errors"),
                          [](models::CaseFile& case_file) { case_file.the_case.errors = {}; });
  });
}

void TolerancePanel::add_ways(QVBoxLayout& into) {
  ways_heading_ = new QLabel(tr("Ways to mark, worst to best: pulse and angle off on average"));
  ways_heading_->setObjectName("strong");
  ways_heading_->setWordWrap(true);
  ways_heading_->setToolTip(
      tr("To first order. The site mark is used in each. The marks of the one chosen are "
         "drawn on the head."));
  into.addWidget(ways_heading_);
  ways_ = new QButtonGroup(this);
  for (int i = 0; i < static_cast<int>(geometry::all_marking_ways.size()); ++i) {
    auto* button = new QRadioButton(tr("A way to mark"));
    ways_->addButton(button, i);
    into.addWidget(button);
  }
  left_out_ = new QLabel;
  left_out_->setObjectName("hint");
  left_out_->setWordWrap(true);
  into.addWidget(left_out_);
  connect(ways_, &QButtonGroup::idClicked, this, [this] {
    way_picked_ = way();
    emit wanted();
  });
  show_ways();
}

std::optional<geometry::MarkingWay> TolerancePanel::way() const {
  const auto index = static_cast<std::size_t>(ways_->checkedId());
  if (!shown_ || ways_->checkedId() < 0 || index >= shown_->ways.size()) return {};
  return shown_->ways[index].way;
}

QRadioButton* TolerancePanel::way_button(int index) const {
  return qobject_cast<QRadioButton*>(ways_->button(index));
}

void TolerancePanel::show_ways() {
  const int count = shown_ ? static_cast<int>(shown_->ways.size()) : 0;
  ways_heading_->setVisible(count > 0);
  const QString left_out = shown_ ? viewer::translated(viewer::left_out_sentence(*shown_)) : QString();
  left_out_->setText(left_out);
  left_out_->setVisible(count > 0 && !left_out.isEmpty());
  for (int i = 0; i < static_cast<int>(geometry::all_marking_ways.size()); ++i) {
    QRadioButton* button = way_button(i);
    button->setVisible(i < count);
    if (i >= count) continue;
    const geometry::WayTried& w = shown_->ways[static_cast<std::size_t>(i)];
    button->setText(tr("%1:\n%2, %3\u00b0", "a way to mark, and below it: pulse off, angle off")
                        .arg(viewer::translated(viewer::way_name(w.way)), length_with_unit(w.mean_mm, unit_))
                        .arg(std::lround(w.angle_mean_deg)));
  }
}

void TolerancePanel::add_errors(QVBoxLayout& into) {
  auto* heading = new QLabel(tr("Errors of the hand (typical)"));
  heading->setObjectName("strong");
  heading->setWordWrap(true);
  into.addWidget(heading);
  struct Row {
    QString name;
    geometry::Range allowed;
    QString unit;  ///< empty: a length
    double step;
  };
  static_assert(errors.size() == std::tuple_size_v<decltype(errors_)>);
  const std::array<Row, errors.size()> rows{
      {{tr("Each of the four points"), ranges::error_mm, {}, 0.5},
       {tr("One reading of a tape"), ranges::error_mm, {}, 0.1},
       {tr("A pencil mark"), ranges::error_mm, {}, 0.1},
       {tr("The coil's angle"), ranges::error_deg, tr("\u00b0"), 0.5},
       {tr("The coil's tilt, to a side and to its front"), ranges::error_deg, tr("\u00b0"), 0.5},
       {tr("The cap slid forward or back (a guess)"), ranges::error_mm, {}, 0.5},
       {tr("The cap slid to a side (a guess)"), ranges::error_mm, {}, 0.5},
       {tr("The cap turned (a guess)"), ranges::error_deg, tr("\u00b0"), 0.5},
       {tr("Laid by another rule"), ranges::percent, tr("%"), 5},
       {tr("The look past the coil (a guess)"), ranges::error_deg, tr("\u00b0"), 1}}};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    NumberField* field = nullptr;
    if (rows[i].unit.isEmpty())
      field = new SmallLengthField(rows[i].name, rows[i].allowed, rows[i].step);
    else
      field = new PlainField(rows[i].name, rows[i].allowed, rows[i].unit, rows[i].step);
    field->on_commit([this, i, name = rows[i].name](std::optional<double> value) {
      return session_.change(
          name, [&](models::CaseFile& case_file) { case_file.the_case.errors.*errors[i] = *value; });
    });
    errors_[i] = field;
    into.addWidget(field);
  }
  usual_ = new QPushButton(tr("Typical errors"));
  usual_->setToolTip(tr("Puts all of them back to what they are without an entry"));
  usual_->setAccessibleDescription(usual_->toolTip());
  into.addWidget(usual_, 0, Qt::AlignLeft);
}

void TolerancePanel::set_unit(LengthUnit unit) {
  unit_ = unit;
  for (auto* field : findChildren<SmallLengthField*>()) field->set_unit(unit);
  show_result();
  show_ways();
}

void TolerancePanel::show_case() {
  const HandErrors& now = session_.case_file().the_case.errors;
  for (std::size_t i = 0; i < errors.size(); ++i) errors_[i]->set_value(now.*errors[i]);
  usual_->setEnabled(!(now == HandErrors{}));
}

void TolerancePanel::show_tolerance(const HandTolerance& tolerance) {
  const bool anew = shown_ != tolerance.found();
  shown_ = tolerance.found();
  strips_ = tolerance.strips();
  shown_working_ = tolerance.is_working();
  problem_ = tolerance.problem();
  work_row_->setVisible(shown_working_ || tolerance.is_given_up());
  progress_->setValue(static_cast<int>(100 * tolerance.fraction()));
  stop_->setText(shown_working_ ? tr("Cancel") : tr("Work it out"));
  stop_->setAccessibleName(shown_working_ ? tr("Stop the trials") : tr("Try it out by hand"));
  show_result();
  show_ways();
  if (!anew || !shown_ || shown_->ways.empty()) return;
  // The best, until another is chosen; that one then stays, wherever it stands now.
  auto best = static_cast<int>(shown_->ways.size()) - 1;
  if (way_picked_)
    for (std::size_t i = 0; i < shown_->ways.size(); ++i)
      if (shown_->ways[i].way == way_picked_) best = static_cast<int>(i);
  way_button(best)->setChecked(true);
}

void TolerancePanel::show_result() {
  if (!shown_) {
    result_->setText(!problem_.isEmpty() ? problem_
                     : shown_working_    ? tr("Trying it many times\u2026")
                                         : tr("Given up."));
    return;
  }
  const geometry::Tolerance& t = *shown_;
  QString said =
      tr("<b>%1 off on average</b>; half of the trials lie within %2 of the site, 95 of 100 "
         "within %3. %4 %5<br>%6<br>%7")
          .arg(length_with_unit(t.sampled.mean_mm, unit_), length_with_unit(t.half_mm, unit_),
               length_with_unit(t.most_mm, unit_),
               viewer::translated(viewer::depth_sentence(t)).toHtmlEscaped(),
               viewer::translated(viewer::field_left_sentence(t)).toHtmlEscaped(),
               viewer::translated(viewer::largest_share_sentence(t, session_.case_file().the_case.errors))
                   .toHtmlEscaped(),
               viewer::translated(viewer::habit_sentence(t)).toHtmlEscaped());
  if (strips_)
    said += QStringLiteral("<br>") + viewer::translated(viewer::strips_sentence(*strips_)).toHtmlEscaped();
  result_->setText(said);
  QString spoken = result_->text();
  fold_->setAccessibleDescription(spoken.remove(QStringLiteral("<b>"))
                                      .remove(QStringLiteral("</b>"))
                                      .replace(QStringLiteral("<br>"), QStringLiteral(" ")));
}

}  // namespace scalpmark::window
