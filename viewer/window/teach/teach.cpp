#include "viewer/window/teach/teach.h"

#include <QKeyEvent>
#include <cmath>

#include "models/cases/case_file.h"
#include "viewer/window/teach/spoiled_stage.h"
#include "viewer/window/teach/what_if_sentence.h"
#include "viewer/words/sentences.h"

namespace scalpmark::window {

namespace {

/// A class looks first and reads then, with time to write down a number: about two words a second.
constexpr int look_ms = 3000, word_ms = 450;
/// Slow enough to follow where the eye goes.
constexpr int glide_ms = 1200;
constexpr int laying_ms = 2200, laying_frame_ms = 40;

int dwell_ms(const viewer::LessonStep& step) {
  return look_ms + word_ms * QString::fromStdString(step.caption).split(QLatin1Char(' ')).size();
}

}  // namespace

Teach::Teach(MainWindow& window)
    : QObject(&window), window_(window), panel_(new LessonPanel), bar_(new LessonBar) {
  LessonParts parts;
  parts.panel = panel_;
  parts.bar = bar_;
  parts.stage = [this](const Session& session) { return stage_now(session); };
  parts.look = [this] {
    if (steps_.empty()) return;
    lay_tapes();
    look();
  };
  parts.set_unit = [this](LengthUnit unit) {
    unit_ = unit;
    panel_->what_if()->set_unit(unit);
    show_text();
  };
  window.set_lesson(std::move(parts));

  connect(&player_, &LessonPlayer::step_changed, this, &Teach::show_step);
  connect(&player_, &LessonPlayer::playing_changed, this, [this] {
    if (player_.is_playing() && spoiled_) show_step();
    show_text();
  });
  // The window has shown the new case by then; its marks may lie elsewhere, or on the other side.
  connect(&window.session(), &Session::changed, this, [this] {
    if (is_on()) look();
  });
  connect(panel_, &LessonPanel::step_wanted, this, [this](int step) {
    if (step != player_.current() || panel_->what_if()->kind() != WhatIfControls::nothing)
      player_.go_to(step);
  });
  connect(panel_->what_if(), &WhatIfControls::changed, this, &Teach::show_mistake);
  connect(bar_->play(), &QPushButton::clicked, &player_, &LessonPlayer::toggle);
  connect(bar_->previous(), &QPushButton::clicked, &player_, &LessonPlayer::previous);
  connect(bar_->next(), &QPushButton::clicked, &player_, &LessonPlayer::next);
  connect(bar_, &LessonBar::shown, this, [this] {
    show_text();
    bar_->play()->setFocus();
  });
  connect(bar_, &LessonBar::hidden, this, [this] {
    player_.pause();
    laying_.stop();
  });
  laying_.setInterval(laying_frame_ms);
  connect(&laying_, &QTimer::timeout, this, [this] {
    if (since_.elapsed() >= laying_ms) laying_.stop();
    window_.refresh_stage();
  });
  // What nobody takes of a key comes up to the window; list and panel would use these keys themselves.
  for (QObject* each : {static_cast<QObject*>(&window), static_cast<QObject*>(panel_),
                        static_cast<QObject*>(panel_->steps())})
    each->installEventFilter(this);
}

bool Teach::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress && is_on()) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->modifiers() == Qt::NoModifier) switch (key->key()) {
        case Qt::Key_Space:
          if (!key->isAutoRepeat()) player_.toggle();
          return true;
        case Qt::Key_PageDown:
          player_.next();
          return true;
        case Qt::Key_PageUp:
          player_.previous();
          return true;
        default:
          break;
      }
  }
  return QObject::eventFilter(watched, event);
}

// --- following the case

void Teach::follow(const Session& session) {
  // Case and head together tell one plan from another.
  std::string now = models::case_json(session.kept());
  const void* head = session.head().head.skin().vertices().data();
  if (now == followed_ && head == followed_head_) return;
  followed_ = std::move(now);
  followed_head_ = head;
  steps_ = viewer::lesson(session.kept().entered, session.plan());
  panel_->what_if()->show_case(session.kept().entered);
  work_out_mistake(session);

  QStringList titles, captions;
  std::vector<int> dwell;
  for (const viewer::LessonStep& step : steps_) {
    titles << QString::fromStdString(step.title);
    captions << QString::fromStdString(step.caption);
    dwell.push_back(dwell_ms(step));
  }
  panel_->set_steps(titles);
  player_.set_dwell_ms(std::move(dwell));
  panel_->set_current(player_.current());
  bar_->make_room_for(captions);
  show_text();
}

