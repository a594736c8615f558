#include "viewer/window/steps/save_step.h"

#include <QDir>
#include <QGridLayout>

#include "viewer/window/fields/text_entry.h"

namespace scalpmark::window {

using viewer::Thing;
using viewer::View;

namespace {

constexpr int longest_label = 200;  // letters; more does not fit on a sheet

}  // namespace

SaveStep::SaveStep(Session& session, QWidget* parent) : Step(7, tr("Save"), parent), session_(session) {
  set_hint(tr("Write the numbers down on paper too: a cap gets lost, and a tape finds the marks again."));
  auto* name = new QLabel(tr("Label of the case"));
  label_ = new TextEntry;
  label_->setMaxLength(longest_label);
  label_->setToolTip(tr("Printed on pictures and sheets. No names: use your own code for the person."));
  label_->setAccessibleName(tr("Label of the case"));
  label_->setAccessibleDescription(label_->toolTip());
  name->setBuddy(label_);
  fields()->addWidget(name);
  fields()->addWidget(label_);
  save_ = new QPushButton(tr("Save case"));
  auto* picture = new QPushButton(tr("Picture\u2026"));
  auto* sheet = new QPushButton(tr("Sheet\u2026"));
  auto* print = new QPushButton(tr("Print\u2026"));
  auto* export_head = new QPushButton(tr("Export\u2026"));
  auto* grid = new QGridLayout;
  grid->addWidget(save_, 0, 0);
  grid->addWidget(picture, 0, 1);
  grid->addWidget(sheet, 1, 0);
  grid->addWidget(print, 1, 1);
  auto* page = new QPushButton(tr("Page for a browser\u2026"));
  page->setToolTip(tr(
      "Saves one file that any browser opens from disk: the head to turn, the coil to move (Ctrl+Shift+W)"));
  page->setAccessibleDescription(page->toolTip());
  connect(page, &QPushButton::clicked, this, &SaveStep::page_wanted);
  auto* strips = new QPushButton(tr("Strips\u2026"));
  strips->setToolTip(
      tr("Saves strips of paper at true size, marked for this head, in place of a tape that is read "
         "(Ctrl+Shift+T)"));
  strips->setAccessibleDescription(strips->toolTip());
  connect(strips, &QPushButton::clicked, this, &SaveStep::strips_wanted);
  grid->addWidget(page, 2, 0, 1, 2);
  grid->addWidget(strips, 3, 0);
  grid->addWidget(export_head, 3, 1);
  save_->setToolTip(tr("Writes the case into its file, or asks for one (Ctrl+S)"));
  picture->setToolTip(tr("Saves what the stage shows as a picture (Ctrl+Shift+P)"));
  sheet->setToolTip(tr("Saves the placement sheet as PDF, A4 or Letter (Ctrl+E)"));
  print->setToolTip(tr("Prints the placement sheet (Ctrl+P)"));
  export_head->setToolTip(
      tr("The head with its marks, for other viewers, or with its marks standing out for a 3D printer "
         "(Ctrl+Shift+E)"));
  export_head->setAccessibleDescription(export_head->toolTip());
  connect(export_head, &QPushButton::clicked, this, &SaveStep::export_wanted);
  connect(print, &QPushButton::clicked, this, &SaveStep::print_wanted);
  connect(sheet, &QPushButton::clicked, this, &SaveStep::sheet_wanted);
  fields()->addLayout(grid);
  numbers_ = new QPushButton(tr("Show the numbers large"));
  numbers_->setToolTip(
      tr("The lengths that find the marks again, one at a time in digits as large as a hand"));
  numbers_->setAccessibleDescription(numbers_->toolTip());
  connect(numbers_, &QPushButton::clicked, this, &SaveStep::numbers_wanted);
  fields()->addWidget(numbers_, 0, Qt::AlignLeft);
  lock_ = new QPushButton;
  lock_->setCheckable(true);
  lock_->setToolTip(tr("A locked plan is not changed by a slip of the hand; saving locks it (Ctrl+L)"));
  lock_->setAccessibleDescription(lock_->toolTip());
  connect(lock_, &QPushButton::clicked, &session_, &Session::set_locked);
  fields()->addWidget(lock_, 0, Qt::AlignLeft);
  where_ = new QLabel;
  where_->setTextFormat(Qt::PlainText);
  where_->setObjectName("quiet");
  where_->setWordWrap(true);
  fields()->addWidget(where_);

  connect(label_, &QLineEdit::editingFinished, this, [this] {
    if (!label_->isModified()) return;
    label_->setModified(false);
    set_problem(session_.change(tr("Label"), [this](models::CaseFile& case_file) {
      case_file.the_case.label = label_->text().trimmed().toStdString();
    }));
  });
  connect(save_, &QPushButton::clicked, this, &SaveStep::save_wanted);
  connect(picture, &QPushButton::clicked, this, &SaveStep::picture_wanted);
}

void SaveStep::show_case() {
  const QString name = QString::fromStdString(session_.case_file().the_case.label);
  if (!label_->isModified() && label_->text() != name) label_->setText(name);
  where_->setText(
      session_.file().isEmpty() ? tr("Not saved yet.")
      : session_.is_saved()
          ? tr("Saved in %1.").arg(QDir::toNativeSeparators(session_.file()))
          : tr("Changed since it was saved in %1.").arg(QDir::toNativeSeparators(session_.file())));
  lock_->setChecked(session_.is_locked());
  numbers_->setEnabled(session_.has_tapes());
  lock_->setText(session_.is_locked() ? tr("Locked: unlock the plan") : tr("Lock the plan"));
  set_summary(session_.is_locked()        ? tr("saved, locked")
              : session_.file().isEmpty() ? tr("not saved yet")
              : session_.is_saved()       ? tr("saved")
                                          : tr("changed"));
}

StageContent SaveStep::stage_content(const HeldCoil&) const {
  // What is saved is the plan, wherever the coil in the hand is.
  StageContent content = content_with({Thing::landmarks, Thing::hotspot, Thing::treatment, Thing::coil,
                                       Thing::angle, Thing::edge_marks, Thing::wanted},
                                      HeldCoil{});
  content.coil_follows_hand = false;
  // What is written down is measured from these, and from the tragi.
  content.shown.landmarks = std::set<std::string>{"Nz", "Cz"};
  content.shown.names_all = false;
  content.look.view =
      geometry::side_of(session_.plan().treatment) == geometry::Side::left ? View::left : View::right;
  return content;
}

}  // namespace scalpmark::window
