#include "viewer/window/steps/verdict.h"

#include <QGridLayout>
#include <QStyle>
#include <QVariant>
#include <cmath>

#include "viewer/words/check_words.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

VerdictText verdict_text(const std::optional<geometry::Check>& check) {
  VerdictText text;
  if (!check) {
    text.headline = VerdictPanel::tr("No check yet");
    text.reason = VerdictPanel::tr("Click today's site mark and edge mark, or enter tape distances to them.");
    return text;
  }
  using geometry::Verdict;
  text.good = check->verdict == Verdict::good;
  // A sign beside the words, so that the verdict does not hang on a colour.
  switch (check->verdict) {
    case Verdict::good:
      text.headline = VerdictPanel::tr("\u2713 On the site");
      break;
    case Verdict::pulse_off:
      text.headline = VerdictPanel::tr("\u2717 Move the coil");
      break;
    case Verdict::angle_off:
      text.headline = VerdictPanel::tr("\u2717 Turn the coil");
      break;
    case Verdict::both_off:
      text.headline = VerdictPanel::tr("\u2717 Move and turn the coil");
      break;
  }
  text.pulse = VerdictPanel::tr("Pulse %1 mm from the site")
                   .arg(QString::fromStdString(viewer::millimetres(check->pulse_off_mm)));
  const long degrees = std::lround(check->angle_deg), off = std::lround(std::abs(check->angle_error_deg));
  text.angle = off == 0
                   ? VerdictPanel::tr("Coil %1\u00b0 to the midline, as planned").arg(degrees)
                   : VerdictPanel::tr("Coil %1\u00b0 to the midline, %2\u00b0 off").arg(degrees).arg(off);
  text.reason = viewer::translated(viewer::check_sentence(*check));
  return text;
}

VerdictPanel::VerdictPanel(QWidget* parent) : QWidget(parent) {
  setObjectName("verdictPanel");
  setAttribute(Qt::WA_StyledBackground);
  const auto label = [](const char* name) {
    auto* made = new QLabel;
    made->setObjectName(name);
    made->setWordWrap(true);
    made->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return made;
  };
  headline_ = label("huge");
  pulse_ = label("large");
  angle_ = label("large");
  reason_ = label("larger");
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(20, 10, 20, 12);
  grid->addWidget(headline_, 0, 0, 2, 1);
  grid->addWidget(pulse_, 0, 1);
  grid->addWidget(angle_, 1, 1);
  grid->addWidget(reason_, 2, 0, 1, 2);
  grid->setColumnStretch(0, 1);
  grid->setColumnStretch(1, 1);
  show_check({}, {});
}

void VerdictPanel::show_check(const std::optional<geometry::Check>& check, const QString& problem) {
  const VerdictText text = verdict_text(check);
  headline_->setText(text.headline);
  pulse_->setText(text.pulse);
  angle_->setText(text.angle);
  reason_->setText(!check && !problem.isEmpty() ? problem : text.reason);
  setProperty("verdict", check ? (text.good ? "good" : "bad") : "none");
  for (QWidget* each : {static_cast<QWidget*>(this), static_cast<QWidget*>(headline_)}) {
    style()->unpolish(each);
    style()->polish(each);
  }
}

}  // namespace scalpmark::window
