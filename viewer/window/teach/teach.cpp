#include "viewer/window/teach/teach.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/side_view.h"
#include "models/cases/case_file.h"
#include "viewer/teach/field_steps.h"
#include "viewer/window/teach/what_if_picture.h"
#include "viewer/window/teach/what_if_sentence.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

namespace {

/// A class looks first and reads then, with time to write down a number: about two words a second.
constexpr int look_ms = 3000, word_ms = 450;
/// Slow enough to follow where the eye goes.
constexpr int glide_ms = 1200;
constexpr int laying_ms = 2200, laying_frame_ms = 40;

int dwell_ms(const QString& said) {
  return look_ms + word_ms * said.split(QLatin1Char(' ')).size();
}

}  // namespace

Teach::Teach(LessonRoom& room, QWidget& window)
    : room_(room),
      panel_(new LessonPanel),
      bar_(new LessonBar),
      rules_(new RulesPicture(&room.over_stage())) {
  room_.over_stage().installEventFilter(this);
  rules_->setAttribute(Qt::WA_TransparentForMouseEvents);
  laying_.setInterval(laying_frame_ms);
  connect_parts();
  // What nobody takes of a key comes up to the window; list and panel would use these keys themselves.
  for (QObject* each : {static_cast<QObject*>(&window), static_cast<QObject*>(panel_),
                        static_cast<QObject*>(panel_->steps())})
    each->installEventFilter(this);
}

void Teach::connect_parts() {
  connect(&player_, &LessonPlayer::step_changed, this, &Teach::show_step);
  connect(&player_, &LessonPlayer::playing_changed, this, [this] {
    if (player_.is_playing() && outcome_) show_step();
    show_text();
  });
  // The window has shown the new case by then; its marks may lie elsewhere, or on the other side.
  connect(&room_.session(), &Session::changed, this, [this] {
    if (room_.lesson_is_on()) room_.look();
  });
  connect(panel_, &LessonPanel::step_wanted, this, [this](int step) {
    if (step != player_.current() || !panel_->what_if()->mistakes().empty()) player_.go_to(step);
  });
  connect(panel_->what_if(), &WhatIfControls::changed, this, &Teach::show_mistake);
  connect(panel_->tools(), &LessonTools::why_switched, this, [this](bool on) {
    says_why_ = on;
    show_steps();
    show_text();
  });
  connect(panel_->tools(), &LessonTools::side_wanted, this, [this] { room_.switch_side(); });
  connect(panel_->tools(), &LessonTools::tempo_chosen, &player_, &LessonPlayer::set_tempo);
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
    rules_->hide();
    room_.cover_stage({});
  });
  connect(&laying_, &QTimer::timeout, this, [this] {
    if (since_.elapsed() >= laying_ms) laying_.stop();
    room_.refresh_stage();
  });
}

void Teach::set_unit(LengthUnit unit) {
  unit_ = unit;
  panel_->what_if()->set_unit(unit);
  // The lesson's captions say lengths, too.
  followed_.reset();
  if (room_.session().is_ready()) follow();
  show_text();
}

