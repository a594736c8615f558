#include "viewer/window/steps/pulse_panel.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "viewer/words/answer_words.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

using geometry::SeenAnswer;

namespace {

constexpr int answer_height_px = 60;

QPushButton* make_button(const char* name, const QString& text) {
  auto* button = new QPushButton(text);
  button->setObjectName(name);
  button->setAutoDefault(false);
  button->setFocusPolicy(Qt::NoFocus);  // the panel's keys do the same
  return button;
}

}  // namespace

PulsePanel::PulsePanel(Session& session, PulseLog& log, QWidget* parent)
    : QWidget(parent), session_(session), log_(log) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Pulses"));
  setAccessibleDescription(
      tr("Keys: 0 none, 1 thumb, 2 index finger, 3 other; up and down the output, with Shift finely; left "
         "and right the spot; Backspace takes the last pulse back"));
  setToolTip(accessibleDescription());
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(4, 4, 4, 4);
  all->setSpacing(8);
  auto* top = new QHBoxLayout;
  top->setSpacing(4);
  pad_ = new PulsePad;
  top->addWidget(pad_);
  top->addWidget(make_readings(), 1);
  all->addLayout(top);
  all->addWidget(make_answers());
  auto* foot = new QHBoxLayout;
  last_ = new QLabel;
  last_->setObjectName("quiet");
  last_->setWordWrap(true);
  back_ = make_button("back", tr("Take back"));
  back_->setToolTip(tr("Takes the last pulse back: it was none, or entered by mistake (Backspace)"));
  foot->addWidget(last_, 1);
  foot->addWidget(back_);
  all->addLayout(foot);
  connect(pad_, &PulsePad::chosen, &log_, &PulseLog::set_spot);
  connect(back_, &QPushButton::clicked, this, [this] { emit refused(log_.take_back()); });
}

QWidget* PulsePanel::make_readings() {
  auto* readings = new QWidget;
  auto* column = new QVBoxLayout(readings);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  const auto add = [&](const QString& name) {
    auto* label = new QLabel(name);
    label->setObjectName("quiet");
    label->setAlignment(Qt::AlignHCenter);
    auto* digits = new QLabel;
    digits->setObjectName("digits");
    digits->setAlignment(Qt::AlignHCenter);
    digits->setAccessibleName(name);
    column->addWidget(label);
    column->addWidget(digits);
    return digits;
  };
  spot_ = add(tr("Spot"));
  output_ = add(tr("Output, %"));
  column->addStretch(1);
  return readings;
}

QWidget* PulsePanel::make_answers() {
  auto* widget = new QWidget;
  auto* grid = new QGridLayout(widget);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(6);
  for (std::size_t i = 0; i < answers_.size(); ++i) {
    const auto answer = static_cast<SeenAnswer>(i);
    const QString name = viewer::translated(viewer::seen_name(answer));
    answers_[i] = make_button("answer", QStringLiteral("%1\n%2").arg(i).arg(name));
    answers_[i]->setMinimumHeight(answer_height_px);
    answers_[i]->setAccessibleName(tr("Answer: %1").arg(name));
    grid->addWidget(answers_[i], static_cast<int>(i / 2), static_cast<int>(i % 2));
    connect(answers_[i], &QPushButton::clicked, this, [this, answer] { log(answer); });
  }
  return widget;
}

std::optional<SeenAnswer> PulsePanel::answer_for(int key) {
  if (key < Qt::Key_0 || key > Qt::Key_3) return {};
  return static_cast<SeenAnswer>(key - Qt::Key_0);
}

void PulsePanel::log(SeenAnswer answer) {
  emit refused(log_.log(answer));
}

void PulsePanel::show_log() {
  const geometry::Case& the_case = session_.case_file().the_case;
  pad_->set_side(the_case.side);
  const auto& answers = log_.answers();
  if (answers && answers->map)
    pad_->show_answers(answers->spots, answers->map->spots);
  else
    pad_->show_answers({}, {});
  pad_->choose(log_.spot());
  spot_->setText(QString::number(geometry::place_in_spiral(log_.spot()) + 1));
  output_->setText(QString::number(log_.output_percent()));
  const geometry::Visit* visit = log_.visit();
  const bool any = visit && !visit->pulses.empty();
  back_->setEnabled(any);
  if (!any) {
    last_->setText(tr("No pulse yet."));
    return;
  }
  const geometry::LoggedPulse& last = visit->pulses.back();
  last_->setText(tr("Pulse %1: %2 %, %3.")
                     .arg(visit->pulses.size())
                     .arg(last.output_percent)
                     .arg(viewer::translated(viewer::seen_name(last.answer))));
}

void PulsePanel::keyPressEvent(QKeyEvent* event) {
  const bool fine = event->modifiers() & Qt::ShiftModifier;
  if (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) {
    QWidget::keyPressEvent(event);
    return;
  }
  // A key held down is one pulse.
  if (const auto answer = answer_for(event->key())) {
    if (!event->isAutoRepeat()) log(*answer);
    return;
  }
  switch (event->key()) {
    case Qt::Key_Up:
      log_.step_output(1, fine);
      return;
    case Qt::Key_Down:
      log_.step_output(-1, fine);
      return;
    case Qt::Key_Right:
      log_.step_spot(1);
      return;
    case Qt::Key_Left:
      log_.step_spot(-1);
      return;
    case Qt::Key_Backspace:
      if (!event->isAutoRepeat()) emit refused(log_.take_back());
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void PulsePanel::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void PulsePanel::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

void PulsePanel::paintEvent(QPaintEvent* /*event*/) {
  if (!hasFocus()) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 5, 5);
}

}  // namespace scalpmark::window
