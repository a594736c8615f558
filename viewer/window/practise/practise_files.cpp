// What the Practise mode reads and writes: exercises, results, the class's page and table.
#include <QFileDialog>
#include <QFileInfo>

#include "models/exercises/score_table.h"
#include "models/files/output_guard.h"
#include "models/files/safe_file.h"
#include "viewer/practise/class_page.h"
#include "viewer/window/practise/practise.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

QString exercise_filter() {
  return Practise::tr("Exercises (*.json)");
}
QString result_filter() {
  return Practise::tr("Results (*.json)");
}

QString ending_in(const QString& path, const QString& ending) {
  return path.isEmpty() || path.endsWith(ending, Qt::CaseInsensitive) ? path : path + ending;
}

}  // namespace

void Practise::connect_files() {
  ask_target = [this](const QString& title, const QString& name, const QString& filter) {
    return QFileDialog::getSaveFileName(&window_, title, name, filter);
  };
  for (LatestWork* work : {&beginning_, &judging_, &gathering_})
    connect(work, &LatestWork::failed, this, [this, work](const QString& sentence) {
      emit rested();
      setup_->set_busy(false);
      if (work == &beginning_)
        setup_->set_problem(sentence);
      else
        emit notice(sentence, false);
    });
  connect(setup_->open(), &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(&window_, tr("Open an exercise"), {}, exercise_filter());
    if (!path.isEmpty()) open_exercise(path);
  });
  connect(setup_->save(), &QPushButton::clicked, this, [this] {
    const QString path = ask_target(tr("Save the exercise"), tr("exercise"), exercise_filter());
    if (!path.isEmpty()) save_exercise_to(ending_in(path, QStringLiteral(".json")));
  });
  connect(setup_->results(), &QPushButton::clicked, this, [this] {
    take_results(
        QFileDialog::getOpenFileNames(&window_, tr("Open the results of a class"), {}, result_filter()));
  });
  connect(score_->save(), &QPushButton::clicked, this, &Practise::save_result);
  connect(class_->page(), &QPushButton::clicked, this, [this] {
    const QString path = ask_target(tr("Save the class page"), tr("class"), tr("Pages (*.pdf)"));
    if (!path.isEmpty()) save_class_page_to(ending_in(path, QStringLiteral(".pdf")), viewer::Paper::a4);
  });
  connect(class_->csv(), &QPushButton::clicked, this, [this] {
    const QString path = ask_target(tr("Save the table"), tr("class"), tr("Tables (*.csv)"));
    if (!path.isEmpty()) save_table_to(ending_in(path, QStringLiteral(".csv")));
  });
}

bool Practise::may_write(const QString& path, const char* format) {
  return !models::replaces_another_kind(path.toStdString(), format) || (ask_replace && ask_replace(path));
}

bool Practise::write(const QString& path, const char* format, const std::function<void()>& write) {
  if (!may_write(path, format)) return false;
  try {
    write();
    emit notice(tr("Saved: %1").arg(QFileInfo(path).fileName()), true);
    return true;
  } catch (const std::exception& refusal) {
    emit notice(viewer::translated(refusal), false);
  }
  return false;
}

bool Practise::may_leave() {
  if (!run_.has_unsaved()) return true;
  switch (ask_unsaved ? ask_unsaved() : UnsavedAnswer::cancel) {
    case UnsavedAnswer::save:
      return save_result();
    case UnsavedAnswer::discard:
      return true;
    case UnsavedAnswer::cancel:
      break;
  }
  return false;
}

void Practise::open_exercise(const QString& path) {
  try {
    const models::ExerciseSetup setup = models::read_exercise(path.toStdString());
    if (!may_leave()) return;
    setup_->show_setup(setup);
    setup_->set_problem({});
    setup_is_of_file_ = true;
    if (page_ != Page::setup) {
      run_.leave();
      go_to(Page::setup);
    }
  } catch (const std::exception& refusal) {
    emit notice(viewer::translated(refusal), false);
  }
}

void Practise::save_exercise_to(const QString& path) {
  write(path, "scalpmark-exercise", [&] {
    const models::ExerciseSetup setup = with_own_head(setup_->setup());
    geometry::check_exercise(setup.exercise);
    models::write_exercise(path.toStdString(), setup);
  });
}

bool Practise::save_result() {
  const QString path = ask_target(tr("Save the result"), tr("result"), result_filter());
  return !path.isEmpty() && save_result_to(ending_in(path, QStringLiteral(".json")));
}

bool Practise::save_result_to(const QString& path) {
  return write(path, "scalpmark-result", [&] {
    models::write_result(path.toStdString(), {run_.setup(), score_->initials(), run_.attempts_so_far()});
    run_.mark_saved();
  });
}

void Practise::save_class_page_to(const QString& path, viewer::Paper paper) {
  if (!results_) return;
  write(path, "scalpmark-pdf", [&] {
    const viewer::SheetView picture = viewer::class_picture(*results_, class_hands_);
    models::write_whole(path.toStdString(), viewer::class_pdf(*results_, picture, class_hands_, paper));
  });
}

void Practise::save_table_to(const QString& path) {
  if (!results_) return;
  write(path, "scalpmark-csv", [&] { models::write_score_csv(path.toStdString(), results_->trainees); });
}

}  // namespace scalpmark::window
