#include "viewer/window/explain/explain_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "viewer/teach/explained.h"

namespace scalpmark::window {

using viewer::View;

ExplainPanel::ExplainPanel(QWidget* parent) : QWidget(parent) {
  setObjectName("verdictPanel");
  setAttribute(Qt::WA_StyledBackground);
  whose_ = new QLabel;
  whose_->setTextFormat(Qt::PlainText);  // a label with signs of HTML in it stays text
  whose_->setObjectName("explainHeading");
  heading_ = new QLabel;
  heading_->setObjectName("large");
  text_ = new QLabel;
  text_->setObjectName("explain");
  for (QLabel* each : {whose_, heading_, text_}) each->setWordWrap(true);
  text_->installEventFilter(this);
  const auto button = [this](const QString& text, const QString& about, void (ExplainPanel::*asks)()) {
    auto* made = new QPushButton(text);
    made->setToolTip(about);
    made->setAccessibleDescription(about);
    if (asks) connect(made, &QPushButton::clicked, this, asks);
    return made;
  };
  previous_ = button(tr("Back"), tr("The screen before"), nullptr);
  next_ = button(tr("Next"), tr("The next screen"), nullptr);
  picture_ = button(tr("Picture\u2026"), tr("Saves what the stage shows"), &ExplainPanel::picture_wanted);
  handout_ = button(tr("Handout\u2026"), tr("Saves one page to take home, in these words"),
                    &ExplainPanel::handout_wanted);
  page_ = button(tr("Page\u2026"), tr("Saves a page for a browser: the head to turn, in these words"),
                 &ExplainPanel::page_wanted);
  print_ = button(tr("Print\u2026"), tr("Prints that page"), &ExplainPanel::print_wanted);
  done_ = button(tr("Done"), tr("Back to the worksheet (Esc)"), &ExplainPanel::done);
  connect(previous_, &QPushButton::clicked, this, [this] { go_to(at_ - 1); });
  connect(next_, &QPushButton::clicked, this, [this] { go_to(at_ + 1); });

  auto* column = new QVBoxLayout;
  column->addWidget(whose_);
  column->addWidget(heading_);
  column->addWidget(text_);
  column->addStretch(1);
  auto* buttons = new QVBoxLayout;
  for (QPushButton* each : {next_, previous_, picture_, handout_, page_, print_, done_})
    buttons->addWidget(each);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(40, 14, 24, 16);
  row->setSpacing(24);
  row->addLayout(column, 1);
  row->addLayout(buttons);
  say();
}

void ExplainPanel::go_to(int page) {
  if (page < 0 || page >= static_cast<int>(pages_.size())) return;
  at_ = page;
  const viewer::PatientPage& now = pages_[static_cast<std::size_t>(at_)];
  heading_->setText(QString::fromStdString(now.heading));
  text_->setText(QString::fromStdString(now.text));
  // A button that goes grey under the finger would pass its focus on to another.
  const bool first = at_ == 0, last = at_ + 1 == static_cast<int>(pages_.size());
  if (last && next_->hasFocus()) previous_->setFocus();
  if (first && previous_->hasFocus()) next_->setFocus();
  previous_->setEnabled(!first);
  next_->setEnabled(!last);
}

void ExplainPanel::show_case(const Session& session, bool with_label) {
  const bool generic = session.case_file().head.kind == models::HeadKind::generic;
  const QString label = QString::fromStdString(session.case_file().the_case.label);
  whose_->setText(with_label && !label.isEmpty() ? label
                  : generic                      ? tr("A drawing of a head, shaped by a tape measure")
                                                 : tr("A picture of a head, made from a scan"));
  brain_shown_ = session.has_cortex();
  if (!brain_shown_) patch_cm2_.reset();
  say();
}

void ExplainPanel::show_patch(double cm2) {
  if (patch_cm2_ == cm2) return;
  patch_cm2_ = cm2;
  say();
}

void ExplainPanel::say() {
  pages_ = viewer::patient_pages(brain_shown_, patch_cm2_);
  make_room();
  go_to(at_);
}

void ExplainPanel::make_room() {
  text_->ensurePolished();
  const QFontMetrics letters(text_->font());
  int height = 0;
  for (const viewer::PatientPage& page : pages_)
    height = std::max(height, letters
                                  .boundingRect(QRect(0, 0, std::max(1, text_->width()), 10000),
                                                Qt::TextWordWrap, QString::fromStdString(page.text))
                                  .height());
  if (height != text_->minimumHeight()) text_->setMinimumHeight(height);
}

bool ExplainPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == text_ && event->type() == QEvent::Resize) make_room();
  return QWidget::eventFilter(watched, event);
}

StageContent explain_content(const Session& session) {
  StageContent content;
  content.shown = viewer::explained(session.plan(), session.has_cortex() ? session.head().cortex : nullptr);
  const geometry::Placement& site = session.plan().treatment;
  // From the coil's side, whichever that is.
  content.look.view = geometry::side_of(site) == geometry::Side::left ? View::front_left : View::front_right;
  content.coil_follows_hand = false;
  return content;
}

}  // namespace scalpmark::window