void Teach::work_out_mistake(const Session& session) {
  spoiled_.reset();
  WhatIfControls* controls = panel_->what_if();
  controls->set_problem({});
  if (const auto mistake = controls->mistake()) try {
      spoiled_ = viewer::spoil(session.head().head, session.kept().entered, session.plan(), *mistake);
    } catch (const std::exception& error) {
      controls->set_problem(viewer::translated(error.what()));
    }
}

// --- showing

LessonStage Teach::stage_now(const Session& session) {
  follow(session);
  LessonStage stage;
  if (spoiled_) {
    stage = spoiled_stage(*spoiled_, session.kept().entered, session.plan());
  } else {
    const viewer::LessonStep& step = steps_[static_cast<std::size_t>(player_.current())];
    stage.shown = step.shown;
    for (const viewer::PencilMark& mark : step.pencil) {
      StageNote note;
      note.shape = viewer::Shape::bar;
      note.colour = viewer::palette::construction;
      note.at = mark.at;
      note.along = mark.along;
      note.text = QString::fromStdString(mark.text);
      stage.notes.push_back(note);
    }
    if (laying_.isActive())
      stage.shown.laying = viewer::Laying{fresh_, static_cast<double>(since_.elapsed()) / laying_ms};
  }
  return stage;
}

void Teach::show_text() {
  if (steps_.empty()) return;
  const viewer::LessonStep& step = steps_[static_cast<std::size_t>(player_.current())];
  const QString progress = tr("Step %1 of %2").arg(player_.current() + 1).arg(player_.count());
  if (spoiled_)
    bar_->show_text(progress, what_if_title(spoiled_->mistake),
                    what_if_sentence(*spoiled_, window_.session().kept().entered, unit_));
  else
    bar_->show_text(progress, QString::fromStdString(step.title), QString::fromStdString(step.caption));
  bar_->show_player(player_.is_playing(), player_.starts_anew(), player_.current() == 0, player_.at_end());
}

void Teach::look() {
  if (!window_.session().is_ready()) return;
  const geometry::Plan& plan = window_.session().plan();
  const auto glide = [&](viewer::View view, const std::optional<viewer::CloseLook>& close,
                         const geometry::Placement& coil) {
    if (close)
      window_.stage().look_at(viewer::gaze(view, plan.axes, coil), close->at, close->across_mm, glide_ms);
    else
      window_.stage().look(view, glide_ms);
  };
  if (spoiled_) {
    glide(viewer::View::square_on, close_look(*spoiled_), spoiled_->meant);
    return;
  }
  const viewer::LessonStep& step = steps_[static_cast<std::size_t>(player_.current())];
  glide(step.view, step.close, viewer::placement_shown(plan, step.shown));
}

void Teach::lay_tapes() {
  laying_.stop();
  fresh_.clear();
  if (spoiled_ || !window_.stage().is_animated()) return;
  const auto at = static_cast<std::size_t>(player_.current());
  const std::set<std::string> none;
  fresh_ = steps_[at].shown.lines.value_or(none);
  if (at > 0)
    for (const std::string& there : steps_[at - 1].shown.lines.value_or(none)) fresh_.erase(there);
  if (fresh_.empty()) return;
  since_.start();
  laying_.start();
}

void Teach::show_step() {
  panel_->what_if()->clear();
  spoiled_.reset();
  panel_->set_current(player_.current());
  show_text();
  if (!is_on()) return;
  lay_tapes();
  window_.stage().draw_once([this] {
    window_.refresh_stage();
    look();
  });
}

void Teach::show_mistake() {
  player_.pause();
  laying_.stop();
  if (!window_.session().is_ready()) return;
  const bool was = spoiled_.has_value();
  work_out_mistake(window_.session());
  show_text();
  if (!is_on()) return;
  window_.stage().draw_once([this, was] {
    window_.refresh_stage();
    if (was || spoiled_) look();
  });
}

}  // namespace scalpmark::window
