#include "viewer/window/frame/start_page.h"

#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QVBoxLayout>

namespace scalpmark::window {

StartPage::StartPage(QWidget* over, CaseFiles& files, Session& session, const Settings& settings)
    : QWidget(over) {
  setObjectName("startPage");
  setAttribute(Qt::WA_StyledBackground);
  over->installEventFilter(this);
  build();
  hide();
  connect(&files, &CaseFiles::offers, this, [this, &settings] { offer(settings.recent); });
  connect(&files, &CaseFiles::notice, this, &StartPage::say);
  connect(&session, &Session::refused, this, &StartPage::say);
  connect(&session, &Session::started, this, &QWidget::hide);
  connect(&session, &Session::unplaced_changed, this, &QWidget::hide);
  connect(demo_, &QPushButton::clicked, &files, &CaseFiles::start_demo);
  connect(fresh_, &QPushButton::clicked, &files, &CaseFiles::start_new);
  connect(open_, &QPushButton::clicked, &files, &CaseFiles::open);
  const auto take = [&files](const QListWidgetItem* item) {
    files.open_instead(item->data(Qt::UserRole).toString());
  };
  connect(recent_, &QListWidget::itemActivated, this, take);
  connect(recent_, &QListWidget::itemClicked, this, take);
}

void StartPage::build() {
  auto* column = new QVBoxLayout;
  column->setSpacing(10);
  auto* heading = new QLabel(tr("What do you begin with?"));
  heading->setObjectName("large");
  column->addWidget(heading);
  lately_ = new QWidget;
  auto* lately = new QVBoxLayout(lately_);
  lately->setContentsMargins(0, 0, 0, 0);
  auto* lately_heading = new QLabel(tr("Used lately"));
  lately_heading->setObjectName("strong");
  recent_ = new QListWidget;
  recent_->setObjectName("lessonSteps");
  recent_->setAccessibleName(tr("Cases used lately; Enter opens one"));
  lately_heading->setBuddy(recent_);
  lately->addWidget(lately_heading);
  lately->addWidget(recent_);
  column->addWidget(lately_);
  const auto button = [&](const QString& text, const QString& about) {
    auto* made = new QPushButton(text);
    made->setObjectName("lessonButton");
    made->setToolTip(about);
    made->setAccessibleDescription(about);
    column->addWidget(made);
    return made;
  };
  fresh_ = button(tr("A new case"), tr("A person whose head is measured now"));
  open_ = button(tr("A case from a file\u2026"), tr("A case, a scan or an MRI"));
  demo_ = button(tr("The demo case, for trying things out"),
                 tr("Not a real person's head, with everything filled in"));
  problem_ = new QLabel;
  problem_->setTextFormat(Qt::PlainText);
  problem_->setObjectName("problem");
  problem_->setWordWrap(true);
  column->addWidget(problem_);
  auto* all = new QVBoxLayout(this);
  all->addStretch(1);
  auto* middle = new QWidget;
  middle->setLayout(column);
  middle->setMaximumWidth(560);
  middle->setMinimumWidth(420);
  all->addWidget(middle, 0, Qt::AlignHCenter);
  all->addStretch(2);
}

void StartPage::offer(const QStringList& recent) {
  recent_->clear();
  for (const QString& file : recent) {
    if (!QFileInfo::exists(file)) continue;
    auto* item = new QListWidgetItem(QFileInfo(file).fileName());
    item->setData(Qt::UserRole, file);
    item->setToolTip(QDir::toNativeSeparators(file));
    recent_->addItem(item);
  }
  const bool any = recent_->count() > 0;
  lately_->setVisible(any);
  constexpr int most_in_sight = 8;
  recent_->setFixedHeight(4 + qMin(most_in_sight, recent_->count()) * (recent_->sizeHintForRow(0) + 2));
  setGeometry(parentWidget()->rect());
  raise();
  show();
  if (any) {
    recent_->setCurrentRow(0);
    recent_->setFocus();
  } else {
    demo_->setFocus();
  }
}

void StartPage::say(const QString& sentence) {
  problem_->setText(sentence);
}

bool StartPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == parentWidget() && event->type() == QEvent::Resize) setGeometry(parentWidget()->rect());
  return QWidget::eventFilter(watched, event);
}

}  // namespace scalpmark::window