bool Teach::eventFilter(QObject* watched, QEvent* event) {
  if (watched == &room_.over_stage()) {
    if (event->type() == QEvent::Resize) place_rules();
    return false;
  }
  if (event->type() == QEvent::KeyPress && room_.lesson_is_on()) {
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

void Teach::follow() {
  const Session& session = room_.session();
  // Case and head together tell one plan from another.
  const geometry::Case& now = session.case_file().the_case;
  const geometry::Head& head = session.head().head;
  if (followed_ == now && followed_head_->same_as(head)) return;
  followed_ = now;
  followed_head_.emplace(head);
  steps_ = viewer::lesson(now, session.plan());
  for (viewer::LessonStep& step : viewer::field_steps(head, now, session.plan()))
    steps_.push_back(std::move(step));
  panel_->what_if()->show_case(session.case_file().the_case);
  work_out_mistake();

  panel_->tools()->show_side(now.side == geometry::Side::left);
  show_steps();
  show_text();
}

void Teach::show_steps() {
  QStringList titles, captions;
  std::vector<int> dwell;
  for (const viewer::LessonStep& step : steps_) {
    titles << QString::fromStdString(step.title);
    captions << said_at(step);
    dwell.push_back(dwell_ms(captions.back()));
  }
  panel_->set_steps(titles);
  player_.set_dwell_ms(std::move(dwell));
  panel_->set_current(player_.current());
  bar_->make_room_for(captions, titles);
}

QString Teach::said_at(const viewer::LessonStep& step) const {
  const QString caption = QString::fromStdString(step.caption);
  return says_why_ ? tr("%1 Why: %2", "what staff do, and why").arg(caption, QString::fromStdString(step.why))
                   : caption;
}

void Teach::work_out_mistake() {
  const Session& session = room_.session();
  outcome_.reset();
  WhatIfControls* controls = panel_->what_if();
  controls->set_problem({});
  const geometry::Case& the_case = session.case_file().the_case;
  controls->show_kept(controls->kept() ? kept_sentence(*controls->kept(), the_case, unit_) : QString());
  if (const auto mistakes = controls->mistakes(); !mistakes.empty()) try {
      outcome_ = viewer::outcome_of(session.head().head, the_case, session.plan(), mistakes);
      outcome_->result.really =
          geometry::with_cortex(std::move(outcome_->result.really), session.head().cortex.get());
    } catch (const std::exception& error) {
      controls->set_problem(viewer::translated(error));
    }
}

// --- showing

StageContent Teach::stage_content() {
  follow();
  StageContent content =
      outcome_ ? what_if_content(*outcome_, room_.session().case_file().the_case, room_.session().plan())
               : step_content();
  content.look.glide_ms = glide_ms;
  content.coil_follows_hand = false;
  show_rules();
  return content;
}

// Beside the stage's picture from outside, one from beside the coil, where the rules can be told apart.
void Teach::show_rules() {
  const auto* other = outcome_ ? outcome_->made<viewer::OtherRule>() : nullptr;
  const bool about_rules = outcome_ ? other != nullptr : step().topic == viewer::LessonTopic::mark_edge;
  std::optional<geometry::SideView> view;
  const Session& session = room_.session();
  const geometry::Case& now = session.case_file().the_case;
  if (about_rules && room_.lesson_is_on()) try {
      view = geometry::side_view(session.head().head, now.coil.model,
                                 outcome_ ? outcome_->result.really : session.plan().treatment);
    } catch (const geometry::GeometryError&) {
      // a skin that cannot be cut there has no picture
    }
  rules_->show_view(view, other ? other->laid_by : now.coil.laid_by);
  place_rules();
}

void Teach::place_rules() {
  constexpr double share = 0.42;
  constexpr int rim_px = 10, widest_px = 640, least_px = 200, caution_px = 88, above_px = 44;
  const QWidget& stage = room_.over_stage();
  int width = std::min(widest_px, static_cast<int>(share * stage.width()));
  const int room = stage.height() - caution_px - rim_px - above_px;
  while (width > least_px && rules_->heightForWidth(width) > room) --width;
  const int height = rules_->heightForWidth(width);
  const Session& session = room_.session();
  // On a stage too low for it, the caption has to do.
  rules_->setVisible(rules_->view() && session.is_ready() && height <= room && room_.lesson_is_on());
  if (rules_->isHidden()) return room_.cover_stage({});
  // Behind the head as it is seen from the side that is treated: its front is what the step is about.
  const bool on_left = geometry::side_of(session.plan().treatment) == geometry::Side::right;
  rules_->setGeometry(on_left ? rim_px : stage.width() - width - rim_px,
                      stage.height() - height - rim_px - caution_px, width, height);
  room_.cover_stage(rules_->geometry());
}

StageContent Teach::step_content() const {
  const viewer::LessonStep& step = this->step();
  const geometry::Plan& plan = room_.session().plan();
  StageContent content;
  content.shown = step.shown;
  for (const viewer::PencilMark& mark : step.pencil) {
    viewer::Note note;
    note.shape = viewer::Shape::bar;
    note.role = viewer::Role::construction;
    note.at = mark.at;
    note.along = mark.along;
    note.text = mark.text;
    content.shown.notes.push_back(note);
  }
  if (laying_.isActive())
    content.shown.laying = viewer::Laying{fresh_, static_cast<double>(since_.elapsed()) / laying_ms};
  content.look.view = step.view;
  if (step.close)
    content.look.close_up = {viewer::gaze(step.view, plan.axes, viewer::placement_shown(plan, step.shown)),
                             step.close->at, step.close->across_mm};
  return content;
}

void Teach::show_text() {
  if (steps_.empty()) return;
  const QString progress = tr("Step %1 of %2").arg(player_.current() + 1).arg(player_.count());
  if (outcome_)
    bar_->show_text(progress, what_if_title(outcome_->mistakes),
                    what_if_sentence(*outcome_, room_.session().case_file().the_case, unit_));
  else
    bar_->show_text(progress, QString::fromStdString(step().title), said_at(step()));
  bar_->show_player(player_.is_playing(), player_.starts_anew(), player_.current() == 0, player_.at_end());
}

void Teach::lay_tapes() {
  laying_.stop();
  fresh_.clear();
  if (steps_.empty() || outcome_ || !room_.is_animated()) return;
  const std::set<std::string> none;
  fresh_ = step().shown.lines.value_or(none);
  if (const int at = player_.current(); at > 0)
    for (const std::string& there : steps_[static_cast<std::size_t>(at) - 1].shown.lines.value_or(none))
      fresh_.erase(there);
  if (fresh_.empty()) return;
  since_.start();
  laying_.start();
}

void Teach::show_step() {
  panel_->what_if()->clear();
  outcome_.reset();
  panel_->set_current(player_.current());
  show_text();
  if (!room_.lesson_is_on()) return;
  lay_tapes();
  room_.refresh_and_look();
}

void Teach::show_mistake() {
  player_.pause();
  laying_.stop();
  if (!room_.session().is_ready()) return;
  const bool was = outcome_.has_value();
  work_out_mistake();
  show_text();
  if (!room_.lesson_is_on()) return;
  if (was || outcome_)
    room_.refresh_and_look();
  else
    room_.refresh_stage();
}

}  // namespace scalpmark::window
