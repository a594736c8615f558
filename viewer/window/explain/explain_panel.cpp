#include "viewer/window/explain/explain_panel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace scalpmark::window {

using viewer::Thing;
using viewer::View;

namespace {

constexpr double skin_over_brain = 0.4;  // still a head, with the brain in it

}  // namespace

ExplainPanel::ExplainPanel(QWidget* parent) : QWidget(parent) {
  setObjectName("verdictPanel");
  setAttribute(Qt::WA_StyledBackground);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(40, 20, 24, 24);
  text_ = new QLabel;
  say(false);
  text_->setObjectName("explain");
  text_->setWordWrap(true);
  auto* button = new QPushButton(tr("Done"));
  button->setToolTip(tr("Back to the worksheet (Esc)"));
  heading_ = new QLabel;
  heading_->setObjectName("explainHeading");
  heading_->setWordWrap(true);
  auto* column = new QVBoxLayout;
  column->addWidget(heading_);
  column->addWidget(text_);
  row->addLayout(column, 1);
  row->addWidget(button, 0, Qt::AlignBottom);
  connect(button, &QPushButton::clicked, this, &ExplainPanel::done);
}

void ExplainPanel::show_case(const Session& session, bool with_label) {
  const bool generic = session.case_file().head.kind == models::HeadKind::generic;
  const QString label = QString::fromStdString(session.case_file().the_case.label);
  heading_->setText(with_label && !label.isEmpty() ? label
                    : generic                      ? tr("A drawing of a head, shaped by a tape measure")
                                                   : tr("A picture of a head, made from a scan"));
  say(session.has_cortex());
}

void ExplainPanel::say(bool brain_shown) {
  const QString coil = tr("The flat coil rests gently on your head, and you hear it click.");
  const QString pulse =
      brain_shown
          ? tr("Each click sends a short magnetic pulse through the skin to the part of the brain that "
               "is lit under the green diamond, the place your clinician has chosen; this brain is a drawn "
               "example, not your own.")
          : tr("Each click sends a short magnetic pulse through the skin to the part of the brain under the "
               "green diamond, which is the place your clinician has chosen.");
  text_->setText(coil + QLatin1Char(' ') + pulse);
}

StageContent explain_content(const Session& session) {
  StageContent content;
  content.shown = shown_with({Thing::skin, Thing::treatment, Thing::coil}, HeldCoil{});
  if (session.has_cortex()) {
    content.shown.things.insert(Thing::cortex);
    // Whose brain it is not, the panel says in words for patients.
    content.shown.under_coil = viewer::UnderCoil::lit;
    content.shown.skin_opacity = skin_over_brain;
  }
  content.look.view =
      geometry::side_of(session.plan().treatment) == geometry::Side::left ? View::front_left : View::front;
  content.coil_follows_hand = false;
  return content;
}

}  // namespace scalpmark::window
