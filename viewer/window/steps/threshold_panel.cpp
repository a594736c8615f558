#include "viewer/window/steps/threshold_panel.h"

#include <QVBoxLayout>
#include <cmath>

#include "geometry/base/ranges.h"
#include "viewer/words/answer_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

QLabel* make_text(const char* name, QVBoxLayout& into) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  into.addWidget(label);
  return label;
}

}  // namespace

ThresholdPanel::ThresholdPanel(Session& session, PulseLog& log, QWidget* parent)
    : QWidget(parent), session_(session), log_(log) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(6);
  heading_ = make_text("strong", *all);
  counts_ = make_text("counts", *all);
  counting_next_ = new QPushButton(tr("Take the counting's next output"));
  all->addWidget(counting_next_, 0, Qt::AlignLeft);
  chart_ = new ThresholdChart;
  all->addWidget(chart_);
  estimate_ = make_text("estimate", *all);
  estimate_next_ = new QPushButton(tr("Take the estimate's next output"));
  all->addWidget(estimate_next_, 0, Qt::AlignLeft);
  written_ = new PlainField(tr("Threshold written down"), geometry::ranges::output_percent, tr("%"), 1);
  written_->set_optional(tr("none"));
  written_->on_commit([this](std::optional<double> percent) {
    if (percent && std::floor(*percent) != *percent)
      return tr("Write whole percent, as the stimulator shows.");
    return log_.edit_visit(tr("Threshold"), [&](geometry::Visit& visit) {
      visit.threshold_percent.reset();
      if (percent) visit.threshold_percent = static_cast<int>(*percent);
    });
  });
  all->addWidget(written_);
  caution_ = make_text("note", *all);
  caution_->setText(viewer::translated(viewer::eye_caution()));
  for (QPushButton* button : {counting_next_, estimate_next_})
    connect(button, &QPushButton::clicked, this,
            [this, button] { log_.set_output(button->property("percent").toInt()); });
}

void ThresholdPanel::show_next(QPushButton* button, std::optional<int> percent, const QString& by) {
  button->setVisible(percent.has_value());
  if (!percent) return;
  button->setProperty("percent", *percent);
  button->setText(tr("%1: try %2 %").arg(by).arg(*percent));
  button->setToolTip(tr("Takes this output for the next pulse; for finding the threshold only"));
  button->setAccessibleDescription(button->toolTip());
  button->setEnabled(log_.output_percent() != *percent);
}

void ThresholdPanel::show_log() {
  const auto& threshold = log_.threshold();
  const geometry::AnswerSettings& settings = session_.case_file().the_case.answers;
  const geometry::CountingRule rule = geometry::rule_of(settings);
  heading_->setText(tr("Threshold at spot %1").arg(geometry::place_in_spiral(log_.spot()) + 1));
  if (drawn_ != threshold || !threshold) chart_->show_threshold(threshold);
  drawn_ = threshold;
  estimate_->setVisible(threshold != nullptr);
  const geometry::Visit* visit = log_.visit();
  written_->set_value(visit && visit->threshold_percent ? std::optional<double>(*visit->threshold_percent)
                                                        : std::nullopt);
  if (!threshold) {
    counts_->setText(tr("No pulse at this spot yet."));
    show_next(counting_next_, {}, {});
    show_next(estimate_next_, {}, {});
    return;
  }
  QStringList rows;
  for (auto count = threshold->counting.outputs.rbegin(); count != threshold->counting.outputs.rend();
       ++count) {
    const QString ticks =
        QString(count->answers, QChar('|')) + QString(count->pulses - count->answers, QChar(0x00b7));
    rows << QStringLiteral("%1   %2").arg(ticks, viewer::translated(viewer::count_row(*count)));
  }
  rows << viewer::translated(viewer::counting_sentence(threshold->counting, rule))
       << viewer::translated(viewer::odds_sentence(rule));
  counts_->setText(rows.join(QChar('\n')));
  show_next(counting_next_, threshold->counting.next_percent, tr("Counting"));
  estimate_->setText(viewer::translated(viewer::estimate_sentence(*threshold)));
  show_next(estimate_next_, threshold->belief.next_output_percent(settings.step_percent), tr("Estimate"));
}

}  // namespace scalpmark::window
