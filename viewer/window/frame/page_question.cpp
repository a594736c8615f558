#include "viewer/window/frame/page_question.h"

#include <QButtonGroup>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QGroupBox>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <vector>

namespace scalpmark::window {

namespace {

// What lupdate finds these texts under.
class PageQuestion {
  Q_DECLARE_TR_FUNCTIONS(PageQuestion)
};

struct Option {
  int number = 0;
  QString text;
};

/// One of several, with a heading; `focused`: keys choose in it at first.
QButtonGroup* add_group(QVBoxLayout* into, const QString& heading, const std::vector<Option>& options,
                        int chosen, bool focused = false) {
  auto* box = new QGroupBox(heading);
  auto* column = new QVBoxLayout(box);
  auto* group = new QButtonGroup(box);
  for (const Option& option : options) {
    auto* button = new QRadioButton(option.text);
    button->setChecked(option.number == chosen);
    group->addButton(button, option.number);
    column->addWidget(button);
  }
  into->addWidget(box);
  if (focused) group->checkedButton()->setFocus();
  return group;
}

}  // namespace

std::optional<PageChoice> ask_about_page(QWidget* parent, viewer::Face face, bool shows_a_person) {
  using viewer::Face;
  using viewer::PageHead;
  QDialog dialog(parent);
  dialog.setObjectName("pageQuestion");
  dialog.setWindowTitle(PageQuestion::tr("Page for a browser"));
  auto* column = new QVBoxLayout(&dialog);
  const QButtonGroup* faces = add_group(
      column, PageQuestion::tr("Whom is it for?"),
      {{static_cast<int>(Face::patient), PageQuestion::tr("A patient: Explain's words, no numbers")},
       {static_cast<int>(Face::technician),
        PageQuestion::tr("A technician: the numbers, the coil to move, Check")},
       {static_cast<int>(Face::class_room), PageQuestion::tr("A class: the steps of the lesson")}},
      static_cast<int>(face), true);
  const QButtonGroup* heads = nullptr;
  if (shows_a_person)
    heads = add_group(
        column,
        PageQuestion::tr("This head is a scan and shows a person's face. Which head is the page to have?"),
        {{static_cast<int>(PageHead::generic), PageQuestion::tr("A drawn head, scaled to the same tapes")},
         {static_cast<int>(PageHead::scalp),
          PageQuestion::tr("The scalp above brow and ears only (the coil cannot be moved there)")},
         {static_cast<int>(PageHead::own), PageQuestion::tr("The scan, with the person's face")}},
        static_cast<int>(PageHead::generic));
  auto* buttons = new QDialogButtonBox;
  buttons->addButton(PageQuestion::tr("Save the page\u2026"), QDialogButtonBox::AcceptRole);
  buttons->addButton(PageQuestion::tr("Cancel"), QDialogButtonBox::RejectRole);
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  column->addWidget(buttons);
  if (dialog.exec() != QDialog::Accepted) return {};
  PageChoice choice;
  choice.face = static_cast<Face>(faces->checkedId());
  if (heads) choice.head = static_cast<PageHead>(heads->checkedId());
  return choice;
}

}  // namespace scalpmark::window
