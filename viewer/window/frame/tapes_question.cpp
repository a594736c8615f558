#include "viewer/window/frame/tapes_question.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "viewer/window/session/tapes_beside.h"

namespace scalpmark::window {

TapesQuestion::TapesQuestion(Session& session, UndoList& undo, QWidget* parent)
    : QWidget(parent), session_(session), undo_(undo) {
  setObjectName("notice");
  setAttribute(Qt::WA_StyledBackground);
  auto* column = new QVBoxLayout(this);
  text_ = new QLabel;
  text_->setTextFormat(Qt::PlainText);
  text_->setObjectName("strong");
  text_->setWordWrap(true);
  column->addWidget(text_);
  auto* row = new QHBoxLayout;
  keep_ = new QPushButton(tr("The same person's: keep both"));
  take_out_ = new QPushButton(tr("Somebody else's tapes: take them out"));
  back_ = new QPushButton(tr("The wrong head: back to the one before"));
  for (QPushButton* each : {keep_, take_out_, back_}) row->addWidget(each);
  row->addStretch(1);
  column->addLayout(row);
  hide();

  connect(keep_, &QPushButton::clicked, this, [this] {
    kept_ = session_.case_file().the_case.tape_mm;
    kept_on_.emplace(session_.head().head);
    show_case();
  });
  connect(take_out_, &QPushButton::clicked, this, [this] {
    (void)session_.change(tr("Tapes"), [](models::CaseFile& case_file) { case_file.the_case.tape_mm = {}; });
  });
  connect(back_, &QPushButton::clicked, &undo_, &UndoList::undo);
  // Only straight after the head came is undo the way back to the one before.
  connect(&undo_, &UndoList::changed, this, [this] { back_->setVisible(undo_.undoes_a_head()); });
}

void TapesQuestion::set_unit(LengthUnit unit) {
  unit_ = unit;
  show_case();
}

void TapesQuestion::show_case() {
  open_ = false;
  if (session_.is_ready() && !session_.unplaced() &&
      session_.case_file().head.kind != models::HeadKind::generic) {
    const geometry::Case& the_case = session_.case_file().the_case;
    QStringList differ;
    for (const TapeBeside& tape : tapes_that_differ(the_case, session_.plan()))
      differ << tr("%1: %2 entered, %3 on this head")
                    .arg(tape.name, length_with_unit(tape.entered_mm, unit_),
                         length_with_unit(tape.here_mm, unit_));
    const bool kept = kept_ == the_case.tape_mm && kept_on_ && kept_on_->same_as(session_.head().head);
    open_ = !differ.isEmpty() && !kept;
    text_->setText(tr("Whose head is this? The tapes of the case do not fit it. %1.")
                       .arg(differ.join(QStringLiteral("; "))));
  }
  back_->setVisible(undo_.undoes_a_head());
  setVisible(open_);
}

}  // namespace scalpmark::window
